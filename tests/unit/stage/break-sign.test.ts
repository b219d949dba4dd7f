/** The signs of the break in the picture, which the key beside it repeats. */
import { expect, test } from 'vitest';
import { idOf, type RegionId } from '../../../src/ids';
import { type BreakScene, breakSignOf, breakStrokes } from '../../../src/stage/scene/scene';

const sceneOf = (at: Partial<BreakScene['at']>): BreakScene => ({
  at: {
    bone: 'metatarsal5',
    sMm: 20,
    region: idOf<RegionId>('mt5-zone-2'),
    precision: 'distance',
    status: 'confirmed',
    whatIf: false,
    direction: 'transverse',
    ...at,
  },
  axis: { origin: [0, 0, 0], axis: [1, 0, 0], dorsal: [0, 0, 1], lateral: [0, 1, 0], lengthMm: 70 },
  sMm: 20,
  lines: [],
  centre: [0, 0, 0],
  acrossMm: 12,
});

test('solid when confirmed, hollow when reported or inferred, dashed when tried', () => {
  const drawn = (at: Partial<BreakScene['at']>) =>
    breakStrokes(sceneOf(at))
      .slice(1)
      .map(({ colour, dashMm }) => `${colour}${dashMm > 0 ? ' dashed' : ''}`);
  expect(drawn({})).toEqual(['here']);
  expect(drawn({ status: 'reported' })).toEqual(['here', 'ivory']);
  expect(drawn({ status: 'inferred' })).toEqual(['here', 'ivory']);
  expect(drawn({ whatIf: true })).toEqual(['here dashed']);
});

test('a ring where the bone is small on the screen, no sign without a break', () => {
  expect(breakSignOf(sceneOf({}), 12 / 40)).toBe('line');
  expect(breakSignOf(sceneOf({}), 12 / 30)).toBe('ring');
  expect(breakSignOf(null, 1)).toBeNull();
});
