/** The messages of codes, and of what was measured of a joint against what is said of it. */
import type { CodeId, FilmMeasure, InjuryId } from '../ids';
import type { IsoDate, Quantity } from '../units';
import type { AssembledCode, CodePart, Visit } from './icd10cm';
import type { ClaimTag } from './messages';

export interface CodeMessages {
  /** Its number in another list. */
  alsoNumbered: { readonly injury: InjuryId };
  code: {
    readonly injury: InjuryId;
    readonly code: CodeId;
    readonly visit: Visit | 'again';
    /** All that it rests on: as sure as the least sure of it. */
    readonly claim: ClaimTag;
    /** What of it nobody confirmed. */
    readonly notConfirmed: readonly CodePart[];
    /** What the list gives as long as nobody confirms that it is not displaced; null where no report chose that character. */
    readonly unlessConfirmed: readonly string[] | null;
  } & AssembledCode;
  /** Coded on top where a bone broke too. */
  codesBeside: { readonly injury: InjuryId; readonly codes: readonly CodeId[] };
  /** The person still grows: the list has other codes for a break through a growth plate. */
  codeOfGrowing: { readonly injury: InjuryId; readonly code: CodeId };
  /** Broken again: nothing is assembled, for a new break is coded anew; as far as it is only `reported` that stands beside the code. */
  codeAnew: { readonly injury: InjuryId; readonly on: IsoDate; readonly reported: boolean };
  /** A measure of another injury than that of the case. */
  measureOfOther: { readonly what: FilmMeasure; readonly injuries: readonly InjuryId[] };
  /** A class whose break is a line, and pieces that stand millimetres apart. */
  apartAgainstClass: {
    readonly injury: InjuryId;
    readonly what: 'displacement' | FilmMeasure;
    readonly apart: Quantity;
    readonly from: Quantity;
  };
  /** A joint said to be in line, and a gap from which on it is not. */
  gapAgainstWord: { readonly gap: Quantity; readonly from: Quantity; readonly displaced: boolean };
}
