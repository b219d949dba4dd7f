/**
 * A code of ICD-10-CM assembled from what the case says: root, a character for side and displacement, a character for the visit.
 * What the case does not say goes by the list's own rules: displacement not stated is coded displaced, open or closed not stated is
 * coded closed; a side not stated has a character of its own. Characters: content/codes.yaml and the list's chapters S92, S93, M84.3.
 */
import type { Code } from '../content/schema';
import type { Side } from '../ids';

/** First visit; later visit with usual healing. Delayed healing (G) and nonunion (K) are for whoever codes to judge. */
export type Visit = 'first' | 'later';

/** Null: not stated. `disputed`: claims differ, which the list codes like what is not stated, but which is told as what it is. */
export interface CodeFacts {
  readonly side: Side | 'disputed' | null;
  readonly displaced: boolean | 'disputed' | null;
  readonly visit: Visit;
}

/** What chose among the codes of one injury, beyond what was stated. */
export type CodeChoice =
  /** Nothing did: all that the list offers are given. */
  | 'open'
  /** The list offers two, and nothing that is kept here tells them apart. */
  | 'ofTwo'
  /** A measured gap went before the word that nothing is displaced. */
  | 'gapFirst'
  /** The class rests on a measure that nobody stated. */
  | 'classAssumed';

export interface AssembledCode {
  readonly text: string;
  /** Coded by the list's rule and not by what was stated. */
  readonly assumed: readonly (
    | 'side'
    | 'sideDisputed'
    | 'displacement'
    | 'displacementDisputed'
    | 'closed'
    | CodeChoice
  )[];
}

const VISIT_LETTER = { first: 'A', later: 'D' } as const;

const nextOf = ({ next }: Code, { side, displaced }: CodeFacts): string => {
  const set = next.by === 'side' ? next : displaced === false ? next.notDisplaced : next.displaced;
  return side === null || side === 'disputed' ? set.notStated : set[side];
};

export const assembleCode = (code: Code, facts: CodeFacts): AssembledCode => {
  const assumed: AssembledCode['assumed'][number][] = [];
  if (facts.side === null) assumed.push('side');
  if (facts.side === 'disputed') assumed.push('sideDisputed');
  if (code.next.by === 'displacement and side') {
    if (facts.displaced === null) assumed.push('displacement');
    if (facts.displaced === 'disputed') assumed.push('displacementDisputed');
  }
  const body = `${code.root}${nextOf(code, facts)}`;
  if (code.visit === 'none') return { text: body, assumed };
  if (code.visit === 'fracture' && facts.visit === 'first') assumed.push('closed');
  return { text: `${body}${VISIT_LETTER[facts.visit]}`, assumed };
};
