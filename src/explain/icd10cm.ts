/**
 * A code of ICD-10-CM assembled from what the case says: root, a character for side and displacement, a character for the visit.
 * What the case does not say goes by the list's own rules: displacement not stated is coded displaced, open or closed not stated is
 * coded closed; a side not stated has a character of its own. Characters: content/codes.yaml and the list's chapters S92, S93, M84.3.
 */
import type { Code } from '../content/schema';
import type { Side } from '../ids';

/** First visit; later visit with usual healing. Delayed healing (G) and nonunion (K) are for whoever codes to judge. */
export type Visit = 'first' | 'later';

export interface CodeFacts {
  readonly side: Side | null;
  readonly displaced: boolean | null;
  readonly visit: Visit;
}

export interface AssembledCode {
  readonly text: string;
  /** Coded by the list's rule and not by what was stated. */
  readonly assumed: readonly ('side' | 'displacement' | 'closed')[];
}

const VISIT_LETTER = { first: 'A', later: 'D' } as const;

const nextOf = ({ next }: Code, { side, displaced }: CodeFacts): string => {
  const set = next.by === 'side' ? next : displaced === false ? next.notDisplaced : next.displaced;
  return side === null ? set.notStated : set[side];
};

export const assembleCode = (code: Code, facts: CodeFacts): AssembledCode => {
  const assumed: AssembledCode['assumed'][number][] = [];
  if (facts.side === null) assumed.push('side');
  if (code.next.by === 'displacement and side' && facts.displaced === null) assumed.push('displacement');
  const body = `${code.root}${nextOf(code, facts)}`;
  if (code.visit === 'none') return { text: body, assumed };
  if (code.visit === 'fracture' && facts.visit === 'first') assumed.push('closed');
  return { text: `${body}${VISIT_LETTER[facts.visit]}`, assumed };
};
