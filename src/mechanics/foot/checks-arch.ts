/** Checks of the arch as a spring: how it gives way under a press, and what each tie does for it. Sources with the records. */
import { dot } from '../../units';
import { BARE_HEEL, CUT_TIE, PRESS_N } from './arch-test';
import { CHECK_WEIGHT_N, type CheckOf, NoAnswer, type Trial } from './checks-trial';
import { firstRayTravel } from './first-ray-test';
import { headHeights, midfootHinge, overTheLine } from './midfoot-test';
import type { FrameFigures } from './parameter-names';
import { pathLength } from './ties';

/** The loads of Huang's cadaver feet, N. */
const HUANG_N = [230, 460, 690] as const;

const NO_FASCIA: Partial<FrameFigures> = { fasciaTotal: CUT_TIE };
const BARE: Partial<FrameFigures> = { heelPad: BARE_HEEL };
const BARE_CUT: Partial<FrameFigures> = { ...BARE, ...NO_FASCIA };

const MOST_N = 2500;
/** Steps of false position (Illinois): the curve is a chain of straight lines, which it meets in few. */
const STEPS = 30;
const CLOSE_MM = 1e-6;

/** The load under which the arch is longer by so much. */
const loadForLength = (trial: Trial, mm: number, frame: Partial<FrameFigures>): number => {
  const off = (n: number): number => trial.press(n, frame).lengtheningMm - mm;
  let [low, high] = [1, MOST_N];
  let [atLow, atHigh] = [off(low), off(high)];
  if (atHigh < 0) throw new NoAnswer(`no load below ${MOST_N} N lengthens the arch by ${mm} mm`);
  let kept = 0;
  for (let i = 0; i < STEPS; i++) {
    const n = (low * atHigh - high * atLow) / (atHigh - atLow);
    const now = off(n);
    if (Math.abs(now) < CLOSE_MM) return n;
    if (now < 0) {
      [low, atLow] = [n, now];
      if (kept < 0) atHigh /= 2;
      kept = -1;
    } else {
      [high, atHigh] = [n, now];
      if (kept > 0) atLow /= 2;
      kept = 1;
    }
  }
  throw new NoAnswer(`the load that lengthens the arch by ${mm} mm was not met`);
};

const FALL_AT_MM = [3, 4, 5] as const;
const ARCHES = [-1, 0, 1] as const;

const drop = (trial: Trial, n: number, frame: Partial<FrameFigures> = {}, arch?: number): number =>
  trial.press(n, frame, arch === undefined ? {} : { arch }).ankleDropMm;

const percentMore = (after: number, before: number): number => 100 * (after / before - 1);

/** Every other tie cut at once: the two long ligaments of the sole. */
const NO_PLANTAR: Partial<FrameFigures> = { longPlantar: CUT_TIE, shortPlantar: CUT_TIE };
const NO_SPRING: Partial<FrameFigures> = { spring: CUT_TIE };
/** All that ties rays to each other across. */
const NO_ACROSS: Partial<FrameFigures> = { deepTransverse: CUT_TIE, intermetatarsalBase: CUT_TIE };
/** A tape round the forefoot: the ties across, twentyfold. Assumed. */
const TAPE = 20;

const tieSum = (trial: Trial, frame: Partial<FrameFigures>, start: string): number => {
  const { ready, tieN } = trial.press(PRESS_N, frame).solution;
  return ready.ties.reduce((sum, tie, i) => (tie.id.startsWith(start) ? sum + (tieN[i] as number) : sum), 0);
};

const firstBaseTurnDeg = (trial: Trial): number => {
  const { ready, displacement: u } = trial.run('standing', { load: { total: 1 } });
  const lateral = ready.placing.direction('metatarsal1', trial.foot.marks.rays[1].axis.lateral);
  const turn = (node: number): number => dot([0, 1, 2].map((k) => u[6 * node + 3 + k] as number) as never, lateral);
  // About the lateral direction of a right foot a positive turn lifts the head.
  return (180 / Math.PI) * (turn(ready.nodes.rays[1].firstNode) - turn(ready.nodes.rigid.cuneiformMedial));
};

