/**
 * `npm run sheets`: every bone from six sides and the foot from eight, as pictures without labels, to be looked at and named.
 * Under each view a bar of 10 mm in parts of one (5 mm for what is less than 25 mm wide; 50 mm in parts of ten for what is wider than
 * 120 mm): size tells many a bone of the toes from its neighbour.
 * `--bones talus,cuboid` only these; `--group talus,navicular` these together in place from eight sides; `--labelled` files named by
 * the bone (else numbered in a shuffled order, with key.json beside); `--pose`, `--level`, `--size PX` of one view, `--out FOLDER`,
 * `--seed N`.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { buildBone, DEFAULT_FOOT, type Level, type Mesh, POSE_NAMES, prepareAnatomy } from '../anatomy';
import { SKELETON_IDS, type SkeletonId } from '../ids';
import { seededRandom } from '../units';
import { readShape } from './read-shape';
import { drawView, PAPER } from './sheets/draw';
import { type Picture, pngOf, tiled } from './sheets/picture';
import { EIGHT, SIX } from './sheets/views';

const { values: asked } = parseArgs({
  options: {
    bones: { type: 'string' },
    group: { type: 'string' },
    labelled: { type: 'boolean', default: false },
    pose: { type: 'string', default: 'standing' },
    level: { type: 'string', default: 'display' },
    size: { type: 'string' },
    out: { type: 'string', default: join(tmpdir(), 'underfoot-sheets') },
    seed: { type: 'string', default: '1' },
  },
});

const oneOf = <T extends string>(text: string, known: readonly T[]): T => {
  const found = known.find((each) => each === text);
  if (found === undefined) throw new RangeError(`${text} is not one of ${known.join(', ')}`);
  return found;
};
const bonesIn = (list: string): SkeletonId[] => list.split(',').map((bone) => oneOf(bone, SKELETON_IDS));
const wholeNumber = (text: string, least: number, most: number): number => {
  const value = Number(text);
  if (!Number.isInteger(value) || value < least || value > most)
    throw new RangeError(`${text} is not a whole number from ${least} to ${most}`);
  return value;
};
const pose = oneOf(asked.pose, POSE_NAMES);
const level = oneOf<Level>(asked.level, ['display', 'fine']);
const seed = wholeNumber(asked.seed, 0, 2 ** 31);
const bonePx = wholeNumber(asked.size ?? '230', 40, 2000);
const footPx = wholeNumber(asked.size ?? '520', 40, 2000);

const save = (name: string, picture: Picture): void => writeFileSync(join(asked.out, `${name}.png`), pngOf(picture));

/** The same shuffle for the same seed, so that a sheet can be found again. */
const shuffled = <T>(items: readonly T[]): T[] => {
  const random = seededRandom(seed);
  return items
    .map((item) => ({ item, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
};

await prepareAnatomy();
const shape = readShape();
const meshOf = (bone: SkeletonId): Mesh => buildBone(shape, DEFAULT_FOOT, bone, pose, level);

const saveTogether = (name: string, meshes: readonly Mesh[]): void => {
  const views = EIGHT.map((view) => drawView(meshes, view, footPx));
  save(name, tiled([views.slice(0, 4), views.slice(4)], PAPER));
};

const saveEach = (bones: readonly SkeletonId[]): void => {
  const order = asked.labelled ? bones : shuffled(bones);
  const sheets = order.map((bone, i) => {
    const mesh = meshOf(bone);
    return {
      bone,
      name: asked.labelled ? bone : `bone-${String(i + 1).padStart(2, '0')}`,
      views: SIX.map((view) => drawView([mesh], view, bonePx)),
    };
  });
  for (const { name, views } of sheets) save(name, tiled([views], PAPER));
  if (sheets.length > 1)
    save(
      'all',
      tiled(
        sheets.map(({ views }) => views),
        PAPER,
      ),
    );
  if (asked.labelled) return;
  const key = Object.fromEntries(sheets.map(({ name, bone }) => [name, bone]));
  writeFileSync(join(asked.out, 'key.json'), `${JSON.stringify(key, null, 2)}\n`);
};

mkdirSync(asked.out, { recursive: true });
if (asked.group !== undefined) saveTogether('group', bonesIn(asked.group).map(meshOf));
else if (asked.bones === undefined) saveTogether('foot', SKELETON_IDS.map(meshOf));
if (asked.bones !== undefined || asked.group === undefined)
  saveEach(asked.bones === undefined ? SKELETON_IDS : bonesIn(asked.bones));
process.stdout.write(`${asked.out}\n`);
