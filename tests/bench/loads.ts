/**
 * How long the whole foot takes under one load case; against the same foot with every knot a node, solved
 * densely, which must say the same. ms and ratios of one run; never a timed test.
 */

import { segmentsBetween } from '../../src/mechanics/foot/assemble';
import { runCase } from '../../src/mechanics/foot/case-draw';
import { allStations } from '../../src/mechanics/foot/recover';
import { type FootSolution, solveFoot } from '../../src/mechanics/foot/solve';
import { chainStiffness, type MemberSegment } from '../../src/mechanics/frame/flexible-member';
import type { Vec3 } from '../../src/units';
import { denseFactor, denseFoot, solveDense } from '../tools/dense-foot';
import { modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../tools/loaded-foot';
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

const cut = (segments: readonly MemberSegment[], pieces: number): MemberSegment[] =>
  segments.flatMap((segment) => {
    const at = (t: number): Vec3 =>
      segment.from.map((x, k) => x + t * ((segment.to[k] as number) - x)) as unknown as Vec3;
    return Array.from({ length: pieces }, (_, i) => ({ ...segment, from: at(i / pieces), to: at((i + 1) / pieces) }));
  });

const growth = ({ ready }: FootSolution, foot: ReturnType<typeof modelLoadedFoot>): string => {
  const segments = segmentsBetween(ready.marks, ready.nodes, ready.placing, foot.sections, TOLD, 2, 0, 24);
  const chains = [1, 2, 4, 8].map((pieces) => {
    const split = cut(segments, pieces);
    return { elements: split.length, ms: middle(() => chainStiffness(split), TURN) };
  });
  const first = chains[0]?.ms ?? Number.NaN;
  const dense = [1, 2].map((pieces) => {
    const built = denseFoot(ready, foot.sections, TOLD, pieces);
    return timed(() => denseFactor(built));
  });
  return (
    `growth with elements: one metatarsal as a chain of ${chains.map((c) => `${c.elements}: ${c.ms.toFixed(3)} ms (${(c.ms / first).toFixed(1)} times)`).join(', ')}; ` +
    `factoring the dense foot at 24: ${dense[0]?.toFixed(0)} ms, at 48: ${dense[1]?.toFixed(0)} ms (${((dense[1] ?? 0) / (dense[0] ?? 1)).toFixed(1)} times)`
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
    `${(denseSolve / one).toFixed(0)} and ${(dense / one).toFixed(0)} times as long, answers ${off.toExponential(1)} apart (medians of ${RUNS})\n${growth(solution, foot)}`
  );
};
