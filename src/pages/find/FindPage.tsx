/**
 * From what is known to the injuries it can mean: words, a line of a report, a code, or a tap on the foot. What is typed lives in the
 * session only, and the picture shows the plain foot. An injury told in short opens in the same place, under an address of its own.
 */
import { useEffect, useId, useMemo, useRef } from 'react';
import { finderOf, isTooGeneral, lyingIn } from '../../explain/find';
import { usePages, useSession } from '../context';
import { RedFlags } from '../note/Cautions';
import { Disclosure } from '../parts/Disclosure';
import { focusHeading } from '../parts/focus-onward';
import { Candidates, stepThrough } from './Candidates';
import { CardView } from './CardView';
import './find.css';
import { nameFor } from './names';
import { PlaceChoice, useParts } from './PlaceChoice';
import { Understood } from './Understood';

/** Above what was found the list must not be far. */
const FLAGS_IN_SIGHT = 2;

/** Signs that cannot wait stand beside whatever can be meant. */
const Flags = () => {
  const cautions = useSession((state) => state.content.cautions);
  const reader = useSession((state) => state.reader);
  const flags = cautions.filter(({ kind, readers }) => kind === 'red flag' && readers.includes(reader));
  return <RedFlags cautions={flags} inSight={FLAGS_IN_SIGHT} />;
};

/** Nothing is hidden from those who would rather read a list. */
const All = () => {
  const { say, hrefOf } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return (
    <Disclosure title={say('seek.all')}>
      <ul className="seek-all">
        {content.injuries.map((injury) => (
          <li key={injury.id}>
            {nameFor(injury, reader)} <small>{say('seek.full')}</small>
          </li>
        ))}
        {content.cards.map((card) => (
          <li key={card.id}>
            <a href={hrefOf({ page: 'find', card: card.id })}>{nameFor(card, reader)}</a>
          </li>
        ))}
      </ul>
    </Disclosure>
  );
};

const Search = () => {
  const { say, session, foot } = usePages();
  const content = useSession((state) => state.content);
  const words = useSession((state) => state.seeking?.words ?? '');
  const bone = useSession((state) => state.selectedBone);
  const parts = useParts();
  const find = useMemo(() => finderOf(content), [content]);
  const lying = useMemo(
    () => (foot === null || bone === null ? [] : lyingIn(foot, content, bone)),
    [foot, content, bone],
  );
  const found = useMemo(() => find({ words, bone, parts, lying }), [find, words, bone, parts, lying]);
  const id = useId();
  const asked = words.trim() !== '' || bone !== null;
  const count = found.candidates.length;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the arrow keys step through what stands in it; each stop is a control
    <div onKeyDown={stepThrough}>
      <p className="question-count">{say('seek.kicker')}</p>
      <h1 className="question-title" tabIndex={-1}>
        {say('seek.title')}
      </h1>
      <p>{say('seek.what')}</p>
      <search>
        <form className="seek" onSubmit={(event) => event.preventDefault()}>
          <label htmlFor={`${id}words`}>{say('seek.typed')}</label>
          <input
            id={`${id}words`}
            type="search"
            autoComplete="off"
            spellCheck={false}
            maxLength={600}
            value={words}
            aria-describedby={`${id}names ${id}count`}
            onChange={(event) => session.commands.seek({ words: event.currentTarget.value })}
          />
          <p id={`${id}names`} className="small-print">
            {say('seek.noNames')}
          </p>
        </form>
      </search>
      <PlaceChoice />
      <p id={`${id}count`} role="status" className="small-print">
        {!asked
          ? say('seek.like')
          : count === 0
            ? say(isTooGeneral(found, { words, bone }) ? 'seek.tooGeneral' : 'seek.none')
            : count === 1
              ? say('seek.countOne')
              : say('seek.count', { count })}{' '}
        <Understood found={found} />
      </p>
      <Flags />
      <Candidates found={found} onlyTapped={words.trim() === ''} />
      <All />
    </div>
  );
};

export const FindPage = () => {
  const { session, address } = usePages();
  const { seek } = session.commands;
  const cards = useSession((state) => state.content.cards);
  const card = cards.find(({ id }) => id === address.card);
  const id = card?.id ?? null;
  useEffect(() => {
    seek({});
    return () => seek(null);
  }, [seek]);
  useEffect(() => seek({ card: id }), [seek, id]);
  // Another card, or the way back from one, is a new place: a keyboard or a screen reader starts at its heading.
  const before = useRef(id);
  useEffect(() => {
    if (before.current === id) return;
    before.current = id;
    focusHeading();
  }, [id]);
  return card === undefined ? <Search /> : <CardView key={card.id} card={card} />;
};
