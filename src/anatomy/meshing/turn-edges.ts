/**
 * Turns edges of a surface under mending: the edge between two triangles becomes their other diagonal. Closed stays closed. For the
 * form of the triangles while vertices still move, and at the end for the surface: of the two diagonals the one that lies on it
 * (which runs along a shaft and not round it).
 */
import { dot } from '../../units';
import type { GridField } from './grid';
import { alive, corner, normalOf, smallest, TURN_COS, type Work } from './work';

/** An edge that bends more than this is a ridge of the bone: it is turned for form only to save a sliver. */
const RIDGE_COS = Math.cos((32 * Math.PI) / 180);
/** Below this, rad, a corner is a sliver's. */
export const SLIVER = (9 * Math.PI) / 180;
/** No corner is made narrower than this for the surface's sake, rad. */
const KEPT = (12 * Math.PI) / 180;
/** So much nearer to the surface must the other diagonal lie, mm. */
const NEARER = 0.02;

const directed = (w: Work): Map<number, number> => {
  const edges = new Map<number, number>();
  const count = w.p.length / 3;
  for (let t = 0; 3 * t < w.t.length; t++) {
    if (!alive(w, t)) continue;
    for (let k = 0; k < 3; k++) edges.set(corner(w, t, k) * count + corner(w, t, k + 1), t);
  }
  return edges;
};

const third = (w: Work, t: number, a: number, b: number): number =>
  [0, 1, 2].map((k) => corner(w, t, k)).find((v) => v !== a && v !== b) ?? -1;

/** The edge a b of triangle t, the triangle u on its other side, and their far corners c and d. */
interface Edge {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

/** Turns every edge that `gains` by it and leaves no triangle turned over. Returns how many. */
const turnEdges = (w: Work, gains: (edge: Edge) => boolean): number => {
  const edges = directed(w);
  const count = w.p.length / 3;
  let turned = 0;
  for (const [key, t] of [...edges]) {
    const [a, b] = [Math.floor(key / count), key % count];
    if (a > b || edges.get(key) !== t) continue;
    const u = edges.get(b * count + a);
    if (u === undefined) continue;
    const [c, d] = [third(w, t, a, b), third(w, u, a, b)];
    if (edges.has(c * count + d) || edges.has(d * count + c)) continue;
    if (!gains({ a, b, c, d })) continue;
    const [n, m] = [normalOf(w, a, b, c), normalOf(w, b, a, d)];
    const [q, r] = [normalOf(w, a, d, c), normalOf(w, d, b, c)];
    if (Math.min(dot(q, n), dot(q, m), dot(r, n), dot(r, m)) < TURN_COS) continue;
    w.t.set([a, d, c], 3 * t);
    w.t.set([d, b, c], 3 * u);
    for (const [x, y, f] of [
      [a, d, t],
      [d, c, t],
      [c, a, t],
      [d, b, u],
      [b, c, u],
      [c, d, u],
    ] as const)
      edges.set(x * count + y, f);
    edges.delete(a * count + b);
    edges.delete(b * count + a);
    turned++;
  }
  return turned;
};

const narrowest = (w: Work, { a, b, c, d }: Edge): readonly [now: number, turned: number] => [
  Math.min(smallest(w, a, b, c), smallest(w, b, a, d)),
  Math.min(smallest(w, a, d, c), smallest(w, d, b, c)),
];

/** Turns edges whose two triangles become better formed that way. Returns how many. */
export const turnForForm = (w: Work): number =>
  turnEdges(w, (edge) => {
    const { a, b, c, d } = edge;
    const [now, turned] = narrowest(w, edge);
    if (turned < now + 0.02) return false;
    return now <= SLIVER || dot(normalOf(w, a, b, c), normalOf(w, b, a, d)) >= RIDGE_COS;
  });

/** How far the middle of an edge lies off the surface, mm. */
const sag = ({ p }: Work, a: number, b: number, { value }: GridField): number => {
  const middle = (k: number): number => ((p[3 * a + k] as number) + (p[3 * b + k] as number)) / 2;
  return Math.abs(value(middle(0), middle(1), middle(2)));
};

/** Turns edges whose middle lies further off the surface than the other diagonal's would. Returns how many. */
export const turnForSurface = (w: Work, field: GridField): number =>
  turnEdges(w, (edge) => {
    const { a, b, c, d } = edge;
    if (sag(w, c, d, field) > sag(w, a, b, field) - NEARER) return false;
    const [now, turned] = narrowest(w, edge);
    return turned >= Math.min(now, KEPT);
  });
