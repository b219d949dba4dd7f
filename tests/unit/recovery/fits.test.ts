import { describe, expect, test } from 'vitest';
import { armsFor } from '../../../src/recovery';
import { fitArm } from '../../../src/recovery/fits';
import { rowOf, SPORT, timeOf } from './rows';

const fitted = (time: Parameters<typeof timeOf>[0], n: number | null = 20) => {
  const [arm] = armsFor([rowOf('a', { n, time: timeOf(time) })], SPORT);
  return arm ? fitArm(arm) : undefined;
};

describe('what a study printed decides how it is read', () => {
  test('mean and SD before mean and range', () => {
    expect(fitted({ sdWeeks: 2, rangeWeeks: [1, 30] })?.from).toBe('mean and SD');
    expect(fitted({ rangeWeeks: [1, 30] })?.from).toBe('mean and range');
  });

  test('quartiles before the range, and the range where too few people make quartiles', () => {
    const both = { centre: 'median', quartilesWeeks: [6, 10], rangeWeeks: [3, 30] } as const;
    expect(fitted(both)?.from).toBe('median and quartiles');
    expect(fitted(both, 4)?.from).toBe('median and range');
  });

  test('quantiles are read under the logarithm: in twice the weeks the middle moves by ln 2 and the spread stays', () => {
    for (const pair of [{ quartilesWeeks: [6, 11] }, { rangeWeeks: [3, 30] }] as const) {
      const one = fitted({ centre: 'median', ...pair })?.fit;
      const double = (p: readonly number[] | undefined) => p?.map((w) => 2 * w);
      const two = fitted({
        centre: 'median',
        centreWeeks: 16,
        ...('rangeWeeks' in pair ? { rangeWeeks: double(pair.rangeWeeks) ?? null } : {}),
        ...('quartilesWeeks' in pair ? { quartilesWeeks: double(pair.quartilesWeeks) ?? null } : {}),
      })?.fit;
      expect((two?.mu ?? 0) - (one?.mu ?? 0)).toBeCloseTo(Math.LN2, 12);
      expect(two?.sigma).toBeCloseTo(one?.sigma ?? 0, 12);
    }
  });

  test('a log-normal sample is found again from its own quartiles', () => {
    // Quartiles of 100 people lie 2 z(74.875 / 100.25) = 1.329425 standard deviations apart.
    const half = 0.5 * (1.329425 / 2);
    const fit = fitted(
      { centre: 'median', centreWeeks: Math.exp(2), quartilesWeeks: [Math.exp(2 - half), Math.exp(2 + half)] },
      100,
    )?.fit;
    expect(fit?.mu).toBeCloseTo(2, 6);
    expect(fit?.sigma).toBeCloseTo(0.5, 6);
  });
});

describe('no fit where no spread can be used', () => {
  test.each<[string, Parameters<typeof timeOf>[0], number | null]>([
    ['a centre alone', {}, 20],
    ['no number of people', { sdWeeks: 2 }, null],
    ['a single person', { sdWeeks: 2 }, 1],
    ['a median with a standard deviation', { centre: 'median', sdWeeks: 2 }, 20],
    ['a mean with quartiles', { quartilesWeeks: [6, 10] }, 20],
    ['a median with a range from 0', { centre: 'median', rangeWeeks: [0, 16] }, 20],
    ['a range that is a point', { rangeWeeks: [8, 8] }, 20],
  ])('%s', (_, time, n) => {
    expect(fitted(time, n)).toBeNull();
  });

  test('a reversed range is no range', () => {
    expect(() => fitted({ rangeWeeks: [9, 7] })).toThrow(RangeError);
  });
});
