import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point2 } from '../../../../src/anatomy/inside/polygon';
import { SectionError, type SectionFault, sectionOf } from '../../../../src/mechanics';
import { beside, ellipse, rectangle } from '../../../tools/members';

const moved = (points: readonly Point2[], rad: number, k = 1, [y, z]: Point2 = [0, 0]): Point2[] =>
  points.map(([a, b]) => [
    y + k * (a * Math.cos(rad) - b * Math.sin(rad)),
    z + k * (a * Math.sin(rad) + b * Math.cos(rad)),
  ]);
const flipped = (points: readonly Point2[]): Point2[] => points.map(([y, z]) => [y, -z]);

const unit = fc.double({ min: 0, max: 1, noNaN: true });
/** A bone's outline with 12 to 60 facets and a canal of its own shape inside it. */
const hollow = fc
  .tuple(fc.integer({ min: 12, max: 60 }), fc.array(unit, { minLength: 6, maxLength: 6 }), unit, unit)
  .map(([n, [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0], size, squash]) => {
    const radius = (t: number): number =>
      5 * (1 + 0.25 * (a - 0.5) * Math.cos(2 * t + 6 * b) + 0.2 * c * Math.cos(3 * t + 6 * d));
    const loop = (count: number, k: number, phase: number): Point2[] =>
      Array.from({ length: count }, (_, i) => {
        const t = (2 * Math.PI * (i + 0.4 * Math.sin(5 * i * e))) / count + phase;
        return [k * radius(t) * Math.cos(t) * (0.6 + 0.8 * squash), k * radius(t) * Math.sin(t)];
      });
    return { outline: loop(n, 1, 0), canal: loop(90, 0.3 + 0.45 * size, f / 10) };
  });
const angle = fc.double({ min: -3, max: 3, noNaN: true });
const place = fc.tuple(fc.double({ min: -30, max: 30, noNaN: true }), fc.double({ min: -30, max: 30, noNaN: true }));
const runs = { numRuns: 60 };

