/** The messages of question 2 that the frame of the foot makes. */
import type { Mark } from '../content/schema';
import type { ActivityId, BoneId, InjuryId, RegionId } from '../ids';
import type { ContributorId, LoadFlag, StationForce, StationStress } from '../mechanics';
import type { FrameFigure } from '../mechanics/foot/parameter-names';
import type { Quantity } from '../units';

/** Sides of a bone, and the four between them. */
export type BoneFace = 'top' | 'topOuter' | 'outer' | 'soleOuter' | 'sole' | 'soleInner' | 'inner' | 'topInner';
/** Ends of the stretch with nine tenths of the largest pull or more, from the tip; with their spread once the draws have come. */
export interface Plateau {
  readonly from: Quantity;
  readonly to: Quantity;
}

/** Where the model's plateau of pull lies, and where breaks of a class are found. */
export interface PullAgainstBreaks {
  readonly plateau: Plateau;
  /** Where beam theory speaks at all, from the tip: the plateau can lie nowhere else. */
  readonly spoken: Quantity;
  /** The parts that it covers in enough of the draws, tip to head. */
  readonly parts: readonly RegionId[];
  /** Those on which the draws do not agree. */
  readonly perhaps: readonly RegionId[];
  readonly occursRegion: RegionId;
  readonly injury: InjuryId;
  /** In enough of the draws the largest pull lies where the theory ends: there it may grow on. */
  readonly edge: boolean;
  readonly agreed: Agreed;
}

/** Share of the draws that say what is stated; below four fifths the model cannot tell. */
export interface Agreed {
  readonly share: Quantity;
  readonly enough: boolean;
  /** What is stated is what the draws say: the run with the told values says the contrary. */
  readonly contrary?: true;
}

/**
 * What a contributor does to the middle of the plateau of pull along the bone. `stays`: enough draws move it by no more than is told;
 * `cannotTell`: they agree on nothing.
 */
export interface ContributorShift {
  readonly moves: 'toHead' | 'toTip' | 'stays' | 'cannotTell';
  /** The way it moves positive; towards the head where it stays. */
  readonly by: Quantity;
  /** False where the run or its draws are beyond what the theory may state as a size. */
  readonly sized: boolean;
  readonly agreed: Agreed;
}

/** One number of a station over the draws; which way it acts is told only where enough of them agree. */
export interface StationNumber {
  readonly of: StationForce | StationStress;
  readonly value: Quantity;
  readonly agreed: Agreed;
}

