/**
 * The border of a region where it runs over the facets of its bone: short ways between points at which the region begins. For any
 * region, since each is a function of the point. mm, foot frame; as fine as it is asked for, whatever the triangles.
 */
import { length, subtract, type Vec3 } from '../units';
import { vertexOf } from './mesh';
import type { Mesh, Region } from './types';

/** Sides of the small triangles that a facet is looked at in, mm, and no more than so many a side. */
const STEP_MM = 0.9;
const MOST_STEPS = 24;
/** Times the way between an inner and an outer point is halved: to a hundredth of the step. */
const HALVINGS = 7;

const between = (a: Vec3, b: Vec3, t: number): Vec3 => [
  a[0] + t * (b[0] - a[0]),
  a[1] + t * (b[1] - a[1]),
  a[2] + t * (b[2] - a[2]),
];

/** Where on the way from an inner to an outer point the region ends. */
const borderOn = ({ contains }: Region, inner: Vec3, outer: Vec3): Vec3 => {
  let [low, high] = [0, 1];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (contains(between(inner, outer, middle))) low = middle;
    else high = middle;
  }
  return between(inner, outer, (low + high) / 2);
};

interface Corner {
  readonly p: Vec3;
  readonly isIn: boolean;
}

/** The border through one small triangle: two of its sides are crossed, or none. */
const crossing = (region: Region, corners: readonly [Corner, Corner, Corner]): readonly (readonly Vec3[])[] => {
  const ends: Vec3[] = [];
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % 3] ?? a;
    if (a.isIn !== b.isIn) ends.push(a.isIn ? borderOn(region, a.p, b.p) : borderOn(region, b.p, a.p));
  });
  return ends.length === 2 ? [ends] : [];
};

export const outlineOfRegion = (mesh: Mesh, region: Region): readonly (readonly Vec3[])[] => {
  const lines: (readonly Vec3[])[] = [];
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((e) => vertexOf(mesh, mesh.indices[t + e] ?? 0)) as [Vec3, Vec3, Vec3];
    const longest = Math.max(length(subtract(a, b)), length(subtract(b, c)), length(subtract(c, a)));
    const n = Math.min(MOST_STEPS, Math.max(1, Math.ceil(longest / STEP_MM)));
    /** Row i runs from the side a-b to the side a-c, with i + 1 corners. */
    const rows = Array.from({ length: n + 1 }, (_, i) =>
      Array.from({ length: i + 1 }, (__, j): Corner => {
        const p = i === 0 ? a : between(between(a, b, i / n), between(a, c, i / n), j / i);
        return { p, isIn: region.contains(p) };
      }),
    );
    for (let i = 0; i < n; i++)
      for (let j = 0; j <= i; j++) {
        const [top, left, right] = [rows[i]?.[j], rows[i + 1]?.[j], rows[i + 1]?.[j + 1]];
        if (top === undefined || left === undefined || right === undefined) continue;
        lines.push(...crossing(region, [top, left, right]));
        const next = rows[i]?.[j + 1];
        if (next !== undefined) lines.push(...crossing(region, [top, right, next]));
      }
  }
  return lines;
};
