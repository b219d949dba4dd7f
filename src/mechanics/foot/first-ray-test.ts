/**
 * The first ray pushed up and down with the rest of the foot in a vice, as cadaver limbs were tested (no tendons, 50 N each way at
 * the first head). Ties pull as in the frame; the ground is away. N, mm.
 */
import { factorLdl, solveLdl, solveLdlInto } from '../frame/ldl';
import { pressCase } from './arch-test';
import type { LoadedFoot } from './case-draw';
import { NoAnswer } from './checks-trial';
import { solveComplementarity } from './complementarity';
import type { FrameFigures } from './parameter-names';
import { readyFrame } from './solve';

const PUSH_N = 50;
/** The vice: N/mm and N mm/rad on the heel, N/mm up and down on the other heads. As stiff as the frame's numbers bear. */
const VICE = 1e5;
const VICE_TURN = 1e8;

/** Travel of the first head from 50 N down to 50 N up, mm. Throws NoAnswer where the frame has none. */
export const firstRayTravel = (foot: LoadedFoot, f: FrameFigures): number => {
  const placing = foot.placing('standing');
  const ready = readyFrame({ ...foot, placing }, f, pressCase(foot, placing));
  if ('kind' in ready) throw new NoAnswer(`first ray: ${ready.kind}`);
  const { assembled, nodes, ties } = ready;
  const { n } = assembled;
  const stiffness = Float64Array.from(assembled.stiffness);
  const hold = (dof: number, by: number): void => {
    stiffness[dof * n + dof] = (stiffness[dof * n + dof] as number) + by;
  };
  const head = (ray: 1 | 2 | 3 | 4 | 5): number => 6 * (nodes.rays[ray].firstNode + nodes.rays[ray].stops.length - 1);
  for (const ray of [2, 3, 4, 5] as const) hold(head(ray) + 1, VICE);
  for (let i = 0; i < 6; i++) hold(6 * nodes.rigid.calcaneus + i, i < 3 ? VICE : VICE_TURN);
  const factor = factorLdl(stiffness, n);
  if (!factor.ok) throw new NoAnswer('first ray: no stiffness');
  const m = ties.length;
  const rows = ready.rows.slice(0, m);
  const given = rows.map((row) => solveLdl(factor, row));
  const product = (a: Float64Array, b: Float64Array): number => a.reduce((sum, x, i) => sum + x * (b[i] as number), 0);
  const matrix = new Float64Array(m * m);
  rows.forEach((row, i) => {
    given.forEach((g, j) => {
      matrix[i * m + j] = product(row, g) + (i === j ? 1 / (ties[i]?.stiffness ?? 1) : 0);
    });
  });
  const lift = (pushN: number): number => {
    const load = new Float64Array(n);
    load[head(1) + 1] = pushN;
    const free = solveLdl(factor, load);
    const reach = Float64Array.from(rows, (row, i) => product(row, free) - (ties[i]?.slackMm ?? 0));
    const solved = solveComplementarity({ m, matrix, reach });
    if (!solved.ok) throw new NoAnswer(`first ray: ${solved.reason}`);
    rows.forEach((row, r) => {
      for (let k = 0; k < n; k++) load[k] = (load[k] as number) - (solved.force[r] as number) * (row[k] as number);
    });
    solveLdlInto(factor, load);
    return load[head(1) + 1] as number;
  };
  return lift(PUSH_N) - lift(-PUSH_N);
};
