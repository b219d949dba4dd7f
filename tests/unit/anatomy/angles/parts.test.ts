/** What the film measures are made of, on bodies with known answers. */
import { describe, expect, test } from 'vitest';
import type { Foot, Mesh } from '../../../../src/anatomy';
import { slopeIn } from '../../../../src/anatomy/angles/angle';
import { facingPoints, jointEnd } from '../../../../src/anatomy/angles/facing';
import { lookOf } from '../../../../src/anatomy/angles/looks';
import { patchesOf } from '../../../../src/anatomy/angles/patches';
import { sectionMiddle } from '../../../../src/anatomy/angles/section-middle';
import { shaftLine } from '../../../../src/anatomy/angles/shaft';
import { mapMesh } from '../../../../src/anatomy/mesh';
import { movePoint, turning } from '../../../../src/anatomy/stance/motion';
import type { BoneId } from '../../../../src/ids';
import { degrees, type Vec3 } from '../../../../src/units';
import { barMesh, tubeFoot } from '../../../tools/tubes';

const footOf = (bones: readonly (readonly [BoneId, Mesh])[]): Foot => ({ ...tubeFoot(), bones: new Map(bones) });
const tilted = (mesh: Mesh, axis: Vec3, deg: number): Mesh => {
  const motion = turning([0, 0, 0], axis, deg);
  return mapMesh(mesh, (p) => movePoint(motion, p));
};

describe('the axis of a shaft', () => {
  test('is the middle line of a tilted bar', () => {
    const bar = tilted(barMesh({ lengthMm: 60, semi: () => [5, 7] }), [1, 0, 0], 23);
    expect(slopeIn('lateral', shaftLine(footOf([['metatarsal1', bar]]), 'metatarsal1'))).toBeCloseTo(-23, 3);
  });

  test('does not look at the two ends: a head bent down beyond 80 % leaves it', () => {
    const straight = barMesh({ lengthMm: 60, semi: () => [5, 5], along: 60 });
    const bent = barMesh({
      lengthMm: 60,
      semi: () => [5, 5],
      centre: (s) => [0, s > 0.85 ? -8 * (s - 0.85) : 0],
      along: 60,
    });
    const of = (mesh: Mesh) => slopeIn('lateral', shaftLine(footOf([['metatarsal1', mesh]]), 'metatarsal1'));
    expect(of(straight)).toBeCloseTo(0, 3);
    // Only the long axis that the sections are taken across moves a little.
    expect(Math.abs(of(bent))).toBeLessThan(0.2);
  });
});

test('the middle of a section is the centroid of its area', () => {
  const bar = barMesh({ lengthMm: 20, semi: (s) => [4 + 4 * s, 3], centre: (s) => [2 * s, 1] });
  const { at, areaMm2 } = sectionMiddle(bar, [0, 0, 10], [0, 0, 1]);
  expect(at[0]).toBeCloseTo(1, 3);
  expect(at[1]).toBeCloseTo(1, 3);
  expect(areaMm2).toBeCloseTo(Math.PI * 6 * 3, 0);
});

test('a flat end looks along its normal, wherever one starts from', () => {
  const bar = tilted(barMesh({ lengthMm: 8, semi: () => [20, 15] }), [0, 1, 0], 12);
  const { at, looks } = lookOf(patchesOf(bar), [0.2, 0.1, 1]);
  expect(degrees(Math.atan2(looks[0], looks[2]))).toBeCloseTo(12, 1);
  expect(Math.hypot(at[0] - 8 * looks[0], at[1], at[2] - 8 * looks[2])).toBeLessThan(0.3);
});

describe('facing surfaces', () => {
  const coarse = { around: 24, along: 4 };
  const heel = barMesh({ lengthMm: 80, semi: () => [10, 10], from: [0, 0, -200], ...coarse });
  const plate = (from: number, shift = 0) =>
    barMesh({ lengthMm: 10, semi: () => [12, 8], from: [shift, 0, from], ...coarse });
  const pair = (gap: number, shift = 0) =>
    footOf([
      ['calcaneus', heel],
      ['talus', plate(0)],
      ['navicular', plate(10 + gap, shift)],
    ]);
  /** A triangle is tried at the middles of its parts: the outermost lies a twelfth of the plate's half width inside its rim. */
  const INSIDE = 1.1;

  test('are the ends of two plates that look at each other', () => {
    const [front, back] = facingPoints(pair(2), 'talus', 'navicular');
    expect(front.length).toBeGreaterThan(50);
    for (const p of front) expect(p[2]).toBeCloseTo(10, 4);
    for (const p of back) expect(p[2]).toBeCloseTo(12, 4);
    const end = jointEnd(pair(2), 'talus', 'navicular', [1, 0, 0])[0];
    expect(end).toBeLessThan(12);
    expect(end).toBeGreaterThan(12 - INSIDE);
  });

  test('end where the shifted one ends', () => {
    // The navicular plate reaches from -7 to 17, the talar one from -12 to 12. Surfaces face each other up to 1.6 mm more than the
    // least gap: 3.6 mm, which go 3 mm past a rim 2 mm away.
    const past = Math.sqrt(3.6 ** 2 - 2 ** 2);
    const [front, back] = facingPoints(pair(2, 5), 'talus', 'navicular');
    expect(Math.max(...back.map((p) => p[0]))).toBeLessThan(12 + past);
    expect(Math.min(...front.map((p) => p[0]))).toBeGreaterThan(-7 - past);
    expect(jointEnd(pair(2, 5), 'talus', 'navicular', [1, 0, 0])[0]).toBeGreaterThan(12 - INSIDE);
  });

  test('are none where bones are apart', () => {
    expect(facingPoints(pair(9), 'talus', 'navicular').flat()).toEqual([]);
  });
});
