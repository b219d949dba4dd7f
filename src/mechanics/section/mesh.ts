/**
 * Triangles of a figure, fit for finite elements: ears of its corners, sides longer than an element halved, then the diagonals
 * turned until no corner lies in another triangle's circle (Lawson 1977, from memory). Sides of the figure are never turned.
 */
import type { Loop2 } from '../../anatomy/inside/polygon';
import { earsOf } from './ears';
import { type Figure, SectionError } from './figure';

export interface Triangulation {
  /** Two numbers a corner. */
  readonly at: Float64Array;
  /** Three corners a triangle, counter-clockwise; side e runs from corner e to the next of its triangle. */
  readonly corners: Int32Array;
  /** The same side seen from the other triangle; -1 on the border. */
  readonly twin: Int32Array;
  /** Loop on which each corner lies: 0 the outline, from 1 the holes; -1 within the bone. */
  readonly loop: Int32Array;
}

/** A mesh this large means that the figure was not made ready. */
const MOST_CORNERS = 3000;
/** Sides are halved from this many elements' length on: they come out on both sides of one. */
const LONG_ELEMENTS = 1.5;

const next = (e: number): number => (e % 3 === 2 ? e - 2 : e + 1);
const before = (e: number): number => (e % 3 === 0 ? e + 2 : e - 1);

class Growing {
  readonly a: number[] = [];
  readonly b: number[] = [];
  readonly corners: number[];
  readonly twin: number[];
  readonly loop: number[] = [];

  constructor(loops: readonly Loop2[], triangles: number[]) {
    loops.forEach((points, loop) => {
      for (const [a, b] of points) {
        this.a.push(a);
        this.b.push(b);
        this.loop.push(loop);
      }
    });
    this.corners = triangles;
    this.twin = triangles.map(() => -1);
    const open = new Map<number, number>();
    const n = this.a.length;
    for (let e = 0; e < triangles.length; e++) {
      const [p, q] = [triangles[e] ?? 0, triangles[next(e)] ?? 0];
      const other = open.get(q * n + p);
      if (other === undefined) open.set(p * n + q, e);
      else this.link(e, other);
    }
  }

  link(e: number, f: number): void {
    this.twin[e] = f;
    if (f >= 0) this.twin[f] = e;
  }

  private corner(e: number): number {
    return this.corners[e] ?? 0;
  }

  lengthOf(e: number): number {
    const [p, q] = [this.corner(e), this.corner(next(e))];
    return Math.hypot((this.a[q] ?? 0) - (this.a[p] ?? 0), (this.b[q] ?? 0) - (this.b[p] ?? 0));
  }

  /** True when the corner across side e lies in the circle of e's triangle: then the diagonal is the wrong one. */
  private isWrong(e: number, f: number): boolean {
    const d = this.corner(before(f));
    const [da, db] = [this.a[d] ?? 0, this.b[d] ?? 0];
    const seen = (i: number): readonly [number, number, number] => {
      const [x, y] = [(this.a[i] ?? 0) - da, (this.b[i] ?? 0) - db];
      return [x, y, x * x + y * y];
    };
    const [p, q, r] = [seen(this.corner(e)), seen(this.corner(next(e))), seen(this.corner(before(e)))];
    const [qr, rp, pq] = [q[0] * r[1] - q[1] * r[0], r[0] * p[1] - r[1] * p[0], p[0] * q[1] - p[1] * q[0]];
    const inside = p[2] * qr + q[2] * rp + r[2] * pq;
    const size = Math.abs(p[2] * qr) + Math.abs(q[2] * rp) + Math.abs(r[2] * pq);
    // Both new triangles must stand: the four corners are convex.
    return inside > 1e-10 * size && this.turned(e, f);
  }

  private turned(e: number, f: number): boolean {
    const [p, q, r, s] = [this.corner(e), this.corner(next(e)), this.corner(before(e)), this.corner(before(f))];
    const area = (i: number, j: number, k: number): number =>
      ((this.a[j] ?? 0) - (this.a[i] ?? 0)) * ((this.b[k] ?? 0) - (this.b[i] ?? 0)) -
      ((this.b[j] ?? 0) - (this.b[i] ?? 0)) * ((this.a[k] ?? 0) - (this.a[i] ?? 0));
    return area(r, p, s) > 0 && area(s, q, r) > 0;
  }

