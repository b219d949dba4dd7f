/**
 * The shape parameters of the foot as kept in content/anatomy: one key a file, named like it (`scale`, `joints`, `hindfoot`,
 * `midfoot`, `metatarsals`, `toes`, `leg`, `defaults`, `meshing`, `pose`, `regions`, `lookAlikes`, `strands`, `outline`). Lengths in mm on the reference foot (`scale.referenceHMm`), everything scales with H.
 * Frame: right foot, as-scanned pose, +X medial, +Y dorsal, +Z towards the toes, ground y = 0, origin under the heel.
 */
import * as v from 'valibot';
import { BONE_IDS, type BoneId, LEG_IDS, type SkeletonId } from '../ids';
import { skeletonId } from '../ids/schema';
import { motionsSchema } from './angles/motions-schema';
import { anglesSchema } from './angles/schema';
import { RECIPES } from './bones';
import { valuesSchema } from './bones/recipe';
import { insideSchema } from './inside/schema';
import { lookAlikeRules } from './look-alike-schema';
import { regionRules } from './region-schema';
import { poseSchema } from './stance/schema';
import { strandRules } from './strand-schema';

const figure = v.pipe(v.number('expected a number'), v.finite('expected a finite number'));
const length = v.pipe(figure, v.minValue(0.05, 'a length is above 0'), v.maxValue(400, 'at most 400 mm'));
const vec3 = v.tuple([figure, figure, figure]);
const name = v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*$/, 'expected a name in camel case'));

const joint = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/)),
  first: skeletonId,
  second: skeletonId,
  /** False: bones that come near each other without a facet; the surface only keeps them apart. */
  articular: v.boolean(),
  centre: vec3,
  normal: vec3,
  major: vec3,
  extents: v.tuple([length, length]),
  /**
   * How the bones turn on each other. ball, hinge: about the centre of curvature, each bone keeps its own surface, the convex one
   * with the wider one. saddle, plane: the surface is shared wherever the bones stand.
   */
  kind: v.optional(v.picklist(['ball', 'hinge', 'saddle', 'plane']), 'plane'),
  /** Facing area, mm2. */
  area: v.optional(v.pipe(figure, v.minValue(1), v.maxValue(2000))),
  /** Bone-to-bone gap, mm. */
  gap: length,
  /** What the builder is asked for where that differs: rounding shrinks facets and moves gaps. */
  made: v.optional(
    v.strictObject({
      extents: v.optional(v.tuple([length, length])),
      gap: v.optional(figure),
      /** How many times more than a facet usually does it counts where few triangles are chosen. */
      weight: v.optional(figure),
    }),
    {},
  ),
  /** Radius of curvature along the long direction and across it, mm; positive: first bone convex; 0: flat. */
  radii: v.tuple([figure, figure]),
});
export type JointShape = v.InferOutput<typeof joint>;

/** A rod of the outline in the standing neutral foot; its ends go along with the two bones of `on` in any other pose. */
const skin = v.strictObject({
  name,
  on: v.tuple([skeletonId, skeletonId]),
  from: vec3,
  to: vec3,
  radius: v.tuple([length, length]),
  join: v.optional(length),
});
export type Skin = v.InferOutput<typeof skin>;

/** A bone: the centre its masses are placed from, and a value for every term of its recipe. */
const boneOf = (bone: SkeletonId) => v.strictObject({ centre: vec3, values: valuesSchema(RECIPES[bone].terms) });
export type BoneShape = v.InferOutput<ReturnType<typeof boneOf>>;
const bonesOf = (bones: readonly SkeletonId[]) =>
  v.strictObject(Object.fromEntries(bones.map((bone) => [bone, boneOf(bone)])));
const named = (...starts: string[]): BoneId[] => BONE_IDS.filter((bone) => starts.some((s) => bone.startsWith(s)));

const meshing = v.strictObject({
  /** Grid step of the sampling, mm. */
  step: v.pipe(figure, v.minValue(0.3), v.maxValue(3)),
  /** Triangles of the mesh that is drawn and of the fine one. */
  display: v.pipe(v.number(), v.integer(), v.minValue(110), v.maxValue(220)),
  fine: v.pipe(v.number(), v.integer(), v.minValue(400), v.maxValue(600)),
});

export const shapeSchema = v.strictObject({
  scale: v.strictObject({
    referenceHMm: length,
    defaultHMm: length,
    /** Foot length over body height, and H over foot length. */
    hPerHeight: figure,
    hPerFootLength: figure,
  }),
  joints: v.array(joint),
  defaults: v.strictObject({
    /** Widths of smooth joins, mm. */
    blends: v.strictObject({ broad: length, usual: length, fine: length }),
    /** Depth of the pad under a facet as a share of the facet's short extent. */
    padDepth: figure,
    /** How much wider the convex surface of a ball or hinge joint is than the facet that rides on it. */
    sweep: figure,
    /** How many times more than the rest of a bone a facet and the end of the foot (sole, back) count where few triangles are chosen. */
    counts: v.strictObject({ facet: v.pipe(figure, v.minValue(1)), end: v.pipe(figure, v.minValue(1)) }),
  }),
  meshing: v.record(v.string(), meshing),
  hindfoot: bonesOf(['calcaneus', 'talus']),
  midfoot: bonesOf(named('navicular', 'cuboid', 'cuneiform')),
  metatarsals: bonesOf(named('metatarsal')),
  toes: bonesOf(named('phalanx', 'sesamoid')),
  leg: bonesOf(LEG_IDS),
  inside: insideSchema,
  angles: anglesSchema,
  motions: motionsSchema,
  regions: regionRules,
  lookAlikes: lookAlikeRules,
  strands: strandRules,
  pose: poseSchema,
  outline: v.strictObject({
    step: length,
    join: length,
    triangles: v.pipe(v.number(), v.integer(), v.minValue(300), v.maxValue(5000)),
    /** Level of the sole and of the cut through the leg, mm above the ground. */
    sole: figure,
    top: figure,
    masses: v.pipe(v.array(skin), v.minLength(1)),
    hollows: v.array(skin),
  }),
});
export type Shape = v.InferOutput<typeof shapeSchema>;
