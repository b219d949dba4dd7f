/** The last character of a code: for which visit it was written. Characters: the chapters of S92, S93 and M84.3 of ICD-10-CM, edition of January 2021. */
import type { Code } from '../../content/schema';

export const CODED_VISITS = [
  'first',
  'firstClosed',
  'firstOpen',
  'later',
  'usualHealing',
  'delayedHealing',
  'nonunion',
  'malunion',
  'sequela',
] as const;
export type CodedVisit = (typeof CODED_VISITS)[number];

const HEALING = { D: 'usualHealing', G: 'delayedHealing', K: 'nonunion', P: 'malunion', S: 'sequela' } as const;

const LETTERS: Readonly<Record<Code['visit'], Readonly<Record<string, CodedVisit>>>> = {
  fracture: { A: 'firstClosed', B: 'firstOpen', ...HEALING },
  'stress fracture': { A: 'first', ...HEALING },
  injury: { A: 'first', D: 'later', S: 'sequela' },
  none: {},
};

/** Undefined where the list has no such character. */
export const visitOf = ({ visit }: Code, letter: string): CodedVisit | undefined =>
  Object.hasOwn(LETTERS[visit], letter) ? LETTERS[visit][letter] : undefined;
