/** What question 5 says of several treatments, or of several classes, at once. */
import type { ContradictionId, Endpoint, InjuryId, OptionId } from '../ids';
import type { Quantity } from '../units';
import type { ArmFigures } from './messages';

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
    /** How many of the usual treatments have no such weeks. */
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
    /** The treatments that were counted class by class. */
    readonly counted: readonly OptionId[];
    readonly classes: readonly { readonly index: number; readonly ranges: readonly OptionRange[] }[];
  };
  /** Weeks of people whose class no study stated, of the same injury. */
  backClassNotStated: {
    readonly injury: InjuryId;
    readonly endpoint: Endpoint;
    readonly ranges: readonly OptionRange[];
  };
}
