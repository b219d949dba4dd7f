import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ceilingOf, chanceBy, type Forecast, notThereAt, scoreOf, weekOf } from '../../../src/recovery';
import { anyForecast, PLAIN } from './rows';

const sport = (week: number | 'never') => ({ endpoint: 'sport', week }) as const;
const NOBODY: Forecast<'sport'> = {
  ...PLAIN,
  branches: [
    { name: 'uneventful', chance: 0, time: null },
    { name: 'problem', chance: 0, time: null },
    { name: 'notReturned', chance: 1, time: null },
  ],
};

describe('the score', () => {
  test('by hand: who said never is off by every week from the return to the horizon', () => {
    expect(scoreOf(NOBODY, sport(20), 52).crps).toBeCloseTo(32, 9);
    expect(scoreOf(NOBODY, sport('never'), 52).crps).toBe(0);
    expect(scoreOf(NOBODY, sport(60), 52).crps).toBe(0);
  });

  test('it is the area between curve and step, as a plain sum over small steps finds it', () => {
    fc.assert(
      fc.property(anyForecast, fc.double({ min: 0, max: 80, noNaN: true }), (forecast, week) => {
        const [horizon, step] = [60, 0.02];
        let area = 0;
        for (let t = step / 2; t < horizon; t += step)
          area += step * (chanceBy(forecast, t) - (t >= week ? 1 : 0)) ** 2;
        // The sum is off by at most one step at the jump, and less than that where the curve bends.
        expect(Math.abs(scoreOf(forecast, sport(week), horizon).crps - area)).toBeLessThan(2 * step);
      }),
      { numRuns: 30 },
    );
  });

  test('a longer horizon never makes a score better', () => {
    fc.assert(
      fc.property(anyForecast, fc.integer({ min: 1, max: 90 }), (forecast, week) => {
        const [short, long] = [scoreOf(forecast, sport(week), 40).crps, scoreOf(forecast, sport(week), 80).crps];
        expect(long).toBeGreaterThanOrEqual(short - 1e-9);
      }),
    );
  });

  test('a follow-up that was so makes the forecast of what came later better', () => {
    expect(scoreOf(notThereAt(PLAIN, 8), sport(13), 52).crps).toBeLessThan(scoreOf(PLAIN, sport(13), 52).crps);
  });
});

describe('inside 10 to 90, early or late', () => {
  test('of a forecast with an upper end', () => {
    const sure: Forecast<'sport'> = {
      ...PLAIN,
      branches: [
        { ...PLAIN.branches[0], chance: 0.97 },
        { ...PLAIN.branches[1], chance: 0.02 },
        { ...PLAIN.branches[2], chance: 0.01 },
      ],
    };
    const [low, high] = [weekOf(sure, 0.1) ?? 0, weekOf(sure, 0.9) ?? 0];
    const place = (week: number | 'never') => scoreOf(sure, sport(week), 104).inside;
    expect(place(low - 0.01)).toBe('early');
    expect(place(low)).toBe('inside');
    expect(place(high)).toBe('inside');
    expect(place(high + 0.01)).toBe('late');
    expect(place('never')).toBe('late');
  });

  test('where fewer than 90 of 100 are ever back nothing is late', () => {
    const early = {
      ...PLAIN,
      branches: [{ ...PLAIN.branches[0], chance: 0.6 }, PLAIN.branches[1], { ...PLAIN.branches[2], chance: 0.22 }],
    } as const;
    expect(ceilingOf(early)).toBeLessThan(0.9);
    expect(scoreOf(early, sport('never'), 104).inside).toBe('inside');
    expect(scoreOf(early, sport(1), 104).inside).toBe('early');
  });

  test('a forecast that names no week is neither', () => {
    expect(scoreOf(NOBODY, sport(8), 104).inside).toBeNull();
  });
});

describe('what can not be scored', () => {
  test('another endpoint does not compile, and throws where types are not looked at', () => {
    // @ts-expect-error a forecast to sport is not scored by a return to work
    expect(() => scoreOf(PLAIN, { endpoint: 'work', week: 3 }, 52)).toThrow(/not the same/);
  });

  test.each([
    ['a horizon of nothing', 3, 0],
    ['a horizon without end', 3, Number.POSITIVE_INFINITY],
    ['a week before the start', -1, 52],
    ['no week', Number.NaN, 52],
  ])('%s', (_, week, horizon) => {
    expect(() => scoreOf(PLAIN, sport(week), horizon)).toThrow(RangeError);
  });
});
