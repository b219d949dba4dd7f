/** From a tapped point to bone and part, for every part of every bone; and what is told of that part comes first. */
import { describe, expect, test } from 'vitest';
import { fromBone, partAxis, partsOf, placesOf, stationOf } from '../../../../src/anatomy';
import { meshOf } from '../../../../src/anatomy/bone-axis';
import { verticesOf } from '../../../../src/anatomy/mesh';
import { finderOf, lyingIn, partsToChoose, tappedAt } from '../../../../src/explain/find';
import { BONE_IDS, type BoneId, idOf, type RegionId } from '../../../../src/ids';
import { modelFoot } from '../../../tools/model-foot';
import { content } from './finding';

const foot = modelFoot();
const find = finderOf(content);
const region = (id: string) => idOf<RegionId>(id);
const firstAt = (bone: BoneId, parts: readonly RegionId[]): string[] =>
  find({ words: '', bone, parts, lying: lyingIn(foot, content, bone) }).candidates.map(({ ref }) => ref.id);

const divided = BONE_IDS.filter((bone) => partsOf(foot, bone).length > 0);

describe.each(divided)('%s', (bone) => {
  const axis = partAxis(foot, bone);
  const parts = partsOf(foot, bone);

  test('every point of its surface has a part of its own, first of those that tile it', () => {
    for (const point of verticesOf(meshOf(foot, bone))) {
      const s = Math.min(axis.lengthMm, Math.max(0, stationOf(axis, point)));
      const zones = tappedAt(foot, content, bone, point).filter((id) => parts.some((part) => part.region === id));
      const own = parts.find((part) => part.region === zones[0]);
      expect(own?.fromMm).toBeLessThanOrEqual(s);
      expect(own?.toMm).toBeGreaterThanOrEqual(s);
    }
  });

  test('both parts are given less than 2 mm from their border, and one further away', () => {
    const zonesAt = (s: number) =>
      tappedAt(foot, content, bone, fromBone(axis, s)).filter((id) => parts.some((part) => part.region === id));
    for (const [i, { region: id, toMm }] of parts.slice(0, -1).entries()) {
      const next = parts[i + 1]?.region;
      expect(zonesAt(toMm - 1.9)).toEqual([id, next]);
      expect(zonesAt(toMm + 1.9)).toEqual([next, id]);
      expect(zonesAt(toMm - 2.1)).toEqual([id]);
      expect(zonesAt(toMm + 2.1)).toEqual([next]);
    }
  });

  test('whatever a tap can give stands in the list, and every part of the list has a record to be named by', () => {
    const listed = partsToChoose(content, bone).map(({ id }) => id);
    expect(listed).toEqual(expect.arrayContaining(parts.map((part) => part.region)));
    const points = [...verticesOf(meshOf(foot, bone)), ...placesOf(foot, bone).map(({ centre }) => centre)];
    for (const point of points)
      expect(listed).toEqual(expect.arrayContaining([...tappedAt(foot, content, bone, point)]));
  });
});

test('a bone without parts gives only itself, or the place that is told of', () => {
  for (const bone of BONE_IDS.filter((id) => !divided.includes(id))) {
    const listed = partsToChoose(content, bone).map(({ id }) => id as string);
    for (const point of verticesOf(meshOf(foot, bone)))
      for (const id of tappedAt(foot, content, bone, point)) expect(listed).toContain(id);
  }
  expect(tappedAt(foot, content, 'cuneiformLateral', [0, 0, 0])).toEqual([]);
});

test('a place that an injury is told of is given before the part it lies in', () => {
  const spot = placesOf(foot, 'talus').find(({ id }) => id === 'talus-lateral-process');
  if (spot === undefined) throw new Error('no lateral process');
  expect(tappedAt(foot, content, 'talus', spot.centre)[0]).toBe('talus-lateral-process');
});

