import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addWeeks, calendarOf, weeksBetween } from '../../../src/recovery';
import type { IsoDate } from '../../../src/units';

const day = (text: string) => text as IsoDate;
const DAY_MS = 86_400_000;
const isoDate = fc
  .integer({ min: Date.UTC(1900, 0, 1) / DAY_MS, max: Date.UTC(2100, 0, 1) / DAY_MS })
  .map((d) => new Date(d * DAY_MS).toISOString().slice(0, 10) as IsoDate);
const wholeWeeks = fc.integer({ min: -500, max: 500 });

describe('weeks and dates', () => {
  test.each([
    ['over a leap day', '2024-02-26', 1, '2024-03-04'],
    ['not over a leap day', '2023-02-26', 1, '2023-03-05'],
    ['over the end of a year', '2026-12-30', 1, '2027-01-06'],
    ['over a change to summer time', '2026-03-25', 1, '2026-04-01'],
    ['half weeks are rounded to whole days', '2026-01-01', 7.5, '2026-02-23'],
    ['backwards', '2026-01-01', -1, '2025-12-25'],
  ])('%s', (_, from, weeks, to) => {
    expect(addWeeks(day(from), weeks)).toBe(to);
  });

  test('adding weeks and counting them are inverse', () => {
    fc.assert(fc.property(isoDate, wholeWeeks, (date, weeks) => weeksBetween(date, addWeeks(date, weeks)) === weeks));
  });

  test('counting is antisymmetric and adds up', () => {
    fc.assert(
      fc.property(isoDate, isoDate, isoDate, (a, b, c) => {
        expect(weeksBetween(a, b) + weeksBetween(b, a)).toBe(0);
        expect(weeksBetween(a, b) + weeksBetween(b, c)).toBeCloseTo(weeksBetween(a, c), 9);
      }),
    );
  });

  test('a whole number of weeks later is the same day of the week', () => {
    const weekday = (d: IsoDate) => new Date(`${d}T00:00:00Z`).getUTCDay();
    fc.assert(fc.property(isoDate, wholeWeeks, (date, weeks) => weekday(addWeeks(date, weeks)) === weekday(date)));
  });

  test('no date and dates beyond the calendar are errors', () => {
    expect(() => addWeeks(day('2026-02-30x'), 1)).toThrow(RangeError);
    expect(() => addWeeks(day('9999-12-31'), 1)).toThrow(RangeError);
    expect(() => weeksBetween(day('soon'), day('2026-01-01'))).toThrow(RangeError);
  });
});

describe('stages in weeks, and in dates once the start is known', () => {
  const STAGES = [
    { weeksFrom: 0, weeksTo: 2 },
    { weeksFrom: 2, weeksTo: null },
    { weeksFrom: null, weeksTo: null },
  ];

  test('without a start date there are weeks and no dates', () => {
    expect(calendarOf(STAGES, null)).toEqual([
      { stageIndex: 0, fromWeek: 0, toWeek: 2, fromDate: null, toDate: null },
      { stageIndex: 1, fromWeek: 2, toWeek: null, fromDate: null, toDate: null },
      { stageIndex: 2, fromWeek: null, toWeek: null, fromDate: null, toDate: null },
    ]);
  });

  test('a stage that criteria open gets no date, whatever the start', () => {
    const [first, second, third] = calendarOf(STAGES, day('2026-07-06'));
    expect(first).toMatchObject({ fromDate: '2026-07-06', toDate: '2026-07-20' });
    expect(second).toMatchObject({ fromDate: '2026-07-20', toDate: null });
    expect(third).toMatchObject({ fromDate: null, toDate: null });
  });

  test('moving the start moves every date by as much', () => {
    fc.assert(
      fc.property(isoDate, wholeWeeks, (start, weeks) => {
        const before = calendarOf(STAGES, start);
        const after = calendarOf(STAGES, addWeeks(start, weeks));
        before.forEach(({ fromDate }, i) => {
          const moved = after[i]?.fromDate;
          if (fromDate === null) expect(moved).toBeNull();
          else expect(moved && weeksBetween(fromDate, moved)).toBe(weeks);
        });
      }),
    );
  });
});
