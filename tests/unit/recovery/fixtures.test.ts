/** The number of days missed against what it is by definition: walked through return weeks one by one. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { idOf, type OptionId } from '../../../src/ids';
import { ceilingOf, chanceBy, type Forecast, fixturesAhead, missedOf, notThereAt } from '../../../src/recovery';

const time = fc.record({
  mu: fc.double({ min: 1, max: 4, noNaN: true }),
  sigma: fc.double({ min: 0.1, max: 1, noNaN: true }),
});
const share = fc.double({ min: 0.01, max: 0.6, noNaN: true });
const forecast: fc.Arbitrary<Forecast> = fc
  .record({ fast: time, slow: fc.option(time), notReturned: share, problem: share })
  .map(({ fast, slow, notReturned, problem }) => ({
    endpoint: 'sport',
    option: idOf<OptionId>('screw'),
    branches: [
      { name: 'uneventful', chance: (1 - notReturned) * (1 - problem), time: fast },
      { name: 'problem', chance: (1 - notReturned) * problem, time: slow },
      { name: 'notReturned', chance: notReturned, time: null },
    ],
    afterWeek: 0,
  }));
const weeks = fc.array(fc.double({ min: 0, max: 120, noNaN: true }), { minLength: 1, maxLength: 60 });

describe('chances', () => {
  test('a later day never has less of a chance, and none more than the ceiling', () => {
    fc.assert(
      fc.property(forecast, weeks, (f, list) => {
        const sorted = [...list].sort((a, b) => a - b);
        const { chances } = fixturesAhead(f, sorted);
        chances.forEach((chance, i) => {
          expect(chance).toBeGreaterThanOrEqual((chances[i - 1] ?? 0) - 1e-12);
          expect(chance).toBeLessThanOrEqual(ceilingOf(f) + 1e-12);
          expect(chance).toBe(chanceBy(f, sorted[i] ?? 0));
        });
      }),
    );
  });

  test('they come in the order in which the days were given', () => {
    fc.assert(
      fc.property(forecast, weeks, (f, list) => {
        const back = fixturesAhead(f, [...list].reverse());
        expect([...back.chances].reverse()).toEqual(fixturesAhead(f, list).chances);
      }),
    );
  });

  test('what is known to be missed is missed for certain', () => {
    fc.assert(
      fc.property(forecast, weeks, (f, list) => {
        const known = notThereAt(f, 10);
        const { chances, missed } = fixturesAhead(known, list);
        const before = list.filter((week) => week <= 10).length;
        expect(chances.filter((_, i) => (list[i] ?? 0) <= 10).every((chance) => chance === 0)).toBe(true);
        expect(missed?.low).toBeGreaterThanOrEqual(before);
        expect(missed?.mean).toBeGreaterThanOrEqual(before - 1e-9);
      }),
    );
  });
});

describe('the number missed', () => {
  test('on average is the sum of what is missing to certainty', () => {
    fc.assert(
      fc.property(forecast, weeks, (f, list) => {
        const { chances, missed } = fixturesAhead(f, list);
        expect(missed?.mean).toBeCloseTo(
          chances.reduce((sum, chance) => sum + (1 - chance), 0),
          9,
        );
      }),
    );
  });

  test('mean and spread are those of the return weeks, gone through one after another', () => {
    // Return in one of some weeks with whole-number weights, or never: the number missed is counted for each.
    const outcomes = fc.array(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 9 })), {
      minLength: 1,
    });
    const days = fc.array(fc.integer({ min: 0, max: 32 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(outcomes, fc.integer({ min: 0, max: 9 }), days, (returns, never, list) => {
        const all = [...returns, [Number.POSITIVE_INFINITY, never] as const];
        const total = all.reduce((sum, [, weight]) => sum + weight, 0);
        const chances = list.map(
          (day) => all.reduce((sum, [week, weight]) => sum + (week <= day ? weight : 0), 0) / total,
        );
        const counted = all
          .flatMap(([week, weight]) => Array.from({ length: weight }, () => list.filter((day) => day < week).length))
          .sort((a, b) => a - b);
        const missed = missedOf(chances);
        expect(missed?.of).toBe(list.length);
        expect(missed?.mean).toBeCloseTo(counted.reduce((a, b) => a + b, 0) / total, 9);
        expect(missed?.low).toBe(counted[Math.ceil(0.1 * total - 1e-9) - 1]);
        expect(missed?.high).toBe(counted[Math.ceil(0.9 * total - 1e-9) - 1]);
      }),
    );
  });

  test('by hand: five days with chances 0, 0.2, 0.5, 0.8, 0.85', () => {
    // None missed: 0. At most 1: 0.2. At most 2: 0.5. At most 3: 0.8. At most 4: 0.85. So 10 of 100 miss 1 or fewer, 90 all.
    const missed = missedOf([0, 0.2, 0.5, 0.8, 0.85]);
    expect(missed).toMatchObject({ of: 5, low: 1, high: 5 });
    expect(missed?.mean).toBeCloseTo(2.65, 12);
  });

  test('of nothing is nothing', () => {
    expect(missedOf([])).toBeNull();
  });
});
