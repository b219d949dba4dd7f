/**
 * Moves that would spoil the triangles of a small bone, taken back: where what draws two joints together meets in its middle, corners
 * pass each other. The gap there grows with the foot by as much as is taken back. mm.
 */
import { dot, type Vec3 } from '../units';
import { corner, normalOf, putAt, smallest, TURN_COS, type Work, workOf } from './meshing/work';
import type { Mesh } from './types';

/** No corner of a triangle is made narrower than this, rad. */
const LEAST_ANGLE = (6 * Math.PI) / 180;
/** Moves of a spoilt triangle's corners are halved so often before they are given up. */
const HALVINGS = 5;

const midway = (p: Vec3, q: Vec3): Vec3 => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2, (p[2] + q[2]) / 2];

/** `before` and `now`: the corners of the mesh; `now` is changed. A triangle that was narrow before may stay as narrow as it was. */
export const eased = ({ indices }: Pick<Mesh, 'indices'>, before: readonly Vec3[], now: Vec3[]): void => {
  const workAt = (points: readonly Vec3[]): Work =>
    workOf({ positions: Float32Array.from(points.flat()), indices: indices });
  const [was, is] = [workAt(before), workAt(now)];
  const count = indices.length / 3;
  const cornersOf = (t: number): [number, number, number] => [corner(was, t, 0), corner(was, t, 1), corner(was, t, 2)];
  const narrowest = Array.from({ length: count }, (_, t) =>
    Math.min(LEAST_ANGLE, smallest(was, ...cornersOf(t)) - 1e-6),
  );
  const spoilt = (t: number): boolean => {
    const at = cornersOf(t);
    return smallest(is, ...at) < (narrowest[t] as number) || dot(normalOf(is, ...at), normalOf(was, ...at)) < TURN_COS;
  };
  for (let round = 0; round <= count; round++) {
    const back = new Set<number>();
    for (let t = 0; t < count; t++) if (spoilt(t)) for (const v of cornersOf(t)) back.add(v);
    if (back.size === 0) return;
    for (const v of back) {
      const to = round < HALVINGS ? midway(before[v] as Vec3, now[v] as Vec3) : (before[v] as Vec3);
      now[v] = to;
      putAt(is, v, to);
    }
  }
};
