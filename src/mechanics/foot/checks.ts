/**
 * The frame of the foot held against what has been measured on feet or found by other models: each check's numbers, whether they hit
 * what is expected, and in how many draws of all that is assumed they do. Misses are kept: nothing is fitted to a prediction.
 */

import type { BandedCase, FrameBands } from './bands';
import type { LoadedFoot } from './case-draw';
import { ARCH_CHECKS } from './checks-arch';
import { FORCE_CHECKS } from './checks-forces';
import { STRAIN_CHECKS } from './checks-strain';
import { TREND_CHECKS } from './checks-trends';
import { CHECK_CASES, type CheckCase, type CheckOf, NoAnswer, type Trial, trialOf } from './checks-trial';
import { type Band, drawsOf } from './draws';
import { CASE_FIGURES, type LoadCase } from './load-case';
import { FRAME_FIGURES, type FrameFigures } from './parameter-names';

export const CHECKS = {
  ...ARCH_CHECKS,
  ...FORCE_CHECKS,
  ...STRAIN_CHECKS,
  ...TREND_CHECKS,
} as const satisfies Readonly<Record<string, CheckOf>>;
export type CheckId = keyof typeof CHECKS;
export const CHECK_IDS = Object.keys(CHECKS) as readonly CheckId[];

/** What the numbers of a check must do. Each of them, where there are several. */
export type Expected =
  | { readonly kind: 'band'; readonly low?: number | undefined; readonly high?: number | undefined }
  | { readonly kind: 'sign'; readonly sign: 'positive' | 'negative' }
  /** Each less than the one before it. */
  | { readonly kind: 'ranking' }
  | { readonly kind: 'trend'; readonly way: 'rises' | 'falls' };

export const holds = (expected: Expected, got: readonly number[]): boolean => {
  if (got.length === 0 || !got.every(Number.isFinite)) return false;
  const steps = got.slice(1).map((value, i) => value - (got[i] as number));
  switch (expected.kind) {
    case 'band':
      return got.every(
        (x) => x >= (expected.low ?? Number.NEGATIVE_INFINITY) && x <= (expected.high ?? Number.POSITIVE_INFINITY),
      );
    case 'sign':
      return got.every((x) => (expected.sign === 'positive' ? x > 0 : x < 0));
    case 'ranking':
      return steps.every((step) => step < 0);
    case 'trend':
      return steps.every((step) => (expected.way === 'rises' ? step > 0 : step < 0));
  }
};

export interface CheckAnswer {
  readonly id: CheckId;
  readonly got: readonly number[];
  readonly verdict: 'hit' | 'miss';
  /** Why there are no numbers: the frame found no answer, which is a miss. */
  readonly unsolved?: string;
}

export interface CheckShare {
  readonly id: CheckId;
  /** Draws in which the expectation is met, over those that found an answer; null when none did. */
  readonly share: number | null;
  readonly unsolved: number;
}

export type ExpectedOf = Readonly<Partial<Record<CheckId, Expected>>>;

const idsOf = (expected: ExpectedOf): readonly CheckId[] => CHECK_IDS.filter((id) => expected[id] !== undefined);

const answerOf = (trial: Trial, id: CheckId, expected: Expected): CheckAnswer => {
  try {
    const got = CHECKS[id](trial);
    return { id, got, verdict: holds(expected, got) ? 'hit' : 'miss' };
  } catch (error) {
    if (error instanceof NoAnswer) return { id, got: [], verdict: 'miss', unsolved: error.message };
    throw error;
  }
};

/** Every check with the told figures, in the order of CHECK_IDS. */
export const checkAnswers = (
  foot: LoadedFoot,
  frame: FrameFigures,
  cases: Trial['cases'],
  expected: ExpectedOf,
): readonly CheckAnswer[] => {
  const trial = trialOf(foot, frame, cases);
  return idsOf(expected).map((id) => answerOf(trial, id, expected[id] as Expected));
};

const nameOf = (id: CheckCase, figure: (typeof CASE_FIGURES)[number]) => `${id}.${figure}` as const;
const NAMES = [
  ...FRAME_FIGURES,
  ...CHECK_CASES.flatMap((id) => CASE_FIGURES.map((figure) => nameOf(id, figure))),
] as const;
type Name = (typeof NAMES)[number];

/** In how many of `count` seeded draws of all figures each expectation is met. Needs a foot whose sections have both ends of the cortex. */
export const checkShares = (
  foot: LoadedFoot,
  frame: FrameBands,
  cases: Readonly<Record<CheckCase, BandedCase>>,
  expected: ExpectedOf,
  count: number,
  seed: number,
): readonly CheckShare[] => {
  const bands = Object.fromEntries([
    ...FRAME_FIGURES.map((name) => [name, frame[name]] as const),
    ...CHECK_CASES.flatMap((id) =>
      CASE_FIGURES.map((figure) => [nameOf(id, figure), cases[id].figures[figure]] as const),
    ),
  ]) as Record<Name, Band>;
  const [, ...draws] = drawsOf<Name>(NAMES, bands, count, seed);
  const drawn = draws.map(({ values }) => {
    const drawnCases = Object.fromEntries(
      CHECK_CASES.map((id): [CheckCase, LoadCase] => {
        const figures = Object.fromEntries(CASE_FIGURES.map((figure) => [figure, values[nameOf(id, figure)]]));
        return [id, { ...cases[id], figures: figures as unknown as LoadCase['figures'] }];
      }),
    ) as Record<CheckCase, LoadCase>;
    return checkAnswers(foot, values, drawnCases, expected);
  });
  return idsOf(expected).map((id, i) => {
    const answers = drawn.map((each) => each[i] as CheckAnswer);
    const solved = answers.filter((answer) => answer.unsolved === undefined);
    const hits = solved.filter((answer) => answer.verdict === 'hit').length;
    return { id, share: solved.length === 0 ? null : hits / solved.length, unsolved: answers.length - solved.length };
  });
};
