/** Poses: rigid motions that can be undone, heads at rest, no measure of shape without effect. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, FORM_BOUNDS } from '../../../../src/anatomy';
import { inverse, movePoint, STILL } from '../../../../src/anatomy/stance/motion';
import { bonesIn, headOf, motionsOf, turnsOf } from '../../../../src/anatomy/stance/stance';
import type { FootForm } from '../../../../src/anatomy/types';
import { SKELETON_IDS } from '../../../../src/ids';
import { length, subtract, type Vec3 } from '../../../../src/units';
import { shape } from '../../../tools/built-foot';
import { anyForm } from '../any-form';

const point = fc.tuple(
  fc.double({ min: -50, max: 50, noNaN: true }),
  fc.double({ min: 0, max: 90, noNaN: true }),
  fc.double({ min: 0, max: 220, noNaN: true }),
);

describe('poses', () => {
  test('move every bone rigidly and can be undone', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SKELETON_IDS), anyForm, point, point, (bone, form, p: Vec3, q: Vec3) => {
        const m = motionsOf(shape, form, 'standing').get(bone);
        if (!m) throw new Error(`${bone} has no motion`);
        expect(length(subtract(movePoint(m, p), movePoint(m, q)))).toBeCloseTo(length(subtract(p, q)), 6);
        expect(length(subtract(movePoint(inverse(m), movePoint(m, p)), p))).toBeCloseTo(0, 6);
      }),
    );
  });

  test('as scanned no bone of the usual foot is turned', () => {
    expect(turnsOf(shape, DEFAULT_FOOT, 'asScanned').every(({ degrees }) => degrees === 0)).toBe(true);
    for (const m of motionsOf(shape, DEFAULT_FOOT, 'asScanned').values()) {
      expect(length(subtract(movePoint(m, [10, 40, 150]), [10, 40, 150]))).toBeCloseTo(0, 9);
    }
  });

  test('standing, every metatarsal head rests where the content puts it, whatever the shape of the foot', () => {
    fc.assert(
      fc.property(anyForm, (form) => {
        const motions = motionsOf(shape, form, 'standing');
        for (const turn of shape.pose.standing) {
          if (turn.by !== 'rest') continue;
          const [first] = bonesIn(shape.pose, turn.bones);
          if (!first) throw new Error(turn.id);
          const head = headOf(shape, form, turn.head, motions.get(first) ?? STILL);
          expect(head[1], turn.id).toBeCloseTo(turn.height, 1);
        }
      }),
    );
  });

  test('a further measure of shape turns further: none is dead', () => {
    const moved = (form: FootForm): number =>
      Math.max(
        ...[...motionsOf(shape, form, 'standing')].map(([bone, m]) => {
          const usual = motionsOf(shape, DEFAULT_FOOT, 'standing').get(bone) ?? STILL;
          return length(subtract(movePoint(m, [0, 40, 150]), movePoint(usual, [0, 40, 150])));
        }),
      );
    for (const [measure, [, high]] of Object.entries(FORM_BOUNDS)) {
      expect(moved({ ...DEFAULT_FOOT, [measure]: high }), measure).toBeGreaterThan(2);
    }
  });
});
