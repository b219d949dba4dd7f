/** What can be wrong with labels at rest, counted by kind: each is written from the rule, not from the code that keeps it. */
import type { PlacedLabel } from '../../../../src/stage/labels/layout';
import type { Point } from '../../../../src/stage/types';

export interface Extent {
  readonly width: number;
  readonly height: number;
}

export type Fault =
  /** Two texts lie on each other. */
  | 'overlap'
  /** Two leaders cross. */
  | 'crossing'
  /** A text reaches out of the picture. */
  | 'cut'
  /** A leader runs through a text that is not its own. */
  | 'through'
  /** A dot lies under a text, its own (the same id twice) or another. */
  | 'under'
  /** A leader passes within 4 px of a dot that is not its own. */
  | 'close';

/** The look document's measure of closeness (section 6), px. */
export const CLOSE_PX = 4;
/** Places are sums of doubles. */
const SLACK_PX = 1e-6;

interface Rect {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

type Segment = readonly [Point, Point];

/** Shares of the segment inside the rectangle (Liang and Barsky's four half planes); null when it misses. */
const clip = ([a, b]: Segment, { x0, y0, x1, y1 }: Rect): readonly [number, number] | null => {
  let [from, to] = [0, 1];
  for (const [p, d, low, high] of [
    [a[0], b[0] - a[0], x0, x1],
    [a[1], b[1] - a[1], y0, y1],
  ] as const) {
    if (Math.abs(d) < 1e-12) {
      if (p <= low || p >= high) return null;
      continue;
    }
    const [s, t] = d > 0 ? [(low - p) / d, (high - p) / d] : [(high - p) / d, (low - p) / d];
    from = Math.max(from, s);
    to = Math.min(to, t);
  }
  return from < to ? [from, to] : null;
};

/** Both segments pass through one point that is an end of neither: solved as two equations. */
const cross = ([a, b]: Segment, [c, d]: Segment): boolean => {
  const [rx, ry, sx, sy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const det = rx * sy - ry * sx;
  if (Math.abs(det) < 1e-9) return false;
  const [qx, qy] = [c[0] - a[0], c[1] - a[1]];
  const [t, u] = [(qx * sy - qy * sx) / det, (qx * ry - qy * rx) / det];
  return t > 1e-9 && t < 1 - 1e-9 && u > 1e-9 && u < 1 - 1e-9;
};

const distance = ([x, y]: Point, [a, b]: Segment): number => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const way = dx * dx + dy * dy;
  const t = way === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / way));
  return Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
};

const segmentsOf = ({ leader: [edge, elbow, end] }: PlacedLabel): readonly Segment[] => [
  [edge, elbow],
  [elbow, end],
];

/** Every fault with the labels it concerns. */
export const faultsOf = (
  placed: readonly PlacedLabel[],
  extentOf: (id: string) => Extent,
  box: Extent,
): { readonly fault: Fault; readonly ids: readonly string[] }[] => {
  const out: { fault: Fault; ids: string[] }[] = [];
  const rects = new Map(
    placed.map((label): [PlacedLabel, Rect] => {
      const { width, height } = extentOf(label.id);
      return [label, { x0: label.x, y0: label.y, x1: label.x + width, y1: label.y + height }];
    }),
  );
  for (const [i, a] of placed.entries()) {
    const r = rects.get(a);
    if (r === undefined) continue;
    if (r.x0 < -SLACK_PX || r.y0 < -SLACK_PX || r.x1 > box.width + SLACK_PX || r.y1 > box.height + SLACK_PX)
      out.push({ fault: 'cut', ids: [a.id] });
    for (const [j, b] of placed.entries()) {
      const q = rects.get(b);
      if (q === undefined) continue;
      const dot = b.leader[2];
      if (dot[0] > r.x0 && dot[0] < r.x1 && dot[1] > r.y0 && dot[1] < r.y1)
        out.push({ fault: 'under', ids: [a.id, b.id] });
      if (i === j) continue;
      if (segmentsOf(b).some((segment) => clip(segment, r) !== null)) out.push({ fault: 'through', ids: [b.id, a.id] });
      if (segmentsOf(a).some((segment) => distance(dot, segment) < CLOSE_PX))
        out.push({ fault: 'close', ids: [a.id, b.id] });
      if (i >= j) continue;
      const apart = Math.max(q.x0 - r.x1, r.x0 - q.x1, q.y0 - r.y1, r.y0 - q.y1);
      if (apart < -SLACK_PX) out.push({ fault: 'overlap', ids: [a.id, b.id] });
      if (segmentsOf(a).some((s) => segmentsOf(b).some((t) => cross(s, t))))
        out.push({ fault: 'crossing', ids: [a.id, b.id] });
    }
  }
  return out;
};

export const countOf = (faults: ReturnType<typeof faultsOf>): Record<Fault, number> => {
  const count: Record<Fault, number> = { overlap: 0, crossing: 0, cut: 0, through: 0, under: 0, close: 0 };
  for (const { fault } of faults) count[fault] += 1;
  return count;
};