const toeTurnDeg = (trial: Trial, frame: Partial<FrameFigures>): number => {
  const { ready, displacement: u } = trial.press(CHECK_WEIGHT_N / 2, frame).solution;
  return (-180 / Math.PI) * (u[6 * ready.nodes.rigid.phalanxProximal1 + 3] as number);
};

/** Shares are parts of a whole: cutting one slip alone takes its part off the whole. */
const noFirstSlip = (f: FrameFigures): Partial<FrameFigures> => {
  const others = f.fasciaShare2 + f.fasciaShare3 + f.fasciaShare4 + f.fasciaShare5;
  return { fasciaShare1: CUT_TIE, fasciaTotal: (f.fasciaTotal * others) / (others + f.fasciaShare1) };
};

/** How far the first slip is stretched in the standing foot before anything is loaded, %. */
const firstSlipStretch = (trial: Trial): number => {
  const tie = trial.run('standing').ready.ties.find(({ id }) => id === 'fascia-1');
  return tie === undefined ? Number.NaN : (-100 * tie.slackMm) / pathLength(tie.path);
};

export const ARCH_CHECKS = {
  lengtheningWhole: (t) => [t.press(PRESS_N, BARE).lengtheningMm],
  lengtheningCut: (t) => [t.press(PRESS_N, BARE_CUT).lengtheningMm],
  navicularDrop: (t) => [t.press(CHECK_WEIGHT_N / 2).navicularDropMm],
  releaseLoadFall: (t) =>
    FALL_AT_MM.map((mm) => 100 * (1 - loadForLength(t, mm, BARE_CUT) / loadForLength(t, mm, BARE))),
  releaseStiffness: (t) => HUANG_N.map((n) => 100 * (drop(t, n) / drop(t, n, NO_FASCIA) - 1)),
  releaseVertical: (t) => [percentMore(drop(t, PRESS_N, NO_FASCIA), drop(t, PRESS_N))],
  releaseExtraDrop: (t) => [drop(t, PRESS_N, NO_FASCIA) - drop(t, PRESS_N)],
  dropOverHeight: (t) => ARCHES.map((arch) => drop(t, PRESS_N, {}, arch)),
  dropSize: (t) => [drop(t, PRESS_N)],
  releaseOverHeight: (t) =>
    ARCHES.map((arch) => percentMore(drop(t, PRESS_N, NO_FASCIA, arch), drop(t, PRESS_N, {}, arch))),
  lengtheningWholeOverHeight: (t) => ARCHES.map((arch) => t.press(PRESS_N, {}, { arch }).lengtheningMm),
  lengtheningCutOverHeight: (t) => ARCHES.map((arch) => t.press(PRESS_N, NO_FASCIA, { arch }).lengtheningMm),
  tieOrder: (t) =>
    [NO_FASCIA, NO_PLANTAR, NO_SPRING].map((cut) => percentMore(drop(t, HUANG_N[2], cut), drop(t, HUANG_N[2]))),
  longPlantarRise: (t) => [percentMore(tieSum(t, NO_FASCIA, 'long-plantar'), tieSum(t, {}, 'long-plantar'))],
  firstBaseTurn: (t) => [firstBaseTurnDeg(t)],
  firstRayTravel: (t) => [firstRayTravel(t.foot, t.frame)],
  midfootHinge: (t) => [midfootHinge(t.press(PRESS_N, BARE_CUT).solution)],
  fasciaTaut: (t) => [firstSlipStretch(t)],
  headSlope: (t) => headHeights(t.run('standing')),
  noTransverseArch: (t) => overTheLine(t.run('standing')),
  slipOneToe: (t) => [toeTurnDeg(t, noFirstSlip(t.frame)) - toeTurnDeg(t, {})],
  transverseTape: (t) => [
    percentMore(drop(t, PRESS_N), drop(t, PRESS_N, { deepTransverse: TAPE * t.frame.deepTransverse })),
  ],
  transverseCut: (t) => [100 * (1 - drop(t, PRESS_N) / drop(t, PRESS_N, NO_ACROSS))],
} as const satisfies Readonly<Record<string, CheckOf>>;
