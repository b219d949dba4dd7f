import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heldBy, internalForcesAt, type PointLoad } from '../../../src/mechanics/forces';

const number = (max: number) => fc.double({ min: -max, max, noNaN: true });
const load: fc.Arbitrary<PointLoad> = fc.record({
  sMm: fc.double({ min: 0.5, max: 70, noNaN: true }),
  at: fc.tuple(number(8), number(8)),
  alongN: number(500),
  dorsalN: number(500),
  lateralN: number(500),
});

describe('internal forces', () => {
  test('a held member is in equilibrium: nothing is left at its free ends, whatever the loads', () => {
    fc.assert(
      fc.property(fc.array(load, { minLength: 1, maxLength: 4 }), (points) => {
        const loads = heldBy(points, 5, 30, [1, -2]);
        for (const s of [-1, 0.1, 71]) {
          if (s === 0.1 && points.some((p) => p.sMm <= s)) continue;
          for (const value of Object.values(internalForcesAt(loads, s, [2, 3])))
            expect(Math.abs(value)).toBeLessThan(1e-6);
        }
      }),
    );
  });

  test('bending falls to nothing at the load and grows by force times distance behind it', () => {
    const loads = heldBy([{ sMm: 60, at: [0, 0], alongN: 0, dorsalN: 100, lateralN: -40 }], 5, 20, [0, 0]);
    const at = (s: number) => internalForcesAt(loads, s, [0, 0]);
    expect(at(60).bendingUpDownNmm).toBe(0);
    expect(at(30).bendingUpDownNmm).toBeCloseTo(3000, 9);
    expect(at(30).bendingSidewaysNmm).toBeCloseTo(1200, 9);
    expect(at(30).shearDorsalN).toBe(100);
  });

  test('bending is greatest inside the held stretch and dies out towards its other end', () => {
    const loads = heldBy([{ sMm: 60, at: [0, 0], alongN: 0, dorsalN: 100, lateralN: 0 }], 5, 25, [0, 0]);
    const moments = Array.from({ length: 61 }, (_, s) => internalForcesAt(loads, s, [0, 0]).bendingUpDownNmm);
    const peak = moments.indexOf(Math.max(...moments));
    expect(peak).toBeGreaterThan(5);
    expect(peak).toBeLessThan(25);
    expect(moments[5]).toBeCloseTo(0, 6);
  });

  test('a push off the axis bends and twists', () => {
    const at = internalForcesAt(
      { points: [{ sMm: 60, at: [-6, 2], alongN: -50, dorsalN: 100, lateralN: -40 }], spread: null },
      40,
      [0, 0],
    );
    expect(at.bendingUpDownNmm).toBeCloseTo(20 * 100 - 6 * 50, 9);
    expect(at.bendingSidewaysNmm).toBeCloseTo(20 * 40 - 2 * 50, 9);
    expect(at.torsionNmm).toBeCloseTo(6 * 40 - 2 * 100, 9);
    expect(at.axialN).toBe(-50);
  });

  test('nothing holds a member over no length', () => {
    expect(() => heldBy([], 10, 10, [0, 0])).toThrow('held');
  });
});
