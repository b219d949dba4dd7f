/**
 * Makes the triangles of a simplified surface well proportioned: flips edges, collapses slivers, slides vertices in their tangent
 * planes, and puts every vertex back on the surface. Closed stays closed; ridges are left where they are.
 */
import type { Mesh } from '../types';
import type { GridField } from './grid';

/** Corner angles wished for and tolerated, rad. */
const WISHED = (16 * Math.PI) / 180;
/** An edge that bends more than this is a ridge of the bone: it is flipped only to save a sliver. */
const RIDGE_COS = Math.cos((32 * Math.PI) / 180);
const SLIVER = (9 * Math.PI) / 180;
/** No triangle may turn further than this when a neighbour is moved. */
const TURN_COS = 0.35;
const ROUNDS = 10;

/** Points as 3 numbers a vertex, triangles as 3 indices each; a dead triangle has -1 first. */
interface Work {
  readonly p: Float64Array;
  readonly t: Int32Array;
}

type Normal = [number, number, number];

const along = (p: Float64Array, a: number, b: number, k: number): number =>
  (p[3 * b + k] as number) - (p[3 * a + k] as number);

const normalOf = ({ p }: Work, a: number, b: number, c: number): Normal => {
  const [ux, uy, uz] = [along(p, a, b, 0), along(p, a, b, 1), along(p, a, b, 2)];
  const [vx, vy, vz] = [along(p, a, c, 0), along(p, a, c, 1), along(p, a, c, 2)];
  const n: Normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const l = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) || 1;
  return [n[0] / l, n[1] / l, n[2] / l];
};
const dot = (a: Normal, b: Normal): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const squared = ({ p }: Work, a: number, b: number): number => {
  const x = (p[3 * a] as number) - (p[3 * b] as number);
  const y = (p[3 * a + 1] as number) - (p[3 * b + 1] as number);
  const z = (p[3 * a + 2] as number) - (p[3 * b + 2] as number);
  return x * x + y * y + z * z;
};

/** The corner between sides of squared lengths x and y, rad. */
const between = (opposite: number, x: number, y: number): number =>
  Math.acos(Math.min(1, Math.max(-1, (x + y - opposite) / (2 * Math.sqrt(x * y) || 1))));

/** Smallest corner angle of a triangle, rad. */
const smallest = (w: Work, a: number, b: number, c: number): number => {
  const [ab, bc, ca] = [squared(w, a, b), squared(w, b, c), squared(w, c, a)];
  return Math.min(between(bc, ab, ca), between(ca, ab, bc), between(ab, bc, ca));
};

const corner = (w: Work, t: number, k: number): number => w.t[3 * t + (k % 3)] as number;
/** `set` of a typed array is slow for three numbers. */
const put = ({ p }: Work, v: number, x: number, y: number, z: number): void => {
  p[3 * v] = x;
  p[3 * v + 1] = y;
  p[3 * v + 2] = z;
};
const putAt = (w: Work, v: number, q: readonly number[]): void =>
  put(w, v, q[0] as number, q[1] as number, q[2] as number);
const placeOf = ({ p }: Work, v: number): Normal => [
  p[3 * v] as number,
  p[3 * v + 1] as number,
  p[3 * v + 2] as number,
];
const alive = (w: Work, t: number): boolean => (w.t[3 * t] as number) >= 0;

/** Triangles round every vertex. */
const fans = (w: Work): Map<number, number[]> => {
  const round = new Map<number, number[]>();
  for (let t = 0; 3 * t < w.t.length; t++) {
    if (!alive(w, t)) continue;
    for (let k = 0; k < 3; k++) {
      const v = corner(w, t, k);
      const list = round.get(v);
      if (list) list.push(t);
      else round.set(v, [t]);
    }
  }
  return round;
};

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

