/**
 * The shape of everything in content/. One YAML file holds one kind of record; `compile.ts` reads them all. Every figure has a
 * source id and a mark. No unknown keys. Files are checked when the app is built, never in the browser.
 */
import * as v from 'valibot';
import {
  type AttachmentId,
  type CautionId,
  ENDPOINTS,
  type JointId,
  QUESTION_IDS,
  READERS,
  type SourceId,
  type StageId,
  type StudyId,
  type VesselId,
} from '../ids';
import { activityId, boneId, factorId, id, injuryId, level, mechanismId, optionId, regionId } from '../ids/schema';
import { isoDate, text } from '../units/schema';

export const jointId = id<JointId>();
export const vesselId = id<VesselId>();
export const attachmentId = id<AttachmentId>();
export const stageId = id<StageId>();
export const studyId = id<StudyId>();
export const sourceId = id<SourceId>();
export const cautionId = id<CautionId>();

/** How surely a figure or statement was read. Weakest last. */
export const MARKS = ['seen', 'weak', 'common practice', 'from memory'] as const;
export const mark = v.picklist(MARKS);
export type Mark = v.InferOutput<typeof mark>;

/** A source and how surely it was read: stands beside every statement and figure. `common practice` needs no source. */
export const evidence = v.strictObject({ source: v.nullable(sourceId), mark });
export type Evidence = v.InferOutput<typeof evidence>;

/** A review covers exactly the text it saw: `hash` is of the file's records, so that any change resets it. */
export const review = v.variant('state', [
  v.strictObject({ state: v.literal('not reviewed') }),
  v.strictObject({ state: v.literal('reviewed'), role: text(80), on: isoDate, hash: text(64) }),
]);
export type Review = v.InferOutput<typeof review>;

/** The same fact in three tellings. */
export const tellings = v.strictObject({ patient: text(600), broadcast: text(600), study: text(900) });
export type Tellings = v.InferOutput<typeof tellings>;

export const bone = v.strictObject({
  id: boneId,
  /** Preferred English term (Terminologia Anatomica), plain word for a patient, synonyms, Latin. */
  term: text(60),
  plain: text(60),
  synonyms: v.array(text(60)),
  latin: text(80),
  latinMark: mark,
  uberon: v.nullable(v.pipe(v.string(), v.regex(/^UBERON:\d{7}$/))),
  fma: v.nullable(v.pipe(v.string(), v.regex(/^FMA:\d+$/))),
  idEvidence: evidence,
  group: v.picklist(['hindfoot', 'midfoot', 'forefoot', 'toes', 'sesamoids']),
  /** Order heel to toe, medial first within a row. */
  order: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(28)),
  what: tellings,
});
export type Bone = v.InferOutput<typeof bone>;

export const joint = v.strictObject({
  id: jointId,
  term: text(80),
  plain: text(80),
  bones: v.pipe(v.array(boneId), v.length(2)),
  articular: v.boolean(),
  evidence,
});
export type JointRecord = v.InferOutput<typeof joint>;

export const region = v.strictObject({
  id: regionId,
  bone: boneId,
  kind: v.picklist(['zone', 'facet', 'footprint', 'foramen']),
  term: text(80),
  plain: text(80),
  /** How its border is found on the surface, in words. */
  border: text(400),
  evidence,
});
export type RegionRecord = v.InferOutput<typeof region>;

export const attachment = v.strictObject({
  id: attachmentId,
  structure: text(80),
  plain: text(80),
  kind: v.picklist(['tendon', 'ligament', 'fascia']),
  region: regionId,
  bone: boneId,
  what: tellings,
  evidence,
});
export type Attachment = v.InferOutput<typeof attachment>;