  /** Turns diagonals from the sides in `todo` on until none is wrong. */
  settle(todo: number[]): void {
    for (let e = todo.pop(); e !== undefined; e = todo.pop()) {
      const f = this.twin[e] ?? -1;
      if (f < 0 || !this.isWrong(e, f)) continue;
      const [e1, f1] = [before(e), before(f)];
      const [outE, outF] = [this.twin[e1] ?? -1, this.twin[f1] ?? -1];
      const [r, s] = [this.corner(e1), this.corner(f1)];
      this.corners[e] = s;
      this.corners[f] = r;
      this.link(e, outF);
      this.link(f, outE);
      this.link(e1, f1);
      todo.push(e, f, next(e), next(f));
    }
  }

  longestOf(t: number): number {
    let longest = t;
    for (const e of [t + 1, t + 2]) if (this.lengthOf(e) > this.lengthOf(longest)) longest = e;
    return longest;
  }

  /**
   * A side that is the longest of both its triangles, from neighbour to neighbour with ever longer sides (Rivara 1997, from
   * memory). Halving any other could put a corner next to one that is there.
   */
  longestNear(e: number): number {
    for (let at = e; ; ) {
      const f = this.twin[at] ?? -1;
      if (f < 0) return at;
      const other = this.longestOf(f - (f % 3));
      if (this.lengthOf(other) <= this.lengthOf(f)) return at;
      at = other;
    }
  }

  /** A new corner on the middle of side e. */
  halve(e: number): void {
    const m = this.a.length;
    const [p, q] = [this.corner(e), this.corner(next(e))];
    this.a.push(((this.a[p] ?? 0) + (this.a[q] ?? 0)) / 2);
    this.b.push(((this.b[p] ?? 0) + (this.b[q] ?? 0)) / 2);
    const f = this.twin[e] ?? -1;
    this.loop.push(f < 0 ? (this.loop[p] ?? -1) : -1);
    const [e2, eNew] = this.cut(e, m);
    const todo = [e2, eNew + 1, before(e)];
    if (f >= 0) {
      const [f2, fNew] = this.cut(f, m);
      this.link(e, fNew);
      this.link(eNew, f);
      todo.push(f2, fNew + 1, before(f));
    } else {
      this.twin[e] = -1;
      this.twin[eNew] = -1;
    }
    this.settle(todo);
  }

  /** Cuts the triangle of side e from m, on e, to the corner across: e keeps its first half, the new triangle has the other. */
  private cut(e: number, m: number): readonly [inner: number, added: number] {
    const [q, r] = [this.corner(next(e)), this.corner(before(e))];
    const added = this.corners.length;
    this.corners.push(m, q, r);
    this.twin.push(-1, -1, -1);
    this.link(added + 1, this.twin[next(e)] ?? -1);
    this.corners[next(e)] = m;
    this.link(next(e), added + 2);
    return [next(e), added];
  }
}

export const triangulate = (figure: Figure, elementMm: number): Triangulation => {
  const loops = [figure.outline, ...figure.holes];
  const mesh = new Growing(loops, earsOf(loops.flat(), figure));
  mesh.settle(mesh.corners.map((_, e) => e));
  for (let more = true; more; ) {
    more = false;
    if (mesh.a.length > MOST_CORNERS) throw new SectionError('no mesh', 'it does not come to an end; mend the outline');
    for (let t = 0; t < mesh.corners.length; t += 3) {
      const longest = mesh.longestOf(t);
      if (mesh.lengthOf(longest) <= LONG_ELEMENTS * elementMm) continue;
      mesh.halve(mesh.longestNear(longest));
      more = true;
    }
  }
  const at = new Float64Array(2 * mesh.a.length);
  for (let i = 0; i < mesh.a.length; i++) {
    at[2 * i] = mesh.a[i] ?? 0;
    at[2 * i + 1] = mesh.b[i] ?? 0;
  }
  return {
    at,
    corners: Int32Array.from(mesh.corners),
    twin: Int32Array.from(mesh.twin),
    loop: Int32Array.from(mesh.loop),
  };
};
