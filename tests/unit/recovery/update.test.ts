import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ceilingOf, chanceBy, type Forecast, knownProblem, notThereAt } from '../../../src/recovery';
import { anyForecast, PLAIN } from './rows';

const chances = (f: Forecast) => f.branches.map((b) => b.chance);
const week = fc.double({ min: 0, max: 400, noNaN: true });
const isClose = (a: Forecast, b: Forecast) => {
  expect(a.afterWeek).toBe(b.afterWeek);
  a.branches.forEach((branch, i) => {
    expect(branch.chance).toBeCloseTo(b.branches[i]?.chance ?? Number.NaN, 9);
    expect(branch.time).toEqual(b.branches[i]?.time);
  });
};

describe('by hand: 72 of 100 as planned around week 8, 18 after a problem, 10 never; not back in week 8', () => {
  /*
   * ln 8 is the middle of the uneventful way: half of them are not back, 0.72 * 0.5 = 0.36. For the others week 8 lies one
   * standard deviation early: 0.841345 are not back, 0.18 * 0.841345 = 0.151442. Who never comes back is not back: 0.10.
   * Together 0.611442. So 0.588772, 0.247680, 0.163548; the odds of a problem rise from 0.25 to 0.420672.
   */
  const now = notThereAt(PLAIN, 8);

  test('chances', () => {
    const [uneventful, problem, notReturned] = chances(now);
    expect(uneventful).toBeCloseTo(0.588772, 6);
    expect(problem).toBeCloseTo(0.24768, 6);
    expect(notReturned).toBeCloseTo(0.163548, 6);
    expect((problem ?? 0) / (uneventful ?? 1)).toBeCloseTo(0.420672, 6);
    expect(now.afterWeek).toBe(8);
  });

  /*
   * By week 8 e^0.5 = 13.19: uneventful, one standard deviation late, 0.158655 / 0.5 = 0.317311 are still not back, 0.682689
   * are; after a problem 0.5 / 0.841345 = 0.594287 are not, 0.405713 are. 0.588772 * 0.682689 + 0.247680 * 0.405713 = 0.502436.
   */
  test('times from there on', () => {
    expect(chanceBy(now, 8)).toBe(0);
    expect(chanceBy(now, 8 * Math.exp(0.5))).toBeCloseTo(0.502436, 6);
    expect(ceilingOf(now)).toBeCloseTo(0.836452, 6);
  });

  test('a problem is known: 0.18 of 0.28 and 0.10 of 0.28', () => {
    expect(chances(knownProblem(PLAIN))).toEqual([0, expect.closeTo(0.642857, 6), expect.closeTo(0.357143, 6)]);
    expect(knownProblem(PLAIN).branches[1].time).toEqual(PLAIN.branches[1].time);
  });
});

describe('of any forecast made from studies', () => {
  test('the longer not back, the likelier a problem, and the likelier anything but the uneventful way', () => {
    fc.assert(
      fc.property(anyForecast, fc.array(week, { minLength: 2, maxLength: 8 }), (start, weeks) => {
        let forecast: Forecast = start;
        for (const w of weeks.toSorted((a, b) => a - b)) {
          const next = notThereAt(forecast, w);
          const [u0, p0, n0] = forecast.branches.map((b) => b.chance) as [number, number, number];
          const [u1, p1, n1] = next.branches.map((b) => b.chance) as [number, number, number];
          // Odds compared by products: the uneventful chance may come down to nothing. Rounding: 1 in 10^12.
          expect(p1 * u0).toBeGreaterThanOrEqual(p0 * u1 * (1 - 1e-12));
          expect(n1 * u0).toBeGreaterThanOrEqual(n0 * u1 * (1 - 1e-12));
          expect(u1).toBeLessThanOrEqual(u0 * (1 + 1e-12));
          forecast = next;
        }
      }),
      { numRuns: 500 },
    );
  });

  test('asked twice is asked once, at the later week', () => {
    fc.assert(
      fc.property(anyForecast, week, week, (forecast, a, b) => {
        const [early, late] = a < b ? [a, b] : [b, a];
        isClose(notThereAt(notThereAt(forecast, early), late), notThereAt(forecast, late));
        expect(notThereAt(notThereAt(forecast, late), early)).toEqual(notThereAt(forecast, late));
      }),
      { numRuns: 300 },
    );
  });

  test('it does not matter which was learned first, the week or the problem', () => {
    fc.assert(
      fc.property(anyForecast, week, (forecast, w) => {
        isClose(knownProblem(notThereAt(forecast, w)), notThereAt(knownProblem(forecast), w));
      }),
    );
  });

  test('it is the same as counting people: the chance left over is the chance before, of those still away', () => {
    fc.assert(
      fc.property(anyForecast, week, week, (forecast, at, later) => {
        const away = 1 - chanceBy(forecast, at);
        const between = Math.max(0, chanceBy(forecast, later) - chanceBy(forecast, at));
        expect(chanceBy(notThereAt(forecast, at), later)).toBeCloseTo(between / away, 7);
      }),
    );
  });

  test('chances still sum to one, also after a hundred years', () => {
    fc.assert(
      fc.property(anyForecast, fc.constantFrom(8, 60, 5200), (forecast, w) => {
        for (const f of [notThereAt(forecast, w), knownProblem(notThereAt(forecast, w))])
          expect(f.branches.reduce((s, b) => s + b.chance, 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('week 0 says nothing', () => {
    expect(notThereAt(PLAIN, 0)).toEqual(PLAIN);
  });
});

test('what can not be known', () => {
  for (const w of [-1, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => notThereAt(PLAIN, w)).toThrow(RangeError);
  const allBack: Forecast = {
    ...PLAIN,
    branches: [
      { ...PLAIN.branches[0], chance: 1 },
      { ...PLAIN.branches[1], chance: 0 },
      { ...PLAIN.branches[2], chance: 0 },
    ],
  };
  expect(() => knownProblem(allBack)).toThrow(/nobody is left/);
});

test('the endpoint stays in the type', () => {
  const still: Forecast<'sport'> = knownProblem(notThereAt(PLAIN, 3));
  expect(still.endpoint).toBe('sport');
});
