/** What many draws say of a number and of a statement. */
import { quantile } from './draws';
import type { Agreement, Spread } from './types';

/** The inner eight tenths of the draws. */
export const LOW = 0.1;
export const HIGH = 0.9;

export const spreadOf = (told: number, values: readonly number[]): Spread => ({
  told,
  low: quantile(values, LOW),
  high: quantile(values, HIGH),
});

/** A draw without an answer agrees with nothing: `draws` counts it too. */
export const agreementOf = (told: boolean, values: readonly boolean[], draws: number): Agreement => ({
  holds: told,
  share: values.filter((value) => value === told).length / draws,
});
