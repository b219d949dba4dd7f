/**
 * How good a forecast was, once it is known what happened. Continuous ranked probability score (Gneiting & Raftery 2007, J Am
 * Stat Assoc 102:359): the area between the forecast's curve and the step of what happened, squared heights, in weeks, up to a
 * stated horizon, because a curve that levels off below one has no finite area beyond. Who was not back at the horizon counts
 * there like who never was.
 */
import type { Endpoint } from '../ids';
import { chanceBy, weekOf } from './chance';
import type { Forecast, Happened, Score } from './types';

/** Simpson's rule on this many pairs of steps between two knots: enough for eight digits where the knots are this close. */
const PAIRS = 40;
const simpson = (f: (x: number) => number, from: number, to: number): number => {
  const h = (to - from) / (2 * PAIRS);
  let all = f(from) + f(to);
  for (let i = 1; i < 2 * PAIRS; i++) all += f(from + i * h) * (i % 2 === 1 ? 4 : 2);
  return (all * h) / 3;
};

/** Where the curve bends: every standard deviation of each branch, out to eight. */
const bendsOf = ({ branches }: Forecast): number[] =>
  branches.flatMap(({ time }) =>
    time === null ? [] : Array.from({ length: 17 }, (_, i) => Math.exp(time.mu + (i - 8) * time.sigma)),
  );

const areaOf = (forecast: Forecast, happened: number, horizonWeeks: number): number => {
  const inside = [...bendsOf(forecast), forecast.afterWeek, happened].filter((t) => t > 0 && t < horizonWeeks);
  const knots = [0, ...inside, horizonWeeks].sort((a, b) => a - b);
  let area = 0;
  knots.forEach((to, i) => {
    const from = knots[i - 1];
    if (from === undefined || from === to) return;
    const there = from >= happened ? 1 : 0;
    area += simpson((t) => (chanceBy(forecast, t) - there) ** 2, from, to);
  });
  return area;
};

const placeOf = (forecast: Forecast, happened: number): Score['inside'] => {
  const early = weekOf(forecast, 0.1);
  if (early === null) return null;
  // Where fewer than 90 of 100 are ever back, the interval has no upper end.
  const late = weekOf(forecast, 0.9) ?? Number.POSITIVE_INFINITY;
  if (happened < early) return 'early';
  return happened > late ? 'late' : 'inside';
};

/** Throws RangeError for another endpoint than was forecast, a week below 0 and a horizon that is no span of time. */
export const scoreOf = <E extends Endpoint>(
  forecast: Forecast<E>,
  happened: Happened<NoInfer<E>>,
  horizonWeeks: number,
): Score => {
  if (happened.endpoint !== forecast.endpoint)
    throw new RangeError(`forecast to ${forecast.endpoint}, happened ${happened.endpoint}: not the same`);
  if (!(horizonWeeks > 0 && Number.isFinite(horizonWeeks)))
    throw new RangeError(`a horizon is more than 0 weeks: got ${horizonWeeks}`);
  const week = happened.week === 'never' ? Number.POSITIVE_INFINITY : happened.week;
  if (!(week >= 0)) throw new RangeError(`a week is 0 or more: got ${week}`);
  return { inside: placeOf(forecast, week), crps: areaOf(forecast, week, horizonWeeks), horizonWeeks };
};
