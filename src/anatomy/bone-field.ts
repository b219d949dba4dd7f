/**
 * The field of one bone: named masses joined smoothly, a pad under each facet, less the hollows and flat cuts, less what lies
 * beyond the joint surfaces shared with the neighbours. The order matters: joints are cut last. Reference foot, as scanned.
 */
import type { SkeletonId } from '../ids';
import { add, normalize, scale, subtract, type Vec3 } from '../units';
import { RECIPES } from './bones';
import type { Blend, Parts } from './bones/mass';
import { facetOf, type Site } from './bones/recipe';
import { type Box, type Field, fieldOf, smoothMax, smoothMin } from './field';
import { cutAt, type JointSurface, jointSurface, padAt, type Seen } from './joint-surface';
import { type LocalField, STEEPEST } from './meshing/grid';
import type { BoneShape, JointShape, Shape } from './shape';
import { type Warp, warpOf } from './warp';

/** Width of the smooth join of joint cuts, mm. */
const CUT_JOIN = 0.8;

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

interface Term {
  readonly field: Field;
  readonly join: number;
}
interface Plane {
  readonly at: Vec3;
  readonly n: Vec3;
  readonly join: number;
}
interface Surface {
  readonly surface: JointSurface;
  readonly depth: number;
  readonly join: number;
  readonly seen: Seen;
}
/** What a bone is joined from, in order. */
interface Terms {
  readonly masses: readonly Term[];
  readonly pads: readonly Surface[];
  readonly hollows: readonly Term[];
  readonly cuts: readonly Plane[];
  readonly surfaces: readonly Surface[];
}

const beyondCut = (k: Plane, x: number, y: number, z: number): number =>
  (x - k.at[0]) * k.n[0] + (y - k.at[1]) * k.n[1] + (z - k.at[2]) * k.n[2];

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

/** What is taken away can lower the middle more than a smooth join does: slack for it, mm. */
const TAKEN_SLACK = 1;

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
  const masses = parts.masses.map((m) => ({ ...fieldOf(m, s.centre), join: widthOf(m.join) }));
  const hollows = (parts.hollows ?? []).map((m) => ({ ...fieldOf(m, s.centre), join: widthOf(m.join) }));
  const cuts = (parts.cuts ?? []).map((c) => ({
    at: add(s.centre, c.at),
    n: normalize(c.normal),
    join: widthOf(c.join),
  }));
  const warp = warpOf(s.centre, jointsAt(shape, bone), joints);
  const surfaces = joints.map((j) => {
    const sign = j.first === bone ? (1 as const) : (-1 as const);
    return {
      surface: jointSurface(j, sign, shape.defaults.sweep),
      padded: j.articular,
      depth: Math.min(5, Math.max(1.5, shape.defaults.padDepth * Math.min(...j.extents))),
      // A pad is joined as softly as its facet is wide: a toe's facet has no room for a tarsal's fillet.
      join: Math.min(4, Math.max(1, 0.3 * Math.min(...j.extents))),
      seen: { side: 0, radius: 0 },
    };
  });
  const box = masses.map((m) => m.box).reduce(union);
  const [first, ...rest] = masses;
  if (!first) throw new RangeError(`${bone} has no mass`);
  const home: [number, number, number] = [0, 0, 0];
  const whole: Terms = {
    masses: [first, ...rest],
    pads: surfaces.filter(({ padded }) => padded),
    hollows,
    cuts,
    surfaces,
  };
  const joinedFrom = (t: Terms, back: Warp['back']): Field => {
    const [base = first, ...more] = t.masses;
    return (x, y, z) => {
      back(x, y, z, home);
      const [a, b, c] = home;
      let d = base.field(a, b, c);
      for (const m of more) d = smoothMin(d, m.field(a, b, c), m.join);
      for (const j of t.pads) {
        j.surface.look(x, y, z, j.seen);
        d = smoothMin(d, padAt(j.surface, j.depth, j.seen), j.join);
      }
      for (const h of t.hollows) d = smoothMax(d, -h.field(a, b, c), h.join);
      for (const k of t.cuts) d = smoothMax(d, beyondCut(k, a, b, c), k.join);
      for (const j of t.surfaces) {
        j.surface.look(x, y, z, j.seen);
        d = smoothMax(d, cutAt(j.surface, j.seen), CUT_JOIN);
      }
      return d;
    };
  };
  const field = joinedFrom(whole, warp.back);
  const local: LocalField = ([x, y, z], radius) => {
    const middle = field(x, y, z);
    const reach = 2 * STEEPEST * radius;
    // What is joined last can only be told from the union of masses; what cuts is told from the end.
    warp.back(x, y, z, home);
    const [a, b, c] = home;
    const solid = Math.min(
      ...whole.masses.map((m) => m.field(a, b, c)),
      ...whole.pads.map((j) => {
        j.surface.look(x, y, z, j.seen);
        return padAt(j.surface, j.depth, j.seen);
      }),
    );
    const adds = (value: number, join: number): boolean => value < solid + reach + join;
    const takes = (value: number, join: number): boolean => value > middle - reach - 2 * join - TAKEN_SLACK;
    const kept = whole.masses.filter((m) => adds(m.field(a, b, c), m.join));
    return {
      middle,
      field: joinedFrom(
        {
          masses: kept.length > 0 ? kept : [first],
          pads: whole.pads.filter((j) => {
            j.surface.look(x, y, z, j.seen);
            return adds(padAt(j.surface, j.depth, j.seen), j.join);
          }),
          hollows: whole.hollows.filter((h) => takes(-h.field(a, b, c), h.join)),
          cuts: whole.cuts.filter((k) => takes(beyondCut(k, a, b, c), k.join)),
          surfaces: whole.surfaces.filter((j) => {
            j.surface.look(x, y, z, j.seen);
            // Beyond the facet's rim the cut falls off with the square of the distance: give it more room.
            return takes(cutAt(j.surface, j.seen) + 2 * radius, CUT_JOIN);
          }),
        },
        linearly(warp, [x, y, z], radius),
      ),
    };
  };
  const reach = 3 + warp.most;
  return {
    field,
    local,
    box: {
      min: [box.min[0] - reach, box.min[1] - reach, box.min[2] - reach],
      max: [box.max[0] + reach, box.max[1] + reach, box.max[2] + reach],
    },
    warp,
  };
};
