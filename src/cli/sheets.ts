/**
 * `npm run sheets`: every bone from six sides and the foot from eight, as pictures without labels, to be looked at and named.
 * `--bones talus,cuboid` only these; `--group` these in place from eight sides; `--labelled` files named by the bone (else numbered
 * in a shuffled order, with key.json beside); `--pose`, `--level`, `--out FOLDER`, `--seed N`.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { PNG } from 'pngjs';
import { buildBone, DEFAULT_FOOT, type Level, type Mesh, POSE_NAMES, prepareAnatomy } from '../anatomy';
import { SKELETON_IDS, type SkeletonId } from '../ids';
import { seededRandom } from '../units';
import { readShape } from './read-shape';
import { drawView, type Picture, tiled } from './sheets/draw';
import { EIGHT, SIX } from './sheets/views';

const { values: asked } = parseArgs({
  options: {
    bones: { type: 'string' },
    group: { type: 'boolean', default: false },
    labelled: { type: 'boolean', default: false },
    pose: { type: 'string', default: 'standing' },
    level: { type: 'string', default: 'display' },
    out: { type: 'string', default: join(tmpdir(), 'underfoot-sheets') },
    seed: { type: 'string', default: '1' },
  },
});

const oneOf = <T extends string>(text: string, known: readonly T[]): T => {
  const found = known.find((each) => each === text);
  if (found === undefined) throw new RangeError(`${text} is not one of ${known.join(', ')}`);
  return found;
};
const pose = oneOf(asked.pose, POSE_NAMES);
const level = oneOf<Level>(asked.level, ['display', 'fine']);
const bones = asked.bones === undefined ? SKELETON_IDS : asked.bones.split(',').map((b) => oneOf(b, SKELETON_IDS));

const save = (name: string, { width, height, rgb }: Picture): void => {
  const png = new PNG({ width, height, colorType: 2, inputHasAlpha: false });
  png.data = Buffer.from(rgb);
  writeFileSync(join(asked.out, `${name}.png`), PNG.sync.write(png, { colorType: 2, inputHasAlpha: false }));
};

/** The same shuffle for the same seed, so that a sheet can be found again. */
const shuffled = <T>(items: readonly T[], seed: number): T[] => {
  const random = seededRandom(seed);
  return items
    .map((item) => ({ item, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
};

const BONE_PX = 230;
const FOOT_PX = 520;

await prepareAnatomy();
const shape = readShape();
const meshOf = (bone: SkeletonId): Mesh => buildBone(shape, DEFAULT_FOOT, bone, pose, level);
mkdirSync(asked.out, { recursive: true });
if (asked.group || asked.bones === undefined) {
  const meshes = bones.map(meshOf);
  const views = EIGHT.map((view) => drawView(meshes, view, FOOT_PX));
  save(asked.bones === undefined ? 'foot' : 'group', tiled([views.slice(0, 4), views.slice(4)]));
}
if (!asked.group) {
  const order = asked.labelled ? bones : shuffled(bones, Number(asked.seed));
  const nameOf = (bone: SkeletonId, i: number): string =>
    asked.labelled ? bone : `bone-${String(i + 1).padStart(2, '0')}`;
  const rows = order.map((bone) => SIX.map((view) => drawView([meshOf(bone)], view, BONE_PX)));
  order.forEach((bone, i) => {
    save(nameOf(bone, i), tiled([rows[i] ?? []]));
  });
  save('all', tiled(rows));
  if (!asked.labelled)
    writeFileSync(
      join(asked.out, 'key.json'),
      JSON.stringify(Object.fromEntries(order.map((bone, i) => [nameOf(bone, i), bone])), null, 2),
    );
}
process.stdout.write(`${asked.out}\n`);
