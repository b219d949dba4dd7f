/**
 * Saint-Venant torsion by Prandtl's stress function on the section itself: lap(phi) = -2 in the bone, phi = 0 on the outline, phi
 * a constant of its own on every hole, such that the warping closes round it: the outflow of phi there is twice the hole's area.
 * J = 2 int(phi) + 2 sum(phi_hole A_hole); the stress of a torque T is T/J times the slope of phi, across it. By finite elements J
 * comes out a little low, never high. Bredt's formulas for thin walls are its limit. mm, N mm, MPa.
 */
import { integralsOf, type Point2 } from '../../anatomy/inside/polygon';
import { type Elements, eachStiffness, equationsOf, shapesOf } from './elements';
import type { Figure } from './figure';

export interface Torsion {
  /** Torsion constant: torque over shear modulus and twist per length. */
  readonly jMm4: number;
  /** Largest shear stress of a torque of 1 N mm, MPa, and where: it lies on the border. */
  readonly peakPerNmm: number;
  readonly peakAt: Point2;
}

/** Sides that turn more than this against each other meet in a corner of the section, about 20 degrees. */
const CORNER_COSINE = 0.94;

const next = (e: number): number => (e % 3 === 2 ? e - 2 : e + 1);

/** Flow of phi through the border into every node: what the equations of held nodes leave over. */
const flowsOf = (m: Elements, values: Float64Array, shapes: Float64Array): Float64Array => {
  const flows = shapes.map((x) => -2 * x);
  eachStiffness(m, (i, j, k) => {
    flows[i] = (flows[i] ?? 0) + k * (values[j] ?? 0);
    if (i !== j) flows[j] = (flows[j] ?? 0) + k * (values[i] ?? 0);
  });
  return flows;
};

/**
 * The steepest slope on the border, as the mean flow round each node where two sides follow each other without a corner, half a
 * side each way: facets stand for a round bone, and slopes at a point of one facet would follow the facets. In a corner the slope
 * is nought, or, at one that points into the bone, theory has no bound for it: corners are left out.
 */
const steepestOf = (m: Elements, flows: Float64Array): { readonly slope: number; readonly at: Point2 } => {
  const nodeOf = (e: number): number => m.nodes[6 * Math.floor(e / 3) + (e % 3)] ?? 0;
  const middleOf = (e: number): number => m.nodes[6 * Math.floor(e / 3) + 3 + (e % 3)] ?? 0;
  const way = (e: number): readonly [a: number, b: number, long: number] => {
    const [da, db] = [(m.cornerA[next(e)] ?? 0) - (m.cornerA[e] ?? 0), (m.cornerB[next(e)] ?? 0) - (m.cornerB[e] ?? 0)];
    const long = Math.hypot(da, db);
    return [da / long, db / long, long];
  };
  const ending = new Map<number, number>();
  for (const e of m.border) ending.set(nodeOf(next(e)), e);
  let slope = 0;
  let at: Point2 = [0, 0];
  for (const e of m.border) {
    const before = ending.get(nodeOf(e));
    if (before === undefined) continue;
    const [pa, pb, p] = way(before);
    const [qa, qb, q] = way(e);
    if (pa * qa + pb * qb < CORNER_COSINE) continue;
    const half = ((flows[middleOf(before)] ?? 0) + (flows[middleOf(e)] ?? 0)) / 2;
    const mean = (2 * Math.abs((flows[nodeOf(e)] ?? 0) + half)) / (p + q);
    if (mean > slope) [slope, at] = [mean, [m.cornerA[e] ?? 0, m.cornerB[e] ?? 0]];
  }
  return { slope, at };
};

export const torsionOf = (m: Elements, { holes }: Figure): Torsion => {
  const keep = new Int32Array(m.count).fill(-1);
  let free = 0;
  for (let n = 0; n < m.count; n++) if ((m.loop[n] ?? 0) < 0) keep[n] = free++;
  for (let n = 0; n < m.count; n++) if ((m.loop[n] ?? 0) > 0) keep[n] = free + (m.loop[n] ?? 0) - 1;
  const unknowns = free + holes.length;
  const pull = new Float64Array(unknowns);
  const add = (i: number, x: number): void => {
    if (i >= 0) pull[i] = (pull[i] ?? 0) + x;
  };
  const shapes = shapesOf(m);
  for (const [n, x] of shapes.entries()) add(keep[n] ?? -1, 2 * x);
  for (const [i, hole] of holes.entries()) add(free + i, 2 * integralsOf([hole]).area);
  const phi = Float64Array.from(pull);
  equationsOf(m, keep, unknowns).solve(phi);
  const jMm4 = pull.reduce((sum, x, i) => sum + x * (phi[i] ?? 0), 0);
  const values = Float64Array.from(keep, (i) => (i < 0 ? 0 : (phi[i] ?? 0)));
  const { slope, at } = steepestOf(m, flowsOf(m, values, shapes));
  return { jMm4, peakPerNmm: slope / jMm4, peakAt: at };
};
