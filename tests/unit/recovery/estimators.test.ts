import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  logNormalOf,
  meanFromQuartiles,
  meanFromRange,
  quartilesInSds,
  rangeInSds,
  sdFromQuartiles,
  sdFromRange,
} from '../../../src/recovery/estimators';

describe('mean and spread from what was printed', () => {
  test('a sample as a normal one should look gives back its mean and spread', () => {
    const n = 40;
    const [mean, sd] = [10, 2];
    const ends = [mean - (rangeInSds(n) / 2) * sd, mean + (rangeInSds(n) / 2) * sd] as const;
    const quarters = [mean - (quartilesInSds(n) / 2) * sd, mean + (quartilesInSds(n) / 2) * sd] as const;
    expect(sdFromRange(...ends, n)).toBeCloseTo(sd, 12);
    expect(meanFromRange(ends[0], mean, ends[1], n)).toBeCloseTo(mean, 12);
    expect(sdFromQuartiles(...quarters, n)).toBeCloseTo(sd, 12);
    expect(meanFromQuartiles(quarters[0], mean, quarters[1], n)).toBeCloseTo(mean, 12);
  });

  test('by hand: median 10, range 4 to 20, 16 people', () => {
    // 16^0.75 = 8; ends weigh 4 / 12 = 1/3: (4 + 20) / 2 / 3 + 10 * 2/3 = 4 + 6.6667
    expect(meanFromRange(4, 10, 20, 16)).toBeCloseTo(10.6667, 4);
  });

  test('by hand: median 10, quartiles 7 and 15, 39 people', () => {
    // ends weigh 0.7 + 0.39 / 39 = 0.71: 11 * 0.71 + 10 * 0.29 = 10.71
    expect(meanFromQuartiles(7, 10, 15, 39)).toBeCloseTo(10.71, 12);
  });

  test('more people reach further: the same range is a smaller spread', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 2000 }), (n) => {
        expect(rangeInSds(n + 1)).toBeGreaterThan(rangeInSds(n));
      }),
    );
  });

  test('log-normal by moments: its own mean and standard deviation come back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        (m, cv) => {
          const { mu, sigma } = logNormalOf(m, cv * m);
          const mean = Math.exp(mu + sigma ** 2 / 2);
          expect(mean / m).toBeCloseTo(1, 9);
          expect((mean * Math.sqrt(Math.expm1(sigma ** 2))) / (cv * m)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

describe('figures that no sample can have are refused in words', () => {
  test.each<[string, () => unknown, RegExp]>([
    ['one person', () => sdFromRange(1, 2, 1), /at least 2 people/],
    ['half a person', () => sdFromRange(1, 2, 2.5), /whole number/],
    ['no number', () => sdFromRange(1, 2, Number.NaN), /at least 2 people/],
    ['quartiles of four', () => sdFromQuartiles(1, 2, 4), /at least 5 people/],
    ['a reversed range', () => sdFromRange(3, 2, 10), /lower end .* 3 to 2/],
    ['a range that is a point', () => sdFromRange(2, 2, 10), /lower end/],
    ['reversed quartiles', () => meanFromQuartiles(3, 2.5, 2, 10), /lower end/],
    ['a median outside its range', () => meanFromRange(2, 5, 4, 10), /inside its range/],
    ['a spread of nothing', () => logNormalOf(8, 0), /more than 0/],
    ['a negative spread', () => logNormalOf(8, -1), /more than 0/],
    ['a mean of nothing', () => logNormalOf(0, 1), /more than 0 weeks/],
    ['a spread without end', () => logNormalOf(8, Number.POSITIVE_INFINITY), /more than 0/],
  ])('%s', (_, run, message) => {
    expect(run).toThrow(RangeError);
    expect(run).toThrow(message);
  });
});
