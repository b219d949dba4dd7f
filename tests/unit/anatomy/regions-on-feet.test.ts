/** The named parts of the surfaces on built feet: every shape, both sides, another pose, both levels of mesh. */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, type Foot, mirrorFoot, prepareAnatomy, regionsOf } from '../../../src/anatomy';
import { placeOn } from '../../../src/anatomy/places';
import { facetId } from '../../../src/anatomy/region-names';
import type { Place } from '../../../src/anatomy/region-schema';
import type { FootParameters, Level, Mesh, PoseName, Region } from '../../../src/anatomy/types';
import { readContent } from '../../../src/cli/read-content';
import { length, subtract, type Vec3 } from '../../../src/units';
import { builtFoot, shape } from '../../tools/built-foot';
import { LONG, orAll } from '../../tools/long';
import { closestOn, spread } from '../../tools/surface';
import { anyForm } from './any-form';

const content = readContent();
const rules = new Map(shape.regions.patches.map((r) => [r.id, r]));

const SHAPES: Readonly<Record<string, FootParameters>> = {
  usual: DEFAULT_FOOT,
  flat: { ...DEFAULT_FOOT, arch: -1, hindfootDeg: -8 },
  high: { ...DEFAULT_FOOT, arch: 1, hindfootDeg: 8, heelToSecondHeadMm: 190 },
  turnedIn: { ...DEFAULT_FOOT, adductusDeg: 25, halluxDeg: 25, firstRayMm: 4, heelToSecondHeadMm: 140 },
};

const feet = new Map<string, { readonly foot: Foot; readonly regions: readonly Region[] }>();
const footOf = (name: string, pose: PoseName = 'standing', level: Level = 'display') => {
  const key = `${name} ${pose} ${level}`;
  const kept = feet.get(key);
  if (kept) return kept;
  const foot = builtFoot(SHAPES[name], pose, level);
  const made = { foot, regions: regionsOf(foot) };
  feet.set(key, made);
  return made;
};

const spreads = new WeakMap<Mesh, ReturnType<typeof spread>>();
/** The bone's surface in small pieces, kept: many regions ask for the same bone. */
const piecesOf = (mesh: Mesh): ReturnType<typeof spread> => {
  const kept = spreads.get(mesh) ?? spread(mesh, 1.2);
  spreads.set(mesh, kept);
  return kept;
};

/** Area of the bone's surface that lies in each of its regions, by small pieces. */
const areasOf = (name: string, level: Level): Map<string, number> => {
  const { foot, regions } = footOf(name, 'standing', level);
  const areas = new Map<string, number>();
  for (const [bone, mesh] of foot.bones) {
    const own = regions.filter((r) => r.bone === bone);
    for (const { at, area } of piecesOf(mesh)) {
      for (const r of own) if (r.contains(at)) areas.set(r.id, (areas.get(r.id) ?? 0) + area);
    }
  }
  return areas;
};

beforeAll(prepareAnatomy);

test('every attachment named in content has its region on the foot, and every rule its record', () => {
  const here = new Map(footOf('usual').regions.map((r) => [r.id as string, r]));
  for (const a of content.attachments) expect(here.get(a.region), a.id).toMatchObject({ bone: a.bone });
  const recorded = new Set<string>(content.regions.map((r) => r.id));
  const { stretches, watersheds } = shape.regions;
  for (const id of [...rules.keys(), ...[...stretches, ...watersheds].map((rule) => rule.id)])
    expect(recorded, id).toContain(id);
});

/** In the short run the usual foot and one that is large and turned out; a random one is looked at below. */
const LOOKED_AT = orAll(Object.keys(SHAPES), (name) => name === 'usual' || name === 'high');

