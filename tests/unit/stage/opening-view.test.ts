/** From where a question is looked at first. */
import { expect, it } from 'vitest';
import { BONE_IDS } from '../../../src/ids';
import { openingOf } from '../../../src/stage/camera/views';

it.each([
  ['metatarsal5', 'outer'],
  ['calcaneus', 'outer'],
  ['metatarsal2', 'top'],
  ['navicular', 'top'],
] as const)('%s opens from %s', (bone, view) => {
  expect(openingOf('where', { bone, loads: null }, false)).toEqual({ view, near: false });
});

it('a narrow plate opens near, whatever the bone', () => {
  for (const bone of BONE_IDS) expect(openingOf('where', { bone, loads: null }, true).near).toBe(true);
});

it('blood and options are looked at from near, and from where the bone is in sight', () => {
  for (const question of ['why', 'options'] as const) {
    expect(openingOf(question, { bone: 'metatarsal5', loads: null }, false)).toEqual({ view: 'close', near: true });
    expect(openingOf(question, { bone: 'navicular', loads: null }, false)).toEqual({ view: 'top', near: true });
  }
});