export const vessel = v.strictObject({
  id: vesselId,
  term: text(100),
  plain: text(100),
  bone: boneId,
  /** Region where it enters the bone, and the regions it feeds. `main` = the main feeder of that region. */
  enters: regionId,
  /** Which way blood runs inside the bone from the entry: a break between entry and part cuts it. */
  feeds: v.array(v.strictObject({ region: regionId, main: v.boolean() })),
  /** A net on the bone's surface that enters everywhere: no break cuts it off. */
  net: v.optional(v.boolean()),
  /** For the vessel and its entry. */
  evidence,
  /** For what it feeds inside the bone, where that is known less surely than the vessel itself. */
  feedsEvidence: v.optional(evidence),
});
export type Vessel = v.InferOutput<typeof vessel>;

/** What kind of model applies to a way of breaking. The explanation says so when none of ours does. */
export const MODEL_KINDS = ['beam stress', 'pull-off', 'tie overload', 'joint force', 'not modelled'] as const;

export const mechanism = v.strictObject({
  id: mechanismId,
  term: text(80),
  model: v.picklist(MODEL_KINDS),
  /** Load case used when the model is a beam. */
  activity: v.nullable(activityId),
  what: tellings,
  evidence,
});
export type Mechanism = v.InferOutput<typeof mechanism>;

/** A number as content states it. */
export const figure = v.strictObject({
  value: v.pipe(v.number(), v.finite()),
  low: v.optional(v.pipe(v.number(), v.finite())),
  high: v.optional(v.pipe(v.number(), v.finite())),
  unit: v.picklist(['mm', 'N', 'MPa', 'GPa', 'body weight', 'deg', 'share', 'week', 'kg', 'count']),
  evidence,
  note: v.optional(text(400)),
});
export type Figure = v.InferOutput<typeof figure>;

/** A load case of the first beam: forces on the metatarsal head, in body weights, in the bone's own axes. */
export const activity = v.strictObject({
  id: activityId,
  term: text(80),
  plain: text(80),
  /** + towards dorsal (ground pushes up), + towards medial (ground pushes inwards), + compression along the bone. */
  headUp: figure,
  headMedial: figure,
  headAlong: figure,
  /** Pull of fibularis brevis on its footprint. */
  brevisPull: figure,
  what: tellings,
});
export type Activity = v.InferOutput<typeof activity>;

/**
 * Named inputs of the beam, fixed before any stress is computed. Keys are fixed by `src/mechanics`. The shaft's wall runs
 * between two shares of the bone's length; within one depth of the bone beyond them it thins to the metaphyseal cortex.
 */
export const beamInputs = v.strictObject({
  bone: boneId,
  canalAcrossMm: figure,
  canalUpDownMm: figure,
  cortexMetaphysisMm: figure,
  corticalModulusGPa: figure,
  /** Where along the bone the canal was measured; the wall found there is carried along the shaft. */
  canalAtShare: figure,
  canalFromShare: figure,
  canalToShare: figure,
  /** Direction of the pull of fibularis brevis, parts of a unit vector in the foot's frame. */
  brevisMedial: figure,
  brevisUp: figure,
  brevisBack: figure,
});
export type BeamInputs = v.InferOutput<typeof beamInputs>;

export const option = v.strictObject({
  id: optionId,
  term: text(80),
  plain: text(80),
  kind: v.picklist(['non-operative', 'operative']),
  what: tellings,
  /** What it does to the bone mechanically. */
  does: tellings,
  burdens: v.array(v.strictObject({ what: tellings, evidence })),
  evidence,
});
export type Option = v.InferOutput<typeof option>;

export const stage = v.strictObject({
  id: stageId,
  term: text(80),
  plain: text(80),
  /** Criteria that open the next stage: a checklist, never computed into a date. */
  opensNext: v.array(v.strictObject({ what: tellings, evidence })),
  sendsBack: v.array(v.strictObject({ what: tellings, evidence })),
  what: tellings,
});
export type Stage = v.InferOutput<typeof stage>;

export const endpoint = v.picklist(ENDPOINTS);

const finite = v.pipe(v.number(), v.finite());

