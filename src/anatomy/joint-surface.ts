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
  /** For single points: slower, and tells more. */
  readonly stand: (p: Vec3) => Stand;
}

/** Where a single point lies: distance beyond the surface, the way in which it grows, and how far past the facet's rim, mm. */
export interface Stand {
  readonly side: number;
  readonly way: Vec3;
  readonly past: number;
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
  const look: JointSurface['look'] = (x, y, z, seen) => {
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
  };
  return {
    shape: { ...j, extents: [eu, ev] },
    head: turns && sign * (ku + kv) > 0,
    look,
    stand: (p) => {
      const seen = { side: 0, radius: 0 };
      look(...p, seen);
      const from = subtract(p, apex);
      const [a0, b0] = [dot(from, u), dot(from, v)];
      const held = seen.radius > HOLD ? HOLD / seen.radius : 1;
      const way = normalize(add(w, add(scale(u, ku * a0 * held), scale(v, kv * b0 * held))));
      const past = seen.radius > 1 ? Math.hypot(a0, b0) * (1 - 1 / seen.radius) : 0;
      return { side: seen.side, way: scale(way, sign), past };
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
