/** What the messages of troubles and of sources that disagree carry: what was counted in one group, never a chance of one person. */
import type { Mark } from '../content/schema';
import type { CountedUnit } from '../content/schema-care';
import type { ContradictionId, InjuryId, OptionId, RateId, SourceId, StudyId, TroubleId } from '../ids';

/** How often a trouble was counted in one group. */
export interface TroubleCount {
  readonly trouble: TroubleId;
  /** Where the figure stands: a rate of its own, or the arm of a study. */
  readonly from: { readonly rate: RateId } | { readonly study: StudyId };
  readonly source: SourceId;
  readonly mark: Mark;
  /** A class or a treatment in the words of the rate; null for arms, which have an option. */
  readonly type: string | null;
  readonly option: OptionId | null;
  /** Of a rate: the treatments of these people, where something is said of them. */
  readonly options: readonly OptionId[] | null;
  readonly group: string;
  readonly span: string | null;
  readonly count: number | null;
  /** Null where what was read does not say. */
  readonly of: number | null;
  readonly unit: CountedUnit;
  readonly percent: number;
  /** 95 %, in percent: as printed, or worked out from count and whole; null where neither can be had. */
  readonly interval: { readonly low: number; readonly high: number; readonly by: 'print' | 'Wilson' } | null;
}

export interface TroubleMessages {
  troubleCount: TroubleCount;
  /** What several groups treated like this person counted, lowest first, where they differ. */
  troubleRange: {
    readonly injury: InjuryId;
    readonly option: OptionId;
    readonly trouble: TroubleId;
    readonly counts: readonly TroubleCount[];
  };
  /** Nobody counted these for this injury, as far as was read. */
  troublesNotCounted: { readonly injury: InjuryId; readonly troubles: readonly TroubleId[] };
  /** Sources that say different things, and what is done about it here. */
  sourcesDisagree: { readonly contradiction: ContradictionId };
}
