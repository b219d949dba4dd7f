/**
 * From a thousand triangles to the few that are drawn: edges are collapsed, cheapest first, by how far the new corner lies off the
 * planes that it would stand for. What counts more costs more: a joint is told by the gap between its facets, so that a facet keeps
 * more of the triangles than a rough flank of the same size. Closed stays closed: an edge whose ends share other neighbours than the
 * corners of its two triangles is left.
 */
import FlatQueue from 'flatqueue';
import type { Mesh } from '../types';
import { errorAt, leastAt, quadricsOf, TERMS, type Weight } from './quadrics';
import { alive, bears, corner, fans, meshOf, type Normal, placeOf, putAt, smallest, squared, workOf } from './work';

/** A collapse leaves no corner narrower than this, rad, but where one was. */
const NARROW = (8 * Math.PI) / 180;
/** A corner of the surface keeps at least so many triangles round it. */
const LEAST_ROUND = 3;

interface Collapse {
  readonly a: number;
  readonly b: number;
  /** How often the ends had been moved when this was thought of: it is void when they have been since. */
  readonly age: number;
  readonly to: Normal;
}

/** The surface with at most so many triangles, or as few as it bears. Throws nothing; the same on every machine. */
export const coarsened = (mesh: Mesh, triangles: number, weight: Weight): Mesh => {
  const w = workOf(mesh);
  const q = quadricsOf(w, weight);
  const round = fans(w);
  const moved = new Uint32Array(w.p.length / 3);
  const queue = new FlatQueue<Collapse>();
  const sum = new Float64Array(TERMS);

  const fanOf = (v: number): readonly number[] => round.get(v) ?? [];
  const ageOf = (a: number, b: number): number => (moved[a] as number) + (moved[b] as number);
  const ringOf = (v: number): Set<number> => {
    const ring = new Set(fanOf(v).flatMap((t) => [corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)]));
    ring.delete(v);
    return ring;
  };
  const ask = (a: number, b: number): void => {
    for (let k = 0; k < TERMS; k++) sum[k] = (q[TERMS * a + k] as number) + (q[TERMS * b + k] as number);
    const [pa, pb] = [placeOf(w, a), placeOf(w, b)];
    const middle: Normal = [(pa[0] + pb[0]) / 2, (pa[1] + pb[1]) / 2, (pa[2] + pb[2]) / 2];
    const best = leastAt(sum, middle);
    const far = (best[0] - middle[0]) ** 2 + (best[1] - middle[1]) ** 2 + (best[2] - middle[2]) ** 2;
    const to = far > squared(w, a, b) ? middle : best;
    queue.push({ a, b, age: ageOf(a, b), to }, errorAt(sum, to));
  };
  const least = (fan: readonly number[]): number =>
    Math.min(NARROW, ...fan.map((t) => smallest(w, corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)))) - 1e-9;

  /** Puts a where the two shall be one, b's triangles with it; false where the surface would not bear it. */
  const collapsed = ({ a, b, to }: Collapse): boolean => {
    const [fa, fb] = [fanOf(a), fanOf(b)];
    const gone = fa.filter((t) => fb.includes(t));
    const others = ringOf(b);
    const shared = [...ringOf(a)].filter((v) => others.has(v));
    if (gone.length !== 2 || shared.length !== 2 || shared.some((v) => fanOf(v).length <= LEAST_ROUND)) return false;
    if (!bears(w, fa, gone, a, to, least(fa)) || !bears(w, fb, gone, b, to, least(fb))) return false;
    putAt(w, a, to);
    for (let k = 0; k < TERMS; k++) q[TERMS * a + k] = (q[TERMS * a + k] as number) + (q[TERMS * b + k] as number);
    for (const t of gone) w.t[3 * t] = -1;
    for (const t of fb) if (alive(w, t)) for (let k = 0; k < 3; k++) if (w.t[3 * t + k] === b) w.t[3 * t + k] = a;
    for (const v of shared)
      round.set(
        v,
        fanOf(v).filter((t) => alive(w, t)),
      );
    round.set(
      a,
      [...fa, ...fb].filter((t) => alive(w, t)),
    );
    round.delete(b);
    moved[a] = (moved[a] as number) + 1;
    return true;
  };

  for (const a of round.keys()) for (const b of ringOf(a)) if (a < b) ask(a, b);
  let left = mesh.indices.length / 3;
  while (left > triangles) {
    const next = queue.pop();
    if (next === undefined) break;
    if (!round.has(next.a) || !round.has(next.b) || next.age !== ageOf(next.a, next.b)) continue;
    if (!collapsed(next)) continue;
    left -= 2;
    for (const v of ringOf(next.a)) ask(next.a, v);
  }
  return meshOf(w);
};
