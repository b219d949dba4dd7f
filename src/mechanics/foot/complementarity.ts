/**
 * Forces that can only pull or only press. Each of m elements has a force lambda >= 0, a stiffness k and a gap g: elongation
 * d = d0 - C lambda, and either lambda = 0 with d <= g, or lambda = k (d - g). As a linear complementarity problem:
 * w = (C + 1/k) lambda - (d0 - g), w >= 0, lambda >= 0, w . lambda = 0. C is symmetric positive semidefinite, so the answer is unique:
 * it is the minimum of a convex energy. Solved by block pivoting with single pivots when blocks stop helping (Judice and Pires 1994,
 * from memory): finite for such matrices, and bounded here.
 */
import { factorLdl, type LdlFactor, solveLdlInto } from '../frame/ldl';

export interface Complementarity {
  readonly m: number;
  /** m x m row-major: C with 1/k added on its diagonal. */
  readonly matrix: Float64Array;
  /** d0 - g. */
  readonly reach: Float64Array;
}

/** What pulls and presses, with the factor of its part of the matrix: the same again for another reach costs a solution alone. */
export interface Settled {
  readonly active: readonly number[];
  readonly factor: LdlFactor;
}

export type ComplementaritySolution =
  | { readonly ok: true; readonly force: Float64Array; readonly pivots: number; readonly settled: Settled }
  | { readonly ok: false; readonly reason: 'singular' | 'not settled' };

/** Blocks that do not lessen the number of wrong signs, before single pivots begin. */
const PATIENCE = 3;
export const MOST_PIVOTS = 400;

/** A start from these. */
export const settledOn = ({ m, matrix }: Pick<Complementarity, 'm' | 'matrix'>, active: readonly number[]): Settled => {
  const n = active.length;
  const part = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    const row = (active[i] as number) * m;
    for (let j = 0; j <= i; j++) part[i * n + j] = matrix[row + (active[j] as number)] as number;
  }
  return { active, factor: factorLdl(part, n) };
};

/** Starts from `hint` (settled before with the same matrix), or from all whose free elongation exceeds their gap. */
export const solveComplementarity = (problem: Complementarity, hint?: Settled): ComplementaritySolution => {
  const { m, matrix, reach } = problem;
  const on = new Uint8Array(m);
  if (hint) for (const i of hint.active) on[i] = 1;
  else for (let i = 0; i < m; i++) on[i] = (reach[i] as number) > 0 ? 1 : 0;
  const force = new Float64Array(m);
  let largest = 0;
  for (let i = 0; i < m; i++) largest = Math.max(largest, Math.abs(reach[i] as number));
  const close = 1e-12 * Math.max(largest, 1e-9);
  let [fewest, patience] = [m + 1, PATIENCE];
  for (let pivots = 0; pivots < MOST_PIVOTS; pivots++) {
    let settled = pivots === 0 ? hint : undefined;
    if (!settled) {
      const active: number[] = [];
      for (let i = 0; i < m; i++) if (on[i]) active.push(i);
      settled = settledOn(problem, active);
    }
    const { active, factor } = settled;
    if (!factor.ok) return { ok: false, reason: 'singular' };
    const rhs = Float64Array.from(active, (i) => reach[i] as number);
    solveLdlInto(factor, rhs);
    force.fill(0);
    for (let i = 0; i < active.length; i++) force[active[i] as number] = rhs[i] as number;
    const wrong: number[] = [];
    for (let i = 0; i < m; i++) {
      if (on[i]) {
        // A force as an elongation, so that both kinds of wrong sign are measured alike.
        if ((force[i] as number) * (matrix[i * m + i] as number) < -close) wrong.push(i);
        continue;
      }
      let w = -(reach[i] as number);
      for (const j of active) w += (matrix[i * m + j] as number) * (force[j] as number);
      if (w < -close) wrong.push(i);
    }
    if (wrong.length === 0) {
      for (let i = 0; i < m; i++) force[i] = Math.max(0, force[i] as number);
      return { ok: true, force, pivots, settled };
    }
    if (wrong.length < fewest) {
      fewest = wrong.length;
      patience = PATIENCE;
    } else patience--;
    // Murty's rule, the last wrong one alone, always ends; blocks are quicker as long as they help.
    for (const i of patience > 0 ? wrong : wrong.slice(-1)) on[i] = on[i] ? 0 : 1;
  }
  return { ok: false, reason: 'not settled' };
};
