import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ceilingOf, chanceBy, notThereAt, weekOf } from '../../../src/recovery';
import { anyForecast, PLAIN } from './rows';

const week = fc.double({ min: 0, max: 300, noNaN: true });

describe('by hand', () => {
  test('half of the uneventful and 15.9 % of the others are back in week 8', () => {
    // 0.72 * 0.5 + 0.18 * 0.158655
    expect(chanceBy(PLAIN, 8)).toBeCloseTo(0.3885579, 7);
  });

  test('nine in ten are ever back, so no week is known for 90 of 100', () => {
    expect(ceilingOf(PLAIN)).toBeCloseTo(0.9, 12);
    expect(weekOf(PLAIN, 0.95)).toBeNull();
    expect(weekOf(PLAIN, 0.9)).toBeNull();
    expect(weekOf(PLAIN, 0.3885579)).toBeCloseTo(8, 5);
  });

  test('before the start nobody is back', () => {
    expect(chanceBy(PLAIN, 0)).toBe(0);
    expect(chanceBy(PLAIN, -3)).toBe(0);
  });

  test('after all time the ceiling is reached', () => {
    expect(chanceBy(PLAIN, Number.POSITIVE_INFINITY)).toBeCloseTo(0.9, 12);
  });
});

describe('of any forecast made from studies', () => {
  test('chances sum to one and the ceiling is below one', () => {
    fc.assert(
      fc.property(anyForecast, (forecast) => {
        expect(forecast.branches.reduce((s, b) => s + b.chance, 0)).toBeCloseTo(1, 12);
        for (const { chance } of forecast.branches) expect(chance).toBeGreaterThan(0);
        expect(ceilingOf(forecast)).toBeLessThan(1);
      }),
      { numRuns: 500 },
    );
  });

  test('the chance never falls with the weeks and never passes the ceiling, known to be away or not', () => {
    fc.assert(
      fc.property(anyForecast, week, fc.array(week, { minLength: 2, maxLength: 12 }), (before, away, weeks) => {
        for (const forecast of [before, notThereAt(before, away)]) {
          let last = 0;
          for (const w of weeks.toSorted((a, b) => a - b)) {
            const chance = chanceBy(forecast, w);
            expect(chance).toBeGreaterThanOrEqual(last);
            expect(chance).toBeLessThanOrEqual(ceilingOf(forecast));
            if (w <= forecast.afterWeek) expect(chance).toBe(0);
            last = chance;
          }
        }
      }),
      { numRuns: 500 },
    );
  });

  test('the week of a share is the week by which it is reached', () => {
    fc.assert(
      fc.property(anyForecast, week, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (before, away, share) => {
        for (const forecast of [before, notThereAt(before, away)]) {
          const by = weekOf(forecast, share);
          if (share >= ceilingOf(forecast)) expect(by).toBeNull();
          else if (by !== null) {
            expect(chanceBy(forecast, by)).toBeCloseTo(share, 6);
            expect(by).toBeGreaterThan(forecast.afterWeek);
          }
        }
      }),
      { numRuns: 300 },
    );
  });
});

test('what can not be asked', () => {
  for (const share of [0, 1, -0.1, 1.1, Number.NaN]) expect(() => weekOf(PLAIN, share)).toThrow(RangeError);
  expect(() => chanceBy(PLAIN, Number.NaN)).toThrow(RangeError);
});
