import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  integralsOf,
  type Loop2,
  momentsOf,
  type Point2,
  principalOf,
  without,
} from '../../../../src/anatomy/inside/polygon';
import { ellipse, rectangle } from '../../../tools/members';

const turned = (loop: Loop2, rad: number, [a, b]: Point2 = [0, 0]): Point2[] =>
  loop.map(([x, y]) => [a + x * Math.cos(rad) - y * Math.sin(rad), b + x * Math.sin(rad) + y * Math.cos(rad)]);
const reversed = (loop: Loop2): Point2[] => [...loop].reverse();

/** Any loop that does not cross itself: a radius for each of a dozen directions. */
const star = fc
  .array(fc.double({ min: 1, max: 6, noNaN: true }), { minLength: 12, maxLength: 12 })
  .map((radii) => radii.map((r, i): Point2 => [r * Math.cos((Math.PI * i) / 6), r * Math.sin((Math.PI * i) / 6)]));

/** Integral by strips: along each line of constant b the figure is a set of stretches, integrated exactly; across, the midpoint rule. */
const byStrips = (loops: readonly Loop2[], strips: number) => {
  const bs = loops.flat().map((p) => p[1]);
  const [low, high] = [Math.min(...bs), Math.max(...bs)];
  const h = (high - low) / strips;
  const sum = { area: 0, a: 0, b: 0, aa: 0, bb: 0, ab: 0 };
  for (let j = 0; j < strips; j++) {
    const b = low + (j + 0.5) * h;
    const at = loops
      .flatMap((loop) =>
        loop.flatMap(([a0, b0], i) => {
          const [a1, b1] = loop[(i + 1) % loop.length] ?? [a0, b0];
          return b0 > b === b1 > b ? [] : [a0 + ((b - b0) / (b1 - b0)) * (a1 - a0)];
        }),
      )
      .sort((x, y) => x - y);
    for (let k = 0; k + 1 < at.length; k += 2) {
      const [p, q] = [at[k] ?? 0, at[k + 1] ?? 0];
      const [one, two, three] = [q - p, (q * q - p * p) / 2, (q ** 3 - p ** 3) / 3];
      sum.area += one * h;
      sum.a += two * h;
      sum.b += b * one * h;
      sum.aa += three * h;
      sum.bb += b * b * one * h;
      sum.ab += b * two * h;
    }
  }
  return sum;
};

describe('integralsOf', () => {
  test('a rectangle off centre, by hand', () => {
    const { area, a, b, aa, bb, ab } = integralsOf([rectangle(4, 6).map(([x, y]): Point2 => [x + 3, y - 2])]);
    // Area 24, centroid (3, -2); about the centroid 6 x 4^3 / 12 and 4 x 6^3 / 12.
    expect([area, a, b, aa, bb, ab]).toEqual([24, 72, -48, 32 + 216, 72 + 96, -144].map((x) => expect.closeTo(x, 9)));
  });

  test('an ellipse: pi a b, pi a^3 b / 4, pi a b^3 / 4', () => {
    const { area, aa, bb, ab } = integralsOf([ellipse(3, 5)]);
    expect(area).toBeCloseTo(Math.PI * 15, 9);
    expect(aa).toBeCloseTo((Math.PI * 27 * 5) / 4, 6);
    expect(bb).toBeCloseTo((Math.PI * 3 * 125) / 4, 6);
    expect(ab).toBeCloseTo(0, 9);
  });

  test('any figure with a hole, against strips', () => {
    fc.assert(
      fc.property(star, fc.double({ min: 0.2, max: 0.9, noNaN: true }), (outer, share) => {
        const loops = [outer, reversed(outer.map(([a, b]): Point2 => [a * share, b * share]))];
        const exact = integralsOf(loops);
        const strips = byStrips(loops, 4000);
        for (const key of ['area', 'a', 'b', 'aa', 'bb', 'ab'] as const) {
          // Midpoint rule at corners: error of the order of (12 mm / 4000)^2 times the largest figure.
          expect(Math.abs(exact[key] - strips[key])).toBeLessThan(2e-4 * exact.aa + 2e-4 * exact.bb);
        }
      }),
      { numRuns: 30 },
    );
  });

  test('the same either way round, and a part taken away and put back', () => {
    fc.assert(
      fc.property(star, (loop) => {
        const whole = integralsOf([loop]);
        expect(integralsOf([reversed(loop)]).ab).toBeCloseTo(whole.ab, 9);
        const part = integralsOf([loop.map(([a, b]): Point2 => [a / 2, b / 2])]);
        expect(without(whole, part).area).toBeCloseTo(whole.area * 0.75, 9);
        expect(without(whole, part).aa).toBeCloseTo((whole.aa * 15) / 16, 9);
      }),
    );
  });
});

describe('momentsOf and principalOf', () => {
  test('turning and moving a figure moves its centroid and its principal direction, and no value', () => {
    const size = fc.double({ min: 2, max: 9, noNaN: true });
    const place = fc.double({ min: -40, max: 40, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: -1.5, max: 1.5, noNaN: true }), place, place, (short, rad, a, b) => {
        const long = short * 1.5;
        const moments = momentsOf(integralsOf([turned(rectangle(long, short), rad, [a, b])]));
        expect(moments.centroid[0]).toBeCloseTo(a, 7);
        expect(moments.centroid[1]).toBeCloseTo(b, 7);
        const { most, least, along } = principalOf(moments);
        expect(most / ((short * long ** 3) / 12)).toBeCloseTo(1, 6);
        expect(least / ((long * short ** 3) / 12)).toBeCloseTo(1, 6);
        expect(Math.abs(along[0] * Math.cos(rad) + along[1] * Math.sin(rad))).toBeCloseTo(1, 6);
      }),
    );
  });

  test('in the principal directions the product vanishes', () => {
    fc.assert(
      fc.property(star, (loop) => {
        const { along } = principalOf(momentsOf(integralsOf([loop])));
        const rad = Math.atan2(along[1], along[0]);
        const { aa, bb, ab } = momentsOf(integralsOf([turned(loop, -rad)]));
        expect(Math.abs(ab)).toBeLessThan(1e-9 * (aa + bb));
        expect(aa).toBeGreaterThanOrEqual(bb * (1 - 1e-9));
      }),
    );
  });

  test('a figure without area has no centroid', () => {
    const line: Point2[] = [
      [0, 0],
      [1, 1],
      [2, 2],
    ];
    expect(() => momentsOf(integralsOf([line]))).toThrow('no centroid');
  });
});
