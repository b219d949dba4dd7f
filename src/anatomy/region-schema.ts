/**
 * content/anatomy/regions.yaml: where tendons, ligaments, grooves and vessels meet the bones, and how large the places are.
 * Directions and shifts are told on the reference foot as scanned ([medial, dorsal, towards the toes], mm), as everything in
 * content/anatomy; they are carried along with the bone into any shape, pose and side.
 */
import * as v from 'valibot';
import { boneId } from '../ids/schema';

const figure = v.pipe(v.number('expected a number'), v.finite('expected a finite number'));
const vec3 = v.tuple([figure, figure, figure]);
const mm = v.pipe(figure, v.minValue(0.5, 'at least half a millimetre'), v.maxValue(40, 'at most 40 mm'));
const share = v.pipe(figure, v.minValue(0), v.maxValue(1.5));
const name = v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/));
const said = v.pipe(v.string('expected where it was read'), v.minLength(10));
const boneLength = v.strictObject({ mm: v.pipe(figure, v.minValue(5), v.maxValue(100)), source: said });

/** A point inside a bone, moved by `shift`. */
const start = v.union([
  /** The centre of the solid. */
  v.strictObject({ middle: v.literal(true), shift: v.optional(vec3, [0, 0, 0]) }),
  /** `into` mm below the centre of one of the bone's joints. */
  v.strictObject({ joint: v.string(), into: figure, shift: v.optional(vec3, [0, 0, 0]) }),
  /** Middle of the section at a share of a long bone's length, from its proximal end. */
  v.strictObject({ station: share }),
  /** Middle of the section of the fifth metatarsal at a share of zone 1, `plus` mm further along. */
  v.strictObject({ zone1: share, plus: v.optional(figure, 0) }),
]);

/** A place on the surface: where a straight way from the start leaves the bone. */
export const placeSchema = v.strictObject({ from: start, towards: vec3 });
export type Place = v.InferOutput<typeof placeSchema>;

/** An ellipse on the surface: `size` is its extent along `along` and across it. */
const patch = v.strictObject({
  id: name,
  bone: boneId,
  kind: v.picklist(['footprint', 'foramen', 'groove', 'spot']),
  ...placeSchema.entries,
  size: v.tuple([mm, mm]),
  along: vec3,
  source: said,
});

/** A stretch between two planes across a bone: shares of its extent along `axis`, or of one of its parts. */
const band = v.strictObject({
  id: name,
  bone: boneId,
  across: v.union([v.strictObject({ axis: vec3 }), v.strictObject({ zone: name })]),
  between: v.tuple([share, share]),
  source: said,
});

/** Where a part ends along the way through its bone: a share of it, an edge of a joint's facet, or the length of an end (as wide as long). */
const partEnd = v.union([
  share,
  v.strictObject({ facet: name, edge: v.picklist(['near', 'far']) }),
  v.strictObject({ end: v.picklist(['near', 'far']) }),
]);

/** Parts that tile a bone, in order along `along`, or along its long axis. The last ends where the bone does. */
const parts = v.strictObject({
  bone: boneId,
  along: v.optional(vec3),
  parts: v.pipe(v.array(v.strictObject({ id: name, to: partEnd })), v.minLength(1)),
  source: said,
});

/** A named stretch of a bone that is none of its parts, along the way of its parts: it may run over several of them. */
const stretch = v.strictObject({ id: name, bone: boneId, from: partEnd, to: partEnd, source: said });

export const regionRules = v.strictObject({
  /** Bones whose sizes are told for a bone of this length, mm; all others are told for the reference foot. */
  lengths: v.record(boneId, boneLength),
  patches: v.array(patch),
  parts: v.array(parts),
  stretches: v.array(stretch),
  watersheds: v.array(band),
});
export type RegionRules = v.InferOutput<typeof regionRules>;
export type PatchRule = v.InferOutput<typeof patch>;
export type PartRule = v.InferOutput<typeof parts>;
export type StretchRule = v.InferOutput<typeof stretch>;
export type BandRule = v.InferOutput<typeof band>;
