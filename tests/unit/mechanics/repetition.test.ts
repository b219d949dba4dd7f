import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  damageOf,
  damageRangeOf,
  damageRatio,
  offsettingStrain,
  repairedBy,
  stridesOf,
  type ToldWeek,
} from '../../../src/mechanics/repetition';

const inputs = {
  exponent: { value: 6.6, low: 5.3, high: 9 },
  repairDays: { value: 18.5, low: 6, high: 31 },
  repairExponent: { value: 2, low: 1, high: 2 },
};
const km = (distanceKm: number, strainRatio = 1): ToldWeek => ({
  kind: 'distance',
  distanceKm,
  strideM: 2.4,
  strainRatio,
});
const repair = { timeDays: 18.5, exponent: 2 };
const weeks = fc.array(fc.double({ min: 0, max: 90, noNaN: true }), { minLength: 1, maxLength: 12 });

describe('damageOf', () => {
  test('a habit that goes on changes nothing', () => {
    for (const law of [
      { exponent: 6.6, repair },
      { exponent: 5.3, repair: null },
    ]) {
      for (const w of damageOf({ habit: km(30), weeks: [km(30), km(30), km(30)] }, law)) {
        expect(w.done).toBeCloseTo(1, 12);
        expect(w.standing).toBeCloseTo(1, 12);
      }
    }
  });

  test('sessions and distance say the same where they are the same strides', () => {
    const told: ToldWeek = { kind: 'sessions', sessions: 3, stridesPerSession: 5000, strainRatio: 1.1 };
    const [a] = damageOf({ habit: km(36), weeks: [told] }, { exponent: 6.6, repair });
    const [b] = damageOf({ habit: km(36), weeks: [km(36, 1.1)] }, { exponent: 6.6, repair });
    expect(a).toEqual(b);
  });

  test('more distance or more strain in a week never leaves less standing', () => {
    fc.assert(
      fc.property(weeks, fc.nat(11), fc.double({ min: 1, max: 1.5, noNaN: true }), (distances, at, k) => {
        const base = distances.map((d) => km(d + 1));
        const farther = distances.map((d, i) => km(i === at ? (d + 1) * k : d + 1));
        const harder = distances.map((d, i) => km(d + 1, i === at ? k : 1));
        for (const law of [
          { exponent: 6.6, repair },
          { exponent: 6.6, repair: null },
        ]) {
          const run = (list: ToldWeek[]) => damageOf({ habit: km(30), weeks: list }, law).map((w) => w.standing);
          const [one, two, three] = [run(base), run(farther), run(harder)];
          for (const [i, s] of one.entries()) {
            expect(two[i]).toBeGreaterThanOrEqual(s - 1e-9);
            expect(three[i]).toBeGreaterThanOrEqual((two[i] ?? 0) - 1e-9);
          }
        }
      }),
    );
  });

  test('without repair a ramp and a steady plan of the same distance end alike; with it the ramp ends higher', () => {
    const ramp = [10, 20, 30, 40, 50, 60].map((d) => km(d));
    const steady = ramp.map(() => km(35));
    const last = (list: ToldWeek[], law: Parameters<typeof damageOf>[1]) =>
      damageOf({ habit: km(20), weeks: list }, law).at(-1)?.standing ?? 0;
    const none = { exponent: 6.6, repair: null };
    expect(last(ramp, none)).toBeCloseTo(last(steady, none), 9);
    expect(last(ramp, { exponent: 6.6, repair })).toBeGreaterThan(1.2 * last(steady, { exponent: 6.6, repair }));
  });

  test('rest takes damage away, the sooner the faster repair is', () => {
    const rest = [km(0), km(0), km(0), km(0)];
    const slow = damageOf({ habit: km(30), weeks: rest }, { exponent: 6.6, repair: { timeDays: 31, exponent: 2 } });
    const fast = damageOf({ habit: km(30), weeks: rest }, { exponent: 6.6, repair: { timeDays: 6, exponent: 2 } });
    for (const [i, w] of slow.entries()) {
      expect(w.standing).toBeGreaterThanOrEqual(0);
      expect(fast[i]?.standing ?? 1).toBeLessThan(w.standing);
      expect(w.standing).toBeLessThan(slow[i - 1]?.standing ?? 1);
    }
  });

  test('after a step up, what stands rises to the new level and stays there', () => {
    const after = damageOf(
      { habit: km(20), weeks: Array.from({ length: 30 }, () => km(40)) },
      { exponent: 6.6, repair },
    );
    expect(after[0]?.standing).toBeLessThan(1.6);
    expect(after.at(-1)?.standing).toBeCloseTo(2, 6);
  });

  test('a habit of nothing, strides of no length, negative weeks are refused', () => {
    const law = { exponent: 6.6, repair };
    expect(() => damageOf({ habit: km(0), weeks: [km(5)] }, law)).toThrow('give the weeks before');
    expect(() => stridesOf(100, 0)).toThrow('stride above nought');
    expect(() => stridesOf(-1, 2)).toThrow('stride above nought');
    const bad: ToldWeek = { kind: 'sessions', sessions: -1, stridesPerSession: 100, strainRatio: 1 };
    expect(() => damageOf({ habit: km(5), weeks: [bad] }, law)).toThrow('sessions');
    expect(() => damageRatio(1, 1, 0)).toThrow('power 0');
    expect(() => offsettingStrain(0, 6.6)).toThrow('0 times');
    expect(() => repairedBy(1, { timeDays: 0, exponent: 2 })).toThrow('repair within');
  });
});

describe('damageRangeOf', () => {
  test('holds its own value, opens with strain, and closes to a line for a habit', () => {
    const [same, harder] = damageRangeOf({ habit: km(30), weeks: [km(30), km(30, 1.1)] }, inputs, true);
    expect(same?.done).toEqual({ value: 1, low: 1, high: 1 });
    expect(harder?.done.low).toBeCloseTo(1.1 ** 5.3, 9);
    expect(harder?.done.value).toBeCloseTo(1.1 ** 6.6, 9);
    expect(harder?.done.high).toBeCloseTo(1.1 ** 9, 9);
    expect(harder?.standing.low).toBeLessThan(harder?.standing.value ?? 0);
    expect(harder?.standing.high).toBeGreaterThan(harder?.standing.value ?? 9);
  });
  test('without repair only the exponent spreads it', () => {
    const [w] = damageRangeOf({ habit: km(30), weeks: [km(60)] }, inputs, false);
    expect(w?.standing).toEqual({ value: 2, low: 2, high: 2 });
  });
});
