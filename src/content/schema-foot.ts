/** Records about the foot itself and how it is loaded: bones, joints, regions, attachments, vessels, mechanisms, load cases. */
import * as v from 'valibot';
import { activityId, boneId, mechanismId, regionId } from '../ids/schema';
import { text } from '../units/schema';
import { attachmentId, evidence, figure, jointId, mark, tellings, vesselId } from './schema-base';

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
  kind: v.picklist(['zone', 'facet', 'footprint', 'foramen', 'groove', 'watershed']),
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

/** From where a stop of the walk is looked at: the sides of the foot by name. */
export const WALK_VIEWS = ['outer', 'inner', 'top', 'sole', 'front', 'back'] as const;

/** One stop of the walk from heel to toe: a bone of the plain foot, the side it is seen from, and one sentence. */
export const walkStop = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z-]{1,40}$/)),
  bone: boneId,
  view: v.picklist(WALK_VIEWS),
  what: tellings,
  evidence,
});
export type WalkStop = v.InferOutput<typeof walkStop>;
