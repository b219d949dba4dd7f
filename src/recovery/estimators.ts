/**
 * Mean and standard deviation from what a study printed instead. The published estimators are for a normal sample; `fits.ts`
 * hands them logarithms of weeks where the print is made of quantiles, because ln weeks is what we take as normal.
 *
 * Standard deviation: Wan et al. 2014, BMC Med Res Methodol 14:135, formula 9 (range) and 16 (quartiles).
 * Mean: Luo et al. 2018, Stat Methods Med Res 27:1785, the rule of thumb for range and for quartiles.
 * All throw RangeError for figures that no sample can have.
 */
import { normalQuantile } from './distributions';
import type { TimeFit } from './types';

/** A quartile of fewer than five people is one of them, or between two: no spread can be told from it. */
export const LEAST_FOR_QUARTILES = 5;

const enough = (n: number, least: number): void => {
  if (!Number.isInteger(n) || n < least)
    throw new RangeError(`a spread needs at least ${least} people, a whole number of them: got ${n}`);
};

const ordered = (low: number, high: number): void => {
  if (!(low < high)) throw new RangeError(`the lower end must be below the upper one: got ${low} to ${high}`);
};

const between = (low: number, middle: number, high: number): void => {
  if (!(low <= middle && middle <= high))
    throw new RangeError(`the median must lie inside its range: got ${middle} in ${low} to ${high}`);
};

/** How many standard deviations a normal sample of n spans from its lowest to its highest, on average. */
export const rangeInSds = (n: number): number => {
  enough(n, 2);
  return 2 * normalQuantile((n - 0.375) / (n + 0.25));
};

/** How many standard deviations lie between the quartiles of a normal sample of n, on average. */
export const quartilesInSds = (n: number): number => {
  enough(n, LEAST_FOR_QUARTILES);
  return 2 * normalQuantile((0.75 * n - 0.125) / (n + 0.25));
};

export const sdFromRange = (low: number, high: number, n: number): number => {
  ordered(low, high);
  return (high - low) / rangeInSds(n);
};

export const sdFromQuartiles = (q1: number, q3: number, n: number): number => {
  ordered(q1, q3);
  return (q3 - q1) / quartilesInSds(n);
};

export const meanFromRange = (low: number, median: number, high: number, n: number): number => {
  enough(n, 2);
  ordered(low, high);
  between(low, median, high);
  const ends = 4 / (4 + n ** 0.75);
  return ends * ((low + high) / 2) + (1 - ends) * median;
};

export const meanFromQuartiles = (q1: number, median: number, q3: number, n: number): number => {
  enough(n, LEAST_FOR_QUARTILES);
  ordered(q1, q3);
  between(q1, median, q3);
  const ends = 0.7 + 0.39 / n;
  return ends * ((q1 + q3) / 2) + (1 - ends) * median;
};

/** The log-normal distribution that has this mean and standard deviation: moments set equal. */
export const logNormalOf = (mean: number, sd: number): TimeFit => {
  if (!(mean > 0 && Number.isFinite(mean))) throw new RangeError(`a mean time is more than 0 weeks: got ${mean}`);
  if (!(sd > 0 && Number.isFinite(sd))) throw new RangeError(`a standard deviation is more than 0: got ${sd}`);
  const variance = Math.log1p((sd / mean) ** 2);
  return { mu: Math.log(mean) - variance / 2, sigma: Math.sqrt(variance) };
};
