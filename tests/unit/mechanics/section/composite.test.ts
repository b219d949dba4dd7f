import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bendingSectionOf, compositeOf, partStressesOf, strainOf } from '../../../../src/mechanics';
import { extremesOf, fieldOf } from '../../../../src/mechanics/stress';
import { ellipse, rectangle } from '../../../tools/members';

const outline = ellipse(5, 4, 60);
const canal = ellipse(3, 2, 60).map(([y, z]) => [y + 0.5, z + 0.3] as const);
const cortex = { outline, holes: [canal], modulusMPa: 17000 };
const force = fc.double({ min: -2000, max: 2000, noNaN: true });

describe('compositeOf', () => {
  test('one part alone is the plain section times its modulus, stresses and all', () => {
    fc.assert(
      fc.property(force, force, force, (n, mz, my) => {
        const [plain, c] = [bendingSectionOf(outline, [canal]), compositeOf([cortex])];
        expect(c.eaN / plain.areaMm2).toBeCloseTo(17000, 6);
        expect(c.eiLateralNmm2 / plain.iLateralMm4).toBeCloseTo(17000, 6);
        expect(c.eiDorsalNmm2 / plain.iDorsalMm4).toBeCloseTo(17000, 6);
        const field = fieldOf(plain, n, mz, my);
        const [stress] = partStressesOf(c, strainOf(c, n, mz, my));
        const plainly = extremesOf(plain, outline, field);
        expect(stress?.tensionMPa).toBeCloseTo(plainly.tensionMPa, 6);
        expect(stress?.compressionMPa).toBeCloseTo(plainly.compressionMPa, 6);
      }),
      { numRuns: 30 },
    );
  });

  test('a hole filled with the same stuff is no hole', () => {
    const filled = compositeOf([cortex, { outline: canal, modulusMPa: 17000 }]);
    const full = compositeOf([{ outline, modulusMPa: 17000 }]);
    expect(filled.eaN / full.eaN).toBeCloseTo(1, 9);
    expect(filled.eiLateralNmm2 / full.eiLateralNmm2).toBeCloseTo(1, 9);
    expect(filled.centreMm[0]).toBeCloseTo(full.centreMm[0], 9);
  });

  test('spongy bone in the canal stiffens by its modular ratio and relieves the cortex', () => {
    const spongy = compositeOf([cortex, { outline: canal, modulusMPa: 1000 }]);
    const empty = compositeOf([cortex]);
    const inside = compositeOf([{ outline: canal, modulusMPa: 1000 }]);
    expect(spongy.eaN - empty.eaN).toBeCloseTo(inside.eaN, 6);
    const peak = (c: typeof spongy) => partStressesOf(c, strainOf(c, 0, 1000, 0))[0]?.tensionMPa ?? 0;
    expect(peak(spongy)).toBeLessThan(peak(empty));
    expect(peak(spongy)).toBeGreaterThan(0.95 * peak(empty));
  });

  test('forces come back out of the stresses of two halves', () => {
    const halves = [-2, 2].map((y, i) => ({
      outline: rectangle(4, 6).map(([a, b]) => [a + y, b] as const),
      modulusMPa: i === 0 ? 1000 : 3000,
    }));
    const c = compositeOf(halves);
    expect(c.centreMm[0]).toBeCloseTo(1, 9);
    // Pull through the elastic centre strains both alike.
    const [soft, stiff] = partStressesOf(c, strainOf(c, 4800, 0, 0));
    expect((soft?.tensionMPa ?? 0) * 24 + (stiff?.tensionMPa ?? 0) * 24).toBeCloseTo(4800, 6);
    expect((stiff?.tensionMPa ?? 0) / (soft?.tensionMPa ?? 1)).toBeCloseTo(3, 9);
  });

  test('no part, or one of no stuff, is refused', () => {
    expect(() => compositeOf([])).toThrow('no section');
    expect(() => compositeOf([{ outline, modulusMPa: 0 }])).toThrow('modulus of 0');
  });
});
