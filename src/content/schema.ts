/**
 * The shape of everything in content/. One YAML file holds one kind of record; `compile.ts` reads them all. Every figure has a
 * source id and a mark. No unknown keys. Files are checked when the app is built, never in the browser.
 */
import * as v from 'valibot';
import { text } from '../units/schema';
import { type Review, sourceId } from './schema-base';
import type { Factor, Option, Study } from './schema-care';
import type { FilmScore } from './schema-films';
import type {
  Activity,
  Attachment,
  Bone,
  FindWord,
  Fixation,
  FrameFigureRecord,
  JointRecord,
  LoadCheck,
  LoadFactor,
  MeasuredLoad,
  Mechanism,
  RegionRecord,
  Repetition,
  StrainRecord,
  WalkStop,
} from './schema-foot';
import type { Card, Injury } from './schema-injuries';
import type { Code, Contradiction, Count, DecisionRule, Rate, Strand, Trouble } from './schema-outlook';
import type { Caution, DailyTopic, ReturnTest, Stage, StageSheet, WeightPractice } from './schema-stages';
import type { BoneSupply, Vessel, VesselPattern } from './schema-vessels';

export * from './schema-base';
export * from './schema-care';
export * from './schema-films';
export * from './schema-foot';
export * from './schema-injuries';
export * from './schema-outlook';
export * from './schema-stages';
export * from './schema-vessels';

/** One item of CSL-JSON (citationstyles.org), the fields we use. */
export const source = v.strictObject({
  id: sourceId,
  type: v.picklist(['article-journal', 'book', 'chapter', 'webpage', 'report', 'dataset', 'paper-conference']),
  title: text(400),
  author: v.optional(
    v.array(
      v.strictObject({ family: v.optional(text(60)), given: v.optional(text(60)), literal: v.optional(text(120)) }),
    ),
  ),
  issued: v.optional(v.strictObject({ 'date-parts': v.array(v.array(v.pipe(v.number(), v.integer()))) })),
  'container-title': v.optional(text(200)),
  volume: v.optional(text(20)),
  issue: v.optional(text(20)),
  page: v.optional(text(40)),
  DOI: v.optional(text(120)),
  PMID: v.optional(text(20)),
  PMCID: v.optional(text(20)),
  URL: v.optional(text(300)),
  publisher: v.optional(text(120)),
  note: v.optional(text(300)),
});
export type Source = v.InferOutput<typeof source>;

/** Words of the screens: key -> text. Everything a person reads that is not a finding. */
export const screenWords = v.record(v.pipe(v.string(), v.regex(/^[a-z][a-zA-Z0-9.]*$/)), text(600));

export interface Content {
  readonly bones: readonly Bone[];
  readonly joints: readonly JointRecord[];
  readonly regions: readonly RegionRecord[];
  readonly attachments: readonly Attachment[];
  readonly vessels: readonly Vessel[];
  /** In which ways people's vessels differ, and how an injury tears them. */
  readonly vesselPatterns: readonly VesselPattern[];
  /** What was published of the supply of a bone. */
  readonly boneSupplies: readonly BoneSupply[];
  readonly mechanisms: readonly Mechanism[];
  readonly activities: readonly Activity[];
  /** Stiffness of ties, joints and pads, and the bone: what the frame of the foot is told besides its shape. */
  readonly frame: readonly FrameFigureRecord[];
  readonly loadFactors: readonly LoadFactor[];
  readonly measuredLoads: readonly MeasuredLoad[];
  readonly strains: readonly StrainRecord[];
  readonly repetitions: readonly Repetition[];
  /** The frame against published results: what it was fixed on, and what it predicts. */
  readonly loadChecks: readonly LoadCheck[];
  readonly fixations: readonly Fixation[];
  readonly injuries: readonly Injury[];
  /** Injuries told in short. */
  readonly cards: readonly Card[];
  readonly codes: readonly Code[];
  readonly troubles: readonly Trouble[];
  readonly rates: readonly Rate[];
  /** Counts that several texts quote. */
  readonly counts: readonly Count[];
  readonly contradictions: readonly Contradiction[];
  readonly decisionRules: readonly DecisionRule[];
  readonly strands: readonly Strand[];
  readonly options: readonly Option[];
  readonly stages: readonly Stage[];
  /** What single clinics and studies did in a stage. */
  readonly stageSheets: readonly StageSheet[];
  readonly weightPractice: readonly WeightPractice[];
  readonly dailyLife: readonly DailyTopic[];
  readonly returnTests: readonly ReturnTest[];
  /** Scores of films, made for other bones. */
  readonly filmScores: readonly FilmScore[];
  readonly studies: readonly Study[];
  readonly cautions: readonly Caution[];
  readonly factors: readonly Factor[];
  /** Stops of the walk from heel to toe, in walking order. */
  readonly walk: readonly WalkStop[];
  /** How people speak of places and events. */
  readonly findWords: readonly FindWord[];
  readonly sources: readonly Source[];
  readonly words: Readonly<Record<string, string>>;
  /** Raw, checked shape parameters for `src/anatomy` (its own schema). */
  readonly shape: unknown;
  /** File name -> review state. */
  readonly reviews: Readonly<Record<string, Review>>;
}
