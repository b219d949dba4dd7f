/** The plate: the figure with its caption, side, named views and its two text alternatives. The 3D figure itself is lent. */
import { useId, useMemo } from 'react';
import type { Explanation } from '../../explain/types';
import { QUESTION_IDS } from '../../ids';
import { VIEWS } from '../../session/types';
import { describePicture } from '../../wording';
import { usePages, useSession } from '../context';
import type { Say } from '../words';

export const sideWords = (explanation: Explanation | null, say: Say): string => {
  if (explanation === null) return say('side.working');
  const { side } = explanation;
  if (side.state === 'stated') return say(side.side === 'right' ? 'side.right' : 'side.left');
  return say(side.state === 'notStated' ? 'side.notStated' : 'side.contradiction');
};

/** The description made from the same explanation as the picture. */
export const usePictureWords = (): { readonly short: string; readonly long: string } | null => {
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const question = useSession((state) => state.question);
  const reader = useSession((state) => state.reader);
  return useMemo(
    () => (explanation === null ? null : describePicture(content, explanation, question, reader)),
    [content, explanation, question, reader],
  );
};

const LookFrom = () => {
  const { say, session } = usePages();
  const view = useSession((state) => state.view);
  const id = useId();
  return (
    <div className="look-from">
      <button type="button" className="small" popoverTarget={id}>
        {say('view.lookFrom')}
      </button>
      <div id={id} popover="auto" className="sheet-small">
        <p className="sheet-title">{say('view.lookFrom')}</p>
        {VIEWS.map((each) => (
          <button
            key={each}
            type="button"
            className="choice"
            aria-pressed={each === view}
            popoverTarget={id}
            popoverTargetAction="hide"
            onClick={() => session.commands.lookFrom(each)}
          >
            {say(`view.${each}`)}
          </button>
        ))}
      </div>
    </div>
  );
};

export const Plate = () => {
  const { say, stage } = usePages();
  const explanation = useSession((state) => state.explanation);
  const question = useSession((state) => state.question);
  const stale = useSession((state) => state.stale);
  const view = useSession((state) => state.view);
  const words = usePictureWords();
  const quiz = useSession((state) => state.quiz);
  const whatIf = explanation !== null && Object.keys(explanation.whatIf).length > 0;
  return (
    <figure className="plate" data-what-if={whatIf || undefined} aria-busy={stale}>
      <div className="plate-stage">{stage}</div>
      {quiz === null && words !== null && <p className="unseen">{words.short}</p>}
      <figcaption className="plate-caption">
        <span>
          <b className="fig">{say('plate.figure', { number: QUESTION_IDS.indexOf(question) + 1 })}</b>{' '}
          {say('plate.caption', { side: sideWords(explanation, say), view: say(`view.${view}.caption`) })}
          {whatIf && <span className="what-if-tag">{say('whatIf.tag')}</span>}
        </span>
        <LookFrom />
      </figcaption>
    </figure>
  );
};
