/** Triangles against lines, for tests: where a surface is first met, and whether it crosses itself. mm. */
import { vertexOf } from '../../src/anatomy/mesh';
import type { Mesh } from '../../src/anatomy/types';
import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../src/units';

export type Triangle = readonly [Vec3, Vec3, Vec3];

export const trianglesOf = (mesh: Mesh): Triangle[] =>
  Array.from(
    { length: mesh.indices.length / 3 },
    (_, t) => [0, 1, 2].map((e) => vertexOf(mesh, mesh.indices[3 * t + e] ?? 0)) as unknown as Triangle,
  );

/** Where the line from a point meets a triangle, in lengths of `way`; null where it misses (Möller T, Trumbore B, from memory). */
export const meeting = (from: Vec3, way: Vec3, [a, b, c]: Triangle): number | null => {
  const [e1, e2] = [subtract(b, a), subtract(c, a)];
  const p = cross(way, e2);
  const det = dot(e1, p);
  if (det === 0) return null;
  const t = subtract(from, a);
  const u = dot(t, p) / det;
  if (u < 0 || u > 1) return null;
  const q = cross(t, e1);
  const w = dot(way, q) / det;
  if (w < 0 || u + w > 1) return null;
  return dot(e2, q) / det;
};

/** The first point of a surface on the way from a point; null where there is none ahead. */
export const firstMet = (mesh: Mesh, from: Vec3, way: Vec3): Vec3 | null => {
  const ahead = trianglesOf(mesh)
    .map((triangle) => meeting(from, way, triangle))
    .filter((s) => s !== null && s > 0) as number[];
  return ahead.length === 0 ? null : add(from, scale(way, Math.min(...ahead)));
};

/** Smallest angle of a triangle, deg. */
export const smallestAngle = ([a, b, c]: Triangle): number => {
  const at = (p: Vec3, q: Vec3, r: Vec3): number => {
    const [u, v] = [subtract(q, p), subtract(r, p)];
    return (Math.atan2(length(cross(u, v)), dot(u, v)) * 180) / Math.PI;
  };
  return Math.min(at(a, b, c), at(b, c, a), at(c, a, b));
};

type Box = readonly [low: Vec3, high: Vec3];
const boxOf = ([a, b, c]: Triangle): Box => [
  [Math.min(a[0], b[0], c[0]), Math.min(a[1], b[1], c[1]), Math.min(a[2], b[2], c[2])],
  [Math.max(a[0], b[0], c[0]), Math.max(a[1], b[1], c[1]), Math.max(a[2], b[2], c[2])],
];
const boxesApart = ([low1, high1]: Box, [low2, high2]: Box): boolean =>
  low1[0] > high2[0] ||
  low2[0] > high1[0] ||
  low1[1] > high2[1] ||
  low2[1] > high1[1] ||
  low1[2] > high2[2] ||
  low2[2] > high1[2];

/** Two triangles with one side in common lie folded on each other: deg between their planes below which that is said. */
const FOLDED_DEG = 1;

/**
 * Pairs of triangles of a surface that cross. Two that meet cross where a side of one goes through the other; a side that ends in a
 * corner of the other is not asked. Two with a side in common cross only when folded flat on each other.
 */
export const crossings = (mesh: Mesh): (readonly [number, number])[] => {
  const triangles = trianglesOf(mesh);
  const boxes = triangles.map(boxOf);
  const cornersOf = (t: number): number[] => [0, 1, 2].map((e) => mesh.indices[3 * t + e] ?? 0);
  const pierces = (s: number, t: number): boolean => {
    const [mine, others] = [cornersOf(s), cornersOf(t)];
    const [here, there] = [triangles[s] as Triangle, triangles[t] as Triangle];
    return [0, 1, 2].some((e) => {
      const f = (e + 1) % 3;
      if (others.includes(mine[e] ?? -1) || others.includes(mine[f] ?? -1)) return false;
      const from = here[e] as Vec3;
      const at = meeting(from, subtract(here[f] as Vec3, from), there);
      return at !== null && at >= 0 && at <= 1;
    });
  };
  const normalOf = ([a, b, c]: Triangle): Vec3 => cross(subtract(b, a), subtract(c, a));
  const folded = (s: number, t: number): boolean => {
    const [m, n] = [normalOf(triangles[s] as Triangle), normalOf(triangles[t] as Triangle)];
    return (Math.atan2(length(cross(m, n)), dot(m, n)) * 180) / Math.PI > 180 - FOLDED_DEG;
  };
  const found: (readonly [number, number])[] = [];
  for (let s = 0; s < triangles.length; s++)
    for (let t = s + 1; t < triangles.length; t++) {
      if (boxesApart(boxes[s] as Box, boxes[t] as Box)) continue;
      const shared = cornersOf(s).filter((i) => cornersOf(t).includes(i)).length;
      const cross = shared > 1 ? folded(s, t) : pierces(s, t) || pierces(t, s);
      if (cross) found.push([s, t]);
    }
  return found;
};