/** Flips edges whose two triangles become better that way. Returns how many. */
const flip = (w: Work): number => {
  const edges = directed(w);
  const count = w.p.length / 3;
  let flipped = 0;
  for (const [key, t] of [...edges]) {
    const [a, b] = [Math.floor(key / count), key % count];
    if (a > b || edges.get(key) !== t) continue;
    const u = edges.get(b * count + a);
    if (u === undefined) continue;
    const [c, d] = [third(w, t, a, b), third(w, u, a, b)];
    if (edges.has(c * count + d) || edges.has(d * count + c)) continue;
    const before = Math.min(smallest(w, a, b, c), smallest(w, b, a, d));
    const after = Math.min(smallest(w, a, d, c), smallest(w, d, b, c));
    if (after < before + 0.02) continue;
    const [n, m] = [normalOf(w, a, b, c), normalOf(w, b, a, d)];
    if (dot(n, m) < RIDGE_COS && before > SLIVER) continue;
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
    flipped++;
  }
  return flipped;
};

const onto = (w: Work, v: number, field: GridField, gradient: Float64Array): void => {
  for (let n = 0; n < 3; n++) {
    const [x, y, z] = placeOf(w, v);
    const d = field.look(x, y, z, gradient);
    const [gx, gy, gz] = [gradient[0] as number, gradient[1] as number, gradient[2] as number];
    const g = gx * gx + gy * gy + gz * gz;
    if (g < 1e-6) return;
    // A step longer than a millimetre means the gradient can't be trusted here.
    const step = Math.max(-1, Math.min(1, d / Math.sqrt(g))) / Math.sqrt(g);
    put(w, v, x - step * gx, y - step * gy, z - step * gz);
  }
};

/** True when the triangles of `fan` but those in `gone` stay outward and no worse than `least` with vertex v moved to q. */
const bears = (
  w: Work,
  fan: readonly number[],
  gone: readonly number[],
  v: number,
  q: readonly number[],
  least: number,
): boolean => {
  const kept = placeOf(w, v);
  const rest = fan.filter((t) => !gone.includes(t));
  const before = rest.map((t) => normalOf(w, corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)));
  putAt(w, v, q);
  const good = rest.every((t, i) => {
    const [a, b, c] = [corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)];
    return dot(normalOf(w, a, b, c), before[i] as Normal) > TURN_COS && smallest(w, a, b, c) > least;
  });
  putAt(w, v, kept);
  return good;
};

/** Slides every vertex towards the middle of its neighbours, in its tangent plane, and back on to the surface. */
const relax = (w: Work, field: GridField, share: number): void => {
  const gradient = new Float64Array(3);
  for (const [v, fan] of fans(w)) {
    const ring = new Set(fan.flatMap((t) => [corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)]));
    ring.delete(v);
    const way = [0, 0, 0];
    for (const n of ring)
      for (let k = 0; k < 3; k++)
        way[k] = (way[k] ?? 0) + ((w.p[3 * n + k] as number) - (w.p[3 * v + k] as number)) / ring.size;
    field.look(w.p[3 * v] as number, w.p[3 * v + 1] as number, w.p[3 * v + 2] as number, gradient);
    const g = (gradient[0] as number) ** 2 + (gradient[1] as number) ** 2 + (gradient[2] as number) ** 2 || 1;
    const out = way.reduce((sum, x, k) => sum + x * (gradient[k] as number), 0) / g;
    const home = placeOf(w, v);
    const worst = Math.min(...fan.map((t) => smallest(w, corner(w, t, 0), corner(w, t, 1), corner(w, t, 2))));
    const q = way.map((x, k) => (home[k] as number) + share * (x - out * (gradient[k] as number)));
    putAt(w, v, q);
    onto(w, v, field, gradient);
    const there = placeOf(w, v);
    putAt(w, v, home);
    if (bears(w, fan, [], v, there, Math.min(worst, SLIVER) - 1e-9)) putAt(w, v, there);
  }
};

