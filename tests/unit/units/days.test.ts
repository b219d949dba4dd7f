/** Days as whole numbers, held against the platform's own calendar. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { IsoDate } from '../../../src/units';
import { dateOfDay, dayNumber, dayOf, daysInMonth, firstDayOf } from '../../../src/units/days';

const LAST = 2_932_896;
const FIRST = -719_528;
const day = fc.integer({ min: FIRST, max: LAST });

test('every day of the years 0 to 9999 has the figures that the platform gives it, and comes back from them', () => {
  expect(dateOfDay(FIRST)).toBe('0000-01-01');
  expect(dateOfDay(LAST)).toBe('9999-12-31');
  fc.assert(
    fc.property(day, (each) => {
      const at = new Date(each * 86_400_000);
      expect(dayOf(at.getUTCFullYear(), at.getUTCMonth() + 1, at.getUTCDate())).toBe(each);
      expect(dayNumber(dateOfDay(each))).toBe(each);
    }),
    { numRuns: 2000 },
  );
});

test('a year begins the day after the last ended, and has as many days as its months', () => {
  for (let year = 0; year < 10_000; year++) {
    const months = Array.from({ length: 12 }, (_, m) => daysInMonth(year, m + 1)).reduce((a, b) => a + b);
    expect(firstDayOf(year + 1) - firstDayOf(year)).toBe(months);
  }
});

test.each([
  [2026, 2, 29],
  [2100, 2, 29],
  [2026, 4, 31],
  [2026, 0, 1],
  [2026, 13, 1],
  [2026, 1, 0],
  [2026, 1, Number.NaN],
])('there is no day %i-%i-%i', (year, month, date) => {
  expect(dayOf(year, month, date)).toBeNull();
});

test('what is no date, or beyond the years, is an error', () => {
  expect(() => dayNumber('soon' as IsoDate)).toThrow(RangeError);
  expect(() => dateOfDay(LAST + 1)).toThrow(RangeError);
  expect(() => dateOfDay(FIRST - 1)).toThrow(RangeError);
});
