import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { integralsOf, type Point2 } from '../../../../src/anatomy/inside/polygon';
import { coarsenedFigure, sizesOf } from '../../../../src/mechanics/section/coarsen';
import { Envelope } from '../../../../src/mechanics/section/envelope';
import { figureOf } from '../../../../src/mechanics/section/figure';
import { triangulate } from '../../../../src/mechanics/section/mesh';
import { ellipse } from '../../../tools/members';

const at = (loop: readonly Point2[], y: number, z: number): Point2[] => loop.map(([a, b]) => [a + y, b + z]);

describe('triangulate', () => {
  /** Stars, bent far inwards, with none to three holes. */
  const figures = fc
    .tuple(
      fc.integer({ min: 5, max: 40 }),
      fc.double({ min: 0.3, max: 0.95, noNaN: true }),
      fc.integer({ min: 0, max: 3 }),
    )
    .map(([n, dent, holes]) => {
      const star = Array.from({ length: 2 * n }, (_, i): Point2 => {
        const [r, t] = [i % 2 === 0 ? 10 : 10 * dent, (Math.PI * i) / n];
        return [r * Math.cos(t), r * Math.sin(t)];
      });
      const small = ellipse(0.7, 0.5, 16);
      return figureOf(star, [at(small, 1, 0), at(small, -1, 0.3), at(small, -1, -1.4)].slice(0, holes));
    });

  test('fills the figure with triangles that stand, each side shared by two or on the border', () => {
    fc.assert(
      fc.property(figures, fc.double({ min: 0.8, max: 4, noNaN: true }), (figure, element) => {
        const { at: place, corners, twin, loop } = triangulate(figure, element);
        const area = integralsOf([figure.outline]).area - figure.holes.reduce((s, h) => s + integralsOf([h]).area, 0);
        let sum = 0;
        for (let t = 0; t < corners.length; t += 3) {
          const [p = 0, q = 0, r = 0] = corners.subarray(t, t + 3);
          const [ax, ay] = [place[2 * p] ?? 0, place[2 * p + 1] ?? 0];
          const twice =
            ((place[2 * q] ?? 0) - ax) * ((place[2 * r + 1] ?? 0) - ay) -
            ((place[2 * r] ?? 0) - ax) * ((place[2 * q + 1] ?? 0) - ay);
          expect(twice).toBeGreaterThan(0);
          sum += twice / 2;
        }
        expect(sum / area).toBeCloseTo(1, 9);
        for (const [e, f] of twin.entries()) {
          if (f >= 0) expect(twin[f]).toBe(e);
          else expect(loop[corners[e] ?? 0]).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 80 },
    );
  });
});

describe('coarsenedFigure', () => {
  test('leaves fewer corners, the same area and nearly the same second moments', () => {
    const figure = figureOf(ellipse(5, 4, 300), [ellipse(3, 2, 400)]);
    const area = Math.PI * 14;
    const coarse = coarsenedFigure(figure, sizesOf(figure, area));
    expect(coarse.outline.length).toBeLessThan(100);
    const before = integralsOf([figure.outline]);
    const after = integralsOf([coarse.outline]);
    expect(after.area / before.area).toBeCloseTo(1, 9);
    expect(after.aa / before.aa).toBeCloseTo(1, 3);
  });
  test('leaves true corners where they are', () => {
    const box: Point2[] = [
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ];
    const figure = figureOf(box);
    expect(coarsenedFigure(figure, sizesOf(figure, 12)).outline).toEqual(box);
  });
});

describe('Envelope', () => {
  test('solves what was multiplied out before', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 1000 }), (n, seed) => {
        const first = Int32Array.from({ length: n }, (_, i) => Math.max(0, i - ((i * 7 + seed) % 5)));
        const entry = (i: number, j: number): number => {
          if (i === j) return 10;
          const [row, column] = i > j ? [i, j] : [j, i];
          return column >= (first[row] ?? 0) ? Math.sin(row * 3 + column * 5 + seed) : 0;
        };
        const equations = new Envelope(first);
        for (let i = 0; i < n; i++) for (let j = first[i] ?? 0; j <= i; j++) equations.add(i, j, entry(i, j));
        const wanted = Array.from({ length: n }, (_, i) => Math.cos(i + seed));
        const right = Float64Array.from(wanted, (_, i) => wanted.reduce((s, x, j) => s + entry(i, j) * x, 0));
        equations.solve(right);
        for (const [i, x] of wanted.entries()) expect(right[i]).toBeCloseTo(x, 9);
      }),
    );
  });
  test('says which equation holds nothing', () => {
    const loose = new Envelope(Int32Array.of(0, 0));
    loose.add(0, 0, 1);
    loose.add(1, 0, 1);
    loose.add(1, 1, 1);
    expect(() => loose.solve(Float64Array.of(1, 1))).toThrow('equation 1 of 2');
  });
});
