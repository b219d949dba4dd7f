/** What the diary of the panel is told, and what it means: a habit, the weeks ahead, and how hard each step is. Kept in the panel only. */

import type { Diary, ToldWeek } from '../../mechanics/repetition';
import type { Quantity } from '../../units';

export const DIARY_KINDS = ['distance', 'sessions'] as const;

export interface DiaryState {
  readonly kind: (typeof DIARY_KINDS)[number];
  /** A week of the habit: km, or sessions. */
  readonly before: number;
  readonly strideBeforeM: number;
  readonly strideAheadM: number;
  readonly stridesPerSession: number;
  readonly plan: 'ramp' | 'each';
  readonly weekCount: number;
  readonly rampPercent: number;
  /** km, or sessions, week by week; used when the plan is `each`. */
  readonly each: readonly number[];
  /** Load of a step against before: alike, as the task against walking in the frame, or as told. */
  readonly step: 'same' | 'task' | 'own';
  readonly ownStep: number;
}

/** Bounds of the sliders; a stride is two steps. */
export const BOUNDS = {
  distance: { low: 1, high: 120, step: 1 },
  sessions: { low: 1, high: 14, step: 1 },
  stride: { low: 0.8, high: 4, step: 0.1 },
  strides: { low: 100, high: 6000, step: 100 },
  weeks: { low: 2, high: 12, step: 1 },
  ramp: { low: -50, high: 100, step: 5 },
  own: { low: 0.7, high: 1.5, step: 0.05 },
} as const;

/** A runner's usual weeks, to begin from; chosen, and said to be. */
export const FIRST_DIARY: DiaryState = {
  kind: 'distance',
  before: 20,
  strideBeforeM: 2.2,
  strideAheadM: 2.2,
  stridesPerSession: 1500,
  plan: 'ramp',
  weekCount: 6,
  rampPercent: 10,
  each: [],
  step: 'same',
  ownStep: 1,
};
const FIRST_SESSIONS = 3;

/** Another kind of week starts anew: kilometres are no sessions. */
export const ofKind = (state: DiaryState, kind: DiaryState['kind']): DiaryState => ({
  ...state,
  kind,
  before: kind === 'distance' ? FIRST_DIARY.before : FIRST_SESSIONS,
  plan: 'ramp',
  each: [],
});

const tenth = (value: number): number => Math.round(10 * value) / 10;

/** What each week ahead holds, by the ramp or as typed. */
export const amountsOf = ({ plan, each, weekCount, before, rampPercent }: DiaryState): readonly number[] => {
  const ramp = Array.from({ length: weekCount }, (_, i) => tenth(before * (1 + rampPercent / 100) ** (i + 1)));
  return plan === 'ramp' ? ramp : ramp.map((amount, i) => each[i] ?? amount);
};

/** Typing weeks begins from the ramp. */
export const typed = (state: DiaryState): DiaryState => ({ ...state, plan: 'each', each: amountsOf(state) });

/** Told, lowest and highest load of a step against before. */
export const stepRatios = ({ step, ownStep }: DiaryState, task: Quantity | null): readonly number[] => {
  if (step === 'own') return [ownStep];
  return step === 'task' && task !== null ? [task.value, ...(task.lowHigh ?? [])] : [1];
};

export const diaryOf = (state: DiaryState, strainRatio: number): Diary => {
  const week = (amount: number, strideM: number, ratio: number): ToldWeek =>
    state.kind === 'distance'
      ? { kind: 'distance', distanceKm: amount, strideM, strainRatio: ratio }
      : { kind: 'sessions', sessions: amount, stridesPerSession: state.stridesPerSession, strainRatio: ratio };
  return {
    habit: week(state.before, state.strideBeforeM, 1),
    weeks: amountsOf(state).map((amount) => week(amount, state.strideAheadM, strainRatio)),
  };
};
