/**
 * Every message an Explanation can carry: id and typed arguments, never a sentence. `src/wording` has the sentences. A new
 * message is added here first; the compiler then asks wording for its three tellings. Arguments are plain JSON.
 *
 * A message with `claim` tells what a case says: wording hedges it by its status. A message with `given` follows from what a
 * case says: wording opens it with a condition unless the case is confirmed.
 */

import type { ClaimStatus, Subject, SubjectValue } from '../cases/schema';
import type { Mark } from '../content/schema';
import type { CountedUnit } from '../content/schema-care';
import type {
  ActivityId,
  AttachmentId,
  BoneId,
  CautionId,
  ClaimId,
  Endpoint,
  FactorId,
  FilmMeasure,
  FilmScoreId,
  InjuryId,
  JointId,
  Level,
  MechanismId,
  OptionId,
  RegionId,
  ReturnTestId,
  SourceId,
  StageId,
  StudyId,
  TopicId,
  TroubleId,
  VesselId,
  WeightPracticeId,
} from '../ids';
import type { FeedingState } from '../perfusion/types';
import type { IsoDate, Quantity } from '../units';
import type { BackMessages } from './back-messages';
import type { CodeMessages } from './code-messages';
import type { ForecastMessages } from './forecast-messages';
import type { LoadMessages } from './load-messages';
import type { StageMessages, WeeksElsewhere } from './stage-messages';
import type { SupportMessages } from './support-messages';
import type { TroubleMessages } from './trouble-messages';

export interface ClaimTag {
  readonly status: ClaimStatus;
  readonly claims: readonly ClaimId[];
}
/** How sure the facts are from which a finding follows. `none`: it follows from no fact of the case. */
export type Given = 'confirmed' | 'reported' | 'inferred' | 'contradiction' | 'none';

/** One subject with one value of its type. */
export type ClaimValue = { readonly [S in Subject]: { readonly subject: S; readonly value: SubjectValue<S> } }[Subject];

export type ModelKind = 'beam stress' | 'pull-off' | 'tie overload' | 'joint force' | 'not modelled';

/** A text of the content with three tellings, by address. */
export type TextAddress =
  | { readonly kind: 'bone'; readonly bone: BoneId }
  | { readonly kind: 'supply'; readonly bone: BoneId }
  | { readonly kind: 'attachment'; readonly attachment: AttachmentId }
  | { readonly kind: 'mechanism'; readonly mechanism: MechanismId }
  | { readonly kind: 'activity'; readonly activity: ActivityId }
  | { readonly kind: 'injury'; readonly injury: InjuryId; readonly part: 'what' | 'nameCaveat' | 'heals' }
  | { readonly kind: 'injuryNotSeen'; readonly injury: InjuryId; readonly index: number }
  | { readonly kind: 'tellApart'; readonly injury: InjuryId; readonly index: number }
  | { readonly kind: 'classification'; readonly injury: InjuryId; readonly index: number }
  | { readonly kind: 'option'; readonly option: OptionId; readonly part: 'what' | 'does' }
  | { readonly kind: 'optionBurden'; readonly option: OptionId; readonly index: number }
  /** What an operation takes from the blood of the bone. */
  | { readonly kind: 'optionTakes'; readonly option: OptionId }
  | { readonly kind: 'trouble'; readonly trouble: TroubleId }
  | { readonly kind: 'stage'; readonly stage: StageId; readonly part: 'what' }
  | { readonly kind: 'stageOpens'; readonly stage: StageId; readonly index: number }
  | { readonly kind: 'stageSendsBack'; readonly stage: StageId; readonly index: number }
  | { readonly kind: 'stageAids'; readonly stage: StageId }
  | { readonly kind: 'stageExercise'; readonly stage: StageId; readonly index: number }
  | { readonly kind: 'weightPractice'; readonly practice: WeightPracticeId }
  | { readonly kind: 'daily'; readonly topic: TopicId; readonly index: number }
  | { readonly kind: 'returnTest'; readonly test: ReturnTestId }
  | { readonly kind: 'returnNorm'; readonly test: ReturnTestId; readonly index: number }
  | { readonly kind: 'filmScore'; readonly score: FilmScoreId; readonly index: number }
  | { readonly kind: 'cautionFigure'; readonly caution: CautionId; readonly index: number }
  | { readonly kind: 'factor' | 'factorLimit'; readonly factor: FactorId }
  | { readonly kind: 'factorAgainst'; readonly factor: FactorId; readonly index: number };

/** A figure of a study, with how surely it was read. */
/** Something counted of the people of an arm, as printed. */
export interface ArmEvent {
  readonly what: 'failure' | 'nonunion' | 'delayed union' | 'union' | 'refracture' | 'returned' | 'not returned';
  readonly count: number | null;
  readonly of: number | null;
  readonly unit: CountedUnit;
  readonly percent: number | null;
}

