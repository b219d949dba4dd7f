/** Sections cut from the shipped foot with the cortex that content gives it. */
import { describe, expect, test } from 'vitest';
import type { BoneId } from '../../../../src/ids';
import { evenShares, isSlenderAt, type SectionStation, sectionsAlong } from '../../../../src/mechanics';
import { fineFoot, shape } from '../../../tools/inside-material';
import { mirrored } from '../../../tools/tubes';

const foot = fineFoot();
const bones: BoneId[] = ['metatarsal1', 'metatarsal2', 'metatarsal3', 'metatarsal4', 'metatarsal5', 'phalanxProximal1'];
const shares = evenShares(21);
const along = (bone: BoneId, wall: 'thin' | 'usual' | 'thick' = 'usual', of = foot): SectionStation[] =>
  sectionsAlong(of, bone, shape, wall, shares);

describe('sectionsAlong', () => {
  test.each(bones)('%s: real sections from end to end', (bone) => {
    const stations = along(bone);
    expect(stations).toHaveLength(21);
    for (const [i, { sMm, depthMm, section: s }] of stations.entries()) {
      expect(sMm).toBeGreaterThan(stations[i - 1]?.sMm ?? 0);
      expect(depthMm).toBeGreaterThanOrEqual(
        Math.max(s.toDorsalMm + s.toPlantarMm, s.toLateralMm + s.toMedialMm) - 1e-9,
      );
      expect(s.jMm4).toBeGreaterThan(0);
      expect(s.jMm4).toBeLessThanOrEqual(s.iMostMm4 + s.iLeastMm4);
      expect(s.iMostMm4).toBeGreaterThanOrEqual(s.iLeastMm4);
      expect(Math.min(s.shearAreaMostMm2, s.shearAreaLeastMm2)).toBeGreaterThan(0.1 * s.areaMm2);
      expect(Math.max(s.shearAreaMostMm2, s.shearAreaLeastMm2)).toBeLessThan(0.95 * s.areaMm2);
    }
  });

  test.each(bones)('%s: a thicker wall is stiffer everywhere it has a canal, and never softer', (bone) => {
    const [thin, usual, thick] = [along(bone, 'thin'), along(bone), along(bone, 'thick')];
    for (const [i, s] of usual.entries()) {
      const [less, more] = [thin[i]?.section, thick[i]?.section];
      for (const key of ['areaMm2', 'iMostMm4', 'jMm4'] as const) {
        expect(less?.[key] ?? 0).toBeLessThanOrEqual(s.section[key] * 1.001);
        expect(more?.[key] ?? 0).toBeGreaterThanOrEqual(s.section[key] * 0.999);
      }
    }
  });

  test('the left foot has the same sections', () => {
    const left = along('metatarsal2', 'usual', mirrored(foot));
    for (const [i, { section }] of along('metatarsal2').entries()) {
      const other = left[i]?.section;
      expect(other?.iProductMm4).toBeCloseTo(section.iProductMm4, 0);
      expect(other?.rollRad).toBeCloseTo(section.rollRad, 2);
      expect((other?.jMm4 ?? 0) / section.jMm4).toBeCloseTo(1, 2);
    }
  });

  test('a share at which nothing is cut is refused', () => {
    expect(() => sectionsAlong(foot, 'metatarsal2', shape, 'usual', [1.2])).toThrow('no section at 1.2');
  });
});

describe('isSlenderAt', () => {
  test('a third of the length, and one depth from what holds it', () => {
    expect(isSlenderAt({ sMm: 30, depthMm: 10 }, 60, [0])).toBe(true);
    expect(isSlenderAt({ sMm: 30, depthMm: 20 }, 60, [0])).toBe(false);
    expect(isSlenderAt({ sMm: 9, depthMm: 10 }, 60, [0])).toBe(false);
    expect(isSlenderAt({ sMm: 52, depthMm: 10 }, 60, [0, 60])).toBe(false);
  });
  test('the middle of every metatarsal is a member, its ends are none', () => {
    for (const bone of bones.slice(0, 5)) {
      const stations = along(bone);
      const length = (stations.at(-1)?.sMm ?? 0) / (shares.at(-1) ?? 1);
      const slender = stations.map((s) => isSlenderAt(s, length, [0, length]));
      expect(slender[10]).toBe(true);
      expect(slender[0]).toBe(false);
      expect(slender.at(-1)).toBe(false);
    }
  });
});
