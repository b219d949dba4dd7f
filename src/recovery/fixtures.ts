/**
 * Days that a person asks about (a match, a show, a trip) against a forecast: the chance to be back by each, and how many of them
 * are missed. Whoever is back in week t misses exactly the days before t, so that the number missed is a function of that one week
 * and its distribution follows from the forecast without another assumption: P(i or more missed) = 1 - chance at the i-th day.
 */
import { chanceBy } from './chance';
import type { Forecast } from './types';

/** How many of `of` are missed. Four of five times it is between low and high, ends included. */
export interface Missed {
  readonly of: number;
  readonly mean: number;
  /** Smallest number at or under which at least 10, and 90, of 100 fall. */
  readonly low: number;
  readonly high: number;
}

export interface FixturesAhead {
  /** Chance to be back by each week, in the order given. */
  readonly chances: readonly number[];
  /** Null when there is none to miss. */
  readonly missed: Missed | null;
}

const LOW = 0.1;
const HIGH = 0.9;
/** Sums of chances are off by this little at most; without it a chance of 0.1 would count or not by its last bit. */
const ROUNDING = 1e-12;

/** From the chances to be back by each, in any order. */
export const missedOf = (chances: readonly number[]): Missed | null => {
  const rising = [...chances].sort((a, b) => a - b);
  const of = rising.length;
  if (of === 0) return null;
  // At most m are missed exactly when the person is back by day m + 1; at most all of them in any case.
  const atMost = (m: number): number => rising[m] ?? 1;
  const quantile = (share: number): number => {
    let m = 0;
    while (atMost(m) < share - ROUNDING) m++;
    return m;
  };
  return { of, mean: rising.reduce((sum, chance) => sum + 1 - chance, 0), low: quantile(LOW), high: quantile(HIGH) };
};

/** Weeks since the start, in any order, parts of weeks too. */
export const fixturesAhead = (forecast: Forecast, weeks: readonly number[]): FixturesAhead => {
  const chances = weeks.map((week) => chanceBy(forecast, week));
  return { chances, missed: missedOf(chances) };
};
