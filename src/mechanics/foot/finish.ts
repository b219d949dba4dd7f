/** From the forces that settled to displacements, with how well every freedom is in balance. mm, N, rad. */
import { degrees } from '../../units';
import { solveLdlInto } from '../frame/ldl';
import type { Settled } from './complementarity';
import type { FootProblem, FootSolution, ReadyFrame } from './solve';
import type { PointForce } from './tendons';

/**
 * Beyond these there is no answer, not even to rank: turned by half a right angle a bone is bent by what the theory lets run along it,
 * and 60 mm are a quarter of a foot. Sizes are given up long before, at LARGE_TURN_DEG. At 30 degrees, where a lever is 13 % short,
 * three in ten draws of a foot that rolls over would be lost instead of one, and those between all agree with the rest.
 */
const ABSURD_MM = 60;
const ABSURD_DEG = 45;

/** Every told case balances to 1e-12; an answer that does not balance to this is none. */
const EXACT = 1e-9;

/** Forces for one sharing of shear and one pull of the calf. */
export interface Pass {
  readonly load: Float64Array;
  readonly tieN: Float64Array;
  readonly padN: Float64Array;
  readonly pivots: number;
  readonly settled: Settled;
}

/** The part that moves or turns farthest beyond, if any does. */
const absurdMotion = ({ nodes }: ReadyFrame, u: Float64Array): FootProblem | null => {
  const moved = nodes.at.map((_, node) => {
    const size = (from: number): number => {
      const i = 6 * node + from;
      return Math.sqrt((u[i] as number) ** 2 + (u[i + 1] as number) ** 2 + (u[i + 2] as number) ** 2);
    };
    const mm = size(0);
    // The first toe hangs on its joint and hands on the force that it was given: how far it turns changes nothing.
    const deg = node === nodes.rigid.phalanxProximal1 ? 0 : degrees(size(3));
    return { node, mm, deg, beyond: Math.max(mm / ABSURD_MM, deg / ABSURD_DEG) };
  });
  const worst = moved.reduce((a, b) => (b.beyond > a.beyond || Number.isNaN(b.beyond) ? b : a));
  return worst.beyond <= 1 ? null : { kind: 'absurd', mm: worst.mm, deg: worst.deg, where: nodes.name(worst.node) };
};

export const finish = (
  ready: ReadyFrame,
  weightN: number,
  pass: Pass,
  achillesN: number,
  applied: readonly PointForce[],
  passes: number,
): Omit<FootSolution, 'toeN'> | FootProblem => {
  const { assembled, factor, rows } = ready;
  const { n } = assembled;
  const forces = [...pass.tieN, ...pass.padN];
  /** What members, springs and supports have to carry. */
  const net = Float64Array.from(pass.load);
  rows.forEach((row, r) => {
    const force = forces[r] as number;
    if (force !== 0) for (let k = 0; k < n; k++) net[k] = (net[k] as number) - force * (row[k] as number);
  });
  const displacement = Float64Array.from(net);
  solveLdlInto(factor, displacement);
  /** K u, from the lower triangle's rows as far as they are not empty. */
  const carried = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const here = displacement[i] as number;
    let sum = (assembled.stiffness[i * n + i] as number) * here;
    for (let j = factor.first[i] as number; j < i; j++) {
      const k = assembled.stiffness[i * n + j] as number;
      sum += k * (displacement[j] as number);
      carried[j] = (carried[j] as number) + k * here;
    }
    carried[i] = (carried[i] as number) + sum;
  }
  let [worst, largest] = [0, 0];
  for (let i = 0; i < n; i++) {
    const off = Math.abs((carried[i] as number) - (net[i] as number));
    worst = Math.max(worst, off / (i % 6 < 3 ? 1 : 100));
    largest = Math.max(largest, Math.abs(pass.load[i] as number) / (i % 6 < 3 ? 1 : 100));
  }
  const residual = worst / Math.max(largest, 1e-9);
  if (!(residual < EXACT)) return { kind: 'inexact', residual };
  const absurd = absurdMotion(ready, displacement);
  if (absurd) return absurd;
  return {
    ready,
    weightN,
    displacement,
    load: pass.load,
    tieN: pass.tieN,
    padN: pass.padN,
    achillesN,
    applied,
    passes,
    pivots: pass.pivots,
    residual,
  };
};
