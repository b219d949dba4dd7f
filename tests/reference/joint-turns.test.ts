/**
 * From the as-scanned to the standing foot no joint turns further up or down than people's joints were seen to move that way. The
 * feet that were measured lay unloaded, with a higher arch and with toes bent as rigor or packing left them.
 */
import { expect, test } from 'vitest';
import { DEFAULT_FOOT } from '../../src/anatomy';
import { jointTurns } from '../../src/anatomy/angles/joint-turns';
import { readShape } from '../../src/cli/read-shape';
import { against } from '../tools/against';

const turns = jointTurns(readShape(), DEFAULT_FOOT);
/** No figure was found for these. */
const UNKNOWN: readonly string[] = [
  'talus-calcaneus-posterior',
  'talus-calcaneus-middleAnterior',
  'navicular-cuboid',
  'cuneiformLateral-cuboid',
  'cuneiformMedial-metatarsal2',
  'cuneiformLateral-metatarsal2',
  'metatarsal2-metatarsal3',
  'metatarsal3-metatarsal4',
  'metatarsal4-metatarsal5',
  'tibia-talus-medial',
  // They follow the first toe, to which the plantar plate holds them.
  'metatarsal1-sesamoidMedial',
  'metatarsal1-sesamoidLateral',
];

for (const { joint, degrees, published } of turns) {
  if (published === null) continue;
  const { deg, source, how } = published;
  against(
    { source, where: 'widest motion that way, content/anatomy/motions.yaml', how },
    `${joint}: turn from as scanned to standing, deg`,
    () => ({
      expected: 0,
      got: degrees,
      tolerance: deg,
      why: 'as far as people’s joints were seen to move',
    }),
  );
}

test('joints without a published figure are those named', () => {
  const unnamed = turns.filter(({ joint, published }) => published === null && !UNKNOWN.includes(joint));
  expect(unnamed.map(({ joint }) => joint)).toEqual([]);
});
test('the joints of every ray are told', () => {
  expect(turns.length).toBeGreaterThan(25);
});
