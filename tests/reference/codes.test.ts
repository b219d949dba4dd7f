/** Codes and identifiers in content, held against the lists they come from. */
import { readContent } from '../../src/cli/read-content';
import { boneOf, injuryOf } from '../../src/content';
import { fnv1a64 } from '../../src/content/hash';
import { assembleCode, type CodeFacts } from '../../src/explain/icd10cm';
import type { BoneId } from '../../src/ids';
import { against } from '../tools/against';
import { codesOf2026 } from './icd10cm-2026';

const content = readContent();

const ICD = {
  source: 'ICD-10-CM, list of codes and order file, United States, fiscal year 2026',
  how: 'read',
} as const;
const codeOf = (id: string) => {
  const code = content.codes.find((c) => c.id === id);
  if (code === undefined) throw new RangeError(`no code ${id}`);
  return code;
};
for (const id of ['mt5-tuberosity', 'mt5-metaphyseal', 'mt5-spiral-shaft'])
  against({ ...ICD, where: 'S92.35-, fracture of fifth metatarsal bone' }, `code of ${id}`, () => ({
    expected: 's92-35',
    got: injuryOf(content, id).codes[0] ?? '',
  }));
against(
  { ...ICD, where: 'M84.37-: no code for a single metatarsal' },
  'code of a stress fracture of the fifth metatarsal',
  () => ({ expected: 'm84-37-foot', got: injuryOf(content, 'mt5-proximal-shaft').codes[0] ?? '' }),
);
// Whole codes as the list has them, with their meaning there.
const WHOLE: readonly (readonly [code: string, meaning: string, id: string, facts: Omit<CodeFacts, 'healing'>])[] = [
  ['S92.351A', 'displaced, right, closed, first visit', 's92-35', { side: 'right', displaced: true, visit: 'first' }],
  ['S92.355A', 'nondisplaced, left, closed, first', 's92-35', { side: 'left', displaced: false, visit: 'first' }],
  ['S92.353D', 'displaced, unspecified side, later', 's92-35', { side: null, displaced: true, visit: 'usual' }],
  ['S92.354K', 'nondisplaced, right, nonunion', 's92-35', { side: 'right', displaced: false, visit: 'nonunion' }],
  [
    'S92.351A',
    'displacement not stated: coded displaced',
    's92-35',
    { side: 'right', displaced: null, visit: 'first' },
  ],
  ['S92.812A', 'other fracture, left: 1, 2, 9', 's92-81', { side: 'left', displaced: true, visit: 'first' }],
  ['S92.199A', 'other fracture of unspecified talus', 's92-19', { side: null, displaced: null, visit: 'first' }],
  ['M84.374A', 'stress fracture, right foot', 'm84-37-foot', { side: 'right', displaced: null, visit: 'first' }],
  ['M84.379D', 'stress fracture, unspecified toe(s)', 'm84-37-toe', { side: null, displaced: null, visit: 'usual' }],
  ['S93.321A', 'subluxation, right', 's93-32-subluxation', { side: 'right', displaced: null, visit: 'first' }],
  ['S93.325D', 'dislocation, left, later', 's93-32-dislocation', { side: 'left', displaced: null, visit: 'later' }],
  ['S93.629A', 'sprain, unspecified', 's93-62', { side: null, displaced: null, visit: 'first' }],
  ['M92.71', 'right; no visit character', 'm92-7', { side: 'right', displaced: null, visit: 'first' }],
];
for (const [expected, meaning, id, facts] of WHOLE)
  against({ ...ICD, where: `${expected}: ${meaning}` }, `${id}, ${meaning}`, () => ({
    expected,
    got: assembleCode(codeOf(id), { ...facts, healing: null }).texts.join(),
  }));

for (const code of content.codes.filter(({ visit }) => visit !== 'none')) {
  const text = assembleCode(code, { side: null, displaced: null, visit: 'first', healing: null }).texts.join();
  against({ ...ICD, where: 'the character of the visit is the seventh' }, `${code.id} with its visit`, () => ({
    expected: 'seventh',
    got: text.replace('.', '').length === 7 ? 'seventh' : text,
  }));
}

// Every code that the rules can make: each side, displaced or not, each visit.
const listed = codesOf2026();
for (const code of content.codes)
  against({ ...ICD, where: `${code.root}-, whole codes` }, `${code.id}, every code of its rule`, () => ({
    expected: 'all listed',
    got:
      (['right', 'left', null] as const)
        .flatMap((side) => [true, false, null].map((displaced) => ({ side, displaced })))
        .flatMap((facts) =>
          (['first', 'later', 'usual', 'delayed', 'nonunion', 'malunion'] as const).flatMap(
            (visit) => assembleCode(code, { ...facts, visit, healing: null }).texts,
          ),
        )
        .filter((text) => !listed.has(text))
        .join() || 'all listed',
  }));

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
