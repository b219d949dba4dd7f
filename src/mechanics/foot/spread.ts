/** What many draws say of a number and of a statement. */
import { quantile } from './draws';
import { type Agreement, ENOUGH_AGREEMENT, type Spread } from './types';

/** The inner eight tenths of the draws. */
export const LOW = 0.1;
export const HIGH = 0.9;

export const spreadOf = (told: number, values: readonly number[]): Spread => ({
  told,
  low: quantile(values, LOW),
  high: quantile(values, HIGH),
});

/** A draw without an answer agrees with nothing, and with no contrary: `draws` counts it too. */
export const agreementOf = (told: boolean, values: readonly boolean[], draws: number): Agreement => ({
  holds: told,
  share: values.filter((value) => value === told).length / draws,
  against: values.filter((value) => value !== told).length / draws,
});

/** Whether enough of all draws say so; none is asked once the answer is known. */
export const enoughSay = <T>(draws: readonly T[], says: (draw: T) => boolean): boolean => {
  const needed = ENOUGH_AGREEMENT * draws.length;
  let yes = 0;
  for (const [i, draw] of draws.entries()) {
    if (says(draw)) yes += 1;
    if (yes >= needed) return true;
    if (yes + draws.length - i - 1 < needed) return false;
  }
  return false;
};
