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
/** Entries of the matrix and as many of its factor: 2 x 400 MB, a minute. */
const MOST_ENTRIES = 5e7;

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
  const row = new Int32Array(held.fixed.length).fill(-1);
  free.forEach((dof, i) => {
    row[dof] = i;
  });
  const firsts = firstOfRows(members, row, n);
  const entries = firsts.reduce((sum, first, i) => sum + i - first + 1, 0);
  if (entries > MOST_ENTRIES) {
    const what = `${frame.nodes.length} nodes so joined make ${entries} entries of a matrix, more than ${MOST_ENTRIES}: solve it in parts`;
    return problem('size', 'frame', what);
  }
  const rows = new Int32Array(n);
  for (let i = 0, end = 0; i < n; i++) {
    rows[i] = end - (firsts[i] as number);
    end += i - (firsts[i] as number) + 1;
  }
  const matrix = new Float64Array(entries);
  const sizes = Float64Array.from(free, (dof) => held.ground[dof] as number);
  sizes.forEach((k, i) => {
    matrix[(rows[i] as number) + i] = k;
  });
  for (const member of members) assemble(member, row, rows, matrix, sizes);
  const scales = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const diagonal = matrix[(rows[i] as number) + i] as number;
    if (!(diagonal > ROUNDING * (sizes[i] as number))) return freely(frame, free[i] as number);
    scales[i] = 1 / Math.sqrt(diagonal);
  }
  for (let i = 0; i < n; i++)
    for (let j = firsts[i] as number; j <= i; j++) {
      const at = (rows[i] as number) + j;
      matrix[at] = (matrix[at] as number) * (scales[i] as number) * (scales[j] as number);
    }
  let factor = factorLdl(matrix, n, 0, rows);
  if (!factor.ok) {
    for (let i = 0; i < n; i++) matrix[(rows[i] as number) + i] = 1 + LIFT;
    factor = factorLdl(matrix, n, 0, rows);
  }
  if (!factor.ok) return freely(frame, free[factor.at] as number);
  return { ok: true, members, held, free, scales, factor };
};

/** The first column of every row in which a member can leave something: zeros before. */
const firstOfRows = (members: readonly FrameMember[], row: Int32Array, n: number): Int32Array => {
  const firsts = Int32Array.from({ length: n }, (_, i) => i);
  for (const member of members) {
    const own = Array.from({ length: END_DOFS }, (_, end) => row[globalDof(member, end)] as number).filter(
      (i) => i >= 0,
    );
    const first = Math.min(...own);
    for (const i of own) firsts[i] = Math.min(firsts[i] as number, first);
  }
  return firsts;
};

const assemble = (
  member: FrameMember,
  row: Int32Array,
  rows: Int32Array,
  matrix: Float64Array,
  sizes: Float64Array,
): void => {
  const k = endStiffness(member.stiffness, member.modes);
  for (let a = 0; a < END_DOFS; a++) {
    const i = row[globalDof(member, a)] as number;
    if (i < 0) continue;
    sizes[i] = (sizes[i] as number) + (member.sizes[a] as number);
    for (let b = 0; b < END_DOFS; b++) {
      const j = row[globalDof(member, b)] as number;
      if (j < 0 || j > i) continue;
      const at = (rows[i] as number) + j;
      matrix[at] = (matrix[at] as number) + (k[a * END_DOFS + b] as number);
    }
  }
};
