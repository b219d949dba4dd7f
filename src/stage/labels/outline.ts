/** The convex outline of points of the picture, and whether a line runs over it. Pure; CSS px. */
import type { Point } from '../types';
import { cross } from './segments';

const turn = (a: Point, b: Point, c: Point): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

const half = (points: readonly Point[]): Point[] => {
  const chain: Point[] = [];
  for (const p of points) {
    for (;;) {
      const [last, above] = [chain.at(-1), chain.at(-2)];
      if (last === undefined || above === undefined || turn(above, last, p) > 0) break;
      chain.pop();
    }
    chain.push(p);
  }
  return chain.slice(0, -1);
};

/** Corners in order round (Andrew's monotone chain, Inform Process Lett 1979;9:216-219; from memory). */
export const outlineOf = (points: readonly Point[]): Point[] => {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [...half(sorted), ...half(sorted.toReversed())];
};

export const runsOver = (outline: readonly Point[], [a, b]: readonly [Point, Point]): boolean =>
  outline.some((corner, i) => cross(a, b, corner, outline[(i + 1) % outline.length] ?? corner));
