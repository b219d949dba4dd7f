/** Sentences as runs, so that a number keeps its mark, a term its Latin and a claim its stamp wherever it is printed. */
import type { ClaimStatus } from '../cases/schema';
import type { Mark } from '../content/schema';
import type { FindingId } from '../ids';

export interface Run {
  readonly text: string;
  /** How well the number in this run is known: drawn as an underline, always with the word for screen readers. */
  readonly mark?: Mark;
  readonly latin?: true;
}

export interface Sentence {
  readonly finding: FindingId;
  readonly runs: readonly Run[];
  /** Stamp to print before it, when the sentence tells a claim. */
  readonly stamp: Exclude<ClaimStatus, 'ruledOut'> | 'ruledOut' | 'contradiction' | null;
  readonly whatIf: boolean;
}

export const plainText = (sentence: Pick<Sentence, 'runs'>): string => sentence.runs.map((run) => run.text).join('');
