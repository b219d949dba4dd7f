/** Test helpers: is a point inside a closed mesh, and how far from its surface. Independent of the builder. */
import type { Mesh } from '../../../src/anatomy';
import { vertexOf } from '../../../src/anatomy/mesh';
import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../../src/units';

const known = new WeakMap<Mesh, [Vec3, Vec3, Vec3][]>();
const trianglesOf = (mesh: Mesh): [Vec3, Vec3, Vec3][] => {
  const made =
    known.get(mesh) ??
    Array.from({ length: mesh.indices.length / 3 }, (_, t): [Vec3, Vec3, Vec3] => [
      vertexOf(mesh, mesh.indices[3 * t] ?? 0),
      vertexOf(mesh, mesh.indices[3 * t + 1] ?? 0),
      vertexOf(mesh, mesh.indices[3 * t + 2] ?? 0),
    ]);
  known.set(mesh, made);
  return made;
};

/** Solid angle of the surface seen from p over 4 pi: 1 inside, 0 outside (Van Oosterom and Strackee 1983, from memory). */
export const isInside = (mesh: Mesh, [x, y, z]: Vec3): boolean => {
  let angle = 0;
  // Plain numbers: tens of thousands of points are asked for.
  for (const [a, b, c] of trianglesOf(mesh)) {
    const [ax, ay, az, bx, by, bz] = [a[0] - x, a[1] - y, a[2] - z, b[0] - x, b[1] - y, b[2] - z];
    const [cx, cy, cz] = [c[0] - x, c[1] - y, c[2] - z];
    const [la, lb, lc] = [Math.hypot(ax, ay, az), Math.hypot(bx, by, bz), Math.hypot(cx, cy, cz)];
    const volume = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const [ab, bc, ca] = [ax * bx + ay * by + az * bz, bx * cx + by * cy + bz * cz, cx * ax + cy * ay + cz * az];
    angle += Math.atan2(volume, la * lb * lc + ab * lc + bc * la + ca * lb);
  }
  return angle / (2 * Math.PI) > 0.5;
};

const nearestOnSegment = (p: Vec3, a: Vec3, b: Vec3): Vec3 => {
  const way = subtract(b, a);
  const t = Math.min(1, Math.max(0, dot(subtract(p, a), way) / dot(way, way)));
  return add(a, scale(way, t));
};

/** Distance from a point to the surface, mm. */
export const distanceTo = (mesh: Mesh, p: Vec3): number => {
  let best = Number.POSITIVE_INFINITY;
  for (const [a, b, c] of trianglesOf(mesh)) {
    const n = cross(subtract(b, a), subtract(c, a));
    const over = (
      [
        [a, b],
        [b, c],
        [c, a],
      ] as const
    ).every(([q, r]) => dot(cross(subtract(r, q), subtract(p, q)), n) >= 0);
    if (over) best = Math.min(best, Math.abs(dot(subtract(p, a), n)) / length(n));
    for (const [q, r] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      best = Math.min(best, length(subtract(p, nearestOnSegment(p, q, r))));
    }
  }
  return best;
};
