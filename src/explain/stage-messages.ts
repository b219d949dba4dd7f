/** What the messages of a stage carry: what a person may do today in it, what single clinics wrote of it, what a share does to the bone. */
import type { ActivityId, BoneId, Endpoint, OptionId, StageId, StageSheetId, StudyId, WeightPracticeId } from '../ids';
import type { ShareWay } from '../mechanics';
import type { IsoDate, Quantity } from '../units';
import type { Agreed } from './load-messages';
import type { ArmEvent, TextAddress } from './messages';

/** Largest pull under a share of body weight over that of plain walking. */
export interface ShareRatio {
  readonly share: Quantity;
  readonly ratio: Quantity;
}

/** Why usual weeks of the steps are not this person's. */
export type WeeksElsewhere =
  | { readonly why: 'broken again' | 'heals badly' | 'second treatment' | 'grows' }
  /** `option`: the treatment whose weeks they are. */
  | { readonly why: 'not usual' | 'treatment not stated'; readonly option: OptionId };

export interface StageMessages {
  /** How much of the body's weight may go on the foot, and what a bathroom scale then shows. */
  stageToday: {
    readonly stage: StageId;
    /** The clinic of this case set it itself. */
    readonly own: boolean;
    /** A treatment is stated; without one nothing may be said as if the clinic had allowed it. */
    readonly treated: boolean;
    /** Null: as pain allows, no figure. */
    readonly share: Quantity | null;
    /** Null where there is no figure, or nobody said how heavy the person is. */
    readonly kilograms: Quantity | null;
  };
  /** Told so much, people put on so much: for this person, in kilograms. */
  stageOvershoot: {
    readonly stage: StageId;
    readonly practice: WeightPracticeId;
    readonly told: Quantity;
    readonly reached: Quantity;
  };
  stageSheet: {
    readonly sheet: StageSheetId;
    readonly weeks: Quantity | null;
    readonly openEnded: boolean;
    /** Whose line it is, where no treatment is stated; none: of the treatment in force. */
    readonly of: readonly OptionId[];
  };
  /** The pull at the break (or the largest in the bone) under that share, as a ratio to pushing off in plain walking. */
  stageLoad: {
    readonly stage: StageId;
    readonly own: boolean;
    readonly bone: BoneId;
    readonly way: ShareWay;
    readonly at: 'break' | 'bone';
    readonly reference: ActivityId;
    /** False where the frame has no part for it: a sole bends at the first toe alone. */
    readonly speaks: boolean;
    readonly low: ShareRatio;
    readonly high: ShareRatio;
    readonly ranking: boolean;
    /** Whether it is less than in walking at the high end of the share. */
    readonly less: boolean;
    readonly agreed: Agreed;
  };
  /** What a review looks at: the criteria of the stage that are not ticked yet, and what would send back. */
  stageAtReview: {
    readonly stage: StageId;
    /** The one that they open; null: this is the last. */
    readonly next: StageId | null;
    /** The clinic said that the person is here; else it is the first stage with a criterion that is not ticked. */
    readonly stated: boolean;
    readonly opens: readonly TextAddress[];
    readonly sendsBack: readonly TextAddress[];
  };
  /** Studies were back at this no later than the week in which running usually begins, or a step before it ends. */
  backSooner: {
    readonly stage: StageId;
    /** Whether the stage begins in that week; else it ends then. */
    readonly begins: boolean;
    readonly endpoint: Endpoint;
    readonly weeks: Quantity;
    readonly from: Quantity;
  };
  /** The week in which running usually begins; null: none is usual. */
  backRunning: { readonly week: Quantity | null };
  /** Of the people of one study whose time is told, how many had the commonest harm. */
  backHarm: {
    readonly endpoint: Endpoint;
    readonly study: StudyId;
    readonly what: ArmEvent['what'];
    readonly count: number;
    readonly of: number;
    readonly unit: ArmEvent['unit'];
  };
  /** The check at which the stage now may end, with the week and day in which it usually comes. */
  nextCheck: {
    readonly stage: StageId;
    /** The stage after it, where it begins on the same day. */
    readonly also: StageId | null;
    /** Null: this is the last. */
    readonly next: StageId | null;
    readonly stated: boolean;
    /** The week is one that the clinic of this case set. */
    readonly own: boolean;
    /** Usual weeks are not this person's: none is told. */
    readonly ask: boolean;
    /** There is a wound, and the check is late: it is looked at before that. */
    readonly wound: boolean;
    readonly week: Quantity | null;
    readonly date: IsoDate | null;
  };
  /** Where on the way back the person is was not said, and the time of the first stage is over. */
  stepNotKnown: Record<string, never>;
  weightNotKnown: Record<string, never>;
  stageLoadPending: { readonly stage: StageId };
  /** Nothing of the body's weight on the foot: the frame has no load to tell of. */
  stageNoLoad: { readonly stage: StageId; readonly own: boolean };
}
