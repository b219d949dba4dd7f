/**
 * Forces that can only pull or only press. Each of m elements has a force lambda >= 0, a stiffness k and a gap g: elongation
 * d = d0 - C lambda, and either lambda = 0 with d <= g, or lambda = k (d - g). As a linear complementarity problem:
 * w = (C + 1/k) lambda - (d0 - g), w >= 0, lambda >= 0, w . lambda = 0. C is symmetric positive semidefinite, so the answer is unique:
 * it is the minimum of a convex energy. Solved by block pivoting with single pivots when blocks stop helping (Judice and Pires 1994,
 * from memory): finite for such matrices, and bounded here.
 */
import { factorLdl, solveLdlInto } from '../frame/ldl';

export interface Complementarity {
  readonly m: number;
  /** m x m row-major: C with 1/k added on its diagonal. */
  readonly matrix: Float64Array;
  /** d0 - g. */
  readonly reach: Float64Array;
}

export type ComplementaritySolution =
  | { readonly ok: true; readonly force: Float64Array; readonly pivots: number }
  | { readonly ok: false; readonly reason: 'singular' | 'not settled' };

/** Blocks that do not lessen the number of wrong signs, before single pivots begin. */
const PATIENCE = 3;
export const MOST_PIVOTS = 400;

const solveActive = (problem: Complementarity, active: readonly number[], force: Float64Array): boolean => {
  force.fill(0);
  const n = active.length;
  if (n === 0) return true;
  const part = new Float64Array(n * n);
  const rhs = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const row = (active[i] as number) * problem.m;
    rhs[i] = problem.reach[active[i] as number] as number;
    for (let j = 0; j <= i; j++) {
      const value = problem.matrix[row + (active[j] as number)] as number;
      part[i * n + j] = value;
      part[j * n + i] = value;
    }
  }
  const factor = factorLdl(part, n);
  if (!factor.ok) return false;
  solveLdlInto(factor, rhs);
  for (let i = 0; i < n; i++) force[active[i] as number] = rhs[i] as number;
  return true;
};

/** Starts from `hint` (elements taken as active), or from all whose free elongation exceeds their gap. */
export const solveComplementarity = (problem: Complementarity, hint?: Uint8Array): ComplementaritySolution => {
  const { m, matrix, reach } = problem;
  const on = new Uint8Array(m);
  for (let i = 0; i < m; i++) on[i] = hint ? (hint[i] as number) : (reach[i] as number) > 0 ? 1 : 0;
  const force = new Float64Array(m);
  let largest = 0;
  for (let i = 0; i < m; i++) largest = Math.max(largest, Math.abs(reach[i] as number));
  const close = 1e-12 * Math.max(largest, 1e-9);
  let [fewest, patience] = [m + 1, PATIENCE];
  for (let pivots = 0; pivots < MOST_PIVOTS; pivots++) {
    const active: number[] = [];
    for (let i = 0; i < m; i++) if (on[i]) active.push(i);
    if (!solveActive(problem, active, force)) return { ok: false, reason: 'singular' };
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
      return { ok: true, force, pivots };
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
