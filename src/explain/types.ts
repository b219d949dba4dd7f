/**
 * The Explanation: versioned plain data, no sentence and no pixel. Every screen, page, script and question is a telling of it.
 * It survives JSON: no function, no Map, no typed array, no NaN.
 */

import type { FootParameters, Zone } from '../anatomy/types';
import type { ClaimStatus, Place, SourceKind } from '../cases/schema';
import type { Mark } from '../content/schema';
import type {
  ActivityId,
  AgeBand,
  BoneId,
  CaseId,
  ClaimId,
  FindingId,
  InjuryId,
  OptionId,
  QuestionId,
  Reader,
  RegionId,
  Side,
  SourceId,
  VesselChoiceId,
  VesselId,
  VesselPatternId,
} from '../ids';
import type { Contributor, FootLoads, LoadBands } from '../mechanics';
import type { CheckAnswer } from '../mechanics/foot/checks';
import type { StationTable } from '../mechanics/types';
import type { FeedingTable } from '../perfusion/types';
import type { IsoDate } from '../units';
import type { ExplainedForecast } from './forecast-steps';
import type { Given, Message } from './messages';

export const EXPLANATION_VERSION = 1;

/** Five words for how far a finding can be trusted, strongest first. Computed, never written by hand. */
export const CONFIDENCES = ['established', 'supported', 'reported', 'uncertain', 'unknown'] as const;
export type Confidence = (typeof CONFIDENCES)[number];

/** What capped the confidence. */
export type ConfidenceReason =
  | { readonly by: 'claim'; readonly status: ClaimStatus | 'contradiction' | 'notStated' }
  | { readonly by: 'source'; readonly mark: Mark }
  | { readonly by: 'model'; readonly limit: string }
  | { readonly by: 'nothing' };

/** What a finding lights on the foot, by id. */
export type Shown =
  | { readonly kind: 'bone'; readonly bone: BoneId }
  | { readonly kind: 'region'; readonly bone: BoneId; readonly region: RegionId }
  | { readonly kind: 'vessel'; readonly bone: BoneId; readonly vessel: VesselId }
  | { readonly kind: 'stations'; readonly bone: BoneId }
  | { readonly kind: 'feeding'; readonly bone: BoneId }
  | { readonly kind: 'break' }
  | { readonly kind: 'screw'; readonly bone: BoneId };

/** Where a finding comes from; `compute` + `inputs` run again to the stored value (src/explain/bases.ts). */
export interface Basis {
  readonly sources: readonly { readonly source: SourceId | null; readonly mark: Mark }[];
  readonly claims: readonly ClaimId[];
  readonly compute: string;
  readonly inputs: Readonly<Record<string, unknown>>;
}

export interface Finding {
  readonly id: FindingId;
  readonly message: Message;
  /** `sentence`: the one sentence of its question. `claim`: what the case says. `more`: on request. */
  readonly depth: 'sentence' | 'claim' | 'more';
  readonly shows: readonly Shown[];
  readonly confidence: { readonly level: Confidence; readonly reason: ConfidenceReason };
  readonly basis: Basis;
  /** Made from an override and not from the case: looks different everywhere. */
  readonly whatIf: boolean;
  /** Readers it is meant for; absent = all. Codes, for one, are for study only. */
  readonly readers?: readonly Reader[];
}

export interface Question {
  readonly id: QuestionId;
  readonly findings: readonly Finding[];
}

/** Where the break is drawn. Precision follows what is known: a region is drawn at its middle and called a region. */
export interface BreakAt {
  readonly bone: BoneId;
  readonly sMm: number;
  readonly region: RegionId;
  readonly precision: 'distance' | 'region';
  readonly status: Exclude<ClaimStatus, 'ruledOut'>;
  readonly whatIf: boolean;
  /** Spiral breaks are drawn as a band between two stations. */
  readonly direction: 'transverse' | 'oblique' | 'spiral' | 'avulsion' | 'comminuted' | 'incomplete' | 'notStated';
}

/**
 * How much of the ensembles an explanation is made with. `ratio`: the bands of the ratio, under a second. `all`: contributors, supports
 * and what the frame was held against too, some seconds.
 */
