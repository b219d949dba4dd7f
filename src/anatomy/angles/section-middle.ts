/** The middle of a bone where a plane cuts it. mm. */
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../units';
import { sliceMesh } from '../slice';
import type { Mesh } from '../types';

/** Vector area of a loop: its direction tells outer loop from hole. */
const areaOf = (loop: readonly Vec3[], about: Vec3): Vec3 =>
  loop.reduce<Vec3>(
    (sum, p, i) => {
      const q = loop[(i + 1) % loop.length] ?? p;
      return add(sum, scale(cross(subtract(p, about), subtract(q, about)), 0.5));
    },
    [0, 0, 0],
  );

/** Centroid of the area inside the loop. */
const centroidOf = (loop: readonly Vec3[], about: Vec3, normal: Vec3): Vec3 => {
  let sum: Vec3 = [0, 0, 0];
  let whole = 0;
  for (const [i, p] of loop.entries()) {
    const [a, b] = [subtract(p, about), subtract(loop[(i + 1) % loop.length] ?? p, about)];
    const w = dot(cross(a, b), normal);
    sum = add(sum, scale(add(a, b), w / 3));
    whole += w;
  }
  return add(about, scale(sum, 1 / whole));
};

/** Area centroid of the largest piece that a plane cuts out of a closed mesh. Throws RangeError when the plane misses it. */
export const sectionMiddle = (mesh: Mesh, at: Vec3, normal: Vec3): Vec3 => {
  const n = normalize(normal);
  let best: readonly Vec3[] | null = null;
  let most = 0;
  for (const loop of sliceMesh(mesh, at, n)) {
    const area = length(areaOf(loop, at));
    if (area > most) [best, most] = [loop, area];
  }
  if (!best) throw new RangeError('the plane does not cut the bone');
  return centroidOf(best, at, n);
};
