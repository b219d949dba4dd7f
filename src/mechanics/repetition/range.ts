/** A diary's damage over the range of the constants: the usual law, and the least and most that any end of their bands gives. */
import { type DamageLaw, type Diary, damageOf, type WeekDamage } from './diary';

/** A figure of the content: a value and, where it has one, its band. */
export interface FigureLike {
  readonly value: number;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

/** Constants of content/repetition.yaml. */
export interface RepetitionInputsLike {
  readonly exponent: FigureLike;
  readonly repairDays: FigureLike;
  readonly repairExponent: FigureLike;
}

export interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface WeekRange {
  readonly done: Ranged;
  readonly standing: Ranged;
}

const endsOf = ({ value, low, high }: FigureLike): readonly number[] => [value, low ?? value, high ?? value];

/** The first law has every constant at its value. */
const lawsOf = (inputs: RepetitionInputsLike, repairs: boolean): DamageLaw[] =>
  endsOf(inputs.exponent).flatMap((exponent): DamageLaw[] =>
    repairs
      ? endsOf(inputs.repairDays).flatMap((timeDays) =>
          endsOf(inputs.repairExponent).map((v) => ({ exponent, repair: { timeDays, exponent: v } })),
        )
      : [{ exponent, repair: null }],
  );

export const damageRangeOf = (diary: Diary, inputs: RepetitionInputsLike, repairs: boolean): WeekRange[] => {
  const runs = lawsOf(inputs, repairs).map((law) => damageOf(diary, law));
  return diary.weeks.map((_, week) => {
    const range = (key: keyof WeekDamage): Ranged => {
      const all = runs.map((run) => run[week]?.[key] ?? Number.NaN);
      return { value: all[0] ?? Number.NaN, low: Math.min(...all), high: Math.max(...all) };
    };
    return { done: range('done'), standing: range('standing') };
  });
};
