/**
 * Keys and hands: what the picture takes, in one list. The question mark opens it from anywhere but a field for text; who speaks
 * to the device or types by switches can turn that key off (a single key must not act unasked).
 */
import { useEffect, useId, useState } from 'react';
import { VIEWS } from '../../session/types';
import { usePages } from '../context';
import { useDialog } from '../parts/use-dialog';
import { EVERYWHERE, HANDS, PICTURE_KEYS } from './keys';

const TYPED_IN = 'input:not([type="radio"], [type="checkbox"], [type="range"], [type="file"]), select, textarea';

/** Opens by `?`. Where the key is off it still opens from the picture, which has the focus then and nothing else to do with it. */
const useQuestionKey = (everywhere: boolean, open: () => void): void => {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.key !== '?' || event.altKey || event.ctrlKey || event.metaKey || event.defaultPrevented) return;
      const target = event.target instanceof Element ? event.target : document.body;
      if (target.closest(TYPED_IN) !== null || document.querySelector('dialog[open]') !== null) return;
      if (!everywhere && target.closest('[role="application"]') === null) return;
      event.preventDefault();
      open();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [everywhere, open]);
};

const Pairs = ({
  title,
  pairs,
}: {
  readonly title: string;
  readonly pairs: readonly (readonly [string, string])[];
}) => (
  <section>
    <h3>{title}</h3>
    <dl className="help-list">
      {pairs.map(([name, does]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  </section>
);

export const HelpDialog = () => {
  const { say, help, setHelp, hrefOf } = usePages();
  const [everywhere, setEverywhere] = useState(true);
  const titleId = useId();
  const [open] = useState(() => () => setHelp(true));
  useQuestionKey(everywhere, open);
  const { dialog, closed } = useDialog(help, () => setHelp(false));
  const sides = VIEWS.map((view, index) => `${index + 1} ${say(`stage.view.${view}`)}`).join(', ');
  const worded = (pairs: readonly (readonly [string, string])[]) =>
    pairs.map(([name, does]) => [say(name), say(does, { sides })] as const);
  return (
    <dialog ref={dialog} className="help" aria-labelledby={titleId} onClose={closed}>
      {help && (
        <>
          <div className="row row-spread help-head">
            <h2 id={titleId}>{say('help.title')}</h2>
            <button type="button" className="button" onClick={() => setHelp(false)}>
              {say('close')}
            </button>
          </div>
          <div className="help-columns">
            <Pairs
              title={say('help.keys')}
              pairs={worded(PICTURE_KEYS.map(({ name, does }) => [name, does] as const))}
            />
            <Pairs title={say('help.hands')} pairs={worded(HANDS)} />
            <Pairs title={say('help.everywhere')} pairs={worded(EVERYWHERE)} />
          </div>
          <p className="small-print">{say('help.buttons')}</p>
          <p className="sources-link">
            <a href={hrefOf({ page: 'sources' })} onClick={() => setHelp(false)}>
              {say('evidence.link')}
            </a>
          </p>
          <label className="tick">
            <input
              type="checkbox"
              checked={everywhere}
              onChange={(event) => setEverywhere(event.currentTarget.checked)}
            />{' '}
            {say('help.keyOn')}
          </label>
        </>
      )}
    </dialog>
  );
};
