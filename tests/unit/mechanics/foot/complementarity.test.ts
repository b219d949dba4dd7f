/** Forces that only pull or press: against all sets of active elements tried one by one, and how many pivots the foot asks for. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { runCase } from '../../../../src/mechanics/foot/case-draw';
import { MOST_PIVOTS, settledOn, solveComplementarity } from '../../../../src/mechanics/foot/complementarity';
import { solveLdl } from '../../../../src/mechanics/frame/ldl';
import { seededRandom } from '../../../../src/units';
import { modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../../../tools/loaded-foot';

/** Gauss with pivoting, on its own. */
const solveSmall = (a: number[][], b: number[]): number[] => {
  const n = b.length;
  const m = a.map((row, i) => [...row, b[i] as number]);
  for (let c = 0; c < n; c++) {
    let p = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(m[r]?.[c] ?? 0) > Math.abs(m[p]?.[c] ?? 0)) p = r;
    [m[c], m[p]] = [m[p] as number[], m[c] as number[]];
    const top = m[c] as number[];
    for (let r = 0; r < n; r++) {
      if (r === c) continue;
      const row = m[r] as number[];
      const by = (row[c] as number) / (top[c] as number);
      for (let k = c; k <= n; k++) row[k] = (row[k] as number) - by * (top[k] as number);
    }
  }
  return m.map((row, i) => (row[n] as number) / (row[i] as number));
};

/** The one set of active elements whose forces are all >= 0 and whose others all have w >= 0. */
const byTrial = (matrix: number[][], reach: number[]): number[] | null => {
  const m = reach.length;
  let best: { force: number[]; wrong: number } | null = null;
  for (let set = 0; set < 2 ** m; set++) {
    const on = reach.map((_, i) => i).filter((i) => (set >> i) & 1);
    const part = solveSmall(
      on.map((i) => on.map((j) => matrix[i]?.[j] ?? 0)),
      on.map((i) => reach[i] as number),
    );
    const force = reach.map(() => 0);
    on.forEach((i, k) => {
      force[i] = part[k] as number;
    });
    const wrong = reach.reduce((worst, r, i) => {
      const w = force.reduce((sum, x, j) => sum + (matrix[i]?.[j] ?? 0) * x, 0) - r;
      return Math.max(worst, on.includes(i) ? -(force[i] as number) : -w);
    }, 0);
    if (best === null || wrong < best.wrong) best = { force, wrong };
  }
  return best?.force ?? null;
};

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const problem = fc.integer({ min: 1, max: 7 }).chain((m) =>
  fc.record({
    // Rows fewer than m leave C itself singular: only the elements' own give makes the whole definite.
    rows: fc.array(fc.array(number(-3, 3), { minLength: m, maxLength: m }), { minLength: 1, maxLength: m }),
    give: fc.array(number(0.05, 2), { minLength: m, maxLength: m }),
    reach: fc.array(number(-5, 5), { minLength: m, maxLength: m }),
  }),
);

test('the answer is that of all sets tried one by one', () => {
  fc.assert(
    fc.property(problem, ({ rows, give, reach }) => {
      const m = reach.length;
      const matrix = give.map((g, i) =>
        give.map((_, j) => rows.reduce((sum, row) => sum + (row[i] as number) * (row[j] as number), i === j ? g : 0)),
      );
      const solved = solveComplementarity({
        m,
        matrix: Float64Array.from(matrix.flat()),
        reach: Float64Array.from(reach),
      });
      const tried = byTrial(matrix, reach);
      expect(solved.ok).toBe(true);
      if (!solved.ok || tried === null) return;
      const most = Math.max(1, ...tried);
      solved.force.forEach((force, i) => {
        expect(Math.abs(force - (tried[i] as number)) / most).toBeLessThan(1e-9);
      });
    }),
    { numRuns: 400, seed: 11 },
  );
});

test('400 random loads on the foot, each from four beginnings: one answer, few pivots', () => {
  const foot = modelLoadedFoot();
  const answer = runCase(foot, toldCaseOf('side-step-cut'), TOLD, PERSON);
  if ('kind' in answer) throw new Error(answer.kind);
  const { ready } = answer;
  const { n } = ready.assembled;
  const m = ready.rows.length;
  const gaps = [...ready.ties.map((t) => t.slackMm), ...ready.pads.map((p) => p.gapMm)];
  const random = seededRandom(5);
  let most = 0;
  for (let k = 0; k < 400; k++) {
    const load = Float64Array.from({ length: n }, (_, i) => (random() - 0.5) * (i % 6 < 3 ? 400 : 8000));
    const free = solveLdl(ready.factor, load);
    const reach = Float64Array.from(
      ready.rows,
      (row, i) => row.reduce((sum, x, j) => sum + x * (free[j] as number), 0) - (gaps[i] as number),
    );
    const all = Array.from({ length: m }, (_, i) => i);
    const starts = [undefined, [], all, all.filter(() => random() < 0.5)];
    const problem = { m, matrix: ready.matrix, reach };
    const forces = starts.map((start) => {
      const solved = solveComplementarity(problem, start && settledOn(problem, start));
      if (!solved.ok) throw new Error(`load ${k}: ${solved.reason}`);
      most = Math.max(most, solved.pivots);
      return solved.force;
    });
    const largest = Math.max(1, ...(forces[0] as Float64Array));
    for (const other of forces.slice(1))
      expect(Math.max(...other.map((x, i) => Math.abs(x - (forces[0]?.[i] as number)))) / largest).toBeLessThan(1e-7);
  }
  // 22 when this was written; the bound at which the solver gives up is far beyond.
  expect(most).toBeLessThan(40);
  expect(MOST_PIVOTS).toBeGreaterThan(5 * most);
});
