import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { idOf, type SourceId } from '../../../src/ids';
import { armsFor } from '../../../src/recovery';
import { fitArm } from '../../../src/recovery/fits';
import { betweenVariance, middleOfStudy, personOf, poolOf } from '../../../src/recovery/pooling';
import type { FittedArm } from '../../../src/recovery/types';
import { anyTimed, rowOf, SPORT, timeOf } from './rows';

const arm = (mu: number, sigma: number, n: number): FittedArm<'sport'> => ({
  ...(armsFor([rowOf(`a${mu}`, { time: timeOf() })], SPORT)[0] as FittedArm<'sport'>),
  n,
  fit: { mu, sigma },
  from: 'mean and SD',
});

describe('studies put together', () => {
  test('by hand: three studies of ten people, middles 1, 2 and 3, spread 1 each', () => {
    // within^2 = 1, each middle has variance 0.1. Between: weights equal, sum of squares 2 = (k - 1) (0.1 + b) gives b = 0.9.
    // error^2 = (0.1 + 0.9) / 3. Between and error, 1.2333, are widened by (1.885618 / 1.281552)^2 = 2.164885 to 2.670025: a person
    // 1 + 2.670025, the middle of a study of ten 0.1 + 2.670025.
    const pool = poolOf([arm(1, 1, 10), arm(2, 1, 10), arm(3, 1, 10)]);
    expect(pool.mu).toBeCloseTo(2, 12);
    expect(pool.within).toBeCloseTo(1, 12);
    expect(pool.between ** 2).toBeCloseTo(0.9, 12);
    expect(pool.error ** 2).toBeCloseTo(1 / 3, 12);
    expect(personOf(pool).sigma ** 2).toBeCloseTo(3.670025, 5);
    expect(middleOfStudy(pool, 10).sigma ** 2).toBeCloseTo(2.770025, 5);
  });

  test('spread within is weighed by degrees of freedom, one less than people', () => {
    // (1 * 1 + 3 * 4 + 6 * 9) / 10 = 6.7
    expect(poolOf([arm(2, 1, 2), arm(2, 2, 4), arm(2, 3, 7)]).within ** 2).toBeCloseTo(6.7, 12);
  });

  test('studies no further apart than chance have nothing between them', () => {
    expect(poolOf([arm(2, 0.5, 9), arm(2.05, 0.5, 9), arm(1.95, 0.5, 9)]).between).toBe(0);
  });

  test('between is where the weighted squares are what chance gives', () => {
    const value = fc.double({ min: -5, max: 5, noNaN: true });
    const variance = fc.double({ min: 1e-4, max: 2, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, variance), { minLength: 2, maxLength: 9 }), (studies) => {
        const values = studies.map(([y]) => y);
        const variances = studies.map(([, v]) => v);
        const found = betweenVariance(values, variances);
        const weights = variances.map((v) => 1 / (v + found));
        const total = weights.reduce((a, b) => a + b, 0);
        const mu = values.reduce((s, y, i) => s + y * (weights[i] ?? 0), 0) / total;
        const squares = values.reduce((s, y, i) => s + (y - mu) ** 2 * (weights[i] ?? 0), 0);
        if (found === 0) expect(squares).toBeLessThanOrEqual(values.length - 1 + 1e-9);
        else expect(squares).toBeCloseTo(values.length - 1, 7);
      }),
    );
  });

  test('a person spreads at least as far as within any one study on average, and at least as far as between', () => {
    fc.assert(
      fc.property(fc.array(anyTimed, { minLength: 3, maxLength: 6 }), (rows) => {
        const apart = rows.map((row, i) => ({ ...row, source: idOf<SourceId>(`s${i}`) }));
        const pool = poolOf(armsFor(apart, SPORT).flatMap((a) => fitArm(a) ?? []));
        expect(personOf(pool).sigma).toBeGreaterThanOrEqual(Math.max(pool.within, pool.between));
      }),
    );
  });

  test('two arms make no curve', () => {
    expect(() => poolOf([arm(1, 1, 10), arm(2, 1, 10)])).toThrow(/fewer than 3/);
  });
});

describe('endpoints never mix', () => {
  const sport = [arm(1, 1, 10), arm(2, 1, 10)];
  const work: FittedArm<'work'>[] = sport.map((a) => ({ ...a, endpoint: 'work' }));

  test('two named endpoints do not compile, and throw where types are not looked at', () => {
    // @ts-expect-error arms to sport and to work are no list of arms to one endpoint
    expect(() => poolOf([...sport, ...work])).toThrow('different endpoints');
  });
});
