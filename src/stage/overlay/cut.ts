/** What runs behind the bone in question is cut at its outline: nothing lies over its bands and its break. Pure; CSS px. */
import type { Point } from '../types';

/** The stretch of a segment (0..1) that lies within a convex outline; null when none does. */
const within = (outline: readonly Point[], a: Point, b: Point): readonly [from: number, to: number] | null => {
  let [from, to] = [0, 1];
  // Corners run round one way or the other: inside is the side of the middle.
  const middle = outline.reduce<Point>(([x, y], p) => [x + p[0] / outline.length, y + p[1] / outline.length], [0, 0]);
  for (const [i, corner] of outline.entries()) {
    const next = outline[(i + 1) % outline.length] ?? corner;
    const side = ([x, y]: Point): number =>
      (next[0] - corner[0]) * (y - corner[1]) - (next[1] - corner[1]) * (x - corner[0]);
    const sign = Math.sign(side(middle));
    const [da, db] = [sign * side(a), sign * side(b)];
    if (da < 0 && db < 0) return null;
    if (da < 0) from = Math.max(from, da / (da - db));
    else if (db < 0) to = Math.min(to, da / (da - db));
  }
  return from < to ? [from, to] : null;
};

/** The pieces of a line outside a convex outline, in its order. An outline of less than three corners hides nothing. */
export const piecesOutside = (points: readonly Point[], outline: readonly Point[]): Point[][] => {
  if (outline.length < 3) return [[...points]];
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  const end = (): void => {
    if (piece.length > 1) pieces.push(piece);
    piece = [];
  };
  points.forEach((b, i) => {
    const a = points[i - 1];
    if (a === undefined) return;
    const hidden = within(outline, a, b);
    const at = (t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
    if (hidden === null) {
      if (piece.length === 0) piece.push(a);
      piece.push(b);
      return;
    }
    if (hidden[0] > 0) {
      if (piece.length === 0) piece.push(a);
      piece.push(at(hidden[0]));
    }
    end();
    if (hidden[1] < 1) piece = [at(hidden[1]), b];
  });
  end();
  return pieces;
};

export const isInsideOutline = (p: Point, outline: readonly Point[]): boolean =>
  outline.length > 2 && within(outline, p, [p[0] + 1e-3, p[1]]) !== null;