export interface ArmFigures {
  readonly study: StudyId;
  readonly source: SourceId;
  readonly mark: Mark;
  readonly option: OptionId;
  /** Further treatments that some of the same people had. */
  readonly alsoOptions?: readonly OptionId[];
  readonly population: string;
  readonly level: Level;
  /** The level was not printed but taken. */
  /** What `n` counts. */
  readonly nUnit: CountedUnit;
  readonly levelAssumed?: true;
  readonly n: number | null;
  readonly time: {
    readonly endpoint: Endpoint;
    readonly centre: 'mean' | 'median';
    /** Weeks on another clock than those of the others. */
    readonly since?: 'second treatment' | 'diagnosis';
    readonly weeks: Quantity;
  } | null;
  /** What the study counted first, and what else it counted of the same people. */
  readonly event: ArmEvent | null;
  readonly events: readonly ArmEvent[];
}

/** Whether the arms of one comparison differ by more than chance, and by how much. */
export interface Comparison {
  readonly trial: string;
  readonly design: 'randomised' | 'cohort' | 'series' | 'pooled' | 'register';
  readonly what: ArmEvent['what'];
  readonly arms: readonly [ArmFigures, ArmFigures];
  /** Share of the first arm less share of the second, with its 95 % interval. */
  readonly difference: Quantity;
  readonly apart: boolean;
}

