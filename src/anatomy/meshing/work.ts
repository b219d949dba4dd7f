/** A triangle surface while it is being mended: points and triangles that may be moved, turned and dropped, and what is asked of them. */
import { dot } from '../../units';
import type { Mesh } from '../types';

/** Points as 3 numbers a vertex, triangles as 3 indices each; a dead triangle has -1 first. */
export interface Work {
  readonly p: Float64Array;
  readonly t: Int32Array;
}

export type Normal = [number, number, number];

const along = (p: Float64Array, a: number, b: number, k: number): number =>
  (p[3 * b + k] as number) - (p[3 * a + k] as number);

export const normalOf = ({ p }: Work, a: number, b: number, c: number): Normal => {
  const [ux, uy, uz] = [along(p, a, b, 0), along(p, a, b, 1), along(p, a, b, 2)];
  const [vx, vy, vz] = [along(p, a, c, 0), along(p, a, c, 1), along(p, a, c, 2)];
  const n: Normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const l = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) || 1;
  return [n[0] / l, n[1] / l, n[2] / l];
};
export const squared = ({ p }: Work, a: number, b: number): number => {
  const x = (p[3 * a] as number) - (p[3 * b] as number);
  const y = (p[3 * a + 1] as number) - (p[3 * b + 1] as number);
  const z = (p[3 * a + 2] as number) - (p[3 * b + 2] as number);
  return x * x + y * y + z * z;
};

/** The corner between sides of squared lengths x and y, rad. */
const between = (opposite: number, x: number, y: number): number =>
  Math.acos(Math.min(1, Math.max(-1, (x + y - opposite) / (2 * Math.sqrt(x * y) || 1))));

/** No triangle may turn further than this when a neighbour is moved. */
export const TURN_COS = 0.35;

/** Smallest corner angle of a triangle, rad. */
export const smallest = (w: Work, a: number, b: number, c: number): number => {
  const [ab, bc, ca] = [squared(w, a, b), squared(w, b, c), squared(w, c, a)];
  return Math.min(between(bc, ab, ca), between(ca, ab, bc), between(ab, bc, ca));
};

export const corner = (w: Work, t: number, k: number): number => w.t[3 * t + (k % 3)] as number;
/** `set` of a typed array is slow for three numbers. */
export const put = ({ p }: Work, v: number, x: number, y: number, z: number): void => {
  p[3 * v] = x;
  p[3 * v + 1] = y;
  p[3 * v + 2] = z;
};
export const putAt = (w: Work, v: number, q: readonly number[]): void =>
  put(w, v, q[0] as number, q[1] as number, q[2] as number);
export const placeOf = ({ p }: Work, v: number): Normal => [
  p[3 * v] as number,
  p[3 * v + 1] as number,
  p[3 * v + 2] as number,
];
export const alive = (w: Work, t: number): boolean => (w.t[3 * t] as number) >= 0;

/** Triangles round every vertex. */
export const fans = (w: Work): Map<number, number[]> => {
  const round = new Map<number, number[]>();
  for (let t = 0; 3 * t < w.t.length; t++) {
    if (!alive(w, t)) continue;
    for (let k = 0; k < 3; k++) {
      const v = corner(w, t, k);
      const list = round.get(v);
      if (list) list.push(t);
      else round.set(v, [t]);
    }
  }
  return round;
};

export const worstOf = (w: Work): number => {
  let worst = Number.POSITIVE_INFINITY;
  for (let t = 0; 3 * t < w.t.length; t++)
    if (alive(w, t)) worst = Math.min(worst, smallest(w, corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)));
  return worst;
};

export const workOf = ({ positions, indices }: Mesh): Work => ({
  p: Float64Array.from(positions),
  t: Int32Array.from(indices),
});

/** True when the triangles of `fan` but those in `gone` stay outward and no worse than `least` with vertex v moved to q. */
export const bears = (
  w: Work,
  fan: readonly number[],
  gone: readonly number[],
  v: number,
  q: readonly number[],
  least: number,
): boolean => {
  const kept = placeOf(w, v);
  const rest = fan.filter((t) => !gone.includes(t));
  const before = rest.map((t) => normalOf(w, corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)));
  putAt(w, v, q);
  const good = rest.every((t, i) => {
    const [a, b, c] = [corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)];
    return dot(normalOf(w, a, b, c), before[i] as Normal) > TURN_COS && smallest(w, a, b, c) > least;
  });
  putAt(w, v, kept);
  return good;
};

/** What is left of it, vertices in order of use. */
export const meshOf = (w: Work): Mesh => {
  const place = new Map<number, number>();
  const positions: number[] = [];
  const indices: number[] = [];
  for (let t = 0; 3 * t < w.t.length; t++) {
    if (!alive(w, t)) continue;
    for (let k = 0; k < 3; k++) {
      const v = corner(w, t, k);
      let at = place.get(v);
      if (at === undefined) {
        at = place.size;
        place.set(v, at);
        positions.push(...w.p.slice(3 * v, 3 * v + 3));
      }
      indices.push(at);
    }
  }
  return { positions: new Float32Array(positions), indices: new Uint32Array(indices) };
};
