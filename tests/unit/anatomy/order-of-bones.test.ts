/** In random feet, hundreds of them in the long run, and in every pose of the corners, bones stay in the order in which everybody counts them. mm. */
import { beforeAll, expect, test } from 'vitest';
import { DEFAULT_FOOT, type Foot, prepareAnatomy, previewFoot } from '../../../src/anatomy';
import { meshCentroid } from '../../../src/anatomy/mesh';
import { POSE_NAMES } from '../../../src/anatomy/types';
import type { BoneId } from '../../../src/ids';
import type { Vec3 } from '../../../src/units';
import { builtFoot, shape } from '../../tools/built-foot';
import { LONG } from '../../tools/long';
import { cornerForms, formInWords, sampleForms } from './any-form';

let usual: Foot;
beforeAll(async () => {
  await prepareAnatomy();
  usual = builtFoot();
}, 60_000);

/** From heel to toe, ray by ray; x of a right foot grows inwards. */
const RAYS: readonly (readonly BoneId[])[] = [
  ['calcaneus', 'navicular', 'cuneiformMedial', 'metatarsal1', 'phalanxProximal1', 'phalanxDistal1'],
  [
    'talus',
    'navicular',
    'cuneiformIntermediate',
    'metatarsal2',
    'phalanxProximal2',
    'phalanxMiddle2',
    'phalanxDistal2',
  ],
  ['talus', 'navicular', 'cuneiformLateral', 'metatarsal3', 'phalanxProximal3', 'phalanxMiddle3', 'phalanxDistal3'],
  ['calcaneus', 'cuboid', 'metatarsal4', 'phalanxProximal4', 'phalanxMiddle4', 'phalanxDistal4'],
  ['calcaneus', 'cuboid', 'metatarsal5', 'phalanxProximal5', 'phalanxMiddle5', 'phalanxDistal5'],
];
const ACROSS: readonly (readonly BoneId[])[] = [
  ['metatarsal5', 'metatarsal4', 'metatarsal3', 'metatarsal2', 'metatarsal1'],
  ['phalanxProximal5', 'phalanxProximal4', 'phalanxProximal3', 'phalanxProximal2', 'phalanxProximal1'],
  ['cuboid', 'cuneiformLateral', 'cuneiformIntermediate', 'cuneiformMedial'],
  ['sesamoidLateral', 'sesamoidMedial'],
  ['cuboid', 'navicular'],
];

const outOfOrder = ({ bones }: Foot): string[] => {
  const middles = new Map<BoneId, Vec3>([...bones].map(([bone, mesh]) => [bone, meshCentroid(mesh)]));
  const at = (bone: BoneId, axis: 0 | 2): number => middles.get(bone)?.[axis] ?? Number.NaN;
  const pairs = (row: readonly BoneId[], axis: 0 | 2): string[] =>
    row.slice(1).flatMap((bone, i) => {
      const before = row[i] as BoneId;
      return at(bone, axis) > at(before, axis) ? [] : [`${bone} before ${before}`];
    });
  return [...RAYS.flatMap((row) => pairs(row, 2)), ...ACROSS.flatMap((row) => pairs(row, 0))];
};

test('a foot with two bones exchanged is seen', () => {
  const bones = new Map(usual.bones);
  const [third, fourth] = [bones.get('metatarsal3'), bones.get('metatarsal4')];
  if (third === undefined || fourth === undefined) throw new Error('no metatarsals');
  bones.set('metatarsal3', fourth);
  bones.set('metatarsal4', third);
  expect(outOfOrder(usual)).toEqual([]);
  expect(outOfOrder({ ...usual, bones })).toContain('metatarsal3 before metatarsal4');
});

test('random feet and all corners, standing', () => {
  for (const form of [...sampleForms(LONG ? 300 : 60), ...cornerForms]) {
    expect(outOfOrder(previewFoot(shape, usual, { ...DEFAULT_FOOT, ...form })), formInWords(form)).toEqual([]);
  }
}, 120_000);

test.each(POSE_NAMES)(
  '%s: some corners',
  (pose) => {
    for (const form of cornerForms.filter((_, i) => i % (LONG ? 16 : 32) === 5)) {
      expect(outOfOrder(builtFoot(form, pose)), formInWords(form)).toEqual([]);
    }
  },
  120_000,
);
