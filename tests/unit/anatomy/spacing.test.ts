/** How the foot of another length is drawn together at its joints, before it is scaled. mm. */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildBone, DEFAULT_FOOT, fitOf, hOfFootLength, prepareAnatomy } from '../../../src/anatomy';
import { drawnTogether, standingSurfaces } from '../../../src/anatomy/spacing';
import { add, length, scale, subtract, type Vec3 } from '../../../src/units';
import { builtFoot, shape } from '../../tools/built-foot';

const surfaces = standingSurfaces(shape, DEFAULT_FOOT);
const LARGE = 1.36;

describe('a foot drawn together', () => {
  test('in the middle of a facet lies k times nearer to its surface', () => {
    for (const { stand, shape: joint } of surfaces) {
      // Small toes have their joints so close together that each gives way to the next.
      if (!joint.articular || joint.extents[0] < 12) continue;
      const { side, way } = stand(joint.centre);
      for (const off of [-0.9, 0.9]) {
        const there = drawnTogether(surfaces, LARGE)(add(joint.centre, scale(way, off - side)));
        expect(Math.abs(stand(there).side - off / LARGE), joint.id).toBeLessThan(0.12);
      }
    }
  });

  test('far from every joint stays: the shaft of a metatarsal, the heel', () => {
    for (const p of [
      [-8, 30, 135],
      [0, 20, 5],
    ] satisfies Vec3[])
      expect(drawnTogether(surfaces, LARGE)(p)).toEqual(p);
  });

  test.each([0.85, LARGE])('%d times as large: keeps apart what was apart', (k) => {
    const move = drawnTogether(surfaces, k);
    const step = fc.double({ min: -1, max: 1, noNaN: true });
    const joint = fc.constantFrom(...surfaces.map((s) => s.shape));
    fc.assert(
      fc.property(joint, fc.tuple(step, step, step), fc.tuple(step, step, step), ({ centre, extents }, at, way) => {
        const p = add(centre, scale(at, extents[0]));
        const by = scale(way, 0.5);
        fc.pre(length(by) > 0.05);
        // What lies one way of a point lies that way still.
        const apart = subtract(move(add(p, by)), move(p));
        expect(apart[0] * by[0] + apart[1] * by[1] + apart[2] * by[2]).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('bones of another length', () => {
  beforeAll(prepareAnatomy);

  test('within a fiftieth of the usual one are the usual ones, scaled', () => {
    const k = 1.018;
    const usual = buildBone(shape, DEFAULT_FOOT, 'talus', 'standing');
    const scaled = buildBone(shape, { ...DEFAULT_FOOT, heelToSecondHeadMm: 165 * k }, 'talus', 'standing');
    scaled.positions.forEach((x, i) => {
      expect(x).toBeCloseTo((usual.positions[i] ?? 0) * k, 3);
    });
  });

  test('the longest: a gap is what it is in the usual foot, from its nearest part to its mean', () => {
    const fitAt = (lengthMm: number) =>
      fitOf(shape, builtFoot({ heelToSecondHeadMm: hOfFootLength(lengthMm) }, 'standing', 'fine'));
    const usual = new Map(fitAt(234.7).joints.map((j) => [j.joint, j]));
    for (const { joint, articular, p5Mm, meanMm } of fitAt(320).joints) {
      const was = usual.get(joint);
      // Joints that face each other far beyond their facets part there.
      if (!articular || was === undefined || (was.areaShare ?? 1) > 1.5) continue;
      expect(p5Mm, joint).toBeGreaterThan(was.p5Mm - 0.1);
      expect(Math.abs(meanMm - was.meanMm), joint).toBeLessThan(0.35);
    }
  }, 60_000);
});
