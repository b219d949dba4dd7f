/** What everyone in the trade takes for granted about the skeleton of the foot. */

import { meshCentroid } from '../../src/anatomy';
import { readContent } from '../../src/cli/read-content';
import { jointsAt } from '../../src/content';
import type { BoneId } from '../../src/ids';
import { against } from '../tools/against';
import { modelFoot } from '../tools/model-foot';

const content = readContent();
const foot = modelFoot();
const COMMON = { source: 'anatomy as taught everywhere', how: 'common practice' } as const;

const centre = (bone: BoneId) => {
  const mesh = foot.bones.get(bone);
  if (!mesh) throw new RangeError(`no ${bone}`);
  return meshCentroid(mesh);
};
const groups = (names: readonly string[]) => content.bones.filter((b) => names.includes(b.group));
const ordered = (bones: readonly BoneId[], axis: 0 | 2, sign: 1 | -1) =>
  bones.toSorted((a, b) => sign * (centre(a)[axis] - centre(b)[axis])).join(' ');

for (const [what, names, count] of [
  ['tarsals', ['hindfoot', 'midfoot'], 7],
  ['metatarsals', ['forefoot'], 5],
  ['phalanges', ['toes'], 14],
  ['sesamoids of the big toe', ['sesamoids'], 2],
  ['bones without the sesamoids', ['hindfoot', 'midfoot', 'forefoot', 'toes'], 26],
] as const) {
  against({ ...COMMON, where: 'count of bones' }, `number of ${what}`, () => ({
    expected: count,
    got: groups(names).length,
    tolerance: 0,
    why: 'a count',
  }));
}

const METATARSALS: readonly BoneId[] = ['metatarsal1', 'metatarsal2', 'metatarsal3', 'metatarsal4', 'metatarsal5'];
against(
  { ...COMMON, where: 'rays are numbered from the big toe' },
  'metatarsals from medial to lateral on the model',
  () => ({
    expected: METATARSALS.join(' '),
    got: ordered(METATARSALS, 0, -1),
  }),
);
const CUNEIFORMS: readonly BoneId[] = ['cuneiformMedial', 'cuneiformIntermediate', 'cuneiformLateral'];
against({ ...COMMON, where: 'order of the cuneiforms' }, 'cuneiforms from medial to lateral on the model', () => ({
  expected: CUNEIFORMS.join(' '),
  got: ordered(CUNEIFORMS, 0, -1),
}));
const MEDIAL: readonly BoneId[] = [
  'calcaneus',
  'talus',
  'navicular',
  'cuneiformMedial',
  'metatarsal1',
  'phalanxProximal1',
  'phalanxDistal1',
];
against({ ...COMMON, where: 'medial column, heel to toe' }, 'medial column from heel to toe on the model', () => ({
  expected: MEDIAL.join(' '),
  got: ordered(MEDIAL, 2, 1),
}));
const LATERAL: readonly BoneId[] = [
  'calcaneus',
  'cuboid',
  'metatarsal5',
  'phalanxProximal5',
  'phalanxMiddle5',
  'phalanxDistal5',
];
against({ ...COMMON, where: 'lateral column, heel to toe' }, 'lateral column from heel to toe on the model', () => ({
  expected: LATERAL.join(' '),
  got: ordered(LATERAL, 2, 1),
}));
against({ ...COMMON, where: 'order of the tarsals' }, 'tarsals in the order of content', () => ({
  expected: 'calcaneus talus navicular cuboid cuneiformMedial cuneiformIntermediate cuneiformLateral',
  got: groups(['hindfoot', 'midfoot'])
    .map((b) => b.id)
    .join(' '),
}));

const MEETS: readonly (readonly [BoneId, string])[] = [
  ['navicular', 'cuboid cuneiformIntermediate cuneiformLateral cuneiformMedial talus'],
  ['metatarsal2', 'cuneiformIntermediate cuneiformLateral cuneiformMedial metatarsal3 phalanxProximal2'],
  ['metatarsal5', 'cuboid metatarsal4 phalanxProximal5'],
  ['phalanxProximal1', 'metatarsal1 phalanxDistal1'],
];
for (const [bone, others] of MEETS) {
  against({ ...COMMON, where: 'joints of the foot' }, `what ${bone} meets`, () => {
    const met = jointsAt(content, bone)
      .filter((j) => j.articular)
      .flatMap((j) => j.bones.filter((b) => b !== bone));
    return { expected: others, got: [...new Set(met)].toSorted().join(' ') };
  });
}
