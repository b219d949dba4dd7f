/** People of 100: what is told of a forecast is whole, sums up, and never gets better by waiting. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { backByOf, chanceBy, type Forecast, healingAt, knownProblem, notThereAt } from '../../../src/recovery';
import { hundredOf, peopleOf, troubleOf } from '../../../src/recovery/hundred';
import { anyForecast, PLAIN } from './rows';

const withChances = (uneventful: number, problem: number, notReturned: number): Forecast => ({
  ...PLAIN,
  branches: [
    { ...PLAIN.branches[0], chance: uneventful },
    { ...PLAIN.branches[1], chance: problem },
    { ...PLAIN.branches[2], chance: notReturned },
  ],
});

test('by hand', () => {
  expect(hundredOf(PLAIN)).toEqual({ uneventful: 72, trouble: 28, problem: 18, notBack: 10 });
  // 12.46 and 4.46 rounded by themselves are 12 and 4; together 16.92 are 17, so that 83, 13 and 4 make 100.
  expect(hundredOf(withChances(0.8308, 0.1246, 0.0446))).toEqual({
    uneventful: 83,
    trouble: 17,
    problem: 13,
    notBack: 4,
  });
  // Once rounded to three digits 0.1246 would round on to 13: a share is rounded once.
  expect(peopleOf(0.1246)).toBe(12);
});

test('nobody is rounded away, and nothing is certain that is not', () => {
  expect(hundredOf(withChances(0.998, 0.001, 0.001))).toEqual({ uneventful: 98, trouble: 2, problem: 1, notBack: 1 });
  expect(hundredOf(withChances(0.001, 0.001, 0.998))).toEqual({ uneventful: 1, trouble: 99, problem: 1, notBack: 98 });
  expect(hundredOf(withChances(0, 0.6, 0.4))).toEqual({ uneventful: 0, trouble: 100, problem: 60, notBack: 40 });
  expect([0, 0.0001, 0.9999, 1].map(peopleOf)).toEqual([0, 1, 99, 100]);
});

const week = fc.double({ min: 0, max: 400, noNaN: true });
const learnt = fc.tuple(fc.constantFrom('notThere', 'healing', 'problem'), week);
const after = (forecast: Forecast, says: string, at: number): Forecast =>
  says === 'problem'
    ? knownProblem(notThereAt(forecast, at))
    : says === 'healing'
      ? healingAt(forecast, at)
      : notThereAt(forecast, at);

describe('of any forecast made from studies', () => {
  test('whole people, never below nobody, that make 100', () => {
    fc.assert(
      fc.property(anyForecast, week, (forecast, at) => {
        const { uneventful, trouble, problem, notBack } = hundredOf(notThereAt(forecast, at));
        for (const people of [uneventful, trouble, problem, notBack])
          expect(Number.isInteger(people) && people >= 0).toBe(true);
        expect(uneventful + problem + notBack).toBe(100);
        expect(problem + notBack).toBe(trouble);
      }),
      { numRuns: 300 },
    );
  });

  test('whatever is found week by week short of being back, the odds of trouble never fall: neither the share nor what is told', () => {
    fc.assert(
      fc.property(anyForecast, fc.array(learnt, { minLength: 2, maxLength: 8 }), (start, found) => {
        let forecast: Forecast = start;
        for (const [says, at] of found.toSorted(([, a], [, b]) => a - b)) {
          const next = after(forecast, says, at);
          // Rounding of a sum of three: 1 in 10^12.
          expect(troubleOf(next)).toBeGreaterThanOrEqual(troubleOf(forecast) * (1 - 1e-12));
          expect(hundredOf(next).trouble).toBeGreaterThanOrEqual(hundredOf(forecast).trouble);
          expect(hundredOf(next).notBack).toBeGreaterThanOrEqual(hundredOf(forecast).notBack);
          forecast = next;
        }
      }),
      { numRuns: 500 },
    );
  });

  test('the share with a problem alone does fall in the end: it is not what is told as the odds of trouble', () => {
    const share = (at: number) => notThereAt(PLAIN, at).branches[1].chance;
    expect(share(60)).toBeLessThan(share(20));
    expect(troubleOf(notThereAt(PLAIN, 60))).toBeGreaterThan(troubleOf(notThereAt(PLAIN, 20)));
  });

  test('people back by a week never fall, and never pass those who ever are', () => {
    fc.assert(
      fc.property(anyForecast, week, week, (forecast, a, b) => {
        const [early, late] = a < b ? [a, b] : [b, a];
        expect(backByOf(forecast, late)).toBeGreaterThanOrEqual(backByOf(forecast, early));
        expect(backByOf(forecast, late)).toBeLessThanOrEqual(100 - hundredOf(forecast).notBack);
        // At most one person from the share: half of one by rounding, the rest where nobody or all may not be told.
        expect(Math.abs(backByOf(forecast, late) - 100 * chanceBy(forecast, late))).toBeLessThanOrEqual(1);
      }),
    );
  });
});
