/** What question 5 says of several treatments, or of several classes, at once. */
import type { ContradictionId, Endpoint, FilmMeasure, InjuryId, OptionId } from '../ids';
import type { Quantity } from '../units';
import type { ArmFigures, ClaimTag, ClaimValue } from './messages';

export interface OptionRange {
  readonly option: OptionId;
  readonly weeks: Quantity;
  readonly people: Quantity | null;
  readonly arms: readonly ArmFigures[];
}

export interface BackMessages {
  /** The treatment is not stated, or has no weeks: a range for each option that has one, all counted to the same endpoint. */
  backDepends: {
    readonly injury: InjuryId;
    readonly endpoint: Endpoint;
    readonly ranges: readonly OptionRange[];
    /** The treatment of the case, where it has no such weeks. */
    readonly own: OptionId | null;
    /** How many of the other usual treatments have no such weeks. */
    readonly without: number;
    /** Sources that disagree on which treatment is quicker: said before any weeks. */
    readonly disagree: ContradictionId | null;
  };
  /** Studies counted people of one class: weeks class by class, never treatment beside treatment. */
  backClasses: {
    readonly injury: InjuryId;
    readonly endpoint: Endpoint;
    /** Whether the class of the case is known: then it stands here alone. */
    readonly known: boolean;
    /** Its bones are said to be in line, and nobody stated the gap that would decide the class. */
    readonly inLine: boolean;
    /** The treatments that were counted class by class. */
    readonly counted: readonly OptionId[];
    readonly classes: readonly { readonly index: number; readonly ranges: readonly OptionRange[] }[];
  };
  /** Claims differ on the measure that decides the class: each value, and the class that it would make, if any. */
  classDisputed: {
    readonly injury: InjuryId;
    readonly what: FilmMeasure;
    readonly values: readonly {
      readonly claim: ClaimTag;
      readonly of: Extract<ClaimValue, { readonly subject: 'measure' }>;
      readonly index: number | null;
    }[];
  };
  /** Weeks of people whose class no study stated, of the same injury. */
  backClassNotStated: {
    readonly injury: InjuryId;
    readonly endpoint: Endpoint;
    readonly ranges: readonly OptionRange[];
  };
}
