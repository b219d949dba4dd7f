/**
 * A joint is one curved surface shared by two bones. In its frame (w normal from first to second bone, u the long direction
 * of the facet) the surface is w = -(ku u^2 + kv v^2) / 2; `side` is the distance from it, positive on the second bone's side.
 */
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../units';
import { type Field, smoothMax } from './field';
import type { JointShape } from './shape';

export interface JointSurface {
  readonly shape: JointShape;
  /** Apex of the surface: the tabled centre is the centroid of a curved patch and lies inside the curve. */
  readonly apex: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly w: Vec3;
  readonly side: Field;
  /** Elliptical radius of the facet: below 1 inside. */
  readonly radius: Field;
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
  const apex = add(j.centre, scale(w, (ku * eu * eu + kv * ev * ev) / 32));
  const local = (x: number, y: number, z: number): Vec3 => {
    const p: Vec3 = [x - apex[0], y - apex[1], z - apex[2]];
    return [dot(p, u), dot(p, v), dot(p, w)];
  };
  const radius: Field = (x, y, z) => {
    const [a, b] = local(x, y, z);
    return Math.hypot(a / (eu / 2), b / (ev / 2));
  };
  const side: Field = (x, y, z) => {
    const [a0, b0, c] = local(x, y, z);
    const q = Math.hypot(a0 / (eu / 2), b0 / (ev / 2));
    const held = q > HOLD ? HOLD / q : 1;
    const a = a0 * held;
    const b = b0 * held;
    const height = -(ku * a * a + kv * b * b) / 2;
    return (c - height) / Math.sqrt(1 + (ku * a) ** 2 + (kv * b) ** 2);
  };
  return { shape: j, apex, u, v, w, side, radius };
};

/** How far the cut gives way beyond the facet's rim, mm at twice the rim's radius. */
const ROLL = 5;

/** What one bone must keep off: positive beyond its own side of the joint. The cut fades outside the facet. */
export const cutField = (s: JointSurface, sign: 1 | -1): Field => {
  const half = s.shape.gap / 2;
  return (x, y, z) => {
    const q = s.radius(x, y, z);
    const past = Math.max(0, q - 1);
    return sign * s.side(x, y, z) + half - ROLL * past * past;
  };
};

/** The pad under a facet: the facet's ellipse going `depth` into the bone and a little past the surface, to be trimmed. */
export const padField = (s: JointSurface, sign: 1 | -1, depth: number): Field => {
  const small = Math.min(...s.shape.extents) / 2;
  const [inner, outer] = [-depth, 2];
  return (x, y, z) => {
    const g = sign * s.side(x, y, z);
    const rim = (s.radius(x, y, z) - 1) * small;
    const slab = Math.abs(g - (inner + outer) / 2) - (outer - inner) / 2;
    return smoothMax(rim, slab, 1.5);
  };
};