export type BandsAsked = 'none' | 'ratio' | 'all';

/** The frame of the foot, told once, and against the reference task; bands once they are computed. */
export interface ExplainedLoads {
  readonly activity: ActivityId;
  readonly reference: ActivityId;
  readonly told: FootLoads;
  /** The run is beyond what the theory can state as a size: only more and less may be told. */
  readonly ranksOnly: boolean;
  /** The same for forces along the way, which ask nothing of the reference: no newtons, no body weights. */
  readonly forcesRank: boolean;
  /**
   * What a stress in each metatarsal, first to fifth, is told as a multiple of, MPa: its largest pull in the reference task, or, where
   * only ranks may be told, in this run itself. Never MPa of a person.
   */
  readonly referenceMPa: readonly number[];
  readonly bands: LoadBands | null;
  readonly contributors: readonly Contributor[] | null;
  /** What the frame of this foot makes of published results; with the bands. */
  readonly checks: readonly CheckAnswer[] | null;
}

/** What a what-if may change. Each key overrides the fact of the same name; null-free: absent = not overridden. */
export interface WhatIf {
  readonly place?: Place;
  readonly massKg?: number;
  readonly footShape?: 'neutral' | 'high' | 'low';
  /** Measures of the foot's shape and size, over what is known of the person. */
  readonly foot?: Partial<FootParameters>;
  readonly activity?: ActivityId;
  /** Carried on the back, kg. */
  readonly carriedKg?: number;
  /** Bending stiffness of the sole at the ball of the foot, N m/rad. */
  readonly soleBending?: number;
  /** m/s, for tasks whose force is known to grow with it. */
  readonly speed?: number;
  /** Ground higher under the outer edge, deg. */
  readonly tiltDeg?: number;
  /** How this person's vessels run, or what is torn, where another choice than the first of a pattern is tried. */
  readonly vessels?: Readonly<Record<VesselPatternId, VesselChoiceId>>;
}
export const NO_WHAT_IF: WhatIf = {};

export interface Explanation {
  readonly version: typeof EXPLANATION_VERSION;
  readonly caseId: CaseId;
  readonly demo: boolean;
  /** Who said each current claim of the case. */
  readonly saidBy: Readonly<Record<ClaimId, SourceKind>>;
  readonly whatIf: WhatIf;
  readonly side:
    | { readonly state: 'stated'; readonly side: Side; readonly status: ClaimStatus }
    | { readonly state: 'notStated' }
    | { readonly state: 'contradiction' };
  readonly foot: FootParameters;
  readonly bone: BoneId | null;
  /** The part of it that is hurt, also where no break is drawn because a joint came apart, or may have. */
  readonly part: Pick<BreakAt, 'region' | 'status' | 'whatIf'> | null;
  readonly breakAt: BreakAt | null;
  /** Class of injury, stated or the only one that fits the place. */
  readonly injury: InjuryId | null;
  /** Treatment in force, as stated. */
  readonly option: OptionId | null;
  /** Age as stated, reported or confirmed: whose figures apply hangs on it. */
  readonly age: AgeBand | null;
  /** Day from which weeks are counted, once one is known. */
  readonly start: { readonly date: IsoDate; readonly from: 'treatment' | 'injury' } | null;
  /** How sure the facts are on which the explanation of this break rests; `none` when nothing was stated. */
  readonly given: Given;
  /** Zones of the bone in question, tip to head; empty when it has none. */
  readonly zones: readonly Zone[];
  /** Of the bone in question, from the frame's told run; null where no model speaks for it. */
  readonly stations: StationTable | null;
  /** The whole frame of the foot in the task in question; null where none was solved. */
  readonly loads: ExplainedLoads | null;
  readonly feeding: FeedingTable | null;
  /** One for each point that studies of this class and treatment count to, first what people ask for first. */
  readonly forecasts: readonly ExplainedForecast[];
  /** True while any content used has not been reviewed by a clinician. */
  readonly draft: boolean;
  readonly questions: readonly [Question, Question, Question, Question, Question];
}
