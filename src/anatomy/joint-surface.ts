/**
 * A joint is one curved surface shared by two bones. In its frame (w normal from first to second bone, u the long direction
 * of the facet) the surface is w = -(ku u^2 + kv v^2) / 2; `side` is the distance from it, positive beyond a bone's own side.
 */
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../units';
import { smoothMax } from './field';
import type { JointShape } from './shape';

/** Where a point lies as one of the bones sees it: distance beyond the surface, and elliptical radius (below 1 inside the facet). */
export interface Seen {
  side: number;
  radius: number;
}

export interface JointSurface {
  readonly shape: JointShape;
  /** This bone carries the convex side of a joint that turns: a head, whose own mass is its surface. */
  readonly head: boolean;
  /** Writes into `seen`, which is used again and again: sampling a bone asks for this hundreds of thousands of times. */
  readonly look: (x: number, y: number, z: number, seen: Seen) => void;
}

/** Beyond this elliptical radius the surface goes on without curving. */
const HOLD = 1.15;

const curvatures = (j: JointShape): readonly [number, number] => [
  j.radii[0] === 0 ? 0 : 1 / j.radii[0],
  j.radii[1] === 0 ? 0 : 1 / j.radii[1],
];

/** Orthonormal frame of a joint: long direction, across it, normal from the first to the second bone. */
export const frameOfJoint = (j: JointShape): { readonly u: Vec3; readonly v: Vec3; readonly w: Vec3 } => {
  const w = normalize(j.normal);
  const u = normalize(subtract(j.major, scale(w, dot(j.major, w))));
  return { u, v: cross(w, u), w };
};

/** The tabled centre is the centroid of a curved patch and lies inside the curve; the apex lies on it. */
const apexOf = (j: JointShape, w: Vec3): Vec3 => {
  const [ku, kv] = curvatures(j);
  return add(j.centre, scale(w, (ku * j.extents[0] ** 2 + kv * j.extents[1] ** 2) / 32));
};

/** A surface with a radius above this is flat to whatever turns on it. */
const FLAT_MM = 30;

/**
 * The point a joint turns about when it turns about `axis`: the centre of curvature across the axis. Null where the surface is
 * flat that way.
 */
export const centreOfCurvature = (j: JointShape, axis: Vec3): Vec3 | null => {
  const { u, v, w } = frameOfJoint(j);
  const way = normalize(cross(axis, w));
  const [ku, kv] = curvatures(j);
  const k = ku * dot(way, u) ** 2 + kv * dot(way, v) ** 2;
  return Math.abs(k) < 1 / FLAT_MM ? null : add(apexOf(j, w), scale(w, -1 / k));
};

/** The surface as the first (`sign` 1) or second (-1) bone has it; the convex side of a ball or hinge reaches `sweep` times further. */
export const jointSurface = (j: JointShape, sign: 1 | -1, sweep: number): JointSurface => {
  const { u, v, w } = frameOfJoint(j);
  const [ku, kv] = curvatures(j);
  const apex = apexOf(j, w);
  const turns = j.kind === 'ball' || j.kind === 'hinge';
  const made = j.made.extents ?? j.extents;
  const eu = made[0] * (turns && sign * ku > 0 ? sweep : 1);
  const ev = made[1] * (turns && sign * kv > 0 ? sweep : 1);
  return {
    shape: { ...j, extents: [eu, ev] },
    head: turns && sign * (ku + kv) > 0,
    look: (x, y, z, seen) => {
      const px = x - apex[0];
      const py = y - apex[1];
      const pz = z - apex[2];
      const a0 = px * u[0] + py * u[1] + pz * u[2];
      const b0 = px * v[0] + py * v[1] + pz * v[2];
      const c = px * w[0] + py * w[1] + pz * w[2];
      const q = Math.sqrt(((2 * a0) / eu) ** 2 + ((2 * b0) / ev) ** 2);
      const held = q > HOLD ? HOLD / q : 1;
      const a = ku * a0 * held;
      const b = kv * b0 * held;
      seen.radius = q;
      seen.side = (sign * (c + ((a * a0 + b * b0) * held) / 2)) / Math.sqrt(1 + a * a + b * b);
    },
  };
};

/** How far the cut gives way beyond the facet's rim, mm at twice the rim's radius. */
const ROLL = 4;

/**
 * Rounding takes from a small bone's rims what it leaves to the hollow facing them: such joints are cut a little wider, mm a side, so
 * that no rim comes closer than the facets do.
 */
const smallMore = (extents: readonly [number, number]): number =>
  0.15 * Math.min(1, Math.max(0, (12 - Math.min(...extents)) / 4));

/** The nearest points of a facet come closer than its middle by what its curve misses, which grows with the foot: mm a whole size. */
const CURVE_MM = 0.25;

/** Within this share of the reference size a gap is off by less than a tenth of a millimetre: the bones are only scaled. */
const SAME_SIZE = 0.02;

/**
 * The joint as it is cut on the reference foot for a foot k times as large: cartilage is taken to be as thick in every foot
 * (assumed, no source), so the finished bones lie as far apart at any length, but for what their curves miss.
 */
export const cutFor = (j: JointShape, k: number): JointShape => {
  if (Math.abs(k - 1) <= SAME_SIZE) return j;
  const more = 2 * smallMore(j.made.extents ?? j.extents) - CURVE_MM;
  return { ...j, made: { ...j.made, gap: ((j.made.gap ?? j.gap) + more) / k - more } };
};

/** What one bone must keep off: positive beyond its own side. Fades outside the facet. */
export const cutAt = (s: JointSurface, seen: Seen): number => {
  const past = Math.max(0, seen.radius - 1);
  return seen.side + (s.shape.made.gap ?? s.shape.gap) / 2 + smallMore(s.shape.extents) - ROLL * past * past;
};

/** A pad reaches a little beyond its facet's rim, where blends and rounding eat it: most where there is room, not in a toe. */
const padRim = (shortMm: number): number => 1 + 0.14 * Math.min(1, Math.max(0, (shortMm - 7) / 5));

/** The pad under a facet: its ellipse going `depth` into the bone and 2 mm past the surface, to be trimmed by the cut. */
export const padAt = (s: JointSurface, depth: number, seen: Seen): number => {
  const short = Math.min(...s.shape.extents);
  const rim = ((seen.radius - padRim(short)) * short) / 2;
  const slab = Math.abs(seen.side - (2 - depth) / 2) - (2 + depth) / 2;
  return smoothMax(rim, slab, 1.5);
};