describe('sectionOf', () => {
  test('a rectangle, by hand', () => {
    const s = sectionOf(moved(rectangle(4, 6), 0, 1, [10, -3]));
    expect(s.areaMm2).toBeCloseTo(24, 9);
    expect(s.iLateralMm4).toBeCloseTo((6 * 4 ** 3) / 12, 9);
    expect(s.iDorsalMm4).toBeCloseTo((4 * 6 ** 3) / 12, 9);
    expect(s.iProductMm4).toBeCloseTo(0, 9);
    expect(s.centroidMm[0]).toBeCloseTo(10, 9);
    expect(s.centroidMm[1]).toBeCloseTo(-3, 9);
    expect(Math.abs(s.rollRad)).toBeCloseTo(Math.PI / 2, 9);
    const reach = [s.toDorsalMm, s.toPlantarMm, s.toLateralMm, s.toMedialMm, s.toMostMm, s.toLeastMm];
    expect(reach.map((v) => Math.round(v * 1e9) / 1e9)).toEqual([2, 2, 3, 3, 3, 2]);
    expect(s.shearCentreMm[0]).toBeCloseTo(10, 3);
    expect(s.shearCentreMm[1]).toBeCloseTo(-3, 3);
  });

  test('either way round the loops', () => {
    const loops: [Point2[], Point2[]] = [moved(rectangle(4, 6), 0.4), moved(rectangle(2, 3), 0.4)];
    const s = sectionOf(loops[0], [loops[1]]);
    const other = sectionOf(loops[0].toReversed(), [loops[1].toReversed()]);
    expect(other.iProductMm4).toBeCloseTo(s.iProductMm4, 9);
    expect(other.jMm4).toBeCloseTo(s.jMm4, 1);
  });

  test('turning and moving a section changes nothing but where it lies', () => {
    fc.assert(
      fc.property(hollow, angle, place, ({ outline, canal }, rad, at) => {
        const s = sectionOf(outline, [canal]);
        const t = sectionOf(moved(outline, rad, 1, at), [moved(canal, rad, 1, at)]);
        expect(t.areaMm2 / s.areaMm2).toBeCloseTo(1, 9);
        expect((t.iLateralMm4 + t.iDorsalMm4) / (s.iLateralMm4 + s.iDorsalMm4)).toBeCloseTo(1, 8);
        expect(t.iMostMm4 / s.iMostMm4).toBeCloseTo(1, 8);
        // Ears and halves fall otherwise on a turned figure.
        expect(t.jMm4 / s.jMm4).toBeCloseTo(1, 2);
        expect(t.torsionPeakPerNmm / s.torsionPeakPerNmm).toBeGreaterThan(0.9);
        expect(t.torsionPeakPerNmm / s.torsionPeakPerNmm).toBeLessThan(1.1);
        const [back] = moved([s.shearCentreMm], rad, 1, at);
        expect(Math.hypot(t.shearCentreMm[0] - (back?.[0] ?? 0), t.shearCentreMm[1] - (back?.[1] ?? 0))).toBeLessThan(
          0.05,
        );
      }),
      runs,
    );
  });

  test('mirroring keeps every measure and turns the product and the roll round', () => {
    fc.assert(
      fc.property(hollow, ({ outline, canal }) => {
        const [s, t] = [sectionOf(outline, [canal]), sectionOf(flipped(outline), [flipped(canal)])];
        const scale = s.iMostMm4;
        expect((t.iProductMm4 + s.iProductMm4) / scale).toBeCloseTo(0, 8);
        expect(t.iLateralMm4 / s.iLateralMm4).toBeCloseTo(1, 8);
        expect(t.toLateralMm).toBeCloseTo(s.toMedialMm, 8);
        expect(t.jMm4 / s.jMm4).toBeCloseTo(1, 2);
        expect(t.shearAreaMostMm2 / s.shearAreaMostMm2).toBeGreaterThan(0.99);
        expect(t.shearAreaMostMm2 / s.shearAreaMostMm2).toBeLessThan(1.01);
      }),
      runs,
    );
  });

  test('twice the size: areas by k^2, second moments and torsion by k^4, stress of a torque by k^-3', () => {
    fc.assert(
      fc.property(hollow, fc.double({ min: 0.2, max: 20, noNaN: true }), ({ outline, canal }, k) => {
        const [s, t] = [sectionOf(outline, [canal]), sectionOf(moved(outline, 0, k), [moved(canal, 0, k)])];
        expect(t.areaMm2 / s.areaMm2 / k ** 2).toBeCloseTo(1, 9);
        expect(t.iLeastMm4 / s.iLeastMm4 / k ** 4).toBeCloseTo(1, 9);
        expect(t.jMm4 / s.jMm4 / k ** 4).toBeCloseTo(1, 3);
        expect(t.shearAreaLeastMm2 / s.shearAreaLeastMm2 / k ** 2).toBeCloseTo(1, 3);
        expect((t.torsionPeakPerNmm / s.torsionPeakPerNmm) * k ** 3).toBeCloseTo(1, 2);
      }),
      runs,
    );
  });

  test('the torsion constant is never above the polar second moment, shear areas never above the area', () => {
    fc.assert(
      fc.property(hollow, ({ outline, canal }) => {
        for (const s of [sectionOf(outline), sectionOf(outline, [canal])]) {
          expect(s.jMm4).toBeGreaterThan(0);
          expect(s.jMm4).toBeLessThan(s.iMostMm4 + s.iLeastMm4);
          expect(s.shearAreaMostMm2).toBeLessThan(s.areaMm2);
          expect(s.shearAreaLeastMm2).toBeLessThan(s.areaMm2);
          expect(s.shearAreaLeastMm2).toBeGreaterThan(0);
        }
      }),
      runs,
    );
  });

  test('they are the same for a circle and a round tube alone', () => {
    for (const s of [sectionOf(ellipse(5, 5, 120)), sectionOf(ellipse(5, 5, 120), [ellipse(3, 3, 120)])]) {
      expect(s.jMm4 / (s.iMostMm4 + s.iLeastMm4)).toBeCloseTo(1, 2);
    }
    const oval = sectionOf(ellipse(5, 6, 120), [ellipse(3, 3.6, 120)]);
    expect(oval.jMm4 / (oval.iMostMm4 + oval.iLeastMm4)).toBeLessThan(0.98);
    const offCentre = sectionOf(ellipse(5, 5, 120), [moved(ellipse(3, 3, 120), 0, 1, [1, 0])]);
    expect(offCentre.jMm4 / (offCentre.iMostMm4 + offCentre.iLeastMm4)).toBeLessThan(0.98);
  });

  test('as the wall thins, torsion becomes what Bredt says of a thin tube: 4 A^2 t / U', () => {
    const errors = [3, 2, 1, 0.5, 0.125].map((wall) => {
      const s = sectionOf(beside(5, 8, wall / 2, 240), [beside(5, 8, -wall / 2, 240)]);
      const middle = beside(5, 8, 0, 240);
      const round = middle.reduce((sum, p, i) => {
        const q = middle[(i + 1) % middle.length] ?? p;
        return sum + Math.hypot(q[0] - p[0], q[1] - p[1]);
      }, 0);
      const bredt = (4 * (Math.PI * 40) ** 2 * wall) / round;
      return s.jMm4 / bredt - 1;
    });
    expect(errors[0]).toBeGreaterThan(0.03);
    for (const [i, e] of errors.entries())
      if (i > 0) expect(Math.abs(e)).toBeLessThan(Math.abs(errors[i - 1] ?? 0) / 1.5);
    expect(Math.abs(errors.at(-1) ?? 1)).toBeLessThan(0.001);
  });

  test('two canals: a wall between them hardly carries torque, but bends', () => {
    const box = rectangle(10, 20);
    const cell = (z: number): Point2[] => moved(rectangle(8, 8.5), 0, 1, [0, z]);
    const two = sectionOf(box, [cell(-4.75), cell(4.75)]);
    const one = sectionOf(box, [rectangle(8, 18)]);
    expect(two.jMm4 / one.jMm4).toBeGreaterThan(1);
    expect(two.jMm4 / one.jMm4).toBeLessThan(1.03);
    expect(two.areaMm2 - one.areaMm2).toBeCloseTo(8, 9);
  });

  test('a canal takes away and never adds; off centre it moves the centroid to the thick side', () => {
    const full = sectionOf(rectangle(10, 10));
    const s = sectionOf(rectangle(10, 10), [moved(ellipse(3, 2, 40), 0, 1, [1, 0])]);
    for (const key of ['areaMm2', 'iLateralMm4', 'iDorsalMm4', 'jMm4'] as const) expect(s[key]).toBeLessThan(full[key]);
    expect(s.centroidMm[0]).toBeLessThan(0);
  });

  test('a section that cannot be is refused by name', () => {
    const fault = (run: () => unknown): SectionFault | string => {
      try {
        run();
      } catch (e) {
        if (e instanceof SectionError) return e.fault;
        return String(e);
      }
      return 'accepted';
    };
    const box = rectangle(4, 4);
    const bow: Point2[] = [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ];
    expect(fault(() => sectionOf(box, [ellipse(4, 4, 40)]))).toBe('canal leaves the bone');
    expect(fault(() => sectionOf(box, [moved(ellipse(1, 1, 40), 0, 1, [1.5, 0])]))).toBe('canal leaves the bone');
    expect(fault(() => sectionOf(box, [moved(ellipse(1, 1, 40), 0, 1, [9, 0])]))).toBe('canal leaves the bone');
    expect(fault(() => sectionOf(bow))).toBe('loop crosses itself');
    expect(fault(() => sectionOf(box, [moved(bow, 0, 0.2)]))).toBe('loop crosses itself');
    expect(fault(() => sectionOf([]))).toBe('no section');
    expect(fault(() => sectionOf([...box, [Number.NaN, 0]]))).toBe('no section');
    const line: Point2[] = [
      [0, 0],
      [1, 1],
      [2, 2],
    ];
    expect(fault(() => sectionOf(line))).toBe('no section');
    expect(fault(() => sectionOf(box, [ellipse(1, 1, 40), moved(ellipse(1, 1, 40), 0, 1, [0.5, 0])]))).toBe(
      'canals meet',
    );
    expect(fault(() => sectionOf(box, [ellipse(1, 1, 40), ellipse(0.5, 0.5, 40)]))).toBe('canals meet');
  });
});
