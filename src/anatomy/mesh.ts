/** Measures of closed triangle meshes (mm, foot frame) and the mirror that makes a left foot of a right one. */
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../units';
import type { Box } from './field';
import type { Mesh } from './types';

export const vertexOf = (mesh: Mesh, i: number): Vec3 => [
  mesh.positions[3 * i] ?? 0,
  mesh.positions[3 * i + 1] ?? 0,
  mesh.positions[3 * i + 2] ?? 0,
];

export const verticesOf = (mesh: Mesh): Vec3[] =>
  Array.from({ length: mesh.positions.length / 3 }, (_, i) => vertexOf(mesh, i));

const eachTriangle = (mesh: Mesh, visit: (a: Vec3, b: Vec3, c: Vec3) => void): void => {
  for (let t = 0; t < mesh.indices.length; t += 3) {
    visit(
      vertexOf(mesh, mesh.indices[t] ?? 0),
      vertexOf(mesh, mesh.indices[t + 1] ?? 0),
      vertexOf(mesh, mesh.indices[t + 2] ?? 0),
    );
  }
};

/** Enclosed volume, mm3; positive when the triangles face outwards. */
export const meshVolume = (mesh: Mesh): number => {
  let six = 0;
  eachTriangle(mesh, (a, b, c) => {
    six += dot(a, cross(b, c));
  });
  return six / 6;
};

/** Centroid of the enclosed solid. */
export const meshCentroid = (mesh: Mesh): Vec3 => {
  let sum: Vec3 = [0, 0, 0];
  let six = 0;
  eachTriangle(mesh, (a, b, c) => {
    const v = dot(a, cross(b, c));
    six += v;
    sum = add(sum, scale(add(add(a, b), c), v / 4));
  });
  return scale(sum, 1 / six);
};

export const meshBounds = (mesh: Mesh): Box => {
  const points = verticesOf(mesh);
  const side = (pick: (...n: number[]) => number): Vec3 =>
    points.reduce<Vec3>((m, p) => [pick(m[0], p[0]), pick(m[1], p[1]), pick(m[2], p[2])], points[0] ?? [0, 0, 0]);
  return { min: side(Math.min), max: side(Math.max) };
};

/** Direction of greatest spread of the solid (first principal axis, uniform density), towards the toes where it can. */
const longAxis = (mesh: Mesh): Vec3 => {
  const centre = meshCentroid(mesh);
  const m = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ];
  eachTriangle(mesh, (pa, pb, pc) => {
    const corners = [subtract(pa, centre), subtract(pb, centre), subtract(pc, centre)] as const;
    const v = dot(corners[0], cross(corners[1], corners[2]));
    const sum = add(add(corners[0], corners[1]), corners[2]);
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        const row = m[i];
        if (!row) continue;
        let s = (sum[i] ?? 0) * (sum[j] ?? 0);
        for (const p of corners) s += (p[i] ?? 0) * (p[j] ?? 0);
        row[j] = (row[j] ?? 0) + (v * s) / 120;
      }
  });
  // Power iteration from the fore-aft direction: the matrix is symmetric and positive, so it converges.
  let axis: Vec3 = normalize([0.1, 0.2, 1]);
  for (let n = 0; n < 200; n++) {
    axis = normalize([0, 1, 2].map((i) => dot((m[i] ?? [0, 0, 0]) as unknown as Vec3, axis)) as unknown as Vec3);
  }
  return axis[2] < 0 ? scale(axis, -1) : axis;
};

export interface PrincipalExtents {
  /** Unit, along the greatest spread, towards the toes. */
  readonly axis: Vec3;
  /** Extents of the vertices: along the axis; horizontal across it; in the third direction. */
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Length, width and height as a bone is measured: along its long axis, horizontally across it, and across both. */
export const principalExtents = (mesh: Mesh): PrincipalExtents => {
  const axis = longAxis(mesh);
  const across = cross([0, 1, 0], axis);
  const wide = length(across) < 1e-9 ? ([1, 0, 0] as Vec3) : normalize(across);
  const high = cross(axis, wide);
  const extent = (d: Vec3): number => {
    let [low, top] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const p of verticesOf(mesh)) {
      const s = dot(p, d);
      low = Math.min(low, s);
      top = Math.max(top, s);
    }
    return top - low;
  };
  return { axis, lengthMm: extent(axis), widthMm: extent(wide), heightMm: extent(high) };
};

/** The mirror image in the sagittal plane, still facing outwards. */
export const mirrorMesh = (mesh: Mesh): Mesh => {
  const across = (vectors: Float32Array): Float32Array => vectors.map((p, i) => (i % 3 === 0 ? -p : p));
  return {
    positions: across(mesh.positions),
    indices: mesh.indices.map((_, i) => mesh.indices[i % 3 === 1 ? i + 1 : i % 3 === 2 ? i - 1 : i] ?? 0),
    ...(mesh.normals && { normals: across(mesh.normals) }),
  };
};

/** To a micrometre, mm: as far as the model file keeps places. What a compiler does in the last digits does not change them. */
export const toMicrometre = (mm: number): number => Math.round(mm * 1000) / 1000;

/** Directions are kept to so many parts of 1. */
const PARTS = 10_000;

/** As the model file keeps a mesh. */
export const rounded = ({ positions, indices, normals }: Mesh): Mesh => ({
  positions: positions.map(toMicrometre),
  indices,
  ...(normals && { normals: normals.map((n) => Math.round(n * PARTS) / PARTS) }),
});

/** Vertices moved in any way: normals are lost. */
export const mapMesh = (mesh: Mesh, move: (p: Vec3) => Vec3): Mesh => {
  const positions = new Float32Array(mesh.positions.length);
  for (let i = 0; i < positions.length / 3; i++) positions.set(move(vertexOf(mesh, i)), 3 * i);
  return { positions, indices: mesh.indices };
};

/** Edges that do not lie between exactly two triangles running opposite ways: 0 for a closed surface. */
export const openEdges = (mesh: Mesh): number => {
  const seen = new Map<string, number>();
  for (let t = 0; t < mesh.indices.length; t += 3)
    for (let e = 0; e < 3; e++) {
      const key = `${mesh.indices[t + e]}>${mesh.indices[t + ((e + 1) % 3)]}`;
      seen.set(key, (seen.get(key) ?? 0) + 1);
    }
  let open = 0;
  for (const [key, count] of seen) {
    const [a, b] = key.split('>');
    if (count !== 1 || seen.get(`${b}>${a}`) !== 1) open++;
  }
  return open;
};

/** Vertices - edges + faces, counting used vertices: 2 for one closed surface without a tunnel. */
export const eulerCharacteristic = (mesh: Mesh): number =>
  new Set(mesh.indices).size - mesh.indices.length / 2 + mesh.indices.length / 3;