export interface LoadMessages {
  /** The told run: which side of the bone is pulled, which pressed, and where. */
  loadPull: {
    readonly activity: ActivityId;
    readonly activityAssumed: boolean;
    readonly mass: Quantity;
    readonly massAssumed: boolean;
    readonly carried: Quantity;
    readonly pulledSide: BoneFace;
    readonly pressedSide: BoneFace;
    /** The ensemble does not agree with this one run on the side; false as long as it has not been asked. */
    readonly sideUnsure: boolean;
    /** The same of the pressed side. */
    readonly pressedUnsure: boolean;
    readonly plateau: Plateau;
  };
  /** Largest pull in the bone against the same bone's in the reference task. */
  loadRatio: {
    readonly bone: BoneId;
    readonly activity: ActivityId;
    readonly reference: ActivityId;
    readonly ratio: Quantity;
    /** The run is beyond what the theory can state as a size: only more or less than the reference is said. */
    readonly ranking: boolean;
    /** The task is the reference itself. */
    readonly same: boolean;
    readonly more: boolean;
    readonly agreed: Agreed;
    readonly draws: number;
    readonly unsolved: number;
  };
  loadSide: { readonly side: BoneFace; readonly agreed: Agreed };
  loadMostOfFive: { readonly bone: BoneId; readonly most: boolean; readonly agreed: Agreed };
  /** Waits for the ensemble: what one run says the next may take back. */
  pullPending: Pick<PullAgainstBreaks, 'occursRegion' | 'injury'>;
  pullAgrees: PullAgainstBreaks;
  pullDisagrees: PullAgainstBreaks;
  /** Too few draws agree. */
  pullUnsure: PullAgainstBreaks;
  /** The model says nothing where such breaks lie: no station there is one of a beam. */
  pullSilent: Pick<PullAgainstBreaks, 'occursRegion' | 'injury'> & {
    /** Where the pull is highest beyond that; null until the draws have come. */
    readonly beyond: Pick<PullAgainstBreaks, 'plateau' | 'parts' | 'perhaps' | 'spoken'> | null;
  };
  beamLeavesOut: { readonly region: RegionId };
  outsideBeam: { readonly stretches: readonly { readonly from: Quantity; readonly to: Quantity }[] };
  /** What one contributor does to the largest pull, and what has been published on it. */
  contributor: {
    readonly contributor: ContributorId;
    /** It raises the pull in some tasks and lowers it in others: no sign is stated. */
    readonly byTask: boolean;
    readonly ratio: Quantity;
    readonly ranking: boolean;
    readonly raises: boolean;
    readonly agreed: Agreed;
    readonly shift: ContributorShift;
  };
  contributorPublished: { readonly contributor: ContributorId; readonly index: number };
  /** Could one such step do it? `factor`: the ratio to the reference at which cortical bone fails in one pull. */
  oneStep: {
    readonly activity: ActivityId;
    readonly reference: ActivityId;
    readonly ratio: Quantity;
    readonly factor: Quantity;
    /** `ranking`: the run gives no size to hold against it. */
    readonly verdict: 'below' | 'within' | 'above' | 'ranking';
  };
  loadForces: {
    readonly activity: ActivityId;
    readonly fascia: Quantity;
    readonly achilles: Quantity;
    readonly tibia: Quantity;
  };
  /** The station with the largest pull over the draws, and how much of the whole table the draws leave open. */
  loadStation: {
    readonly activity: ActivityId;
    /** What stress is a multiple of: the bone's largest pull in this task; null: in the run itself, of which no size may be told. */
    readonly reference: ActivityId | null;
    readonly at: Quantity;
    /** Forces only where they may have sizes, stress only where it has a measure. */
    readonly numbers: readonly StationNumber[];
    /** Numbers in the table whose sign too few draws agree on, of all that it tells. */
    readonly open: number;
    readonly all: number;
    readonly draws: number;
  };
  /** The ground's push along itself, and what the leg holds against it. */
  loadAlong: {
    readonly activity: ActivityId;
    /** Over its push across: horizontal over vertical where the ground is level. Put in with the task. */
    readonly ratio: Quantity;
    /** Null where it may have no size; until the draws have come nothing is told of it. */
    readonly leg: {
      readonly along: Quantity;
      /** Without a sign where `from` says which way; else positive from turning out, negative from turning in. */
      readonly moment: Quantity;
      readonly from: 'turningIn' | 'turningOut' | 'either';
    } | null;
    readonly banded: boolean;
  };
  /** Figures told from chance, two at most, the largest first; none where no one figure stands out. */
  loadSensitivity: {
    readonly standOut: readonly { readonly figure: string; readonly share: Quantity }[];
    /** The share that the largest of so many unrelated figures reaches by chance. */
    readonly chance: Quantity;
    readonly figures: number;
    readonly draws: number;
  };
  loadFlagged: { readonly flag: LoadFlag; readonly activity: ActivityId };
  loadUnknown: { readonly activity: ActivityId };
  otherEdge: { readonly activity: ActivityId; readonly other: ActivityId };
  loadFails: {
    readonly problem:
      | 'outside'
      | 'noStiffness'
      | 'notSettled'
      | 'calfPushes'
      | 'absurd'
      | 'badMass'
      | 'badFigure'
      | 'inexact';
    /** The bone or figure at which it lies, where one is known. */
    readonly at: BoneId | FrameFigure | null;
    readonly activity: ActivityId;
  };
  loadPending: Record<string, never>;

  /** What so much more load a step does to damage over the range of exponents. */
  repeatedLoad: {
    readonly more: Quantity;
    readonly exponent: Quantity;
    readonly damage: Quantity;
    /** How the weakest constant is known: said with the numbers, not only in their basis. */
    readonly mark: Mark;
  };
}
