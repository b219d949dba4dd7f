import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { idOf, type SourceId, type StudyId } from '../../../src/ids';
import { betaQuantile } from '../../../src/recovery/beta';
import type { Counted } from '../../../src/recovery/counts';
import { betaOf, likenessOf, rateOf, wilsonInterval } from '../../../src/recovery/rates';

const trials = (...counts: readonly (readonly [number, number])[]): Counted[] =>
  counts.map(([count, of], i) => ({
    id: idOf<StudyId>(`t${i}`),
    source: idOf<SourceId>('a'),
    count,
    of,
    unit: 'people',
  }));
const rate = (...counts: readonly (readonly [number, number])[]) => rateOf(trials(...counts), 'mixed');

const anyTrials = fc
  .array(
    fc.integer({ min: 1, max: 200 }).chain((of) => fc.tuple(fc.integer({ min: 0, max: of }), fc.constant(of))),
    { minLength: 1, maxLength: 8 },
  )
  .map((counts) => trials(...counts));

describe('one or two trials', () => {
  test('counts are added; half a person is added on either side', () => {
    // (1 + 5 + 0.5) / (20 + 30 + 1)
    expect(rate([1, 20], [5, 30]).share).toBeCloseTo(6.5 / 51, 12);
  });

  test("by hand: Wilson's 80 % interval of 1 in 20", () => {
    // z = 1.28155, z^2 = 1.64237. Middle (0.05 + 0.041059) / 1.0821186 = 0.084149;
    // half 1.28155 / 1.0821186 * sqrt(0.0475 / 20 + 1.64237 / 1600) = 1.184298 * 0.058315 = 0.069062
    const { low, high } = rate([1, 20]);
    expect(low).toBeCloseTo(0.01509, 4);
    expect(high).toBeCloseTo(0.15321, 4);
  });

  test('nobody of ten is not never, and everybody of ten is not always', () => {
    expect(rate([0, 10]).share).toBeCloseTo(0.5 / 11, 12);
    expect(rate([10, 10]).share).toBeCloseTo(10.5 / 11, 12);
  });
});

describe('three trials or more', () => {
  test('by hand: 0, 0 and 6 of ten', () => {
    // p = 0.2, w = 1/3. Sum of w (p_i - p)^2 = (0.04 + 0.04 + 0.16) / 3 = 0.08; 0.08 / 0.16 = 0.5.
    // A = 3 * (1/3 * 2/3) / 10 = 0.066667, B = 0.666667: likeness (0.5 - 0.066667) / 0.6 = 0.722222.
    // Weights 10 / (1 + 0.722222 * 9) = 1.333333, together 4. Spread 1 - 0.277778 * 0.75 = 0.791667, strength 0.263158.
    const uneven = trials([0, 10], [0, 10], [6, 10]);
    expect(likenessOf(uneven)).toBeCloseTo(0.722222, 6);
    expect(betaOf(uneven).alpha).toBeCloseTo(0.2 * 0.263158, 6);
    expect(betaOf(uneven).beta).toBeCloseTo(0.8 * 0.263158, 6);
    expect(rateOf(uneven, 'own').share).toBeCloseTo(0.2, 12);
  });

  test('by hand: its interval is that of a beta with the same mean and a variance 2.164885 times as large', () => {
    // 2 of 20 three times: beta (6.5, 54.5), variance of a share of mean (1 - mean): 1 / 62. Widened 2.164885 / 62 = 0.0349175,
    // strength 27.6389: beta (2.945129, 24.69377).
    const { low, high, share } = rate([2, 20], [2, 20], [2, 20]);
    expect(share).toBeCloseTo(6.5 / 61, 12);
    expect(low).toBeCloseTo(betaQuantile(0.1, 2.945129, 24.69377), 5);
    expect(high).toBeCloseTo(betaQuantile(0.9, 2.945129, 24.69377), 5);
  });

  test('trials as alike as chance allows are one trial', () => {
    expect(betaOf(trials([2, 20], [2, 20], [2, 20]))).toEqual({ alpha: 6.5, beta: 54.5 });
  });

  test('trials that disagree give a wider interval than the same counts that agree', () => {
    const [apart, alike] = [rate([0, 40], [2, 40], [22, 40]), rate([8, 40], [8, 40], [8, 40])];
    expect(apart.high - apart.low).toBeGreaterThan(3 * (alike.high - alike.low));
  });

  test('all or nothing in every trial still gives a share and an interval', () => {
    const { share, low, high } = rate([0, 9], [9, 9], [9, 9]);
    expect(share).toBeGreaterThan(0.5);
    expect(share).toBeLessThan(1);
    expect(low).toBeLessThan(0.01);
    expect(high).toBeGreaterThan(0.99);
  });
});

test('a share is never 0 or 1 and lies in its interval, whatever was counted', () => {
  fc.assert(
    fc.property(anyTrials, (arms) => {
      const { share, low, high } = rateOf(arms, 'mixed');
      expect(share).toBeGreaterThan(0);
      expect(share).toBeLessThan(1);
      expect(low).toBeGreaterThanOrEqual(0);
      expect(high).toBeLessThanOrEqual(1);
      expect(low).toBeLessThanOrEqual(share);
      expect(share).toBeLessThanOrEqual(high);
      expect(low).toBeLessThan(high);
    }),
    { numRuns: 500 },
  );
});

test('counting the others turns the share round', () => {
  fc.assert(
    fc.property(anyTrials, (arms) => {
      const others = arms.map((a) => ({ ...a, count: a.of - a.count }));
      expect(rateOf(arms, 'own').share + rateOf(others, 'own').share).toBeCloseTo(1, 9);
    }),
  );
});

test('no counts, no share; more than all is no count', () => {
  expect(() => rateOf([], 'own')).toThrow(RangeError);
  expect(() => wilsonInterval(3, 2, 1)).toThrow('3 of 2');
  expect(() => wilsonInterval(-1, 2, 1)).toThrow(RangeError);
  expect(() => wilsonInterval(0, 0, 1)).toThrow(RangeError);
});
