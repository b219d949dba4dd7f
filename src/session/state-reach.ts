/**
 * For every key of the state: may it go into this browser's storage, into a case file, into a link? One table, so that a new
 * key cannot be added without deciding. Links carry no key about a case (the address `view` is a screen of the app, not a camera).
 */
import type { SessionState } from './types';

interface Reach {
  readonly browser: boolean;
  readonly file: boolean;
  readonly link: boolean;
}

const NOWHERE = { browser: false, file: false, link: false } as const;
const BROWSER = { browser: true, file: false, link: false } as const;
const LINK = { browser: false, file: false, link: true } as const;

export const STATE_REACH = {
  content: NOWHERE,
  file: { browser: true, file: true, link: false },
  caseTick: NOWHERE,
  /** A what-if is a thought, not a record: it ends with the page. */
  whatIf: NOWHERE,
  explanation: NOWHERE,
  stale: NOWHERE,
  /** The address says these two; a second memory could only contradict it. */
  reader: LINK,
  question: LINK,
  selectedBone: NOWHERE,
  pose: NOWHERE,
  angle: NOWHERE,
  lookAlike: NOWHERE,
  strand: NOWHERE,
  /** Each question opens with its own view. */
  view: NOWHERE,
  near: NOWHERE,
  viewTick: NOWHERE,
  /** The walk begins at the heel each time. */
  walkStop: NOWHERE,
  /** Of the page that teaches, and goes with it. */
  lit: NOWHERE,
  /** What is typed may be about somebody: it ends with the page. */
  seeking: NOWHERE,
  theme: BROWSER,
  problem: NOWHERE,
  canUndo: NOWHERE,
  canRedo: NOWHERE,
  keepOnDevice: BROWSER,
  quiz: NOWHERE,
  quizPick: NOWHERE,
  /** The picture as it stands says it. */
  breakSign: NOWHERE,
} as const satisfies { readonly [Key in keyof SessionState]: Reach };

export type Place = keyof Reach;
export type KeysReaching<P extends Place> = {
  [Key in keyof SessionState]: (typeof STATE_REACH)[Key][P] extends true ? Key : never;
}[keyof SessionState];

const entriesOf = Object.entries(STATE_REACH) as readonly (readonly [keyof SessionState, Reach])[];

/** The part of a state that may go to that place. */
export const reaching = <P extends Place>(place: P, state: SessionState): Pick<SessionState, KeysReaching<P>> => {
  const kept = entriesOf.filter(([, reach]) => reach[place]).map(([key]) => [key, state[key]]);
  return Object.fromEntries(kept) as Pick<SessionState, KeysReaching<P>>;
};
