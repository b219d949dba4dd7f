/** The surface of a bone, made ready to be cut many times. mm; directions in the bone's own axes (dorsal, lateral, along). */
import { cross, dot, length, normalize, subtract, type Vec3 } from '../../units';
import { vertexOf } from '../mesh';
import type { BoneAxis, Mesh } from '../types';

export interface Surface {
  readonly mesh: Mesh;
  readonly axis: BoneAxis;
  /** Share of the bone's length at each vertex. */
  readonly shares: readonly number[];
  /** Outward direction at each vertex: mean of the triangles around, by area. */
  readonly outwards: readonly Vec3[];
}

export const surfaceOf = (mesh: Mesh, axis: BoneAxis): Surface => {
  const sums = Array.from({ length: mesh.positions.length / 3 }, (): [number, number, number] => [0, 0, 0]);
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [i, j, k] = [mesh.indices[t] ?? 0, mesh.indices[t + 1] ?? 0, mesh.indices[t + 2] ?? 0];
    const a = vertexOf(mesh, i);
    const n = cross(subtract(vertexOf(mesh, j), a), subtract(vertexOf(mesh, k), a));
    for (const v of [i, j, k]) {
      const sum = sums[v];
      if (!sum) continue;
      sum[0] += dot(n, axis.dorsal);
      sum[1] += dot(n, axis.lateral);
      sum[2] += dot(n, axis.axis);
    }
  }
  const shares = sums.map((_, i) => dot(subtract(vertexOf(mesh, i), axis.origin), axis.axis) / axis.lengthMm);
  return { mesh, axis, shares, outwards: sums.map((sum) => (length(sum) > 0 ? normalize(sum) : [0, 0, 1])) };
};
