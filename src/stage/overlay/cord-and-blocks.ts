/** What is pulled is a taut cord of three threads, what is pressed a row of blocks: never told by colour alone. Screen shapes. Pure. */
import type { TokenName } from '../draw/tokens';
import type { Point } from '../types';
import type { Shape } from './shapes';

/** How wide, px, and at which ends a head points: out of a cord, on to a row of blocks. */
export interface Stroked {
  readonly widthPx: number;
  readonly heads: 'both' | 'last' | 'none';
}

export const lengthPx = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], i) => {
    const before = points[i - 1];
    return before === undefined ? sum : sum + Math.hypot(x - before[0], y - before[1]);
  }, 0);

/** The point so many px along a line, and those between two such. */
const cutBetween = (points: readonly Point[], fromPx: number, toPx: number): Point[] => {
  const out: Point[] = [];
  let way = 0;
  points.forEach((b, i) => {
    const a = points[i - 1];
    if (a === undefined) return;
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const at = (px: number): Point => {
      const t = long === 0 ? 0 : (px - way) / long;
      return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
    };
    if (way + long >= fromPx && way <= toPx) {
      if (out.length === 0) out.push(at(Math.max(fromPx, way)));
      out.push(at(Math.min(toPx, way + long)));
    }
    way += long;
  });
  return out;
};

const unit = (a: Point, b: Point): Point => {
  const way = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [(b[0] - a[0]) / way, (b[1] - a[1]) / way];
};

/** Beside a line, everywhere across its own way. */
const shift = (points: readonly Point[], px: number): Point[] =>
  points.map((p, i) => {
    const d = unit(points[i - 1] ?? p, points[i + 1] ?? p);
    return [p[0] - d[1] * px, p[1] + d[0] * px];
  });

const beyond = (from: Point, to: Point, px: number): Point => {
  const d = unit(from, to);
  return [to[0] + d[0] * px, to[1] + d[1] * px];
};

/** A triangle that points from a to b, its tip at b. */
const head = (a: Point, b: Point, size: number, fill: TokenName): Shape => {
  const d = unit(a, b);
  const at = (along: number, across: number): Point => [
    b[0] - d[0] * along - d[1] * across,
    b[1] - d[1] * along + d[0] * across,
  ];
  const points = [b, at(size, size * 0.6), at(size, -size * 0.6)];
  return { kind: 'area', points, fill, stroke: 'plate', width: 0.125 * size, opacity: 1 };
};

export const line = (points: readonly Point[], colour: TokenName, width: number): Shape => ({
  kind: 'line',
  points,
  colour,
  width,
  casing: 0,
});

/** Three taut threads: of ten parts of the width two outer ones take 1.8 each, the middle one 2.2. */
export const cord = (points: readonly Point[], { widthPx, heads }: Stroked): Shape[] => {
  const [first, second] = [points[0], points[1]];
  const [last, before] = [points.at(-1), points.at(-2)];
  if (first === undefined || second === undefined || last === undefined || before === undefined) return [];
  const u = widthPx / 10;
  const out = (from: Point, to: Point): Shape => head(from, beyond(from, to, 9 * u), 12 * u, 'pulled');
  return [
    line(points, 'plate', widthPx + 4),
    line(shift(points, -4 * u), 'pulled', 1.8 * u),
    line(points, 'pulled', 2.2 * u),
    line(shift(points, 4 * u), 'pulled', 1.8 * u),
    ...(heads === 'both' ? [out(second, first)] : []),
    ...(heads === 'none' ? [] : [out(before, last)]),
  ];
};

/** Blocks are so long for their width, with a gap of a quarter; heads press on the ends from outside, or on with the last. */
const BLOCK = 0.85;
const LEAST_BLOCK_PX = 4;

/** A row of blocks. `both`: heads press on its ends from outside. `last`: the row itself presses on, its tip at the last point. */
export const blocks = (points: readonly Point[], { widthPx, heads }: Stroked): Shape[] => {
  const whole = lengthPx(points);
  if (points.length < 2 || whole === 0) return [];
  const tip = heads === 'last' ? Math.min(whole * 0.5, 0.85 * widthPx + 5) : 0;
  const way = whole - tip;
  const count = Math.max(1, Math.round(way / (Math.max(LEAST_BLOCK_PX, BLOCK * widthPx) * 1.28)));
  const rows = Array.from({ length: count }, (_, i) =>
    line(cutBetween(points, (way * (i + 0.11)) / count, (way * (i + 0.89)) / count), 'pressed', widthPx),
  );
  const [first, last] = [points[0], points.at(-1)];
  const [start, end] = [cutBetween(points, 0, whole / 5).at(-1), cutBetween(points, whole * 0.8, whole)[0]];
  if (first === undefined || last === undefined || start === undefined || end === undefined) return [];
  const ends =
    heads === 'both'
      ? [
          head(beyond(start, first, 1.2 * widthPx), first, widthPx, 'pressed'),
          head(beyond(end, last, 1.2 * widthPx), last, widthPx, 'pressed'),
        ]
      : heads === 'last'
        ? [head(end, last, tip, 'pressed')]
        : [];
  return [line(points, 'plate', widthPx + 4), ...rows, ...ends];
};
