/** A closed triangle surface made ready for asking how far points lie from it and where stretches go through it. mm. */
import type { Mesh } from '../types';
import { boxTree } from './box-tree';
import { outwardOf, PLACES } from './outward';
import { crossingOfTriangle, type FoundNearest, nearestOfTriangle } from './triangle';

export interface Nearest {
  readonly distanceMm: number;
  /** The point lies inside the closed surface. */
  readonly inside: boolean;
  /**
   * Unit, from the nearest place to the point: outside, the outward direction of a smooth surface there. That of a facet would
   * depend on which of two facets happens to be asked at the edge between them.
   */
  readonly way: readonly [number, number, number];
}

export interface SurfaceIndex {
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
  /** The nearest place of the surface, or null where it is not nearer than `reachMm`. */
  readonly nearest: (x: number, y: number, z: number, reachMm: number) => Nearest | null;
  /** Shares of the way from (x, y, z) along (dx, dy, dz) at which the surface is crossed, in no order, some twice. */
  readonly crossings: (x: number, y: number, z: number, dx: number, dy: number, dz: number) => number[];
}

export const surfaceIndex = (mesh: Mesh): SurfaceIndex => {
  const count = mesh.indices.length / 3;
  const corners = new Float64Array(9 * count);
  const boxes = new Float64Array(6 * count);
  for (let t = 0; t < count; t++)
    for (let k = 0; k < 3; k++) {
      const [a, b, c] = [0, 1, 2].map((e) => mesh.positions[3 * (mesh.indices[3 * t + e] ?? 0) + k] ?? 0);
      corners.set([a ?? 0], 9 * t + k);
      corners.set([b ?? 0], 9 * t + 3 + k);
      corners.set([c ?? 0], 9 * t + 6 + k);
      boxes[6 * t + k] = Math.min(a ?? 0, b ?? 0, c ?? 0);
      boxes[6 * t + 3 + k] = Math.max(a ?? 0, b ?? 0, c ?? 0);
    }
  const outward = outwardOf(mesh, corners);
  const tree = boxTree(boxes);
  const stack = new Uint32Array(128);
  const near: FoundNearest = { x: 0, y: 0, z: 0, squared: 0, feature: 0 };

  const squaredToBox = (node: number, x: number, y: number, z: number): number => {
    const o = 6 * node;
    const { box } = tree;
    const dx = Math.max((box[o] as number) - x, 0, x - (box[o + 3] as number));
    const dy = Math.max((box[o + 1] as number) - y, 0, y - (box[o + 4] as number));
    const dz = Math.max((box[o + 2] as number) - z, 0, z - (box[o + 5] as number));
    return dx * dx + dy * dy + dz * dz;
  };

  const nearest = (x: number, y: number, z: number, reachMm: number): Nearest | null => {
    let best = reachMm * reachMm;
    let found = -1;
    let [wx, wy, wz] = [0, 0, 0];
    let depth = 0;
    stack[depth++] = 0;
    while (depth > 0) {
      const node = stack[--depth] as number;
      if (squaredToBox(node, x, y, z) >= best) continue;
      const second = tree.second[node] as number;
      if (second > 0) {
        const firstIsNearer = squaredToBox(node + 1, x, y, z) <= squaredToBox(second, x, y, z);
        stack[depth++] = firstIsNearer ? second : node + 1;
        stack[depth++] = firstIsNearer ? node + 1 : second;
        continue;
      }
      for (let i = tree.from[node] as number; i < (tree.to[node] as number); i++) {
        const t = tree.order[i] as number;
        nearestOfTriangle(corners, 9 * t, x, y, z, near);
        if (near.squared >= best) continue;
        best = near.squared;
        found = PLACES * t + near.feature;
        wx = near.x;
        wy = near.y;
        wz = near.z;
      }
    }
    if (found < 0) return null;
    const o = 3 * found;
    const side = wx * (outward[o] as number) + wy * (outward[o + 1] as number) + wz * (outward[o + 2] as number);
    const distanceMm = Math.sqrt(best);
    const unit = distanceMm > 0 ? 1 / distanceMm : 0;
    return { distanceMm, inside: side < 0, way: [wx * unit, wy * unit, wz * unit] };
  };

  const crossings = (x: number, y: number, z: number, dx: number, dy: number, dz: number): number[] => {
    const [lx, ly, lz] = [Math.min(x, x + dx), Math.min(y, y + dy), Math.min(z, z + dz)];
    const [hx, hy, hz] = [Math.max(x, x + dx), Math.max(y, y + dy), Math.max(z, z + dz)];
    const { box } = tree;
    const out: number[] = [];
    let depth = 0;
    stack[depth++] = 0;
    while (depth > 0) {
      const node = stack[--depth] as number;
      const o = 6 * node;
      if ((box[o] as number) > hx || (box[o + 1] as number) > hy || (box[o + 2] as number) > hz) continue;
      if ((box[o + 3] as number) < lx || (box[o + 4] as number) < ly || (box[o + 5] as number) < lz) continue;
      const second = tree.second[node] as number;
      if (second > 0) {
        stack[depth++] = node + 1;
        stack[depth++] = second;
        continue;
      }
      for (let i = tree.from[node] as number; i < (tree.to[node] as number); i++) {
        const way = crossingOfTriangle(corners, 9 * (tree.order[i] as number), x, y, z, dx, dy, dz);
        if (way !== null) out.push(way);
      }
    }
    return out;
  };

  const [x0 = 0, y0 = 0, z0 = 0, x1 = 0, y1 = 0, z1 = 0] = tree.box;
  return { low: [x0, y0, z0], high: [x1, y1, z1], nearest, crossings };
};
