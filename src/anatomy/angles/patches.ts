/** A surface in small pieces, so that a measure over it does not hang on where the few triangles of the drawn mesh end. mm. */
import { add, cross, length, scale, subtract, type Vec3 } from '../../units';
import { vertexOf } from '../mesh';
import type { Mesh } from '../types';

/** Every side of a triangle is cut into this many parts. */
const PARTS = 4;

export interface Patch {
  readonly at: Vec3;
  readonly normal: Vec3;
  readonly area: number;
}

/** Middles of the equal parts of a triangle. */
const cutUp = (a: Vec3, b: Vec3, c: Vec3): Vec3[] => {
  const [u, v] = [subtract(b, a), subtract(c, a)];
  const middles: Vec3[] = [];
  for (let i = 0; i < PARTS; i++)
    for (let j = 0; j < PARTS - i; j++)
      for (const third of i + j < PARTS - 1 ? [1 / 3, 2 / 3] : [1 / 3])
        middles.push(add(a, add(scale(u, (i + third) / PARTS), scale(v, (j + third) / PARTS))));
  return middles;
};

/** Every triangle in small equal parts. */
export const patchesOf = (mesh: Mesh): Patch[] => {
  const patches: Patch[] = [];
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => vertexOf(mesh, mesh.indices[t + k] ?? 0)) as [Vec3, Vec3, Vec3];
    const out = cross(subtract(b, a), subtract(c, a));
    const twice = length(out);
    if (twice === 0) continue;
    const normal = scale(out, 1 / twice);
    for (const at of cutUp(a, b, c)) patches.push({ at, normal, area: twice / 2 / PARTS ** 2 });
  }
  return patches;
};
