/** The surface of a bone with the cortex under each of its vertices. mm; directions in the bone's own (dorsal, lateral, along). */
import { cross, dot, length, normalize, subtract, type Vec3 } from '../../units';
import { vertexOf } from '../mesh';
import type { BoneAxis, Mesh } from '../types';
import type { Sides, WallOfBone } from './wall';

export interface Surface {
  readonly mesh: Mesh;
  readonly axis: BoneAxis;
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
  return { mesh, axis, outwards: sums.map((sum) => (length(sum) > 0 ? normalize(sum) : [0, 0, 1])) };
};

/** Cortex under a surface that looks `outward`: that of the sides it looks to, each by the square of its share. */
const cortexUnder = (sides: Sides, [dorsal, lateral, along]: Vec3): number => {
  const mean = (sides.dorsal + sides.plantar + sides.medial + sides.lateral) / 4;
  const upDown = dorsal > 0 ? sides.dorsal : sides.plantar;
  const across = lateral > 0 ? sides.lateral : sides.medial;
  return dorsal * dorsal * upDown + lateral * lateral * across + along * along * mean;
};

/** Thickness of the cortex under each vertex, mm. */
export const cortexAtVertices = ({ mesh, axis, outwards }: Surface, sidesAt: WallOfBone): number[] =>
  outwards.map((outward, i) => {
    const along = dot(subtract(vertexOf(mesh, i), axis.origin), axis.axis);
    return cortexUnder(sidesAt(along / axis.lengthMm), outward);
  });
