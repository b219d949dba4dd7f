/**
 * All bones of a foot as one list of loose triangles with what the engraver needs: flat normal, barycentrics that know which edges
 * are ridges, and the direction the lines run across. mm, foot frame. Pure.
 */

// Not the folder's index: that one brings the simplifier, whose WebAssembly may not load on the page's main thread.
import { principalExtents } from '../../anatomy/mesh';
import type { Mesh } from '../../anatomy/types';
import { BONE_IDS, type BoneId } from '../../ids';
import { cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../units';

/** Edges that bend more than this are cut as ridges; below it neighbouring facets read as one plane. */
const RIDGE_COS = Math.cos((26 * Math.PI) / 180);

export interface BoneRange {
  readonly bone: BoneId;
  /** First loose vertex and number of loose vertices. */
  readonly start: number;
  readonly count: number;
  readonly centre: Vec3;
  readonly radiusMm: number;
}

export interface Facets {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly bary: Float32Array;
  readonly along: Float32Array;
}

export interface PlateMesh extends Facets {
  readonly ranges: readonly BoneRange[];
}

const vec = (a: ArrayLike<number>, i: number): Vec3 => [a[3 * i] ?? 0, a[3 * i + 1] ?? 0, a[3 * i + 2] ?? 0];
const unitOr = (v: Vec3, other: Vec3): Vec3 => (length(v) < 1e-12 ? other : normalize(v));

interface Parts {
  readonly at: number;
  readonly out: Facets;
}

const edgeKey = (a: number, b: number, vertices: number): number => Math.min(a, b) * vertices + Math.max(a, b);

const appendMesh = (mesh: Mesh, { at, out }: Parts): void => {
  const faces = mesh.indices.length / 3;
  const vertices = mesh.positions.length / 3;
  const { axis } = principalExtents(mesh);
  const faceNormals: Vec3[] = [];
  const edges = new Map<number, number[]>();
  for (let f = 0; f < faces; f += 1) {
    const ids = [0, 1, 2].map((k) => mesh.indices[3 * f + k] ?? 0);
    const [a, b, c] = ids.map((i) => vec(mesh.positions, i)) as [Vec3, Vec3, Vec3];
    faceNormals.push(unitOr(cross(subtract(b, a), subtract(c, a)), [0, 1, 0]));
    ids.forEach((i, k) => {
      const key = edgeKey(i, ids[(k + 1) % 3] ?? 0, vertices);
      const list = edges.get(key);
      if (list === undefined) edges.set(key, [f]);
      else list.push(f);
    });
  }
  const isRidge = (i: number, j: number): boolean => {
    const [f = 0, g = f] = edges.get(edgeKey(i, j, vertices)) ?? [];
    return dot(faceNormals[f] ?? [0, 1, 0], faceNormals[g] ?? [0, 1, 0]) < RIDGE_COS;
  };
  for (let f = 0; f < faces; f += 1) {
    const n = faceNormals[f] ?? [0, 1, 0];
    // Lines cut across the bone; where a facet faces along it, they follow a direction of the section instead.
    const side = unitOr(cross(axis, Math.abs(axis[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0]), [1, 0, 0]);
    const along = Math.abs(dot(n, axis)) > 0.8 ? side : axis;
    const ids = [0, 1, 2].map((k) => mesh.indices[3 * f + k] ?? 0);
    const smoothEdge = [0, 1, 2].map((k) => !isRidge(ids[(k + 1) % 3] ?? 0, ids[(k + 2) % 3] ?? 0));
    ids.forEach((i, k) => {
      const v = at + 3 * f + k;
      out.positions.set(vec(mesh.positions, i), 3 * v);
      out.normals.set(n, 3 * v);
      out.along.set(along, 3 * v);
      out.bary.set(
        smoothEdge.map((flat, e) => (flat || e === k ? 1 : 0)),
        3 * v,
      );
    });
  }
};

const sphereOf = (positions: Float32Array): { centre: Vec3; radiusMm: number } => {
  const low: number[] = [Infinity, Infinity, Infinity];
  const high: number[] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 1) {
    low[i % 3] = Math.min(low[i % 3] ?? 0, positions[i] ?? 0);
    high[i % 3] = Math.max(high[i % 3] ?? 0, positions[i] ?? 0);
  }
  const centre = scale([0, 1, 2].map((k) => (low[k] ?? 0) + (high[k] ?? 0)) as unknown as Vec3, 0.5);
  let radiusMm = 0;
  for (let i = 0; i < positions.length / 3; i += 1) {
    radiusMm = Math.max(radiusMm, length(subtract(vec(positions, i), centre)));
  }
  return { centre, radiusMm };
};

const facetsFor = (meshes: Iterable<Mesh>): Facets => {
  const total = [...meshes].reduce((sum, mesh) => sum + mesh.indices.length, 0);
  return {
    positions: new Float32Array(3 * total),
    normals: new Float32Array(3 * total),
    bary: new Float32Array(3 * total),
    along: new Float32Array(3 * total),
  };
};

/** Bones that are drawn beside those of the foot: the ends of the leg, a small one that not everybody has. */
export const facetsOf = (meshes: readonly Mesh[]): Facets => {
  const out = facetsFor(meshes);
  let at = 0;
  for (const mesh of meshes) {
    appendMesh(mesh, { at, out });
    at += mesh.indices.length;
  }
  return out;
};

export const plateMesh = (bones: ReadonlyMap<BoneId, Mesh>): PlateMesh => {
  const out = facetsFor(bones.values());
  const ranges: BoneRange[] = [];
  let at = 0;
  for (const bone of BONE_IDS) {
    const mesh = bones.get(bone);
    if (mesh === undefined) continue;
    appendMesh(mesh, { at, out });
    ranges.push({ bone, start: at, count: mesh.indices.length, ...sphereOf(mesh.positions) });
    at += mesh.indices.length;
  }
  return { ...out, ranges };
};
