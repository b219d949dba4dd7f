/**
 * A share from counts of one or more trials, never exactly 0 or 1, with an 80 % interval.
 *
 * One or two trials: counts added; share = mean of Jeffreys' posterior (beta with halves), interval = Wilson's (Wilson 1927,
 * J Am Stat Assoc 22:209). Three or more: a beta distribution of shares between trials by moments (Kleinman 1973, J Am Stat
 * Assoc 68:46), so that trials that disagree give a wide interval; its interval is widened because so few trials tell how far
 * they lie apart (`few-studies.ts`). Wilson's needs no such widening: what a count varies by follows from the count.
 */

import { betaQuantile } from './beta';
import type { Counted } from './counts';
import { normalQuantile } from './distributions';
import { widerBy } from './few-studies';
import type { Rate } from './types';

/** Wilson's score interval. `count` may be a fraction where only a percentage was printed; z = 1.96 gives 95 %. */
export const wilsonInterval = (
  count: number,
  of: number,
  z: number,
): { readonly low: number; readonly high: number } => {
  if (!(of > 0) || count < 0 || count > of) throw new RangeError(`no share: ${count} of ${of}`);
  const p = count / of;
  const z2 = z * z;
  const middle = (p + z2 / (2 * of)) / (1 + z2 / of);
  const half = (z / (1 + z2 / of)) * Math.sqrt((p * (1 - p)) / of + z2 / (4 * of * of));
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
};

const sum = <T>(items: readonly T[], value: (item: T) => number): number =>
  items.reduce((all, item) => all + value(item), 0);

export interface Beta {
  readonly alpha: number;
  readonly beta: number;
}

const jeffreys = (count: number, of: number): Beta => ({ alpha: count + 0.5, beta: of - count + 0.5 });

/**
 * How alike people of one trial are beyond chance, 0 to 1 (intra-class correlation). With shares p_i weighed by size, the
 * expected sum of w_i (p_i - p)^2 is p (1 - p) times [(1 - g) A + g B], A = sum of w_i (1 - w_i) / n_i, B = sum of w_i (1 - w_i).
 */
export const likenessOf = (arms: readonly Counted[]): number => {
  const people = sum(arms, (a) => a.of);
  const p = sum(arms, (a) => a.count) / people;
  const spread = sum(arms, (a) => (a.of / people) * (a.count / a.of - p) ** 2);
  const chance = sum(arms, (a) => ((a.of / people) * (1 - a.of / people)) / a.of);
  const whole = sum(arms, (a) => (a.of / people) * (1 - a.of / people));
  if (!(p > 0 && p < 1 && whole > chance)) return 0;
  const likeness = (spread / (p * (1 - p)) - chance) / (whole - chance);
  // All-or-nothing trials would give 1, which no beta has: no nearer to it than so many people can tell.
  return Math.min(1 - 1 / people, Math.max(0, likeness));
};

/** The share that one more trial would have: spread between trials, and how surely the middle is known. */
export const betaOf = (arms: readonly Counted[]): Beta => {
  const likeness = likenessOf(arms);
  if (likeness === 0)
    return jeffreys(
      sum(arms, (a) => a.count),
      sum(arms, (a) => a.of),
    );
  const weight = (a: Counted): number => a.of / (1 + likeness * (a.of - 1));
  const total = sum(arms, weight);
  const p = sum(arms, (a) => weight(a) * (a.count / a.of)) / total;
  // p (1 - p) / total is the variance of p: both variances together, as a share of p (1 - p).
  const spread = 1 - (1 - likeness) * (1 - 1 / total);
  const strength = 1 / spread - 1;
  return { alpha: p * strength, beta: (1 - p) * strength };
};

/** The same mean, its standard deviation widened for few trials; never so far that all or none would be the only two answers. */
const widened = ({ alpha, beta }: Beta, trials: number, people: number): Beta => {
  const strength = alpha + beta;
  // The variance of a beta is mean (1 - mean) over strength + 1.
  const spread = Math.min(widerBy(trials) ** 2 / (strength + 1), people / (people + 1));
  const left = 1 / spread - 1;
  return { alpha: (left * alpha) / strength, beta: (left * beta) / strength };
};

const betaInterval = ({ alpha, beta }: Beta) => ({
  low: betaQuantile(0.1, alpha, beta),
  high: betaQuantile(0.9, alpha, beta),
});

export const LEAST_TRIALS = 3;

/** Throws RangeError without counts. */
export const rateOf = (arms: readonly Counted[], levels: Rate['levels']): Rate => {
  if (arms.length === 0) throw new RangeError('no share without counts');
  const [count, of] = [sum(arms, (a) => a.count), sum(arms, (a) => a.of)];
  const between = arms.length >= LEAST_TRIALS;
  const found = between ? betaOf(arms) : jeffreys(count, of);
  const share = found.alpha / (found.alpha + found.beta);
  const { low, high } = between
    ? betaInterval(widened(found, arms.length, of))
    : wilsonInterval(count, of, normalQuantile(0.9));
  // A beta heaped at one end can have its mean beyond nine tenths of itself: then the interval is widened to hold it.
  return { share, low: Math.min(low, share), high: Math.max(high, share), arms, levels };
};
