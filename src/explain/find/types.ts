/** What somebody looks for, and which injuries it can mean: plain data. A candidate is never a finding about anybody. */
import type { Evidence, Other, Tellings } from '../../content/schema';
import type { BoneId, CardId, CodeId, InjuryId, RegionId, Side } from '../../ids';
import type { CodedVisit } from './coded-visit';
import type { GrowthPlateType } from './read-code';

export interface Sought {
  /** Free words, a sentence of a report, a code; as typed. */
  readonly words: string;
  /** Tapped on the foot, or chosen from the lists. */
  readonly bone: BoneId | null;
  /** Its parts there, more than one near a border; none where only the bone is known. */
  readonly parts: readonly RegionId[];
  /** Which places of the bone lie in which of its parts, as far as the foot is there to say so. */
  readonly lying: readonly Lying[];
}

export interface Lying {
  readonly place: RegionId;
  readonly part: RegionId;
}

export type CandidateRef =
  | { readonly is: 'injury'; readonly id: InjuryId }
  | { readonly is: 'card'; readonly id: CardId };

/** One reason: what was said, and what of the candidate it met. `said` is as typed. */
export type Matched =
  /** A name in use, or words by which it is looked for, as content has them. */
  | { readonly by: 'name' | 'words'; readonly said: string; readonly text: string }
  /** A line of content/find-words.yaml. */
  | { readonly by: 'place' | 'event' | 'who'; readonly said: string; readonly word: string }
  | { readonly by: 'bone'; readonly said: string; readonly bone: BoneId }
  | { readonly by: 'part'; readonly said: string; readonly region: RegionId }
  /** Side, displacement and visit as far as the code says them. */
  | {
      readonly by: 'code';
      readonly said: string;
      readonly code: CodeId;
      readonly side: Side | null;
      readonly displaced: boolean | null;
      readonly visit: CodedVisit | null;
      /** A break through a growth plate of its bone, which has codes of its own, and of which type; null: no such code. */
      readonly growing: GrowthPlateType | null;
    }
  /** What is said not to be so speaks for what a line of content/find-words.yaml means. */
  | { readonly by: 'not'; readonly said: string; readonly word: string }
  | { readonly by: 'tap'; readonly bone: BoneId; readonly region: RegionId | null };

export interface Candidate {
  readonly ref: CandidateRef;
  /** More where more of what was said fits. It ranks and is no chance. */
  readonly score: number;
  /** The strongest reason first. */
  readonly matched: readonly Matched[];
  /** Met by words that only ask. */
  readonly asked: readonly Matched[];
  /** Met by words that tell of an earlier time. */
  readonly earlier: readonly Matched[];
  /** Met by words that are said not to be so. */
  readonly against: readonly Matched[];
}

/** What tells a candidate from another, or from something else it is taken for. */
export interface Apart {
  readonly one: CandidateRef;
  readonly from: Other;
  readonly how: Tellings;
  readonly evidence: Evidence;
}

export interface Found {
  /** The best first. */
  readonly candidates: readonly Candidate[];
  /** Between two of the first few. */
  readonly apart: readonly Apart[];
  /** Words that nothing here knows, as typed. */
  readonly unknown: readonly string[];
  /** What looks like a code and is none of those told here. */
  readonly unknownCodes: readonly string[];
  /** What was understood as not so, as only asked, and as of an earlier time; as typed. */
  readonly denied: readonly string[];
  readonly asked: readonly string[];
  readonly earlier: readonly string[];
}
