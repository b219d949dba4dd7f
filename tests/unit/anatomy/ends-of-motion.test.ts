/**
 * Bones at the ends of the motion of their joints, from standing, about the axes of content/anatomy/pose.yaml: by how far they overlap on
 * their fine surfaces. Those that are nearest to the limit; with UNDERFOOT_LONG all. Ends: content/anatomy/motions.yaml, where each has its source and how it was read. Joints that do not touch
 * are moved at once; a motion that is known as a whole is taken half each way. mm, deg.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { buildFoot, DEFAULT_FOOT, fitOf, prepareAnatomy, startFrom } from '../../../src/anatomy';
import type { PoseName } from '../../../src/anatomy/types';
import { shape as base, builtFoot } from '../../tools/built-foot';
import { LONG, orAll } from '../../tools/long';

beforeAll(prepareAnatomy);

const turn = (id: string, degrees: number) => ({ turn: id, degrees });
const lesser = (end: string, degrees: number) => [2, 3, 4, 5].map((toe) => turn(`toe${toe}${end}`, degrees));

const rays = (way: 1 | -1) => [
  turn('ray1', (way * 3.5) / 2),
  turn('ray4', (way * 9.6) / 2),
  turn('ray5', (way * 10.2) / 2),
];

const overlapsAfter = (turns: readonly { turn: string; degrees: number }[]): string[] => {
  const id = 'inversion' as PoseName;
  const probe = { id, name: 'probe', arch: 0, turns: [...turns], again: [], restsOn: [], lift: [] };
  const windlass = { ...base.pose.windlass, archPerDegree: 0 };
  const shape = { ...base, pose: { ...base.pose, windlass, poses: [probe] } };
  startFrom(shape, builtFoot({}, 'standing', 'fine'));
  return fitOf(shape, buildFoot(shape, DEFAULT_FOOT, id, 'fine'))
    .overlaps.filter(({ depthMm }) => depthMm > 0.8)
    .map(({ bones, depthMm }) => `${bones.join(' and ')}: ${depthMm.toFixed(2)}`);
};

type End = readonly [what: string, turns: readonly { turn: string; degrees: number }[]];
const ENDS: readonly End[] = [
  [
    'toes bent up: first 70, others 40, their ends 30',
    [turn('toe1', -70), turn('sesamoids', -70), ...lesser('', -40), ...lesser('End', -30)],
  ],
  ['toes bent down: first 45, others 40', [turn('toe1', 45), turn('sesamoids', 45), ...lesser('', 40)]],
  [
    'joints within the toes bent down: 90; 35 and 60',
    [turn('toe1End', 90), ...lesser('Middle', 35), ...lesser('End', 60)],
  ],
  ['rays up by half of what they move: first 3.5, fourth 9.6, fifth 10.2', rays(-1)],
  ['rays down by half', rays(1)],
  ['cuneiforms up on the navicular by half of 5', [turn('naviculocuneiform', -2.5)]],
  ['cuneiforms down by half', [turn('naviculocuneiform', 2.5)]],
  ['midfoot up on the hindfoot by half of 9.7', [turn('transverseTarsal', -4.85)]],
  ['midfoot down by half', [turn('transverseTarsal', 4.85)]],
  ['ankle up 20', [turn('ankle', 20)]],
  ['ankle down 40', [turn('ankle', -40)]],
  ['heel outwards 10', [turn('subtalarIn', -10)]],
  ['heel inwards 9.8, all that the joint turns in walking', [turn('subtalarIn', 9.8)]],
];
const NEAREST = /^toes bent up|^rays up|^ankle down|^heel inwards/;

describe('no bones overlap by more than 0.8 mm', () => {
  test.each(orAll(ENDS, ([what]) => NEAREST.test(what)))(
    '%s',
    (_, turns) => {
      expect(overlapsAfter(turns)).toEqual([]);
    },
    60_000,
  );

  // What a hand can move further, our bones cannot: 50 degrees of the ankle and 20 of the heel by goniometry (common practice).
  test.runIf(LONG).each([
    ['ankle down 50', [turn('ankle', -50)]],
    ['heel inwards 20', [turn('subtalarIn', 20)]],
  ])(
    'but they do at the ends of a hand: %s',
    (_, turns) => {
      expect(overlapsAfter(turns)).not.toEqual([]);
    },
    60_000,
  );
});
