/**
 * Makes the triangles of a simplified surface well proportioned: puts every vertex on the surface, turns edges, collapses slivers, slides
 * vertices in their tangent planes where triangles are to be even, and lays the edges along the surface. Closed stays closed; ridges are
 * left where they are.
 */
import type { Mesh } from '../types';
import type { GridField } from './grid';
import { SLIVER, turnForForm, turnForSurface } from './turn-edges';
import {
  alive,
  bears,
  corner,
  fans,
  meshOf,
  placeOf,
  put,
  putAt,
  smallest,
  squared,
  type Work,
  workOf,
  worstOf,
} from './work';

/** Corner angle wished for, rad. */
const WISHED = (16 * Math.PI) / 180;
const ROUNDS = 10;
/** How far towards the middle of its neighbours a vertex is slid at once. */
const SLIDE = 0.3;
/** Turning one edge can make another worth turning; this many times at most. */
const SETTLINGS = 6;

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

/** Smallest corner angle of all triangles, rad. */
export const leastAngle = (mesh: Mesh): number => worstOf(workOf(mesh));

const mended = (mesh: Mesh, field: GridField, slide: number): Mesh => {
  const w = workOf(mesh);
  const gradient = new Float64Array(3);
  for (let v = 0; 3 * v < w.p.length; v++) onto(w, v, field, gradient);
  for (let round = 0; round < ROUNDS; round++) {
    turnForForm(w);
    if (slide > 0) {
      relax(w, field, slide);
      turnForForm(w);
    }
    collapse(w, field);
    if (round > 0 && worstOf(w) > WISHED) break;
  }
  for (let n = 0; n < SETTLINGS && turnForSurface(w, field) > 0; n++);
  return meshOf(w);
};

/** A closed mesh near the field's surface with better triangles on it, where they are; a few fewer where slivers were. */
export const repaired = (mesh: Mesh, field: GridField): Mesh => mended(mesh, field, 0);

/** The same with vertices slid towards the middle of their neighbours: triangles of one size, wherever they were small or large. */
export const evened = (mesh: Mesh, field: GridField): Mesh => mended(mesh, field, SLIDE);

/** Triangles of another foot are let be as they are down to this corner, rad: to better them is to move what was fitted. */
const LET_BE = (5.5 * Math.PI) / 180;

/** The same triangles moved on to another surface near by: vertices only. */
export const projected = (mesh: Mesh, field: GridField): Mesh => {
  const w = workOf(mesh);
  const gradient = new Float64Array(3);
  for (let v = 0; 3 * v < w.p.length; v++) onto(w, v, field, gradient);
  for (let n = 0; n < ROUNDS && worstOf(w) < LET_BE; n++) relax(w, field, SLIDE);
  return { positions: Float32Array.from(w.p), indices: mesh.indices };
};
