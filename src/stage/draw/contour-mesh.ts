/**
 * Closed surfaces as one list of shared vertices, each with the smoothed normal along which its contour is pushed out, and the bone
 * it belongs to. mm, foot frame. Pure.
 */
import type { Mesh } from '../../anatomy/types';
import { BONE_IDS, type BoneId } from '../../ids';

export interface ContourMesh {
  readonly positions: Float32Array;
  /** Unit vectors. */
  readonly smooth: Float32Array;
  /** Index in BONE_IDS, one a vertex; its length for what is no bone of the foot. */
  readonly bone: Float32Array;
  readonly indices: Uint32Array;
}

/** Where a mesh has no normals of its own: those of the facets around, each by its area. */
const smoothNormals = ({ positions, indices, normals }: Mesh): Float32Array => {
  if (normals !== undefined) return normals;
  const sums = new Float32Array(positions.length);
  const at = (i: number, d: number): number => positions[3 * i + d] ?? 0;
  for (let f = 0; f < indices.length; f += 3) {
    const [a, b, c] = [indices[f] ?? 0, indices[f + 1] ?? 0, indices[f + 2] ?? 0];
    for (let d = 0; d < 3; d += 1) {
      const [e, g] = [(d + 1) % 3, (d + 2) % 3];
      const area = (at(b, e) - at(a, e)) * (at(c, g) - at(a, g)) - (at(b, g) - at(a, g)) * (at(c, e) - at(a, e));
      for (const i of [a, b, c]) sums[3 * i + d] = (sums[3 * i + d] ?? 0) + area;
    }
  }
  for (let i = 0; i < sums.length; i += 3) {
    const size = Math.hypot(sums[i] ?? 0, sums[i + 1] ?? 0, sums[i + 2] ?? 0) || 1;
    for (let d = i; d < i + 3; d += 1) sums[d] = (sums[d] ?? 0) / size;
  }
  return sums;
};

export const contourMesh = (parts: Iterable<readonly [bone: BoneId | null, mesh: Mesh]>): ContourMesh => {
  const all = [...parts];
  const vertices = all.reduce((sum, [, mesh]) => sum + mesh.positions.length / 3, 0);
  const out = {
    positions: new Float32Array(3 * vertices),
    smooth: new Float32Array(3 * vertices),
    bone: new Float32Array(vertices),
    indices: new Uint32Array(all.reduce((sum, [, mesh]) => sum + mesh.indices.length, 0)),
  };
  let [vertex, corner] = [0, 0];
  for (const [bone, mesh] of all) {
    const count = mesh.positions.length / 3;
    out.positions.set(mesh.positions, 3 * vertex);
    out.smooth.set(smoothNormals(mesh), 3 * vertex);
    out.bone.fill(bone === null ? BONE_IDS.length : BONE_IDS.indexOf(bone), vertex, vertex + count);
    out.indices.set(
      mesh.indices.map((i) => i + vertex),
      corner,
    );
    vertex += count;
    corner += mesh.indices.length;
  }
  return out;
};
