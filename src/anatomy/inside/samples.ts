/** Depths of a cut on a grid: below zero in the cortex and off the bone, above it in what the cortex encloses. mm, plane coordinates. */
import { depthUnder, type Facet } from './depth';
import type { Loop2, Point2 } from './polygon';
import type { WallOfBone } from './wall';

export interface Samples {
  readonly from: Point2;
  readonly stepMm: number;
  /** Samples along the first and the second coordinate. */
  readonly size: readonly [number, number];
  readonly depth: Float64Array;
}

export const extentOf = (loops: readonly Loop2[], i: 0 | 1): readonly [low: number, high: number] => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const loop of loops)
    for (const p of loop) {
      low = Math.min(low, p[i]);
      high = Math.max(high, p[i]);
    }
  return [low, high];
};

/** Where the line of constant second coordinate enters and leaves the bone. */
const crossings = (outer: readonly Loop2[], b: number): number[] => {
  const at: number[] = [];
  for (const loop of outer)
    loop.forEach(([a0, b0], i) => {
      const [a1, b1] = loop[(i + 1) % loop.length] ?? [a0, b0];
      if (b0 > b !== b1 > b) at.push(a0 + ((b - b0) / (b1 - b0)) * (a1 - a0));
    });
  return at.sort((x, y) => x - y);
};

/** Least depth under any facet that is felt at p; `deepMm` where none is. */
export const depthAt = (facets: readonly Facet[], wall: WallOfBone, [up, across]: Point2, deepMm: number): number => {
  let depth = deepMm;
  for (const facet of facets) {
    const { from, to } = facet;
    if (up < from[0] || up > to[0] || across < from[1] || across > to[1]) continue;
    depth = depthUnder(facet, wall, up, across, depth);
  }
  return depth;
};

/** `deepMm` stands for everything deeper. */
export const sampleDepths = (
  outer: readonly Loop2[],
  facets: readonly Facet[],
  wall: WallOfBone,
  stepMm: number,
  deepMm: number,
): Samples => {
  const [a0, a1] = extentOf(outer, 0);
  const [b0, b1] = extentOf(outer, 1);
  // The margin keeps every border inside the grid.
  const from: Point2 = [a0 - 1.5 * stepMm, b0 - 1.5 * stepMm];
  const size = [Math.ceil((a1 - a0) / stepMm) + 4, Math.ceil((b1 - b0) / stepMm) + 4] as const;
  const off = Number.NEGATIVE_INFINITY;
  const depth = new Float64Array(size[0] * size[1]).fill(off);
  for (let j = 0; j < size[1]; j++) {
    const at = crossings(outer, from[1] + j * stepMm);
    for (let k = 0; k + 1 < at.length; k += 2) {
      const first = Math.ceil(((at[k] ?? 0) - from[0]) / stepMm);
      const last = Math.floor(((at[k + 1] ?? 0) - from[0]) / stepMm);
      depth.fill(deepMm, j * size[0] + first, j * size[0] + last + 1);
    }
  }
  const column = (x: number): number => Math.max(0, Math.ceil((x - from[0]) / stepMm));
  const row = (x: number): number => Math.max(0, Math.ceil((x - from[1]) / stepMm));
  for (const facet of facets)
    for (let j = row(facet.from[1]); j < Math.min(row(facet.to[1]), size[1]); j++)
      for (let i = column(facet.from[0]); i < Math.min(column(facet.to[0]), size[0]); i++) {
        const n = j * size[0] + i;
        const here = depth[n] ?? off;
        if (here > off) depth[n] = depthUnder(facet, wall, from[0] + i * stepMm, from[1] + j * stepMm, here);
      }
  return { from, stepMm, size, depth };
};
