/**
 * The field of one bone: named masses joined smoothly, a pad under each facet, less the hollows and flat cuts, less what lies
 * beyond the joint surfaces shared with the neighbours. The order matters: joints are cut last. Reference foot, as scanned.
 */
import type { SkeletonId } from '../ids';
import { add, normalize, scale, subtract, type Vec3 } from '../units';
import { joinTerms, type Terms, termsNear } from './bone-terms';
import { RECIPES } from './bones';
import type { Blend, Parts } from './bones/mass';
import { facetOf, type Site } from './bones/recipe';
import { type Box, type Field, fieldOf, smoothMin } from './field';
import { jointSurface } from './joint-surface';
import type { LocalField } from './meshing/grid';
import type { BoneShape, JointShape, Shape } from './shape';
import { type Warp, warpOf } from './warp';

const union = (a: Box, b: Box): Box => ({
  min: [0, 1, 2].map((k) => Math.min(a.min[k] ?? 0, b.min[k] ?? 0)) as unknown as Vec3,
  max: [0, 1, 2].map((k) => Math.max(a.max[k] ?? 0, b.max[k] ?? 0)) as unknown as Vec3,
});

export const boneShapeOf = (shape: Shape, bone: SkeletonId): BoneShape => {
  const found = [shape.hindfoot, shape.midfoot, shape.metatarsals, shape.toes, shape.leg]
    .map((part) => (part as Readonly<Record<string, BoneShape>>)[bone])
    .find((each) => each !== undefined);
  if (!found) throw new RangeError(`no shape parameters for ${bone}`);
  return found;
};

/** The joints that cut a bone, as the joint table has them. */
export const jointsAt = (shape: Shape, bone: SkeletonId): readonly JointShape[] =>
  shape.joints.filter((j) => j.first === bone || j.second === bone);

const siteOf = (shape: Shape, bone: SkeletonId, centre: Vec3): Site => ({
  facet: (id) => {
    const joint = jointsAt(shape, bone).find((j) => j.id === id);
    if (!joint) throw new RangeError(`${id} is not a joint of ${bone}`);
    const out = normalize(joint.first === bone ? joint.normal : scale(joint.normal, -1));
    const across = subtract(
      joint.major,
      scale(out, joint.major[0] * out[0] + joint.major[1] * out[1] + joint.major[2] * out[2]),
    );
    return facetOf(subtract(joint.centre, centre), out, normalize(across), joint.extents);
  },
});

const partsOf = (shape: Shape, bone: SkeletonId, s: BoneShape): Parts =>
  RECIPES[bone].make(s.values as Record<string, number>, siteOf(shape, bone, s.centre));

/** The way back near a place as a linear map: over a few millimetres the warp is no more than that. */
const linearly = (warp: Warp, [x, y, z]: Vec3, reach: number): Warp['back'] => {
  if (warp.most === 0) return warp.back;
  const at = (dx: number, dy: number, dz: number): [number, number, number] => {
    const home: [number, number, number] = [0, 0, 0];
    warp.back(x + dx, y + dy, z + dz, home);
    return home;
  };
  const o = at(0, 0, 0);
  const [u, v, w] = [at(reach, 0, 0), at(0, reach, 0), at(0, 0, reach)].map((p) =>
    p.map((n, k) => (n - (o[k] ?? 0)) / reach),
  ) as [number[], number[], number[]];
  const [ux = 1, uy = 0, uz = 0] = u;
  const [vx = 0, vy = 1, vz = 0] = v;
  const [wx = 0, wy = 0, wz = 1] = w;
  return (px, py, pz, home) => {
    const [dx, dy, dz] = [px - x, py - y, pz - z];
    home[0] = o[0] + ux * dx + vx * dy + wx * dz;
    home[1] = o[1] + uy * dx + vy * dy + wy * dz;
    home[2] = o[2] + uz * dx + vz * dy + wz * dz;
  };
};

/** A body that reaches past a joint and lies as near as this to a facet carries it, mm. */
const REACHING_MM = 6;

export interface BoneField {
  readonly field: Field;
  readonly local: LocalField;
  readonly box: Box;
  /** Where a point of the tabled bone goes in this one. */
  readonly warp: Warp;
}