describe.each(LOOKED_AT)('%s foot', (name) => {
  test('footprints, grooves and foramina lie on their bone and contain their middle; half of a footprint at least is off the facets', () => {
    const { foot, regions } = footOf(name);
    for (const r of regions) {
      if (!rules.has(r.id)) continue;
      const mesh = foot.bones.get(r.bone);
      if (!mesh) throw new Error(`no ${r.bone}`);
      expect(length(subtract(closestOn(mesh, r.centre), r.centre)), r.id).toBeLessThan(1e-3);
      expect(r.contains(r.centre), r.id).toBe(true);
      const facets = regions.filter((f) => f.bone === r.bone && f.kind === 'facet');
      let [own, shared] = [0, 0];
      for (const { at, area } of piecesOf(mesh)) {
        if (!r.contains(at)) continue;
        own += area;
        if (facets.some((f) => f.contains(at))) shared += area;
      }
      // The published areas of the Lisfranc ligament are larger than the room beside the facets.
      expect(shared / own, r.id).toBeLessThan(r.id.endsWith('lisfranc') ? 0.7 : 0.55);
    }
  });

  test('a patch has the area of its ellipse, within a third: it does not wrap round an edge nor run off the bone', () => {
    const areas = areasOf(name, 'display');
    const k = (SHAPES[name]?.heelToSecondHeadMm ?? 165) / 165;
    for (const [id, rule] of rules) {
      if (rule.kind === 'foramen') continue;
      const told = ((Math.PI * rule.size[0] * rule.size[1]) / 4) * k * k;
      expect((areas.get(id) ?? 0) / told, id).toBeGreaterThan(0.67);
      expect((areas.get(id) ?? 0) / told, id).toBeLessThan(1.5);
    }
  });

  test('the body of the navicular holds the surfaces for talus and cuneiforms but for their rims, and not the end of tibialis posterior', () => {
    for (const side of ['right', 'left'] as const) {
      const { foot: right } = footOf(name);
      const foot = side === 'right' ? right : mirrorFoot(right);
      const regions = regionsOf(foot);
      const named = (id: string): Region => {
        const region = regions.find((r) => r.id === id);
        if (region === undefined) throw new Error(id);
        return region;
      };
      const body = named('navicular-body');
      const mesh = foot.bones.get('navicular');
      if (!mesh) throw new Error('no navicular');
      const pieces = spread(mesh, 1.2);
      const shareOf = (other: Region): number => {
        const own = pieces.filter(({ at }) => other.contains(at));
        const total = own.reduce((sum, { area }) => sum + area, 0);
        return own.filter(({ at }) => body.contains(at)).reduce((sum, { area }) => sum + area, 0) / total;
      };
      expect(shareOf(named('navicular-facet-talus'))).toBeGreaterThan(0.97);
      for (const other of ['cuneiformIntermediate', 'cuneiformLateral'])
        expect(shareOf(named(`navicular-facet-${other}`))).toBeGreaterThan(0.97);
      for (const third of ['navicular-middle-third', 'navicular-outer-third'])
        expect(shareOf(named(third))).toBeGreaterThan(0.97);
      expect(shareOf(named('navicular-inner-third'))).toBeLessThan(0.5);
      expect(body.contains(named('navicular-footprint-tibialis-posterior').centre)).toBe(false);
    }
  });

  test('the facets of a joint face each other over the gap', () => {
    const { foot, regions } = footOf(name);
    const apart: string[] = [];
    for (const joint of foot.joints.values()) {
      const first = regions.find((r) => r.id === facetId(joint.id, joint.first, joint.second));
      const second = regions.find((r) => r.id === facetId(joint.id, joint.second, joint.first));
      const [a, b] = [foot.bones.get(joint.first), foot.bones.get(joint.second)];
      if (!a || !b || !first || !second) throw new Error(`no facets of ${joint.id}`);
      let [all, facing] = [0, 0];
      for (const { at, area } of spread(a, 3)) {
        if (!first.contains(at)) continue;
        const across = closestOn(b, at);
        all += area;
        // Half a millimetre of the rim may look past the other bone's facet.
        if (length(subtract(across, at)) < 4.5 && (second.contains(across) || first.contains(across))) facing += area;
      }
      if (!(facing > 0.6 * all)) apart.push(`${joint.id}: ${facing.toFixed(0)} of ${all.toFixed(0)} mm2`);
    }
    expect(apart).toEqual([]);
  });
});

test('the left foot has the mirrored regions', () => {
  const { foot, regions } = footOf('high');
  const left = regionsOf(mirrorFoot(foot));
  expect(left.map((r) => r.id)).toEqual(regions.map((r) => r.id));
  regions.forEach((r, i) => {
    const other = left[i];
    if (!other) throw new Error(r.id);
    for (const k of [0, 1, 2] as const) {
      expect(other.centre[k], r.id).toBeCloseTo(k === 0 ? -r.centre[0] : r.centre[k], 3);
    }
    const mesh = foot.bones.get(r.bone);
    if (!mesh) throw new Error(r.bone);
    const differ = spread(mesh, 3).filter(({ at }) => r.contains(at) !== other.contains([-at[0], at[1], at[2]]));
    expect(differ.length, r.id).toBeLessThanOrEqual(2);
  });
});

test('more facets do not change what share of a bone a region covers', () => {
  const [few, many] = [areasOf('usual', 'display'), areasOf('usual', 'fine')];
  const changed = [...many].filter(([id, area]) => area >= 15 && Math.abs((few.get(id) ?? 0) / area - 1) > 0.25);
  expect(changed.map(([id, area]) => `${id}: ${area.toFixed(0)} and ${few.get(id)?.toFixed(0)} mm2`)).toEqual([]);
});

/** How far a place may move on its bone between poses, mm: its joint lies midway between two bones that turn on each other. */
const drift = (from: Place['from']): number => ('zone1' in from ? 2 : 'joint' in from ? 2.5 : 0.05);

test('a place stays on its bone when the foot is posed', () => {
  const [standing, scanned] = [footOf('usual'), footOf('usual', 'asScanned')];
  for (const r of standing.regions) {
    const rule = rules.get(r.id);
    if (!rule) continue;
    const there = scanned.regions.find((q) => q.id === r.id);
    const [from, to] = [standing.foot.bones.get(r.bone), scanned.foot.bones.get(r.bone)];
    if (!there || !from || !to) throw new Error(r.id);
    // Same triangles in both poses: distances to their corners tell whether the place moved on the bone.
    const far = (mesh: Mesh, v: number, p: Vec3): number =>
      Math.hypot(...[0, 1, 2].map((k) => (mesh.positions[3 * v + k] ?? 0) - (p[k] ?? 0)));
    for (let v = 0; v < from.positions.length / 3; v += 25) {
      const moved = Math.abs(far(to, v, there.centre) - far(from, v, r.centre));
      expect(moved, r.id).toBeLessThan(drift(rule.from));
    }
  }
});

test('every place is found on feet of any shape', () => {
  fc.assert(
    fc.property(anyForm, (form) => {
      const foot = builtFoot(form);
      for (const rule of shape.regions.patches) {
        const mesh = foot.bones.get(rule.bone);
        if (!mesh) throw new Error(rule.bone);
        const { at } = placeOn(foot, rule.bone, rule);
        expect(length(subtract(closestOn(mesh, at), at)), rule.id).toBeLessThan(1e-3);
      }
      expect(regionsOf(foot).length).toBeGreaterThan(100);
    }),
    { numRuns: LONG ? 4 : 1, seed: 7 },
  );
}, 60_000);
