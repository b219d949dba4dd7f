/**
 * Branded identifiers. An id names a thing in `content/` or in a case; it carries no other meaning.
 * Bones are a closed list (the skeleton is known), everything else is checked against the content at the border.
 */

declare const brand: unique symbol;
type Id<Name extends string> = string & { readonly [brand]: Name };

export type JointId = Id<'Joint'>;
export type RegionId = Id<'Region'>;
export type VesselId = Id<'Vessel'>;
/** One way of blood from a vessel to the next, or into a bone: `parent>child`. */
export type VesselEdgeId = Id<'VesselEdge'>;
/** A way in which people's vessels differ, or in which an injury tears them; and one of its kinds. */
export type VesselPatternId = Id<'VesselPattern'>;
export type VesselChoiceId = Id<'VesselChoice'>;
export type AttachmentId = Id<'Attachment'>;
export type InjuryId = Id<'Injury'>;
export type MechanismId = Id<'Mechanism'>;
export type OptionId = Id<'Option'>;
export type StageId = Id<'Stage'>;
/** One criterion that opens the next stage. Ticks of a clinic name it, so that a list may grow or change its order. */
export type CriterionId = Id<'Criterion'>;
export type ExerciseId = Id<'Exercise'>;
/** A question of daily life: driving, stairs, sleep. */
export type TopicId = Id<'Topic'>;
export type StageSheetId = Id<'StageSheet'>;
export type WeightPracticeId = Id<'WeightPractice'>;
export type ReturnTestId = Id<'ReturnTest'>;
export type FilmScoreId = Id<'FilmScore'>;
export type StudyId = Id<'Study'>;
export type SourceId = Id<'Source'>;
export type CautionId = Id<'Caution'>;
export type ActivityId = Id<'Activity'>;
export type FactorId = Id<'Factor'>;
/** An injury told in short: where, what, its danger sign. */
export type CardId = Id<'Card'>;
/** A code of a published list. */
export type CodeId = Id<'Code'>;
/** What can go wrong with healing, in general. */
export type TroubleId = Id<'Trouble'>;
export type RateId = Id<'Rate'>;
export type CountId = Id<'Count'>;
export type ContradictionId = Id<'Contradiction'>;
/** A rule that decides whether a film is taken, as teaching. */
export type DecisionRuleId = Id<'DecisionRule'>;
/** A ligament, tendon, vessel or nerve that is drawn beside the bones. */
export type StrandId = Id<'Strand'>;
export type ClaimId = Id<'Claim'>;
export type CaseId = Id<'Case'>;
export type FindingId = Id<'Finding'>;

/** Marks a checked string as an id. The only place where an id is made from a string. */
export const idOf = <T extends Id<string>>(text: string): T => text as T;

/** The edge from a vessel to the next one, to a place of a bone, or to a bone that it covers as a net. */
export const vesselEdge = (from: VesselId, to: VesselId | RegionId | BoneId): VesselEdgeId => idOf(`${from}>${to}`);

/** The 28 bones of the foot: 7 tarsals, 5 metatarsals, 14 phalanges, 2 hallux sesamoids, heel to toe. */
export const BONE_IDS = [
  'calcaneus',
  'talus',
  'navicular',
  'cuboid',
  'cuneiformMedial',
  'cuneiformIntermediate',
  'cuneiformLateral',
  'metatarsal1',
  'metatarsal2',
  'metatarsal3',
  'metatarsal4',
  'metatarsal5',
  'sesamoidMedial',
  'sesamoidLateral',
  'phalanxProximal1',
  'phalanxProximal2',
  'phalanxProximal3',
  'phalanxProximal4',
  'phalanxProximal5',
  'phalanxMiddle2',
  'phalanxMiddle3',
  'phalanxMiddle4',
  'phalanxMiddle5',
  'phalanxDistal1',
  'phalanxDistal2',
  'phalanxDistal3',
  'phalanxDistal4',
  'phalanxDistal5',
] as const;
export type BoneId = (typeof BONE_IDS)[number];
export const isBoneId = (text: string): text is BoneId => (BONE_IDS as readonly string[]).includes(text);

/** The lower ends of the leg's bones: drawn and jointed with the foot, not bones of it. */
export const LEG_IDS = ['tibia', 'fibula'] as const;
export type LegId = (typeof LEG_IDS)[number];
export const SKELETON_IDS = [...BONE_IDS, ...LEG_IDS] as const;
export type SkeletonId = BoneId | LegId;

/** The five questions, in the order people ask them. */
export const QUESTION_IDS = ['where', 'how', 'why', 'options', 'back'] as const;
export type QuestionId = (typeof QUESTION_IDS)[number];

export const READERS = ['patient', 'broadcast', 'study'] as const;
export type Reader = (typeof READERS)[number];

export type Side = 'right' | 'left';

/** How high the sport or work is played: decides which studies may speak. */
/** Ages as a case keeps them, years. */
export const AGE_BANDS = ['under 12', '12-17', '18-34', '35-49', '50-64', '65 and over'] as const;
export type AgeBand = (typeof AGE_BANDS)[number];

export const LEVELS = ['everyday', 'recreational', 'competitive', 'professional'] as const;
export type Level = (typeof LEVELS)[number];

/** Which way a break can run, and how it can come on. */
export const DIRECTIONS = ['transverse', 'oblique', 'spiral', 'avulsion', 'comminuted', 'incomplete'] as const;
export const ONSETS = ['single event', 'gradual', 'acute on gradual'] as const;

/** What a follow-up can find. */
export const FOLLOW_UP_FINDINGS = [
  'tender',
  'not tender',
  'line visible',
  'two cortices bridged',
  'united',
  'delayed union',
  'nonunion',
  'malunion',
  'walking without pain',
  'training',
  'broken again',
] as const;
export type FollowUpFinding = (typeof FOLLOW_UP_FINDINGS)[number];

/** What a study counted the time to. No function accepts two endpoints as one. */
export const ENDPOINTS = [
  'union',
  'clinical healing',
  'release',
  'training',
  'sport',
  'match play',
  'performance',
  'activity',
  'work',
] as const;
export type Endpoint = (typeof ENDPOINTS)[number];

/** What can be measured on a film or a scan and may decide a class. */
export const FILM_MEASURES = [
  'angulation',
  'gap',
  'joint step',
  'diastasis',
  'arch loss',
  'joint share',
  'Boehler angle',
  'fragments',
  'line depth',
] as const;
export type FilmMeasure = (typeof FILM_MEASURES)[number];
