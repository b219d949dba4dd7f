/**
 * The motions under which a frame carries its loads. The factored matrix gives nearly all of it; what rounding left is corrected by
 * conjugate gradients with that factor as preconditioner and forces summed from the members' deformations (Hestenes and Stiefel 1952;
 * Golub and Van Loan, Matrix Computations; from memory). Two steps for a usual frame, more where stiffnesses lie 1e12 apart.
 */
import { deformationsOf, innerForces, twiceEnergy } from './inner-forces';
import { solveLdlInto } from './ldl';
import type { System } from './system';

export interface Carried {
  /** 6 x nodes, global. */
  readonly motions: Float64Array;
  /** 6 x members. */
  readonly deformations: Float64Array;
  /** What the nodes bring up: 6 x nodes, global. */
  readonly inner: Float64Array;
}

interface State extends Carried {
  /** Loads not yet carried, free motions only, and the sum of their squares, both scaled as the matrix. */
  readonly left: Float64Array;
  readonly size: number;
}

const MOST_STEPS = 40;
/** Steps without a better state after which rounding is all that is left. */
const PATIENCE = 3;

const dot = (a: Float64Array, b: Float64Array): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
const plus = (a: Float64Array, b: Float64Array, times: number): Float64Array =>
  a.map((value, i) => value + times * (b[i] as number));

const stateAt = (system: System, motions: Float64Array, deformations: Float64Array): State => {
  const { held, free, scales } = system;
  const inner = innerForces(system, motions, deformations);
  const left = scales.map((scale, i) => {
    const dof = free[i] as number;
    return scale * ((held.loads[dof] as number) - (inner[dof] as number));
  });
  return { motions, deformations, inner, left, size: dot(left, left) };
};

/** Scaled free motions as motions of all nodes. */
const spread = ({ free, scales, held }: System, scaled: Float64Array): Float64Array => {
  const motions = new Float64Array(held.fixed.length);
  free.forEach((dof, i) => {
    motions[dof] = (scaled[i] as number) * (scales[i] as number);
  });
  return motions;
};

export const carryLoads = (system: System): Carried => {
  const { held, factor } = system;
  let state = stateAt(system, held.imposed, deformationsOf(system, held.imposed));
  let best = state;
  let direction: Float64Array = new Float64Array(system.free.length);
  let before = 0;
  for (let step = 0, since = 0; step < MOST_STEPS && since < PATIENCE && state.size > 0; step++) {
    const change = state.left.slice();
    solveLdlInto(factor, change);
    const product = dot(change, state.left);
    direction = before > 0 ? plus(change, direction, product / before) : change;
    before = product;
    const motions = spread(system, direction);
    const share = dot(direction, state.left) / twiceEnergy(system, motions);
    if (!Number.isFinite(share)) break;
    const deformations = deformationsOf(system, motions);
    state = stateAt(system, plus(state.motions, motions, share), plus(state.deformations, deformations, share));
    since = state.size < best.size / 4 ? 0 : since + 1;
    if (state.size < best.size) best = state;
  }
  return { motions: best.motions, deformations: best.deformations, inner: best.inner };
};
