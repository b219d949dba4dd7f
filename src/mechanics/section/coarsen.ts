/**
 * A figure made ready to be meshed: sides far shorter than its elements are merged, each pair into one corner that leaves the area
 * of the loop as it was. Second moments then change by the fourth power of the sides' length. Lengths in mm.
 */
import type { Loop2, Point2 } from '../../anatomy/inside/polygon';
import type { Figure } from './figure';

/** Elements as long as this share of the wall, and so many round a figure, at least and at most. */
const WALL_SHARE = 0.6;
const LEAST_ROUND = 48;
const MOST_ROUND = 150;
/** Sides shorter than this share of an element are merged; a corner moves at most this share of the wall for it. */
const SHORT_SHARE = 0.5;
const MOVED_SHARE = 0.02;
/** A corner nearer than this share of the wall to the line of its neighbours is none: it would only make slivers. */
const FLAT_SHARE = 1e-6;

const lengthOf = (p: Point2, q: Point2): number => Math.sqrt((q[0] - p[0]) ** 2 + (q[1] - p[1]) ** 2);
const perimeterOf = (loop: Loop2): number =>
  loop.reduce((sum, p, i) => sum + lengthOf(p, loop[(i + 1) % loop.length] ?? p), 0);

export interface Sizes {
  /** Mean thickness: of a thin wall its thickness, of a full circle its radius. */
  readonly wallMm: number;
  readonly elementMm: number;
}

export const sizesOf = ({ outline, holes }: Figure, areaMm2: number): Sizes => {
  const round = [outline, ...holes].reduce((sum, loop) => sum + perimeterOf(loop), 0);
  const wallMm = (2 * areaMm2) / round;
  const elementMm = Math.max(round / MOST_ROUND, Math.min(WALL_SHARE * wallMm, round / LEAST_ROUND));
  return { wallMm, elementMm };
};

/** The corner that replaces side bc between a and d, on the middle of bc, where it leaves the area as it was. */
const merged = (a: Point2, b: Point2, c: Point2, d: Point2): Point2 | null => {
  const long = lengthOf(a, d);
  if (long === 0) return null;
  const [na, nb] = [-(d[1] - a[1]) / long, (d[0] - a[0]) / long];
  const height = (p: Point2): number => (p[0] - a[0]) * na + (p[1] - a[1]) * nb;
  const twice = (p: Point2, q: Point2): number => (p[0] - a[0]) * (q[1] - a[1]) - (q[0] - a[0]) * (p[1] - a[1]);
  const middle: Point2 = [(b[0] + c[0]) / 2, (b[1] + c[1]) / 2];
  const up = -(twice(b, c) + twice(c, d)) / long - height(middle);
  return [middle[0] + up * na, middle[1] + up * nb];
};

/** How far p lies from the line through q and r. */
const off = (p: Point2, q: Point2, r: Point2): number =>
  Math.abs((r[0] - q[0]) * (p[1] - q[1]) - (r[1] - q[1]) * (p[0] - q[0])) / Math.max(lengthOf(q, r), 1e-300);

const coarsened = (loop: Loop2, shortMm: number, movedMm: number): Loop2 => {
  const points = [...loop];
  /** Length of the side that begins at each corner; one that must stay counts as endless. */
  const sides = points.map((p, i) => lengthOf(p, points[(i + 1) % points.length] ?? p));
  for (;;) {
    let [least, at] = [shortMm, -1];
    for (let i = 0; i < sides.length; i++) {
      const side = sides[i] ?? 0;
      if (side < least) [least, at] = [side, i];
    }
    const n = points.length;
    if (at < 0 || n <= 6) return points;
    const [a, b, c, d] = [points[(at + n - 1) % n], points[at], points[(at + 1) % n], points[(at + 2) % n]];
    if (!a || !b || !c || !d) return points;
    const p = merged(a, b, c, d);
    const fits = p && off(b, a, p) < movedMm && off(c, p, d) < movedMm && off(p, b, c) < movedMm;
    if (!p || !fits) {
      sides[at] = Number.POSITIVE_INFINITY;
      continue;
    }
    points[at] = p;
    sides[at] = lengthOf(p, d);
    sides[(at + n - 1) % n] = lengthOf(a, p);
    points.splice((at + 1) % n, 1);
    sides.splice((at + 1) % n, 1);
  }
};

const withoutFlat = (loop: Loop2, flatMm: number): Loop2 => {
  const points: Point2[] = [];
  loop.forEach((p, i) => {
    const [a, b] = [points.at(-1) ?? loop.at(-1), loop[(i + 1) % loop.length]];
    if (!a || !b || off(p, a, b) > flatMm) points.push(p);
  });
  return points;
};

export const coarsenedFigure = ({ outline, holes }: Figure, { wallMm, elementMm }: Sizes): Figure => {
  const ready = (loop: Loop2): Loop2 =>
    withoutFlat(coarsened(loop, SHORT_SHARE * elementMm, MOVED_SHARE * wallMm), FLAT_SHARE * wallMm);
  return { outline: ready(outline), holes: holes.map(ready) };
};
