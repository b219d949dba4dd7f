/** Measures on a mesh's surface for tests: the nearest point of it, and small pieces of it with their areas. mm. */
import type { Mesh } from '../../src/anatomy/types';
import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../src/units';

type Triangle = readonly [Vec3, Vec3, Vec3];
/** A triangle with a ball that holds it, so that those far off need not be looked at. */
interface Held {
  readonly triangle: Triangle;
  readonly middle: Vec3;
  readonly radius: number;
}

const known = new WeakMap<Mesh, readonly Held[]>();
const trianglesOf = (mesh: Mesh): readonly Held[] => {
  const kept = known.get(mesh);
  if (kept) return kept;
  const vertex = (i: number): Vec3 => [
    mesh.positions[3 * i] ?? 0,
    mesh.positions[3 * i + 1] ?? 0,
    mesh.positions[3 * i + 2] ?? 0,
  ];
  const made = Array.from({ length: mesh.indices.length / 3 }, (_, t): Held => {
    const [a, b, c] = [0, 1, 2].map((e) => vertex(mesh.indices[3 * t + e] ?? 0)) as [Vec3, Vec3, Vec3];
    const middle = scale(add(add(a, b), c), 1 / 3);
    const radius = Math.max(...[a, b, c].map((p) => length(subtract(p, middle))));
    return { triangle: [a, b, c], middle, radius };
  });
  known.set(mesh, made);
  return made;
};

const onEdge = (p: Vec3, a: Vec3, b: Vec3): Vec3 => {
  const way = subtract(b, a);
  const t = dot(subtract(p, a), way) / (dot(way, way) || 1);
  return add(a, scale(way, Math.min(1, Math.max(0, t))));
};

const onTriangle = (p: Vec3, [a, b, c]: Triangle): Vec3 => {
  const n = cross(subtract(b, a), subtract(c, a));
  const nn = dot(n, n);
  const foot = subtract(p, scale(n, dot(subtract(p, a), n) / (nn || 1)));
  const inside = [
    [a, b],
    [b, c],
    [c, a],
  ].every(([u, v]) => u && v && dot(cross(subtract(v, u), subtract(foot, u)), n) >= 0);
  if (nn > 0 && inside) return foot;
  const edges = [onEdge(p, a, b), onEdge(p, b, c), onEdge(p, c, a)];
  return edges.reduce((best, q) => (length(subtract(q, p)) < length(subtract(best, p)) ? q : best));
};

/** The point of the surface nearest to p. */
export const closestOn = (mesh: Mesh, p: Vec3): Vec3 => {
  let [best, found]: [number, Vec3] = [Number.POSITIVE_INFINITY, p];
  for (const { triangle, middle, radius } of trianglesOf(mesh)) {
    if (length(subtract(p, middle)) - radius >= best) continue;
    const q = onTriangle(p, triangle);
    const d = length(subtract(q, p));
    if (d < best) [best, found] = [d, q];
  }
  return found;
};

/** The whole surface in pieces with edges no longer than `size`: their middles and areas. */
export const spread = (mesh: Mesh, size: number): { readonly at: Vec3; readonly area: number }[] => {
  const pieces: { at: Vec3; area: number }[] = [];
  const divide = ([a, b, c]: Triangle): void => {
    const longest = Math.max(length(subtract(a, b)), length(subtract(b, c)), length(subtract(c, a)));
    if (longest <= size) {
      const area = length(cross(subtract(b, a), subtract(c, a))) / 2;
      pieces.push({ at: scale(add(add(a, b), c), 1 / 3), area });
      return;
    }
    const middle = (p: Vec3, q: Vec3): Vec3 => scale(add(p, q), 0.5);
    const [d, e, f] = [middle(a, b), middle(b, c), middle(c, a)];
    divide([a, d, f]);
    divide([d, b, e]);
    divide([f, e, c]);
    divide([d, e, f]);
  };
  for (const { triangle } of trianglesOf(mesh)) divide(triangle);
  return pieces;
};

/** Whether a point lies inside a closed surface: the solid angle of all triangles seen from it. */
export const isInside = (mesh: Mesh, p: Vec3): boolean => {
  let turn = 0;
  for (const { triangle } of trianglesOf(mesh)) {
    const [a, b, c] = triangle.map((q) => subtract(q, p)) as unknown as Triangle;
    const [la, lb, lc] = [length(a), length(b), length(c)];
    turn += Math.atan2(dot(a, cross(b, c)), la * lb * lc + dot(a, b) * lc + dot(b, c) * la + dot(c, a) * lb);
  }
  return turn > Math.PI;
};
