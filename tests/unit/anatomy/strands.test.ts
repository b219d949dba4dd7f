/** Ways of soft tissue on feet of several shapes and both sides. mm. */
import { beforeAll, describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, type Foot, mirrorFoot, prepareAnatomy, regionsOf } from '../../../src/anatomy';
import { type SurfaceIndex, surfaceIndex } from '../../../src/anatomy/fit/surface-index';
import { strandOn } from '../../../src/anatomy/strands';
import type { FootParameters, Region } from '../../../src/anatomy/types';
import { readContent } from '../../../src/cli/read-content';
import { length, subtract, type Vec3 } from '../../../src/units';
import { builtFoot, shape } from '../../tools/built-foot';

const content = readContent();
const IDS = shape.strands.map(({ id }) => id);

const SHAPES: Readonly<Record<string, FootParameters>> = {
  usual: DEFAULT_FOOT,
  'flat and large': { ...DEFAULT_FOOT, arch: -1, hindfootDeg: -8, heelToSecondHeadMm: 190 },
  'high and small': { ...DEFAULT_FOOT, arch: 1, hindfootDeg: 8, adductusDeg: 10, heelToSecondHeadMm: 140 },
};
const footOf = (name: string): Foot => builtFoot(SHAPES[name]);

beforeAll(async () => {
  await prepareAnatomy();
  for (const name of Object.keys(SHAPES)) footOf(name);
}, 120_000);

test('every strand that is named has a way, and every way a name', () => {
  expect(IDS.toSorted()).toEqual(content.strands.map(({ id }) => id as string).toSorted());
});

describe.each(Object.keys(SHAPES))('%s foot', (name) => {
  let regions: readonly Region[];
  let surfaces: readonly { readonly bone: string; readonly surface: SurfaceIndex }[];
  beforeAll(() => {
    const foot = footOf(name);
    regions = regionsOf(foot);
    surfaces = [...foot.bones].map(([bone, mesh]) => ({ bone, surface: surfaceIndex(mesh) }));
  });

  test.each(IDS)('%s runs from footprint to footprint, in small steps', (id) => {
    const foot = footOf(name);
    const way = strandOn(foot, id);
    const record = content.strands.find((s) => (s.id as string) === id);
    const centreOf = (region: string): Vec3 => {
      const found = regions.find((r) => r.id === region);
      if (found === undefined) throw new RangeError(`no region ${region}`);
      return found.centre;
    };
    const [first, last] = [way[0], way.at(-1)] as [Vec3, Vec3];
    if (record?.from != null) expect(length(subtract(first, centreOf(record.from)))).toBeLessThan(0.01);
    if (record?.to != null) expect(length(subtract(last, centreOf(record.to)))).toBeLessThan(0.01);
    for (const [i, p] of way.slice(1).entries()) expect(length(subtract(p, way[i] ?? p))).toBeLessThan(12);
  });

  test.each(IDS)('%s lies outside the bones, but for its ends', (id) => {
    const foot = footOf(name);
    const way = strandOn(foot, id);
    const [first, last] = [way[0], way.at(-1)] as [Vec3, Vec3];
    for (const p of way) {
      if (length(subtract(p, first)) < 4 || length(subtract(p, last)) < 4) continue;
      for (const { bone, surface } of surfaces) {
        const hit = surface.nearest(p[0], p[1], p[2], 30);
        if (hit?.inside) expect(hit.distanceMm, `in ${bone}`).toBeLessThan(0.6);
      }
    }
  });
});

let leftFoot: Foot;
beforeAll(() => {
  leftFoot = mirrorFoot(footOf('usual'));
});
test.each(IDS)('%s on a left foot is the mirror image', (id) => {
  const [right, left] = [strandOn(footOf('usual'), id), strandOn(leftFoot, id)];
  expect(left).toHaveLength(right.length);
  left.forEach((p, i) => {
    const q = right[i] as Vec3;
    expect(length(subtract(p, [-q[0], q[1], q[2]]))).toBeLessThan(0.05);
  });
});

test('the Lisfranc ligament is about as long as it was measured', () => {
  // 9.33 +/- 1.34 mm between its ends (20 feet, Zhu 2017, abstract).
  const way = strandOn(footOf('usual'), 'lisfranc-ligament');
  const [first, last] = [way[0], way.at(-1)] as [Vec3, Vec3];
  const mm = length(subtract(last, first));
  expect(mm).toBeGreaterThan(9.33 - 1.34);
  expect(mm).toBeLessThan(9.33 + 1.34);
});

test('the sural nerve passes within a few millimetres of the base of the fifth metatarsal', () => {
  // 2 to 3 mm from the head of a screw at the base (10 cadavers, Donley 1999, abstract).
  const foot = footOf('usual');
  const mesh = foot.bones.get('metatarsal5');
  if (mesh === undefined) throw new RangeError('no fifth metatarsal');
  const surface = surfaceIndex(mesh);
  const nearest = Math.min(
    ...strandOn(foot, 'sural-nerve').map((p) => surface.nearest(p[0], p[1], p[2], 60)?.distanceMm ?? 60),
  );
  expect(nearest).toBeGreaterThan(0.9);
  expect(nearest).toBeLessThan(4);
});