/**
 * The bone with its joints where `joints` has them, in the bone's own frame; the masses follow. By default as tabled.
 * Throws RangeError for a bone without parameters.
 */
export const boneField = (shape: Shape, bone: SkeletonId, joints = jointsAt(shape, bone)): BoneField => {
  const s = boneShapeOf(shape, bone);
  const parts = partsOf(shape, bone, s);
  const widthOf = (join: Blend | undefined): number => shape.defaults.blends[join ?? 'usual'];
  const hollows = (parts.hollows ?? []).map((m) => ({ ...fieldOf(m, s.centre), join: widthOf(m.join) }));
  const cuts = (parts.cuts ?? []).map((c) => ({
    at: add(s.centre, c.at),
    n: normalize(c.normal),
    join: widthOf(c.join),
  }));
  const warp = warpOf(s.centre, jointsAt(shape, bone), joints);
  const surfaces = joints.map((j) => {
    const sign = j.first === bone ? (1 as const) : (-1 as const);
    const surface = jointSurface(j, sign, shape.defaults.sweep);
    const short = Math.min(...(j.made.extents ?? j.extents));
    return {
      surface,
      padded: j.articular && !surface.head,
      depth: Math.min(5, Math.max(3, shape.defaults.padDepth * short)),
      // A pad is joined as softly as its facet is wide: a toe's facet has no room for a tarsal's fillet.
      join: Math.min(4, Math.max(1, 0.3 * short)),
      seen: { side: 0, radius: 0 },
    };
  });
  // What reaches past a joint is a body of its own that this joint does not cut; all others cut it too. A facet's pad belongs to
  // the body made to reach it, else to the nearest.
  const solids = [...new Set(parts.masses.map((m) => m.past))].map((past) => ({
    past,
    masses: parts.masses
      .filter((m) => m.past === past)
      .map((m) => ({ ...fieldOf(m, s.centre), join: widthOf(m.join) })),
  }));
  const ownerOf = (j: JointShape) => {
    const away = ({ masses }: (typeof solids)[number]): number => Math.min(...masses.map((m) => m.field(...j.centre)));
    const able = solids.filter(({ past }) => past !== j.id);
    const reaching = able.filter((solid) => solid.past !== undefined && away(solid) < REACHING_MM);
    return (reaching.length > 0 ? reaching : able).reduce((a, b) => (away(b) < away(a) ? b : a));
  };
  const owners = new Map(jointsAt(shape, bone).map((j) => [j.id, ownerOf(j)]));
  const bodies = solids.map((solid) => {
    const cutting = surfaces.filter((j) => j.surface.shape.id !== solid.past);
    const pads = cutting.filter((j) => j.padded && owners.get(j.surface.shape.id) === solid);
    const terms: Terms = { masses: solid.masses, pads, hollows, cuts, surfaces: cutting };
    return { terms, box: solid.masses.map((m) => m.box).reduce(union) };
  });
  const seam = shape.defaults.blends.fine;
  const box = bodies.map((b) => b.box).reduce(union);
  const together = (terms: readonly Terms[], back: Warp['back']): Field => {
    const [only, ...others] = terms.map((t) => joinTerms(t, back));
    if (only === undefined) throw new RangeError(`${bone} has no mass`);
    if (others.length === 0) return only;
    return (x, y, z) => {
      let d = only(x, y, z);
      for (const other of others) d = smoothMin(d, other(x, y, z), seam);
      return d;
    };
  };
  const localOf = (terms: readonly Terms[]): LocalField => {
    const termsAt = (centre: Vec3, radius: number): readonly Terms[] =>
      terms.map((t) => termsNear(t, warp.back, centre, radius));
    return {
      value: together(terms, warp.back),
      near: (centre, radius) => localOf(termsAt(centre, radius)),
      often: (centre, radius) => together(termsAt(centre, radius), linearly(warp, centre, radius)),
    };
  };
  const local = localOf(bodies.map((b) => b.terms));
  const reach = 3 + warp.most;
  return {
    field: local.value,
    local,
    box: {
      min: [box.min[0] - reach, box.min[1] - reach, box.min[2] - reach],
      max: [box.max[0] + reach, box.max[1] + reach, box.max[2] + reach],
    },
    warp,
  };
};
