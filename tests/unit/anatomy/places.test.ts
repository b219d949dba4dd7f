import { describe, expect, test } from 'vitest';
import { boneAxis, meshOf } from '../../../src/anatomy/bone-axis';
import { meshCentroid } from '../../../src/anatomy/mesh';
import { carried, exitOf, placeOn, scaleOn, sectionMiddle } from '../../../src/anatomy/places';
import { turning } from '../../../src/anatomy/stance/motion';
import type { Foot } from '../../../src/anatomy/types';
import { barMesh, mirrored, tubeFoot } from '../../tools/tubes';

const bar = barMesh({ lengthMm: 10, semi: () => [4, 6] });

describe('where a way leaves the solid', () => {
  test('from inside: at the surface, outwards', () => {
    expect(exitOf(bar, [0, 0, 5], [2, 0, 0])?.[0]).toBeCloseTo(4, 3);
    expect(exitOf(bar, [0, 0, 5], [0, -1, 0])?.[1]).toBeCloseTo(-6, 3);
    expect(exitOf(bar, [1, 1, 5], [0, 0, 1])).toEqual([1, 1, 10]);
  });

  test('from outside: where it comes out again, not where it goes in', () => {
    expect(exitOf(bar, [-20, 0, 5], [1, 0, 0])?.[0]).toBeCloseTo(4, 3);
  });

  test('through a vertex or along an edge it is still found', () => {
    const [x, y, z] = [bar.positions[0] ?? 0, bar.positions[1] ?? 0, 5];
    expect(exitOf(bar, [0, 0, 5], [x, y, 0])).toEqual([expect.closeTo(x, 6), expect.closeTo(y, 6), z]);
  });

  test('a way that misses the bone leads nowhere, and a place then goes out from the middle', () => {
    expect(exitOf(bar, [20, 0, 5], [1, 0, 0])).toBeNull();
    const foot = tubeFoot();
    const { at } = placeOn(foot, 'metatarsal5', { from: { middle: true, shift: [60, 0, 0] }, towards: [1, 0, 0] });
    const [x] = meshCentroid(meshOf(foot, 'metatarsal5'));
    expect(at[0] - x).toBeGreaterThan(4);
    expect(at[0] - x).toBeLessThan(7);
  });
});

describe('directions of the reference foot', () => {
  const foot = tubeFoot();
  const turned: Foot = {
    ...foot,
    reference: { ...foot.reference, motions: new Map([['metatarsal5', turning([3, 4, 5], [0, 1, 0], 90)]]) },
  };

  test('turn with the bone and are mirrored on a left foot', () => {
    expect(carried(foot, 'metatarsal5', [1, 2, 3])).toEqual([1, 2, 3]);
    const [x, y, z] = carried(turned, 'metatarsal5', [0, 0, 1]);
    expect([x, y, z]).toEqual([expect.closeTo(1, 9), expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    expect(carried(mirrored(turned), 'metatarsal5', [0, 0, 1])[0]).toBeCloseTo(-1, 9);
  });

  test('lengths on the fifth metatarsal go with its length, elsewhere with the foot', () => {
    expect(scaleOn(foot, 'metatarsal5')).toBeCloseTo(70 / 71, 6);
    expect(scaleOn({ ...foot, reference: { ...foot.reference, scale: 1.2 } }, 'talus')).toBe(1.2);
  });
});

test('the middle of a section is the centroid of its area, however its outline is cut up', () => {
  const foot = tubeFoot({ centre: (u) => [3 * u, -2 * u] });
  const axis = boneAxis(foot, 'metatarsal5');
  const [x, y] = sectionMiddle(foot, 'metatarsal5', axis, axis.lengthMm / 2);
  expect(x).toBeCloseTo(-35 + 1.5, 1);
  expect(y).toBeCloseTo(12 - 1, 1);
  const coarse = tubeFoot({ centre: (u) => [3 * u, -2 * u], around: 24 });
  expect(sectionMiddle(coarse, 'metatarsal5', boneAxis(coarse, 'metatarsal5'), axis.lengthMm / 2)[0]).toBeCloseTo(x, 2);
});
