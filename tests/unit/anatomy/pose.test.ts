import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inverse, motionsOf, movePoint } from '../../../src/anatomy/pose';
import { readShape } from '../../../src/cli/read-shape';
import { BONE_IDS } from '../../../src/ids';
import { length, subtract, type Vec3 } from '../../../src/units';

const shape = readShape();
const point = fc.tuple(
  fc.double({ min: -50, max: 50, noNaN: true }),
  fc.double({ min: 0, max: 90, noNaN: true }),
  fc.double({ min: 0, max: 220, noNaN: true }),
);

describe('poses', () => {
  test('move every bone rigidly and can be undone', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...BONE_IDS),
        fc.constantFrom('neutral', 'high', 'low'),
        point,
        point,
        (bone, arch, p: Vec3, q: Vec3) => {
          const m = motionsOf(shape, 'standing', arch).get(bone);
          if (!m) throw new Error(`${bone} has no motion`);
          expect(length(subtract(movePoint(m, p), movePoint(m, q)))).toBeCloseTo(length(subtract(p, q)), 6);
          expect(length(subtract(movePoint(inverse(m), movePoint(m, p)), p))).toBeCloseTo(0, 6);
        },
      ),
    );
  });

  test('the as-scanned pose moves nothing, whatever the arch', () => {
    expect(motionsOf(shape, 'asScanned', 'high').size).toBe(0);
  });
});
