import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point2 } from '../../../src/anatomy/inside/polygon';
import { sectionOf } from '../../../src/mechanics';

const rectangle = (h: number, w: number, [y, z]: Point2 = [0, 0]): Point2[] => [
  [y - h / 2, z - w / 2],
  [y - h / 2, z + w / 2],
  [y + h / 2, z + w / 2],
  [y + h / 2, z - w / 2],
];
const turned = (points: readonly Point2[], rad: number): Point2[] =>
  points.map(([y, z]) => [y * Math.cos(rad) - z * Math.sin(rad), y * Math.sin(rad) + z * Math.cos(rad)]);
const size = fc.double({ min: 2, max: 20, noNaN: true });
const angle = fc.double({ min: -3, max: 3, noNaN: true });
const place = fc.tuple(fc.double({ min: -30, max: 30, noNaN: true }), fc.double({ min: -30, max: 30, noNaN: true }));

describe('sectionOf', () => {
  test('a rectangle, by hand', () => {
    const s = sectionOf(rectangle(4, 6, [10, -3]), null);
    expect(s.areaMm2).toBeCloseTo(24, 9);
    expect(s.iLateralMm4).toBeCloseTo((6 * 4 ** 3) / 12, 9);
    expect(s.iDorsalMm4).toBeCloseTo((4 * 6 ** 3) / 12, 9);
    expect(s.iProductMm4).toBeCloseTo(0, 9);
    expect(s.centroidMm[0]).toBeCloseTo(10, 9);
    expect(s.centroidMm[1]).toBeCloseTo(-3, 9);
    expect([s.toDorsalMm, s.toPlantarMm, s.toLateralMm, s.toMedialMm].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([
      2, 2, 3, 3,
    ]);
  });

  test('either way round the outline', () => {
    const points = turned(rectangle(4, 6), 0.4);
    expect(sectionOf([...points].reverse(), null).iProductMm4).toBeCloseTo(sectionOf(points, null).iProductMm4, 9);
  });

  test('turning the section keeps area, the sum of second moments and torsion, and moves the product as it must', () => {
    fc.assert(
      fc.property(size, size, angle, (h, w, rad) => {
        const flat = sectionOf(rectangle(h, w), null);
        const s = sectionOf(turned(rectangle(h, w), rad), null);
        const scale = flat.iLateralMm4 + flat.iDorsalMm4;
        expect(s.areaMm2 / flat.areaMm2).toBeCloseTo(1, 8);
        expect((s.iLateralMm4 + s.iDorsalMm4) / scale).toBeCloseTo(1, 8);
        expect(s.jMm4 / flat.jMm4).toBeCloseTo(1, 8);
        const product = ((flat.iLateralMm4 - flat.iDorsalMm4) / 2) * Math.sin(2 * rad);
        expect((s.iProductMm4 - product) / scale).toBeCloseTo(0, 8);
      }),
    );
  });

  test('moving the section moves its centroid and nothing else', () => {
    fc.assert(
      fc.property(size, size, place, (h, w, [y, z]) => {
        const canal = (at: Point2) => ({ centre: at, semiDorsalMm: h / 4, semiLateralMm: w / 5 });
        const home = sectionOf(rectangle(h, w), canal([0, 0]));
        const away = sectionOf(rectangle(h, w, [y, z]), canal([y, z]));
        expect(away.iLateralMm4 / home.iLateralMm4).toBeCloseTo(1, 6);
        expect(away.iDorsalMm4 / home.iDorsalMm4).toBeCloseTo(1, 6);
        expect(away.centroidMm[0]).toBeCloseTo(y, 6);
        expect(away.centroidMm[1]).toBeCloseTo(z, 6);
      }),
    );
  });

  test('a canal takes away and never adds; off centre it moves the centroid to the thick side', () => {
    const full = sectionOf(rectangle(10, 10), null);
    const hollow = sectionOf(rectangle(10, 10), { centre: [1, 0], semiDorsalMm: 3, semiLateralMm: 2 });
    for (const key of ['areaMm2', 'iLateralMm4', 'iDorsalMm4', 'jMm4'] as const) {
      expect(hollow[key]).toBeLessThan(full[key]);
    }
    expect(hollow.centroidMm[0]).toBeLessThan(0);
  });

  test('a canal larger than the bone is an error', () => {
    expect(() => sectionOf(rectangle(4, 4), { centre: [0, 0], semiDorsalMm: 4, semiLateralMm: 4 })).toThrow('no room');
  });
});