export interface Messages
  extends BackMessages,
    CodeMessages,
    LoadMessages,
    SupportMessages,
    ForecastMessages,
    StageMessages,
    TroubleMessages {
  // Any question
  claimStated: { readonly claim: ClaimTag; readonly of: ClaimValue };
  notStated: { readonly subject: Subject };
  contradiction: {
    readonly subject: Subject;
    readonly values: readonly { readonly claim: ClaimTag; readonly of: ClaimValue }[];
  };
  contentText: {
    readonly at: TextAddress;
    /** How the text stands to the case: on what it is conditional, or that it only tells what is usual. Absent: general. */
    readonly as?: Given | 'usual';
  };

  // Where
  brokenHere: { readonly claim: ClaimTag; readonly bone: BoneId; readonly region: RegionId };
  jointHurt: { readonly claim: ClaimTag; readonly bone: BoneId; readonly region: RegionId };
  boneHurt: { readonly claim: ClaimTag; readonly bone: BoneId };
  nothingLocated: { readonly disputed: boolean };
  boneClash: { readonly stated: BoneId; readonly implied: BoneId };
  classFits: { readonly claim: ClaimTag; readonly injury: InjuryId; readonly region: RegionId };
  /** A class of a scheme, by its rules; `onBorder`: a measure lies exactly where the class begins; `assumed`: taken, not stated;
   * `byDisplacement`: its measure was not stated, and follows from pieces that moved apart. */
  computedClass: {
    readonly claim: ClaimTag;
    readonly injury: InjuryId;
    readonly index: number;
    readonly onBorder: boolean;
    readonly assumed: readonly FilmMeasure[];
    readonly byDisplacement: boolean;
  };
  classOpen: { readonly region: RegionId; readonly injuries: readonly InjuryId[] };
  placeAgainstClass: { readonly stated: RegionId; readonly injury: InjuryId; readonly expected: RegionId };
  neighbours: {
    readonly bone: BoneId;
    readonly behind: readonly BoneId[];
    readonly beside: readonly BoneId[];
    readonly ahead: readonly BoneId[];
    readonly joints: readonly JointId[];
  };
  zoneBorder: {
    readonly region: RegionId;
    readonly from: Quantity;
    readonly to: Quantity;
    /** Whether the border is read from the joint between the fourth and fifth metatarsals. */
    readonly facet: boolean;
  };
  breakDrawn: {
    readonly given: Given;
    readonly bone: BoneId;
    readonly region: RegionId;
    readonly fromTip: Quantity;
    readonly precision: 'distance' | 'region';
  };
  attachedHere: { readonly region: RegionId; readonly attachments: readonly AttachmentId[] };
  sideDefault: Record<string, never>;

  // How
  mechanismUsual: { readonly injury: InjuryId; readonly mechanisms: readonly MechanismId[] };
  howUnknown: Record<string, never>;
  modelApplies: { readonly mechanism: MechanismId; readonly model: ModelKind };
  modelMissing: { readonly mechanism: MechanismId; readonly model: Exclude<ModelKind, 'beam stress'> };

  // Why
  whyUnknown: Record<string, never>;
  /** The content has no vessels of the bone. */
  feedingUnknown: { readonly bone: BoneId };
  fedBy: {
    /** Null: the whole bone, where it has no named parts. */
    readonly region: RegionId | null;
    readonly main: readonly VesselId[];
    readonly others: readonly VesselId[];
    /** Whether the main feeder follows from the nearest ways in or is named by a source, and whose way in is nearest then. */
    readonly mainBy: 'territory' | 'source';
    readonly nearest: VesselId | null;
  };
  feedingBorder: {
    readonly bone: BoneId;
    readonly between: readonly [VesselId, VesselId];
    readonly at: Quantity;
    readonly halfWidth: Quantity;
    readonly region: RegionId;
  };
  /** What a break leaves, and vessels torn besides or taken by the operation, if any. */
  breakLeaves: {
    readonly given: Given;
    readonly torn: readonly VesselId[];
    readonly taken: readonly VesselId[];
    readonly parts: readonly {
      readonly region: RegionId | null;
      readonly state: FeedingState;
      readonly remaining: readonly VesselId[];
    }[];
  };

  // Options
  optionsUsual: { readonly injury: InjuryId; readonly options: readonly OptionId[] };
  optionsUnknown: Record<string, never>;
  /** The treatment in force is none of those that the content lists for this class. */
  optionNotUsual: {
    readonly given: Given;
    readonly injury: InjuryId;
    readonly option: OptionId;
    /** What is usual for the class, where the content names that; none: it is not usual for the injury at all. */
    readonly instead: readonly OptionId[];
  };
  trialArms: {
    readonly trial: string;
    readonly design: Comparison['design'];
    readonly arms: readonly ArmFigures[];
  };
  studiesDisagree: { readonly apart: readonly Comparison[]; readonly alike: readonly Comparison[] };

  // Back
  backRange: {
    readonly given: Given;
    readonly injury: InjuryId;
    readonly option: OptionId;
    readonly endpoint: Endpoint;
    readonly level: Level | null;
    readonly weeks: Quantity;
    /** From the earliest to the latest single person, where a study printed them. */
    readonly people: Quantity | null;
    readonly arms: readonly ArmFigures[];
    /** Other studies of the injury count by class, these do not say of which class their people were. */
    readonly classOpen: boolean;
  };
  /** `byClass`: weeks were counted class by class, and the class is not known. */
  backNoRange: {
    readonly given: Given;
    readonly injury: InjuryId;
    readonly option: OptionId | null;
    readonly byClass?: boolean;
  };
  backUnknown: Record<string, never>;
  /** What decides the class collides, and so no weeks of any class are given. */
  backClash: Record<string, never>;
  /** After which weeks to look again for what the first film of this class can miss. */
  lookAgain: { readonly injury: InjuryId; readonly weeks: Quantity };
  /** Weeks of this treatment are told, and none of them count to sport, or to work. */
  backNotCounted: { readonly sport: boolean; readonly work: boolean };
  /** All whose weeks are known were grown. */
  backGrowing: Record<string, never>;
  brokenAgain: { readonly claim: ClaimTag; readonly on: IsoDate };
  /** Delayed union or nonunion that a follow-up states. */
  healsSlowly: { readonly claim: ClaimTag; readonly healing: 'delayed' | 'nonunion'; readonly on: IsoDate };
  backDates: {
    readonly given: Given;
    readonly from: 'treatment' | 'injury';
    readonly start: IsoDate;
    readonly weeks: Quantity;
    /** Of the people whose weeks they are. */
    readonly counted: readonly Pick<ArmFigures, 'level' | 'levelAssumed' | 'time'>[];
    readonly endpoint: Endpoint;
    readonly earliest: IsoDate;
    readonly latest: IsoDate;
  };
  stageUsual: {
    readonly stage: StageId;
    readonly number: number;
    readonly of: number;
    readonly weeks: Quantity | null;
    readonly openEnded: boolean;
    readonly dates: { readonly from: IsoDate; readonly to: IsoDate | null } | null;
    /** Number of the step before, where its usual weeks are not over yet when these begin: it has to be done all the same. */
    readonly after: number | null;
    /** What the clinic of this case set itself, beside the usual weeks: it goes before them where one plan is made. */
    readonly own: {
      readonly weeks: Quantity;
      readonly dates: { readonly from: IsoDate; readonly to: IsoDate } | null;
    } | null;
    /** Why usual weeks are not this person's, and those weeks; `weeks` and `dates` are null then. */
    readonly elsewhere: (WeeksElsewhere & { readonly weeks: Quantity | null; readonly openEnded: boolean }) | null;
  };
  followUpWeek: {
    readonly claim: ClaimTag;
    readonly of: ClaimValue;
    readonly week: Quantity;
    readonly from: 'treatment' | 'injury';
  };
  forecastMissed: {
    readonly forecast: Quantity;
    /** Of the forecasts. */
    readonly centre: 'mean' | 'median';
    readonly actual: ArmFigures;
  };
}

export type MessageId = keyof Messages;
export type Message = { readonly [K in MessageId]: { readonly id: K; readonly args: Messages[K] } }[MessageId];
export type MessageOf<K extends MessageId> = Extract<Message, { readonly id: K }>;
