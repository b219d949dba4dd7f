/** From where the first question is looked at. */
import { expect, it } from 'vitest';
import { BONE_IDS } from '../../../src/ids';
import { viewOfQuestion } from '../../../src/stage/camera/views';

it.each([
  ['metatarsal5', 'outer'],
  ['calcaneus', 'outer'],
  ['metatarsal2', 'top'],
  ['navicular', 'top'],
] as const)('%s opens from %s', (bone, view) => {
  expect(viewOfQuestion('where', { bone, loads: null }, false)).toBe(view);
});

it('a narrow plate opens close, whatever the bone', () => {
  for (const bone of BONE_IDS) expect(viewOfQuestion('where', { bone, loads: null }, true)).toBe('close');
});
