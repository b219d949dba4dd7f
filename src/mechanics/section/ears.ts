/**
 * Triangles of a figure with holes from its own corners: each hole is joined to what lies round it by a bridge, then ears are cut
 * off (Meisters 1975; bridges after Eberly, both from memory). Corners are numbered outline first, then hole after hole.
 */
import type { Point2 } from '../../anatomy/inside/polygon';
import { type Figure, SectionError } from './figure';

const cross = ([a0, b0]: Point2, [a1, b1]: Point2, [a, b]: Point2): number =>
  (a1 - a0) * (b - b0) - (b1 - b0) * (a - a0);

const holds = (p: Point2, q: Point2, r: Point2, x: Point2): boolean =>
  cross(p, q, x) >= 0 && cross(q, r, x) >= 0 && cross(r, p, x) >= 0;

/** Where in `ring` the bridge from corner m, the farthest of its hole along the first coordinate, may land. */
const landing = (points: readonly Point2[], ring: readonly number[], m: Point2): number => {
  const at = (i: number): Point2 => points[ring[(i + ring.length) % ring.length] ?? 0] ?? [0, 0];
  let [best, nearest, hit] = [-1, Number.POSITIVE_INFINITY, m];
  for (let i = 0; i < ring.length; i++) {
    const [p, q] = [at(i), at(i + 1)];
    if (p[1] > m[1] === q[1] > m[1]) continue;
    const a = p[0] + ((m[1] - p[1]) / (q[1] - p[1])) * (q[0] - p[0]);
    // The inside of the figure lies left of its sides, so only sides that rise bound it on this hand.
    if (a < m[0] || a >= nearest || q[1] < p[1]) continue;
    [nearest, hit] = [a, [a, m[1]]];
    best = p[0] > q[0] ? i : (i + 1) % ring.length;
  }
  if (best < 0) return best;
  const end = at(best);
  const [u, v, w] = cross(m, hit, end) >= 0 ? [m, hit, end] : [m, end, hit];
  // Another corner in the way: the one seen at the least angle is free.
  let flattest = Math.abs(end[1] - m[1]) / Math.max(end[0] - m[0], 1e-300);
  for (let i = 0; i < ring.length; i++) {
    const p = at(i);
    if (p[0] <= m[0] || cross(at(i - 1), p, at(i + 1)) > 0 || !holds(u, v, w, p)) continue;
    const slope = Math.abs(p[1] - m[1]) / (p[0] - m[0]);
    if (slope < flattest) [flattest, best] = [slope, i];
  }
  return facing(at, ring, best, m);
};

/** Of the places of one corner on the ring, which has several where bridges end, the one whose inside looks towards m. */
const facing = (at: (i: number) => Point2, ring: readonly number[], best: number, m: Point2): number => {
  for (let i = 0; i < ring.length; i++) {
    if (ring[i] !== ring[best]) continue;
    const [into, out] = [cross(at(i - 1), at(i), m) > 0, cross(at(i), at(i + 1), m) > 0];
    const isConvex = cross(at(i - 1), at(i), at(i + 1)) > 0;
    if (isConvex ? into && out : into || out) return i;
  }
  return best;
};

/** Corners as one ring that runs along each bridge twice. */
const bridged = (points: readonly Point2[], { outline, holes }: Figure): number[] => {
  const ring = outline.map((_, i) => i);
  let from = outline.length;
  const numbered = holes.map((hole) => {
    const corners = hole.map((_, i) => from + i);
    from += hole.length;
    const first = corners.reduce((m, i) => ((points[i]?.[0] ?? 0) > (points[m]?.[0] ?? 0) ? i : m));
    const start = corners.indexOf(first);
    return { first, corners: [...corners.slice(start), ...corners.slice(0, start)] };
  });
  // The farthest hole first: none that is still to come lies in the way of its bridge.
  numbered.sort((x, y) => (points[y.first]?.[0] ?? 0) - (points[x.first]?.[0] ?? 0));
  for (const { first, corners } of numbered) {
    const at = landing(points, ring, points[first] ?? [0, 0]);
    const onto = ring[at];
    if (onto === undefined) throw new SectionError('no mesh', 'a canal has no way to the outline');
    ring.splice(at + 1, 0, ...corners, first, onto);
  }
  return ring;
};

/** Three corner numbers a triangle, counter-clockwise. Throws SectionError when no ear is left, which no sound figure does. */
export const earsOf = (points: readonly Point2[], figure: Figure): number[] => {
  const ring = bridged(points, figure);
  const of = (i: number): Point2 => points[i] ?? [0, 0];
  const triangles: number[] = [];
  const isEar = (i: number): boolean => {
    const n = ring.length;
    const [p, q, r] = [ring[(i + n - 1) % n] ?? 0, ring[i] ?? 0, ring[(i + 1) % n] ?? 0];
    if (!(cross(of(p), of(q), of(r)) > 0)) return false;
    return ring.every((x) => x === p || x === q || x === r || !holds(of(p), of(q), of(r), of(x)));
  };
  let [at, tried] = [0, 0];
  while (ring.length > 3) {
    const n = ring.length;
    if (tried > n) throw new SectionError('no mesh', 'no corner of what is left can be cut off');
    if (isEar(at)) {
      triangles.push(ring[(at + n - 1) % n] ?? 0, ring[at] ?? 0, ring[(at + 1) % n] ?? 0);
      ring.splice(at, 1);
      tried = 0;
      // Every other corner, so that ears do not fan out from one.
      at = (at + 1) % ring.length;
    } else {
      at = (at + 1) % n;
      tried++;
    }
  }
  triangles.push(...ring);
  return triangles;
};
