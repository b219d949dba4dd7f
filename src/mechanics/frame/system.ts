/** The frame as equations: which motions are free, and the scaled and factored matrix of these. */
import { DOFS, dofIndex } from './dofs';
import { factorLdl, type LdlFactor } from './ldl';
import type { FrameMember } from './member';
import { nodeOrder } from './node-order';
import { type FrameProblem, problem } from './problem';
import { heldBy, type ReadFrame } from './schema';
import { END_DOFS, endStiffness } from './timoshenko';

/** What acts on the nodes; each 6 x nodes, global axes, in the order of the file. */
export interface Held {
  readonly fixed: Uint8Array;
  readonly imposed: Float64Array;
  readonly ground: Float64Array;
  readonly loads: Float64Array;
}

export interface System {
  readonly ok: true;
  readonly members: readonly FrameMember[];
  readonly held: Held;
  /** Free motions in the order of the matrix. */
  readonly free: Int32Array;
  /** What each row and column was multiplied by. */
  readonly scales: Float64Array;
  readonly factor: Extract<LdlFactor, { readonly ok: true }>;
}

export const heldOf = (frame: ReadFrame, at: ReadonlyMap<string, number>): Held => {
  const n = 6 * frame.nodes.length;
  const held = {
    fixed: new Uint8Array(n),
    imposed: new Float64Array(n),
    ground: new Float64Array(n),
    loads: new Float64Array(n),
  };
  const base = (node: string): number => 6 * (at.get(node) ?? Number.NaN);
  for (const support of frame.supports)
    for (const dof of heldBy(support)) {
      held.fixed[base(support.node) + dofIndex(dof)] = 1;
      held.imposed[base(support.node) + dofIndex(dof)] = support.imposed[dof] ?? 0;
    }
  for (const { node, dof, k } of frame.groundSprings) {
    const i = base(node) + dofIndex(dof);
    held.ground[i] = (held.ground[i] as number) + k;
  }
  for (const { node, F } of frame.nodalLoads)
    F.forEach((value, d) => {
      held.loads[base(node) + d] = (held.loads[base(node) + d] as number) + value;
    });
  return held;
};

/** The dof in the list of nodes that a member's end motion (0..11) is. */
export const globalDof = ({ nodes: [i, j] }: FrameMember, end: number): number =>
  end < 6 ? 6 * i + end : 6 * j + end - 6;

/** A diagonal below this share of what the members had before their releases is rounding. */
const ROUNDING = 2e-15;
/**
 * Added to the ones of the diagonal when rounding has eaten a pivot: of a mechanism, or of a sound frame whose stiffnesses lie far
 * apart. Which of both is judged afterwards; solving corrects for it.
 */
const LIFT = 1e-12;
/** 6000 free motions are a matrix of 288 MB. */
const MOST_FREE = 6000;

export const freely = (frame: ReadFrame, dof: number): FrameProblem =>
  problem(
    'mechanism',
    `node "${frame.nodes[Math.floor(dof / 6)]?.id}"`,
    `${DOFS[dof % 6]} moves freely (mechanism, zero pivot): support it, or close a release of what meets it`,
  );

/** Numbers the free motions, assembles, scales to a diagonal of ones, factors. A problem names the node and dof that nothing holds. */
export const systemOf = (frame: ReadFrame, members: readonly FrameMember[], held: Held): System | FrameProblem => {
  const order = nodeOrder(
    frame.nodes.length,
    members.map(({ nodes }) => nodes),
  );
  const dofs = order.flatMap((node) => DOFS.map((_, d) => 6 * node + d));
  const free = Int32Array.from(dofs.filter((dof) => held.fixed[dof] === 0));
  const n = free.length;
  if (n > MOST_FREE) return problem('size', 'frame', `${n} free motions are more than ${MOST_FREE}`);
  const row = new Int32Array(held.fixed.length).fill(-1);
  free.forEach((dof, i) => {
    row[dof] = i;
  });
  const matrix = new Float64Array(n * n);
  const sizes = Float64Array.from(free, (dof) => held.ground[dof] as number);
  sizes.forEach((k, i) => {
    matrix[i * n + i] = k;
  });
  for (const member of members) assemble(member, row, matrix, sizes);
  const scales = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const diagonal = matrix[i * n + i] as number;
    if (!(diagonal > ROUNDING * (sizes[i] as number))) return freely(frame, free[i] as number);
    scales[i] = 1 / Math.sqrt(diagonal);
  }
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      const value = matrix[i * n + j] as number;
      if (value !== 0) matrix[i * n + j] = value * (scales[i] as number) * (scales[j] as number);
    }
  let factor = factorLdl(matrix, n, 0);
  if (!factor.ok) {
    for (let i = 0; i < n; i++) matrix[i * n + i] = 1 + LIFT;
    factor = factorLdl(matrix, n, 0);
  }
  if (!factor.ok) return freely(frame, free[factor.at] as number);
  return { ok: true, members, held, free, scales, factor };
};

const assemble = (member: FrameMember, row: Int32Array, matrix: Float64Array, sizes: Float64Array): void => {
  const n = sizes.length;
  const k = endStiffness(member.stiffness, member.modes);
  for (let a = 0; a < END_DOFS; a++) {
    const i = row[globalDof(member, a)] as number;
    if (i < 0) continue;
    sizes[i] = (sizes[i] as number) + (member.sizes[a] as number);
    for (let b = 0; b < END_DOFS; b++) {
      const j = row[globalDof(member, b)] as number;
      if (j >= 0 && j <= i) matrix[i * n + j] = (matrix[i * n + j] as number) + (k[a * END_DOFS + b] as number);
    }
  }
};