/** Collapses the shortest edge of triangles that are too thin. Returns how many. */
const collapse = (w: Work, field: GridField): number => {
  const gradient = new Float64Array(3);
  let collapsed = 0;
  for (let t = 0; 3 * t < w.t.length; t++) {
    if (!alive(w, t)) continue;
    const [a, b, c] = [corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)];
    const worst = smallest(w, a, b, c);
    if (worst > SLIVER) continue;
    const round = fans(w);
    const edges = (
      [
        [a, b],
        [b, c],
        [c, a],
      ] as const
    )
      .map(([x, y]) => [x, y] as const)
      .sort((m, n) => squared(w, ...m) - squared(w, ...n));
    for (const [x, y] of edges) {
      const [fx, fy] = [round.get(x) ?? [], round.get(y) ?? []];
      const ringOf = (fan: readonly number[]) =>
        new Set(fan.flatMap((f) => [corner(w, f, 0), corner(w, f, 1), corner(w, f, 2)]));
      const common = [...ringOf(fx)].filter((v) => v !== x && v !== y && ringOf(fy).has(v));
      if (common.length !== 2) continue;
      const gone = fx.filter((f) => fy.includes(f));
      const [here, there] = [placeOf(w, x), placeOf(w, y)];
      putAt(
        w,
        x,
        here.map((n, k) => (n + (there[k] ?? 0)) / 2),
      );
      onto(w, x, field, gradient);
      const middle = placeOf(w, x);
      putAt(w, x, here);
      const to = [middle, here, there].find((q) => bears(w, fx, gone, x, q, worst) && bears(w, fy, gone, y, q, worst));
      if (to === undefined) continue;
      putAt(w, x, to);
      for (const f of gone) w.t[3 * f] = -1;
      for (const f of fy) if (alive(w, f)) for (let k = 0; k < 3; k++) if (w.t[3 * f + k] === y) w.t[3 * f + k] = x;
      collapsed++;
      break;
    }
  }
  return collapsed;
};

const worstOf = (w: Work): number => {
  let worst = Number.POSITIVE_INFINITY;
  for (let t = 0; 3 * t < w.t.length; t++)
    if (alive(w, t)) worst = Math.min(worst, smallest(w, corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)));
  return worst;
};

/** Smallest corner angle of all triangles, rad. */
export const leastAngle = (mesh: Mesh): number =>
  worstOf({ p: Float64Array.from(mesh.positions), t: Int32Array.from(mesh.indices) });

const meshOf = (w: Work): Mesh => {
  const place = new Map<number, number>();
  const positions: number[] = [];
  const indices: number[] = [];
  for (let t = 0; 3 * t < w.t.length; t++) {
    if (!alive(w, t)) continue;
    for (let k = 0; k < 3; k++) {
      const v = corner(w, t, k);
      let at = place.get(v);
      if (at === undefined) {
        at = place.size;
        place.set(v, at);
        positions.push(...w.p.slice(3 * v, 3 * v + 3));
      }
      indices.push(at);
    }
  }
  return { positions: new Float32Array(positions), indices: new Uint32Array(indices) };
};

/** A closed mesh near the field's surface with better triangles on it; a few fewer where slivers were. */
export const repaired = (mesh: Mesh, field: GridField): Mesh => {
  const w: Work = { p: Float64Array.from(mesh.positions), t: Int32Array.from(mesh.indices) };
  const gradient = new Float64Array(3);
  for (let v = 0; 3 * v < w.p.length; v++) onto(w, v, field, gradient);
  for (let round = 0; round < ROUNDS; round++) {
    flip(w);
    relax(w, field, 0.3);
    flip(w);
    collapse(w, field);
    if (round > 0 && worstOf(w) > WISHED) break;
  }
  return meshOf(w);
};

/** The same triangles moved on to another surface near by: vertices only. */
export const projected = (mesh: Mesh, field: GridField): Mesh => {
  const w: Work = { p: Float64Array.from(mesh.positions), t: Int32Array.from(mesh.indices) };
  const gradient = new Float64Array(3);
  for (let v = 0; 3 * v < w.p.length; v++) onto(w, v, field, gradient);
  for (let n = 0; n < ROUNDS && worstOf(w) < SLIVER; n++) relax(w, field, 0.3);
  return { positions: Float32Array.from(w.p), indices: mesh.indices };
};
