/**
 * What a follow-up changes, by Bayes. Not being back at a week speaks for the slower branches: each chance is multiplied by the
 * share of that branch not back by then, and the times that are left start there. A branch without a time keeps everybody.
 */
import { shareAfter } from './distributions';
import type { Branch, Forecast } from './types';

type Branches = Forecast['branches'];

const weighed = <F extends Forecast>(forecast: F, weight: (branch: Branch) => number): Branches => {
  const total = forecast.branches.reduce((all, b) => all + b.chance * weight(b), 0);
  if (!(total > 0)) throw new RangeError('by this forecast nobody is left of whom that could be said');
  const scaled = (b: Branch): Branch => ({ ...b, chance: (b.chance * weight(b)) / total });
  const [uneventful, problem, notReturned] = forecast.branches;
  return [scaled(uneventful), scaled(problem), scaled(notReturned)];
};

const survival = ({ time }: Branch, from: number, to: number): number => {
  if (time === null) return 1;
  const left = shareAfter(time, from);
  return left > 0 ? shareAfter(time, to) / left : 0;
};

/** The person is known not to be back at the end of `week`. An earlier week than is known already changes nothing. */
export const notThereAt = <F extends Forecast>(forecast: F, week: number): F => {
  if (!(week >= 0 && Number.isFinite(week))) throw new RangeError(`notThereAt: a week is 0 or more: got ${week}`);
  if (week <= forecast.afterWeek) return forecast;
  const branches = weighed(forecast, (b) => survival(b, forecast.afterWeek, week));
  return { ...forecast, branches, afterWeek: week };
};

/**
 * The person is not back at the end of `week`, but what was found speaks for healing: the times that are left start there, and the
 * chances of the three ways stay as they were. How much such a finding lowers them no study of these says.
 */
export const healingAt = <F extends Forecast>(forecast: F, week: number): F => {
  if (!(week >= 0 && Number.isFinite(week))) throw new RangeError(`healingAt: a week is 0 or more: got ${week}`);
  return week <= forecast.afterWeek ? forecast : { ...forecast, afterWeek: week };
};

/** A healing problem is known to have happened: the uneventful branch is out. */
export const knownProblem = <F extends Forecast>(forecast: F): F => ({
  ...forecast,
  branches: weighed(forecast, ({ name }) => (name === 'uneventful' ? 0 : 1)),
});
