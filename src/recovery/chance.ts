/** What a forecast says: the chance to be back by a week, the week by which so many are back, and how many ever are. */
import { shareAfter, shareBy } from './distributions';
import { hundredOf, peopleOf } from './hundred';
import type { Branch, Forecast } from './types';

/** Share of one branch back by a week, of those of it who were not back at `afterWeek`. */
const branchBy = ({ time }: Branch, afterWeek: number, week: number): number => {
  if (time === null || week <= afterWeek) return 0;
  if (afterWeek === 0) return shareBy(time, week);
  const left = shareAfter(time, afterWeek);
  // Nobody of this branch is left by its own figures: whoever is, is back at once.
  return left > 0 ? 1 - shareAfter(time, week) / left : 1;
};

/** Chance to be back by the end of a week. 0 up to the week at which the person is known not to be back. */
export const chanceBy = (forecast: Forecast, week: number): number => {
  if (Number.isNaN(week)) throw new RangeError('chanceBy: a week must be a number');
  return forecast.branches.reduce((all, b) => all + b.chance * branchBy(b, forecast.afterWeek, week), 0);
};

/** Chance ever to be back, as far as is known: what `chanceBy` levels off at. Below one. */
export const ceilingOf = (forecast: Forecast): number =>
  forecast.branches.reduce((all, b) => all + (b.time === null ? 0 : b.chance), 0);

/** Weeks beyond which no week is searched for: thousands of lives. */
const LATEST = 1e7;

/** Week by which `share` are back; null where as many never are. Throws RangeError for a share outside 0 to 1. */
export const weekOf = (forecast: Forecast, share: number): number | null => {
  if (!(share > 0 && share < 1)) throw new RangeError(`weekOf: a share lies between 0 and 1: got ${share}`);
  if (share >= ceilingOf(forecast)) return null;
  let before = forecast.afterWeek;
  let by = Math.max(1, 2 * before);
  while (chanceBy(forecast, by) < share) {
    before = by;
    by *= 2;
    if (by > LATEST) return null;
  }
  // Halved until two neighbouring numbers are left.
  for (let middle = (before + by) / 2; middle > before && middle < by; middle = (before + by) / 2) {
    if (chanceBy(forecast, middle) < share) before = middle;
    else by = middle;
  }
  return by;
};

/** People of 100 back by the end of a week; never more than ever are. */
export const backByOf = (forecast: Forecast, week: number): number =>
  Math.min(peopleOf(chanceBy(forecast, week)), 100 - hundredOf(forecast).notBack);
