/** Codes and identifiers in content, held against the lists they come from. */
import { readContent } from '../../src/cli/read-content';
import { boneOf, injuryOf } from '../../src/content';
import { fnv1a64 } from '../../src/content/hash';
import type { BoneId } from '../../src/ids';
import { against } from '../tools/against';

const content = readContent();

const ICD = {
  source: 'ICD-10-CM, tabular list and order file, United States, edition January 2021',
  how: 'read',
} as const;
for (const id of ['mt5-tuberosity', 'mt5-metaphyseal', 'mt5-spiral-shaft']) {
  const { icd10cm } = injuryOf(content, id);
  against({ ...ICD, where: 'S92.35-, root' }, `code of ${id}`, () => ({ expected: 'S92.35-', got: icd10cm.root }));
  against({ ...ICD, where: 'S92.35-, title' }, `title of the code of ${id}`, () => ({
    expected: 'Fracture of fifth metatarsal bone',
    got: icd10cm.title,
  }));
}
const stress = injuryOf(content, 'mt5-proximal-shaft').icd10cm;
against(
  { ...ICD, where: 'M84.37-, root: no code for a single metatarsal' },
  'code of a stress fracture of the foot',
  () => ({
    expected: 'M84.37-',
    got: stress.root,
  }),
);
against(
  { ...ICD, where: 'M84.37-, title', how: 'from memory' },
  'title of the code of a stress fracture of the foot',
  () => ({
    expected: 'Stress fracture, ankle, foot and toes',
    got: stress.title,
  }),
);
for (const injury of content.injuries) {
  against({ ...ICD, where: 'edition of the list' }, `edition stated with ${injury.id}`, () => ({
    expected: 'January 2021 (United States)',
    got: injury.icd10cm.edition,
  }));
}

const UBERON = { source: 'Uberon, musculoskeletal.obo, commit 52817ee, April 2026', how: 'read' } as const;
const IDS: readonly (readonly [BoneId, string, string])[] = [
  ['talus', 'UBERON:0002395', 'FMA:9708'],
  ['calcaneus', 'UBERON:0001450', 'FMA:24496'],
  ['navicular', 'UBERON:0001451', 'FMA:24499'],
  ['cuboid', 'UBERON:0001455', 'FMA:24527'],
  ['cuneiformMedial', 'UBERON:0001452', 'FMA:24518'],
  ['cuneiformIntermediate', 'UBERON:0001453', 'FMA:24519'],
  ['cuneiformLateral', 'UBERON:0001454', 'FMA:24520'],
  ['metatarsal1', 'UBERON:0003650', 'FMA:24502'],
  ['metatarsal5', 'UBERON:0003654', 'FMA:24506'],
  ['phalanxProximal1', 'UBERON:0004332', 'FMA:43252'],
  ['phalanxProximal5', 'UBERON:0004336', 'FMA:32621'],
  ['phalanxMiddle2', 'UBERON:0004324', 'FMA:32623'],
  ['phalanxMiddle5', 'UBERON:0004327', 'FMA:230984'],
  ['phalanxDistal1', 'UBERON:0004315', 'FMA:32627'],
  ['phalanxDistal5', 'UBERON:0004319', 'FMA:32631'],
];
for (const [id, uberon, fma] of IDS) {
  const bone = boneOf(content, id);
  against({ ...UBERON, where: `term ${uberon}` }, `identifiers of ${id}`, () => ({
    expected: `${uberon} ${fma}`,
    got: `${bone.uberon} ${bone.fma}`,
  }));
}

const FNV = { source: 'Fowler, Noll, Vo: test values of FNV-1a, 64 bit', how: 'from memory' } as const;
for (const [text, hash] of [
  ['', 'cbf29ce484222325'],
  ['a', 'af63dc4c8601ec8c'],
  ['foobar', '85944171f73967e8'],
] as const) {
  against({ ...FNV, where: `"${text}"` }, `review hash of "${text}"`, () => ({ expected: hash, got: fnv1a64(text) }));
}
