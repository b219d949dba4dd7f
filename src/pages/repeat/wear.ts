/** The wear of the diary, week by week: least and most over every constant's ends and over what is known of the load of a step. */
import type { Repetition } from '../../content/schema';
import { damageRangeOf, type Ranged, type WeekRange } from '../../mechanics/repetition';
import type { Quantity } from '../../units';
import { amountsOf, type DiaryState, diaryOf, stepRatios } from './diary-state';

export interface WearWeek {
  readonly week: number;
  readonly amount: number;
  /** All wear since the first week over what the habit would have done. */
  readonly done: Ranged;
  /** What is not yet mended at the week's end, over the same with the habit gone on. */
  readonly left: Ranged;
}

const around = (all: readonly Ranged[]): Ranged => ({
  value: all[0]?.value ?? Number.NaN,
  low: Math.min(...all.map((each) => each.low)),
  high: Math.max(...all.map((each) => each.high)),
});

export const wearOf = (state: DiaryState, constants: Repetition, task: Quantity | null): readonly WearWeek[] => {
  const ratios = stepRatios(state, task);
  const runs = (repairs: boolean): readonly WeekRange[][] =>
    ratios.map((ratio) => damageRangeOf(diaryOf(state, ratio), constants, repairs));
  const [bare, repaired] = [runs(false), runs(true)];
  const standing = (all: readonly WeekRange[][], i: number): Ranged =>
    around(all.flatMap((weeks) => weeks[i]?.standing ?? []));
  return amountsOf(state).map((amount, i) => ({
    week: i + 1,
    amount,
    done: standing(bare, i),
    left: standing(repaired, i),
  }));
};

/** A twentieth is no difference that anybody could tell. */
const NEAR = 0.05;

/** Whether the constants allow both less and more than the habit. */
export const leavesOpen = ({ low, high }: Ranged): boolean => low < 1 - NEAR && high > 1 + NEAR;

/** Two figures, and whole numbers from ten on: more would pretend. */
export const shortNumber = (value: number): string => String(Number(value.toPrecision(2)));
