/**
 * How long the whole foot takes under one load case; against the same foot with every knot a node, solved
 * densely, which must say the same. ms and ratios of one run; never a timed test.
 */

import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type LoadedFoot, runCase } from '../../src/mechanics/foot/case-draw';
import { withElements } from '../../src/mechanics/foot/nodes';
import { allStations } from '../../src/mechanics/foot/recover';
import { type FootSolution, readyFrame, solveFoot } from '../../src/mechanics/foot/solve';
import { denseFoot, solveDense } from '../tools/dense-foot';
import { modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../tools/loaded-foot';
import { type Plot, svgOf, textOf } from './plot';
import { median, RUNS } from './runs';

const CASE = 'side-step-cut';
/** Short works are timed in turns of so many, longer ones one by one. */
const TURN = 50;
const WARM = 100;
const SINGLE_RUNS = 201;

const timed = (work: () => void, times = 1): number => {
  const start = performance.now();
  for (let i = 0; i < times; i++) work();
  return (performance.now() - start) / times;
};
const all = (work: () => void, times = 1): number[] => {
  work();
  return Array.from({ length: RUNS }, () => timed(work, times));
};
const middle = (work: () => void, times = 1): number => median(all(work, times));

const apart = (a: Float64Array, b: Float64Array): number =>
  Math.max(...a.map((value, i) => Math.abs(value - (b[i] as number)))) / Math.max(...a.map(Math.abs));

const COUNTS = [12, 24, 48, 96, 192] as const;
/** Every knot a node: beyond that a minute for one factor. */
const DENSE_COUNTS = COUNTS.slice(0, 3);
const FOLDER = fileURLToPath(new URL('../../test-results/', import.meta.url));
const PLOT = 'growth-with-elements.svg';

interface Measured {
  readonly elements: number;
  readonly freedoms: number;
  readonly ms: number;
}
/** At the end of the row time grows as elements to this power. */
const powerOf = (rows: readonly Measured[]): number => {
  const [before, last] = rows.slice(-2) as [Measured, Measured];
  return Math.log(last.ms / before.ms) / Math.log(last.elements / before.elements);
};

/** The same foot with its metatarsals in more and more elements: put together, factored, solved, told; and densely, each knot a node. */
const growth = (foot: LoadedFoot): string => {
  const loadCase = toldCaseOf(CASE);
  const { marks, sections } = foot;
  const frames = COUNTS.map((elements) => ({
    elements,
    of: { marks, sections, placing: withElements(marks, sections, foot.placing(loadCase.pose), elements) },
  }));
  const solved = (of: (typeof frames)[number]['of']): FootSolution => {
    const ready = readyFrame(of, TOLD, loadCase);
    const answer = 'kind' in ready ? ready : solveFoot(ready, loadCase, PERSON.massKg);
    if ('kind' in answer) throw new Error(`${CASE}: ${answer.kind}`);
    allStations(answer, sections, TOLD.wall);
    return answer;
  };
  // In turns, one size after the other: what else the machine does then falls on all of them.
  const turns = frames.map(({ of }) => ({ of, freedoms: solved(of).ready.assembled.n, times: [] as number[] }));
  for (let run = 0; run <= RUNS; run++)
    for (const { of, times } of turns) {
      const ms = timed(() => solved(of), TURN);
      if (run > 0) times.push(ms);
    }
  const condensed = turns.map(
    ({ freedoms, times }, i): Measured => ({ elements: frames[i]?.elements ?? 0, freedoms, ms: median(times) }),
  );
  const dense = frames
    .filter(({ elements }) => DENSE_COUNTS.includes(elements as never))
    .map(({ elements, of }): Measured => {
      const solution = solved(of);
      const built = denseFoot(solution.ready, sections, TOLD);
      const times = Array.from({ length: elements > 24 ? 1 : 3 }, () => timed(() => solveDense(built, solution)));
      return { elements, freedoms: built.n, ms: median(times) };
    });
  const plot: Plot = {
    title: `Whole foot, ${CASE}: time of one answer as metatarsals are cut into more elements (this run)`,
    xLabel: 'elements a ray',
    yLabel: 'time, ms',
    series: [
      { name: 'every knot a node, solved densely', mark: '#', points: dense.map((row) => [row.elements, row.ms]) },
      { name: 'chains condensed, with stations', mark: 'o', points: condensed.map((row) => [row.elements, row.ms]) },
    ],
  };
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(`${FOLDER}${PLOT}`, svgOf(plot));
  const list = (rows: readonly Measured[]): string =>
    rows
      .map((row) => `${row.elements}: ${row.ms.toFixed(row.ms < 10 ? 2 : 0)} ms (${row.freedoms} freedoms)`)
      .join(', ');
  return (
    `${textOf(plot)}\nplotted in ${FOLDER}${PLOT}; condensed ${list(condensed)}, at the end as elements^${powerOf(condensed).toFixed(1)}; ` +
    `densely ${list(dense)}, as elements^${powerOf(dense).toFixed(1)}`
  );
};

export const timesOfLoads = (): string => {
  const foot = modelLoadedFoot();
  const loadCase = toldCaseOf(CASE);
  const whole = (): FootSolution => {
    const solved = runCase(foot, loadCase, TOLD, PERSON);
    if ('kind' in solved) throw new Error(`${CASE}: ${solved.kind}`);
    allStations(solved, foot.sections, TOLD.wall);
    return solved;
  };
  const solution = whole();
  // Each run by itself: the middle one of them is asked for, not the mean of a turn that something else interrupts.
  for (let i = 0; i < WARM; i++) whole();
  const wholes = Array.from({ length: SINGLE_RUNS }, () => timed(whole));
  const one = median(wholes);
  const loadOnly = middle(() => solveFoot(solution.ready, loadCase, PERSON.massKg), TURN);
  // The frame's passes follow from balance; the dense foot is given their last loads and solves once.
  const dense = middle(() => solveDense(denseFoot(solution.ready, foot.sections, TOLD), solution));
  const built = denseFoot(solution.ready, foot.sections, TOLD);
  const denseSolve = middle(() => solveDense(built, solution));
  const answer = solveDense(built, solution);
  const off = Math.max(
    apart(solution.displacement, answer.displacement),
    apart(solution.tieN, answer.tieN),
    apart(solution.padN, answer.padN),
  );
  return (
    `loads: whole foot, ${CASE}, with the stations of five bones: ${one.toFixed(2)} ms (least ${Math.min(...wholes).toFixed(2)}; its loads again on a ready frame ${loadOnly.toFixed(2)} ms); ` +
    `every knot a node (${built.n} freedoms), solved densely ${denseSolve.toFixed(0)} ms, put together as well ${dense.toFixed(0)} ms: ` +
    `${(denseSolve / one).toFixed(0)} and ${(dense / one).toFixed(0)} times as long, answers ${off.toExponential(1)} apart (medians of ${RUNS})\n${growth(foot)}`
  );
};