/** One arm of one study, as printed. */
export const study = v.strictObject({
  id: studyId,
  source: sourceId,
  mark,
  injuries: v.array(injuryId),
  option: optionId,
  /** Arms with the same `trial` are shown together. */
  trial: text(40),
  design: v.picklist(['randomised', 'cohort', 'series', 'pooled', 'register']),
  population: text(120),
  level,
  /** Further levels that took part, when the people were mixed. */
  alsoLevels: v.optional(v.array(level)),
  n: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
  time: v.nullable(
    v.strictObject({
      endpoint,
      centreWeeks: finite,
      centre: v.picklist(['mean', 'median']),
      sdWeeks: v.nullable(finite),
      rangeWeeks: v.nullable(v.pipe(v.array(finite), v.length(2))),
    }),
  ),
  /** A bad (or good) event counted, of `of` people. `percent` as printed when counts are not. */
  event: v.nullable(
    v.strictObject({
      what: v.picklist(['failure', 'nonunion', 'union', 'refracture', 'returned']),
      count: v.nullable(v.pipe(v.number(), v.integer())),
      of: v.nullable(v.pipe(v.number(), v.integer())),
      percent: v.nullable(finite),
      lowHighPercent: v.nullable(v.pipe(v.array(finite), v.length(2))),
    }),
  ),
  asPrinted: text(300),
  read: v.picklist(['read', 'abstract', 'secondary']),
});
export type Study = v.InferOutput<typeof study>;

export const caution = v.strictObject({
  id: cautionId,
  kind: v.picklist(['red flag', 'treatment danger', 'limit', 'disclaimer', 'do not say']),
  what: tellings,
  /** Where it matters: empty = everywhere. */
  injuries: v.array(injuryId),
  options: v.array(optionId),
  questions: v.array(v.picklist(QUESTION_IDS)),
  readers: v.array(v.picklist(READERS)),
  evidence,
});
export type Caution = v.InferOutput<typeof caution>;

export const factor = v.strictObject({
  id: factorId,
  term: text(80),
  what: tellings,
  effect: text(300),
  evidence,
});
export type Factor = v.InferOutput<typeof factor>;

export const injury = v.strictObject({
  id: injuryId,
  term: text(100),
  plain: text(100),
  /** Trade names in use, with the caveat that belongs to them. */
  synonyms: v.array(text(60)),
  nameCaveat: v.nullable(tellings),
  bone: boneId,
  region: regionId,
  what: tellings,
  mechanisms: v.pipe(v.array(mechanismId), v.minLength(1)),
  /** Where published breaks of this class lie, for holding the model's peak against. Stations are shares of bone length or the region. */
  occursAt: v.strictObject({ region: regionId, evidence }),
  classification: v.array(
    v.strictObject({ id: text(40), scheme: text(60), term: text(60), criteria: tellings, evidence }),
  ),
  options: v.pipe(v.array(optionId), v.minLength(1)),
  stages: v.pipe(
    v.array(
      v.strictObject({
        stage: stageId,
        option: v.nullable(optionId),
        weeksFrom: v.nullable(finite),
        weeksTo: v.nullable(finite),
        evidence,
      }),
    ),
    v.minLength(1),
  ),
  /** One statement on healing speed, with its source. */
  heals: v.strictObject({ speed: v.picklist(['usual', 'slow', 'slowest']), what: tellings, evidence }),
  notSeen: v.array(v.strictObject({ what: tellings, evidence })),
  icd10cm: v.strictObject({ root: text(10), title: text(100), edition: text(40), evidence }),
  factors: v.array(factorId),
});
export type Injury = v.InferOutput<typeof injury>;

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
  readonly sources: readonly Source[];
  readonly words: Readonly<Record<string, string>>;
  /** Raw, checked shape parameters for `src/anatomy` (its own schema). */
  readonly shape: unknown;
  /** File name -> review state. */
  readonly reviews: Readonly<Record<string, Review>>;
}