test('a stretch is given with the parts under it, and lies in each of which it takes half or more', () => {
  const body = placesOf(foot, 'navicular').find(({ id }) => id === 'navicular-body');
  if (body?.spanMm === undefined) throw new Error('no body of the navicular');
  const axis = partAxis(foot, 'navicular');
  const [from, to] = body.spanMm;
  expect(tappedAt(foot, content, 'navicular', fromBone(axis, (from + to) / 2))).toContain('navicular-body');
  expect(tappedAt(foot, content, 'navicular', fromBone(axis, from - 0.1))).not.toContain('navicular-body');
  const under = lyingIn(foot, content, 'navicular').filter(({ place }) => place === 'navicular-body');
  expect(under.map(({ part }) => part)).toEqual(['navicular-middle-third', 'navicular-outer-third']);
});

test('a break of the whole bone is met by a tap on its body, and the tired crack still goes first in the middle', () => {
  const middle = [region('navicular-body'), region('navicular-middle-third')];
  expect(firstAt('navicular', middle).slice(0, 2)).toEqual(['navicular-stress', 'navicular-body']);
});

describe('what is told of the part comes first', () => {
  test.each<[BoneId, string, readonly string[]]>([
    ['metatarsal5', 'mt5-zone-1', ['mt5-tuberosity']],
    ['metatarsal5', 'mt5-zone-2', ['mt5-metaphyseal']],
    ['metatarsal5', 'mt5-zone-3', ['mt5-proximal-shaft']],
    ['metatarsal5', 'mt5-shaft', ['mt5-spiral-shaft']],
    ['metatarsal2', 'mt2-base', ['lisfranc', 'mt2-base-stress', 'lisfranc-fleck']],
    ['metatarsal2', 'mt2-shaft', ['metatarsal-shaft-stress']],
    ['metatarsal3', 'mt3-shaft', ['metatarsal-shaft-stress']],
    ['metatarsal4', 'mt4-shaft', ['metatarsal-shaft-stress']],
    ['metatarsal4', 'mt4-base', ['lisfranc']],
    ['metatarsal2', 'mt2-head', ['lesser-metatarsal-neck', 'second-head-osteochondrosis']],
    ['navicular', 'navicular-middle-third', ['navicular-stress']],
    ['navicular', 'navicular-inner-third', ['accessory-navicular']],
    ['navicular', 'navicular-outer-third', ['navicular-body']],
    ['calcaneus', 'calcaneus-middle', ['calcaneus-intra-articular']],
    ['calcaneus', 'calcaneus-tuberosity', ['calcaneus-stress']],
    ['calcaneus', 'calcaneus-front', ['calcaneus-anterior-process']],
    ['talus', 'talus-neck', ['talar-neck']],
    ['talus', 'talus-body', ['talar-body']],
    ['talus', 'talus-posterior-process', ['talar-posterior-process', 'os-trigonum']],
  ])('%s, %s', (bone, part, first) => {
    expect(first).toContain(firstAt(bone, [region(part)])[0]);
  });

  test('at the back of the heel bone, its pulled-off piece and the growth cap go before its front', () => {
    const found = firstAt('calcaneus', [region('calcaneus-tuberosity')]);
    for (const id of ['calcaneus-avulsion', 'calcaneus-apophysis'])
      expect(found.indexOf(id)).toBeLessThan(found.indexOf('calcaneus-anterior-process'));
  });

  test('near a border what is told of either part goes before the rest', () => {
    expect(
      firstAt('metatarsal5', [region('mt5-zone-2'), region('mt5-zone-3')])
        .slice(0, 2)
        .sort(),
    ).toEqual(['mt5-metaphyseal', 'mt5-proximal-shaft']);
  });

  test('the reason names the part that was tapped', () => {
    const [first] = find({
      words: '',
      bone: 'calcaneus',
      parts: [region('calcaneus-front')],
      lying: lyingIn(foot, content, 'calcaneus'),
    }).candidates;
    expect(first?.matched).toEqual([{ by: 'tap', bone: 'calcaneus', region: 'calcaneus-front' }]);
  });
});
