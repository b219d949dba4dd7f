import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bridgeOf,
  canalPlacesOf,
  gapStrainOf,
  gapTissueAt,
  longestIn,
  longestInArc,
  type Screw,
  screwInBone,
  screwSectionOf,
} from '../../../src/mechanics/fixation';
import { fineFoot, shape } from '../../tools/inside-material';
import { ellipse } from '../../tools/members';
import { mirrored } from '../../tools/tubes';

const screw = (coreMm: number, modulusMPa = 114000): Screw => ({ coreMm, cannulaMm: 0, modulusMPa });
const bone = { outline: ellipse(5, 4.5, 90), holes: [ellipse(3, 2.8, 90)], modulusMPa: 17000 };
const up = { axialN: 0, bendingUpDownNmm: 1000, bendingSidewaysNmm: 0 };

describe('a screw in a bone', () => {
  test('takes load from the bone, more the stiffer and the thicker it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 5, noNaN: true }),
        fc.double({ min: 1.05, max: 2, noNaN: true }),
        (core, k) => {
          const one = screwInBone(bone, screw(core), [0, 0], up);
          const stiffer = screwInBone(bone, screw(core, 114000 * k), [0, 0], up);
          expect(one.bone.tensionMPa).toBeLessThan(one.boneAlone.tensionMPa);
          expect(stiffer.shareUpDown).toBeGreaterThan(one.shareUpDown);
          expect(stiffer.curvature).toBeLessThan(one.curvature);
          expect(screwInBone(bone, screw(core * 1.05), [0, 0], up).shareUpDown).toBeGreaterThan(one.shareUpDown);
          // Moments of bone and screw add up to the load's.
          const share = one.bone.tensionMPa / one.boneAlone.tensionMPa;
          expect(share + one.shareUpDown).toBeCloseTo(1, 6);
        },
      ),
      { numRuns: 20 },
    );
  });

  test('one hard against the cortex moves the neutral axis towards itself and is stressed less by its own bending alone', () => {
    const middle = screwInBone(bone, screw(3), [0, 0], up);
    const high = screwInBone(bone, screw(3), [1.2, 0], up);
    expect(high.composite.centreMm[0]).toBeGreaterThan(0.1);
    expect(high.shareUpDown).toBeGreaterThan(middle.shareUpDown);
    expect(high.bone.tensionMPa).not.toBeCloseTo(-high.bone.compressionMPa, 3);
    expect(middle.bone.tensionMPa).toBeCloseTo(-middle.bone.compressionMPa, 6);
  });

  test('a screw that cannot be is refused', () => {
    for (const bad of [{ coreMm: 0 }, { cannulaMm: 4 }, { cannulaMm: -1 }, { modulusMPa: 0 }, { coreMm: Number.NaN }]) {
      expect(() => screwSectionOf({ ...screw(4), ...bad })).toThrow('give a core above its hole');
    }
  });
});

describe('a screw across a gap', () => {
  test('opening strain does not depend on the gap, the angle does', () => {
    const [narrow, wide] = [bridgeOf(screw(4), 1, 5, 800), bridgeOf(screw(4), 3, 5, 800)];
    expect(wide.openingStrain).toBe(narrow.openingStrain);
    expect(wide.rotationRad / narrow.rotationRad).toBeCloseTo(3, 12);
    expect(wide.openingMm).toBeCloseTo(5 * wide.rotationRad, 12);
    expect(wide.screwMPa).toBe(narrow.screwMPa);
  });
  test('no gap, or one that moves backwards, is refused', () => {
    expect(() => bridgeOf(screw(4), 0, 5, 800)).toThrow('is none');
    expect(() => gapStrainOf(-1, 2)).toThrow('cannot move');
  });
  test('the wider the strain, the softer what may form', () => {
    expect([0.01, 0.02, 0.05, 0.5, 1.2].map(gapTissueAt)).toEqual([
      'bone',
      'bone',
      'fibrocartilage',
      'granulation',
      'none',
    ]);
  });
});

describe('a straight rod in a bowed canal', () => {
  test('a rod as wide as the canal, or wider, has no way in an arc', () => {
    expect(longestInArc({ radiusMm: 100, canalMm: 4 }, 4)).toBeCloseTo(0, 9);
    expect(longestInArc({ radiusMm: 100, canalMm: 4 }, 5)).toBe(0);
    expect(() => longestInArc({ radiusMm: 0, canalMm: 4 }, 3)).toThrow('arc');
  });
  test('longer the straighter the canal and the thinner the rod', () => {
    const long = (radiusMm: number, rod: number): number => longestInArc({ radiusMm, canalMm: 5 }, rod);
    expect(long(200, 4)).toBeGreaterThan(long(100, 4));
    expect(long(200, 3)).toBeGreaterThan(long(200, 4));
  });
  test('a straight canal takes a rod of its whole length; a narrow place stops it', () => {
    const place = (sMm: number, width: number) => ({
      sMm,
      dorsalMm: 0.1 * sMm,
      lateralMm: 0,
      upDownMm: width,
      acrossMm: 9,
    });
    const straight = [0, 10, 20, 30, 40].map((s) => place(s, 5));
    expect(longestIn(straight, 4.9)).toEqual({ fromMm: 0, toMm: 40, lengthMm: 40 });
    const waisted = straight.map((p, i) => (i === 3 ? { ...p, upDownMm: 4 } : p));
    expect(longestIn(waisted, 4.9)).toEqual({ fromMm: 0, toMm: 20, lengthMm: 20 });
    expect(longestIn(straight, 6)).toBeNull();
  });
  test('in the built fifth metatarsal: shorter the thicker the rod, longer the thinner the wall, the same on the left', () => {
    const foot = fineFoot();
    const canal = canalPlacesOf(foot, 'metatarsal5', shape, 'usual');
    const lengths = [3, 4, 5, 6].map((d) => longestIn(canal, d)?.lengthMm ?? 0);
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    const thin = longestIn(canalPlacesOf(foot, 'metatarsal5', shape, 'thin'), 4.5)?.lengthMm ?? 0;
    expect(thin).toBeGreaterThan(longestIn(canal, 4.5)?.lengthMm ?? 0);
    const left = canalPlacesOf(mirrored(foot), 'metatarsal5', shape, 'usual');
    expect(longestIn(left, 4)?.lengthMm).toBeCloseTo(lengths[1] ?? 0, 3);
  });
});
