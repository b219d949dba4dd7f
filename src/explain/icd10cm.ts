/**
 * A code of ICD-10-CM assembled from what the case says: root, a character for side and displacement, a character for the visit.
 * What the case does not say goes by the list's own rules: displacement not stated is coded displaced, open or closed not stated is
 * coded closed; a side not stated has a character of its own. Characters: content/codes.yaml and the list's chapters S92, S93, M84.3.
 */
import type { Code } from '../content/schema';
import type { Side } from '../ids';
import type { Healing } from './healing-said';

/**
 * First visit, or a later one with what the follow-ups say of healing. `later`: they do not say it, or not surely, or they differ; then
 * the characters of usual healing, delayed healing and nonunion all stand, for whoever codes.
 */
export type Visit = 'first' | 'later' | Healing;

/** Null: not stated. `disputed`: claims differ, which the list codes like what is not stated, but which is told as what it is. */
export interface CodeFacts {
  readonly side: Side | 'disputed' | null;
  readonly displaced: boolean | 'disputed' | null;
  readonly visit: Visit;
  /** Why healing is open at a later visit, or that what it goes by is only reported; null where nothing is to be said. */
  readonly healing: 'notStated' | 'reported' | 'disputed' | null;
  /** What a report says of healing against what is confirmed, which the code goes by; absent or null where none does. */
  readonly ifReported?: Healing | null;
}

/** What chose among the codes of one injury, beyond what was stated. */
export type CodeChoice =
  /** Nothing did: all that the list offers are given. */
  | 'open'
  /** The list has more than one code for this injury, whatever is stated. */
  | 'severalFit'
  /** The list offers two, and nothing that is kept here tells them apart. */
  | 'ofTwo'
  /** A measured gap went before the word that nothing is displaced. */
  | 'gapFirst'
  /** The class rests on a measure that nobody stated. */
  | 'classAssumed';

/** What of a case a code rests on. */
export const CODE_PARTS = ['class', 'bone', 'measures', 'displacement', 'side', 'followUps'] as const;
export type CodePart = (typeof CODE_PARTS)[number];

export interface AssembledCode {
  /** One, or one for each way in which it may heal, in the order of the list. */
  readonly texts: readonly string[];
  /** What a report would make of it, if it is right. */
  readonly ifReported: { readonly text: string; readonly healing: Healing } | null;
  /** Coded by the list's rule and not by what was stated. */
  readonly assumed: readonly (
    | 'side'
    | 'sideDisputed'
    | 'displacement'
    | 'displacementDisputed'
    | 'closed'
    | 'healingReported'
    | 'healingDisputed'
    | 'healingNotStated'
    | CodeChoice
  )[];
}

const FRACTURE_LETTERS: Readonly<Record<Visit, readonly string[]>> = {
  first: ['A'],
  later: ['D', 'G', 'K'],
  usual: ['D'],
  delayed: ['G'],
  nonunion: ['K'],
  malunion: ['P'],
};

/** Of a joint or a ligament the list tells the first visit from later ones, and nothing of how it heals. */
const lettersOf = ({ visit: kind }: Code, visit: Visit): readonly string[] =>
  kind === 'none' ? [''] : kind === 'injury' ? [visit === 'first' ? 'A' : 'D'] : FRACTURE_LETTERS[visit];

const HEALING_TOLD = {
  notStated: 'healingNotStated',
  reported: 'healingReported',
  disputed: 'healingDisputed',
} as const;

/** Whether what is said of displacement is a character of this code. */
export const tellsDisplacement = ({ next }: Pick<Code, 'next'>): boolean => next.by === 'displacement and side';

const nextOf = ({ next }: Code, { side, displaced }: CodeFacts): string => {
  const set = next.by === 'side' ? next : displaced === false ? next.notDisplaced : next.displaced;
  return side === null || side === 'disputed' ? set.notStated : set[side];
};

export const assembleCode = (code: Code, facts: CodeFacts): AssembledCode => {
  const assumed: AssembledCode['assumed'][number][] = [];
  if (facts.side === null) assumed.push('side');
  if (facts.side === 'disputed') assumed.push('sideDisputed');
  if (tellsDisplacement(code)) {
    if (facts.displaced === null) assumed.push('displacement');
    if (facts.displaced === 'disputed') assumed.push('displacementDisputed');
  }
  const body = `${code.root}${nextOf(code, facts)}`;
  if (code.visit === 'fracture' && facts.visit === 'first') assumed.push('closed');
  const tellsHealing = code.visit === 'fracture' || code.visit === 'stress fracture';
  if (tellsHealing && facts.healing !== null) assumed.push(HEALING_TOLD[facts.healing]);
  const otherwise = tellsHealing ? (facts.ifReported ?? null) : null;
  return {
    texts: lettersOf(code, facts.visit).map((letter) => `${body}${letter}`),
    ifReported:
      otherwise === null ? null : { text: `${body}${FRACTURE_LETTERS[otherwise].join('')}`, healing: otherwise },
    assumed,
  };
};
