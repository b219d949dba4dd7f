/** What can be meant: each with why; an injury told in full opens here, one told in short has a page of its own. */
import { type KeyboardEvent, useId, useState } from 'react';
import { type Candidate, type Found, inSightOf, type Matched } from '../../explain/find';
import type { InjuryId } from '../../ids';
import { usePages, useSession } from '../context';
import { useBeginCase } from './begin-case';
import { candidateName } from './names';
import { whyText } from './why';

const saidOf = (matched: Matched): string => ('said' in matched ? matched.said : '');

/** What was denied is told once, with the strongest of what it speaks against. */
const oncePerWord = (reasons: readonly Matched[]): readonly Matched[] =>
  reasons.filter((each, i) => reasons.findIndex((other) => saidOf(other) === saidOf(each)) === i);

const Why = ({ candidate }: { readonly candidate: Candidate }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const textOf = (matched: Matched): string => whyText({ content, reader, say }, matched);
  return (
    <ul className="seek-why" aria-label={say('seek.why')}>
      {candidate.matched.map((matched) => {
        const text = textOf(matched);
        return (
          <li key={`${matched.by} ${text}`}>
            <small>{say(`seek.by.${matched.by}`)}</small> {text}
          </li>
        );
      })}
      {candidate.asked.map((matched) => (
        <li key={`asked ${matched.by} ${textOf(matched)}`}>
          <small>{say('seek.askedOnly')}</small> {textOf(matched)}
        </li>
      ))}
      {candidate.earlier.map((matched) => (
        <li key={`earlier ${matched.by} ${textOf(matched)}`}>
          <small>{say('seek.earlierOnly')}</small> {textOf(matched)}
        </li>
      ))}
      {oncePerWord(candidate.against).map((matched) => (
        <li key={`against ${matched.by} ${textOf(matched)}`}>
          <small>{say('seek.against')}</small> {textOf(matched)}
        </li>
      ))}
    </ul>
  );
};

const Begin = ({ injury }: { readonly injury: InjuryId }) => {
  const { say } = usePages();
  const begin = useBeginCase();
  return (
    <div className="seek-begin">
      <p className="small-print">{say('seek.beginNote')}</p>
      <button type="button" className="button button-main" onClick={() => begin(injury)}>
        {say('seek.begin')}
      </button>
    </div>
  );
};

const Item = ({ candidate }: { readonly candidate: Candidate }) => {
  const { say, hrefOf } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const [open, setOpen] = useState(false);
  const id = useId();
  const { ref } = candidate;
  const name = candidateName(content, ref, reader);
  return (
    <li>
      <h3>
        {ref.is === 'card' ? (
          <a className="choice seek-hit" href={hrefOf({ page: 'find', card: ref.id })}>
            <span>{name}</span> <small>{say('seek.short')}</small>
          </a>
        ) : (
          <button
            type="button"
            className="choice seek-hit"
            aria-expanded={open}
            aria-controls={id}
            onClick={() => setOpen(!open)}
          >
            <span>{name}</span> <small>{say('seek.full')}</small>
          </button>
        )}
      </h3>
      <Why candidate={candidate} />
      {ref.is === 'injury' && (
        <div id={id} hidden={!open}>
          <Begin injury={ref.id} />
        </div>
      )}
    </li>
  );
};

const Apart = ({ found }: { readonly found: Found }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  if (found.apart.length === 0) return null;
  return (
    <section className="seek-apart">
      <h2>{say('seek.apart')}</h2>
      <dl>
        {found.apart.map(({ one, from, how }) => {
          if (from.is !== 'injury' && from.is !== 'card') return null;
          const other = from.is === 'injury' ? { is: from.is, id: from.injury } : { is: from.is, id: from.card };
          const names = {
            one: candidateName(content, one, reader),
            other: candidateName(content, other, reader),
          };
          return (
            <div key={`${one.id} ${other.id}`}>
              <dt>{say('seek.pair', names)}</dt>
              <dd>{how[reader]}</dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
};

/** Up and down go through the search field and what was found, as in any list that follows a field. */
export const stepThrough = (event: KeyboardEvent<HTMLElement>): void => {
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const stops = [...event.currentTarget.querySelectorAll<HTMLElement>('input[type="search"], .seek-hit')].filter(
    (each) => each.checkVisibility(),
  );
  const at = stops.indexOf(document.activeElement as HTMLElement);
  const next = stops[at + (event.key === 'ArrowDown' ? 1 : -1)];
  if (at === -1 || next === undefined) return;
  event.preventDefault();
  next.focus();
};

export const Candidates = ({ found, onlyTapped }: { readonly found: Found; readonly onlyTapped: boolean }) => {
  const { say } = usePages();
  const { candidates } = found;
  if (candidates.length === 0) return null;
  const { inSight, folded } = inSightOf(candidates);
  const items = (some: readonly Candidate[]) => (
    <ol className="plain-list seek-hits">
      {some.map((candidate) => (
        <Item key={`${candidate.ref.is} ${candidate.ref.id}`} candidate={candidate} />
      ))}
    </ol>
  );
  return (
    <>
      <h2 className="seek-head">{say(onlyTapped ? 'seek.atThisPlace' : 'seek.canBeMeant')}</h2>
      <p className="small-print">{say('seek.hedge')}</p>
      {items(inSight)}
      {folded.length > 0 && (
        <details className="seek-more">
          <summary>{say('seek.more', { count: folded.length })}</summary>
          {items(folded)}
        </details>
      )}
      <Apart found={found} />
    </>
  );
};
