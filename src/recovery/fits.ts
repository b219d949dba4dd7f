/**
 * A log-normal distribution of one arm's weeks, from what its study printed: the best spread that it printed decides. Quantiles
 * (median, quartiles, ends of the range) keep their places under the logarithm, so they are read there; a mean does not, so a
 * mean with a range takes its standard deviation in weeks.
 */
import type { Endpoint } from '../ids';
import {
  LEAST_FOR_QUARTILES,
  logNormalOf,
  meanFromQuartiles,
  meanFromRange,
  sdFromQuartiles,
  sdFromRange,
} from './estimators';
import type { FitFrom, FittedArm, TimedArm, TimeFit } from './types';

type Pair = readonly [number, number] | null;
/** A pair whose ends are printed as the same week tells no spread. */
const spreadOf = (pair: Pair): Pair => (pair !== null && pair[0] === pair[1] ? null : pair);
/** Logarithms, where there are any. */
const logsOf = (pair: Pair): Pair => (pair !== null && pair[0] > 0 ? [Math.log(pair[0]), Math.log(pair[1])] : null);

type Fitted = { readonly fit: TimeFit; readonly from: FitFrom } | null;

const fromMean = (arm: TimedArm, n: number): Fitted => {
  const { centreWeeks: mean, sdWeeks } = arm;
  const range = spreadOf(arm.rangeWeeks);
  if (sdWeeks !== null) return { fit: logNormalOf(mean, sdWeeks), from: 'mean and SD' };
  if (range === null) return null;
  return { fit: logNormalOf(mean, sdFromRange(...range, n)), from: 'mean and range' };
};

const fromMedian = (arm: TimedArm, n: number): Fitted => {
  const median = Math.log(arm.centreWeeks);
  const quartiles = logsOf(spreadOf(arm.quartilesWeeks));
  if (quartiles !== null && n >= LEAST_FOR_QUARTILES) {
    const [q1, q3] = quartiles;
    const fit = { mu: meanFromQuartiles(q1, median, q3, n), sigma: sdFromQuartiles(q1, q3, n) };
    return { fit, from: 'median and quartiles' };
  }
  const range = logsOf(spreadOf(arm.rangeWeeks));
  if (range === null) return null;
  const [low, high] = range;
  return {
    fit: { mu: meanFromRange(low, median, high, n), sigma: sdFromRange(low, high, n) },
    from: 'median and range',
  };
};

/**
 * null where the print does not give a spread that can be used: none, no number of people, a single person, a range that
 * starts at 0 weeks beside a median. Throws RangeError for figures that no sample can have: a reversed range, a mean of 0.
 */
export const fitArm = <E extends Endpoint>(arm: TimedArm<E>): FittedArm<E> | null => {
  const { n } = arm;
  if (n === null || n < 2) return null;
  const fitted = arm.centre === 'mean' ? fromMean(arm, n) : fromMedian(arm, n);
  return fitted === null ? null : { ...arm, n, ...fitted };
};
