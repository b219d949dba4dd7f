/** Line segments of the picture: whether two cross, and how far a point is from one. */
import type { Point } from '../types';

const turn = (a: Point, b: Point, c: Point): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Touching at an end does not count: two leaders may start from one anchor. */
export const cross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;

export const toSegment = ([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const way = dx * dx + dy * dy;
  const t = way === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / way));
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
};
