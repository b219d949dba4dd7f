/**
 * A joint is one curved surface shared by two bones. In its frame (w normal from first to second bone, u the long direction
 * of the facet) the surface is w = -(ku u^2 + kv v^2) / 2; `side` is the distance from it, positive on the second bone's side.
 */
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../units';
import { smoothMax } from './field';
import type { JointShape } from './shape';

/** Where a point lies as seen from a joint: distance from the surface, and elliptical radius (below 1 inside the facet). */
export interface Seen {
  side: number;
  radius: number;
}

export interface JointSurface {
  readonly shape: JointShape;
  /** Writes into `seen`, which is used again and again: sampling a bone asks for this hundreds of thousands of times. */
  readonly look: (x: number, y: number, z: number, seen: Seen) => void;
}

/** Beyond this elliptical radius the surface goes on without curving. */
const HOLD = 1.15;

export const jointSurface = (j: JointShape): JointSurface => {
  const w = normalize(j.normal);
  const u = normalize(subtract(j.major, scale(w, dot(j.major, w))));
  const v = cross(w, u);
  const [eu, ev] = j.extents;
  const ku = j.radii[0] === 0 ? 0 : 1 / j.radii[0];
  const kv = j.radii[1] === 0 ? 0 : 1 / j.radii[1];
  // The tabled centre is the centroid of a curved patch and lies inside the curve; the apex lies on it.
  const apex: Vec3 = add(j.centre, scale(w, (ku * eu * eu + kv * ev * ev) / 32));
  return {
    shape: j,
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
      seen.side = (c + ((a * a0 + b * b0) * held) / 2) / Math.sqrt(1 + a * a + b * b);
    },
  };
};

/** How far the cut gives way beyond the facet's rim, mm at twice the rim's radius. */
const ROLL = 5;

/** What one bone must keep off: positive beyond its own side (`sign` 1 the first bone). Fades outside the facet. */
export const cutAt = (s: JointSurface, sign: 1 | -1, seen: Seen): number => {
  const past = Math.max(0, seen.radius - 1);
  return sign * seen.side + s.shape.gap / 2 - ROLL * past * past;
};

/** The pad under a facet: its ellipse going `depth` into the bone and 2 mm past the surface, to be trimmed by the cut. */
export const padAt = (s: JointSurface, sign: 1 | -1, depth: number, seen: Seen): number => {
  const rim = ((seen.radius - 1) * Math.min(...s.shape.extents)) / 2;
  const slab = Math.abs(sign * seen.side - (2 - depth) / 2) - (2 + depth) / 2;
  return smoothMax(rim, slab, 1.5);
};
