/**
 * Closed lines where sampled depths pass through zero (marching squares). Each side of a grid cell that the line crosses carries
 * one vertex, moved to where the depth itself is zero; so the loops close, never cross each other, and their vertices are exact.
 * The deep side lies on the left, seen with the first coordinate to the right and the second upwards. mm, plane coordinates.
 */
import type { Point2 } from './polygon';
import type { Samples } from './samples';

/** Depths nearer zero than this are zero, mm. */
const NIL_MM = 1e-6;

/**
 * The zero of the depth between p, where it is below zero, and q, where it is above: false position, an end that stays put twice
 * counting half (Illinois rule, common practice), because the depth has kinks.
 */
const zeroBetween = (p: Point2, q: Point2, below: number, above: number, depthAt: (at: Point2) => number): Point2 => {
  let [low, fLow, high, fHigh] = [0, below, 1, above];
  let stayed = 0;
  for (let n = 0; ; n++) {
    const t = low - (fLow * (high - low)) / (fHigh - fLow);
    const at: Point2 = [p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])];
    const f = depthAt(at);
    if (Math.abs(f) < NIL_MM || n === 20) return at;
    if (f < 0) {
      [low, fLow] = [t, f];
      if (stayed > 0) fHigh /= 2;
      stayed = 1;
    } else {
      [high, fHigh] = [t, f];
      if (stayed < 0) fLow /= 2;
      stayed = -1;
    }
  }
};

export const contoursOf = (samples: Samples, depthAt: (at: Point2) => number): Point2[][] => {
  const { size, depth, from, stepMm } = samples;
  const [columns, rows] = size;
  const depthOf = (n: number): number => depth[n] ?? 0;
  const pointOf = (n: number): Point2 => [from[0] + (n % columns) * stepMm, from[1] + Math.floor(n / columns) * stepMm];

  // A side of a cell is named by its lower sample, twice, plus one when it runs along the second coordinate.
  const next = new Map<number, number>();
  for (let j = 0; j + 1 < rows; j++)
    for (let i = 0; i + 1 < columns; i++) {
      const n = j * columns + i;
      const corners = [n, n + 1, n + 1 + columns, n + columns];
      const deep = corners.map((c) => depthOf(c) > 0);
      if (deep[0] === deep[1] && deep[1] === deep[2] && deep[2] === deep[3]) continue;
      const sides = [2 * n, 2 * (n + 1) + 1, 2 * (n + columns), 2 * n + 1];
      const middle = corners.reduce((sum, c) => sum + depthOf(c), 0) > 0;
      for (let k = 0; k < 4; k++) {
        if (!deep[k] || deep[(k + 1) % 4]) continue;
        // Walking round the cell the deep part is left by side k: the line runs from here to a side where it is entered.
        const turn = middle ? 1 : 3;
        let to = (k + turn) % 4;
        while (deep[to] || !deep[(to + 1) % 4]) to = (to + turn) % 4;
        next.set(sides[k] ?? 0, sides[to] ?? 0);
      }
    }

  const vertexOn = (side: number): Point2 => {
    const n = side >> 1;
    const m = n + (side % 2 === 0 ? 1 : columns);
    const [low, high] = depthOf(n) > 0 ? [m, n] : [n, m];
    return zeroBetween(pointOf(low), pointOf(high), depthOf(low), depthOf(high), depthAt);
  };
  const loops: Point2[][] = [];
  while (next.size > 0) {
    const [start = 0] = next.keys();
    const loop: Point2[] = [];
    for (let side: number | undefined = start; side !== undefined; ) {
      loop.push(vertexOn(side));
      const following = next.get(side);
      next.delete(side);
      side = following === start ? undefined : following;
    }
    if (loop.length >= 3) loops.push(loop);
  }
  return loops;
};
