/**
 * The shape of everything in content/. One YAML file holds one kind of record; `compile.ts` reads them all. Every figure has a
 * source id and a mark. No unknown keys. Files are checked when the app is built, never in the browser.
 */
import * as v from 'valibot';
import { text } from '../units/schema';
import { type Review, sourceId } from './schema-base';
import type { Caution, Factor, Injury, Option, Stage, Study } from './schema-care';
import type {
  Activity,
  Attachment,
  BeamInputs,
  Bone,
  JointRecord,
  Mechanism,
  RegionRecord,
  Vessel,
  WalkStop,
} from './schema-foot';

export * from './schema-base';
export * from './schema-care';
export * from './schema-foot';

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
  readonly mechanisms: readonly Mechanism[];
  readonly activities: readonly Activity[];
  readonly beams: readonly BeamInputs[];
  readonly injuries: readonly Injury[];
  readonly options: readonly Option[];
  readonly stages: readonly Stage[];
  readonly studies: readonly Study[];
  readonly cautions: readonly Caution[];
  readonly factors: readonly Factor[];
  /** Stops of the walk from heel to toe, in walking order. */
  readonly walk: readonly WalkStop[];
  readonly sources: readonly Source[];
  readonly words: Readonly<Record<string, string>>;
  /** Raw, checked shape parameters for `src/anatomy` (its own schema). */
  readonly shape: unknown;
  /** File name -> review state. */
  readonly reviews: Readonly<Record<string, Review>>;
}
