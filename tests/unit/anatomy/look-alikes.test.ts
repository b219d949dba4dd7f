/** What looks like a break and is none, on feet of several shapes and both sides. mm. */
import { beforeAll, describe, expect, test } from 'vitest';
import {
  DEFAULT_FOOT,
  eulerCharacteristic,
  type Foot,
  meshVolume,
  mirrorFoot,
  openEdges,
  prepareAnatomy,
} from '../../../src/anatomy';
import { boneAxis } from '../../../src/anatomy/bone-axis';
import type { LookAlikeId } from '../../../src/anatomy/look-alike-schema';
import { type LookAlike, lookAlike } from '../../../src/anatomy/look-alikes';
import { verticesOf } from '../../../src/anatomy/mesh';
import type { FootParameters } from '../../../src/anatomy/types';
import { zonesOf } from '../../../src/anatomy/zones';
import { dot, length, subtract, type Vec3 } from '../../../src/units';
import { builtFoot, shape } from '../../tools/built-foot';
import { closestOn, isInside } from '../../tools/surface';

const IDS = shape.lookAlikes.map((l) => l.id);
const OSSICLES = shape.lookAlikes.filter((l) => l.shape.is === 'ossicle').map((l) => l.id);

const SHAPES: Readonly<Record<string, FootParameters>> = {
  usual: DEFAULT_FOOT,
  'flat and large': { ...DEFAULT_FOOT, arch: -1, hindfootDeg: -8, heelToSecondHeadMm: 190 },
  'high and small': { ...DEFAULT_FOOT, arch: 1, hindfootDeg: 8, adductusDeg: 10, heelToSecondHeadMm: 140 },
};
const footOf = (name: string): Foot => builtFoot(SHAPES[name]);
const ossicle = (foot: Foot, id: LookAlikeId): Extract<LookAlike, { is: 'ossicle' }> => {
  const made = lookAlike(foot, id);
  if (made.is !== 'ossicle') throw new Error(`${id} is a line`);
  return made;
};
const loopsOf = (foot: Foot, id: LookAlikeId): readonly (readonly Vec3[])[] => {
  const made = lookAlike(foot, id);
  if (made.is !== 'line') throw new Error(`${id} is an ossicle`);
  return made.loops;
};

beforeAll(prepareAnatomy);

test('the six that are taught are there, with how a break differs and where the figures come from', () => {
  expect(new Set(IDS).size).toBe(6);
  for (const l of shape.lookAlikes) {
    for (const { percent } of l.howOften) expect(percent[0]).toBeLessThanOrEqual(percent[1]);
    for (const text of [l.differs.patient, l.differs.broadcast]) expect(text, l.id).toMatch(/break|broken|torn/i);
  }
});

describe.each(Object.keys(SHAPES))('%s foot', (name) => {
  test.each(OSSICLES)('%s is a small closed bone that touches no other and lies close to its own', (id) => {
    const foot = footOf(name);
    const { mesh, bone, at } = ossicle(foot, id);
    expect(openEdges(mesh)).toBe(0);
    expect(eulerCharacteristic(mesh)).toBe(2);
    const k = foot.reference.scale;
    expect(meshVolume(mesh) / k ** 3).toBeGreaterThan(80);
    expect(meshVolume(mesh) / k ** 3).toBeLessThan(500);
    for (const [other, surface] of [...foot.bones, ...foot.leg]) {
      const inside = verticesOf(mesh).filter((p) => isInside(surface, p));
      expect(inside.length, `${id} in ${other}`).toBe(0);
      if (other !== bone) continue;
      const near = Math.min(...verticesOf(mesh).map((p) => length(subtract(closestOn(surface, p), p))));
      expect(near / k).toBeGreaterThan(0.3);
      expect(near / k).toBeLessThan(2.5);
    }
    expect(isInside(mesh, at)).toBe(true);
  });

  test('each lies where it is told: os peroneum below and outside, navicular inside, trigonum behind, vesalianum behind the tip', () => {
    const foot = footOf(name);
    const beyond = (id: LookAlikeId, d: Vec3): number => {
      const { mesh, bone } = ossicle(foot, id);
      const middle = (points: readonly Vec3[]): number => points.reduce((s, p) => s + dot(p, d), 0) / points.length;
      const own = foot.bones.get(bone);
      if (!own) throw new Error(bone);
      return middle(verticesOf(mesh)) - middle(verticesOf(own));
    };
    expect(beyond('os-peroneum', [-1, 0, 0])).toBeGreaterThan(5);
    expect(beyond('os-peroneum', [0, -1, 0])).toBeGreaterThan(5);
    expect(beyond('accessory-navicular', [1, 0, 0])).toBeGreaterThan(12);
    expect(beyond('os-trigonum', [0, 0, -1])).toBeGreaterThan(20);
    const axis = boneAxis(foot, 'metatarsal5');
    const stations = verticesOf(ossicle(foot, 'os-vesalianum').mesh).map((p) =>
      dot(subtract(p, axis.origin), axis.axis),
    );
    expect(Math.min(...stations)).toBeLessThan(-2);
  });

  test('the growth line runs along the shaft and stays in zones 1 and 2; a break there would run across', () => {
    const foot = footOf(name);
    const axis = boneAxis(foot, 'metatarsal5');
    for (const loop of loopsOf(foot, 'apophysis-fifth-metatarsal')) {
      const along = loop.map((p) => dot(subtract(p, axis.origin), axis.axis));
      const across = loop.map((p) => dot(subtract(p, axis.origin), axis.lateral));
      const [long, wide] = [Math.max(...along) - Math.min(...along), Math.max(...across) - Math.min(...across)];
      expect(long / wide).toBeGreaterThan(2);
      expect(long).toBeGreaterThan(9 * foot.reference.scale);
      expect(Math.max(...along)).toBeLessThan(zonesOf(foot)[1]?.toMm ?? 0);
    }
  });

  test('the cleft of the sesamoid runs across it, near its middle, two lines a gap apart', () => {
    const foot = footOf(name);
    const sesamoid = foot.bones.get('sesamoidMedial');
    if (!sesamoid) throw new Error('no sesamoid');
    const axis = boneAxis(foot, 'sesamoidMedial');
    const station = (p: Vec3): number => dot(subtract(p, axis.origin), axis.axis) / axis.lengthMm;
    const middles = loopsOf(foot, 'bipartite-sesamoid').map((loop) => {
      const at = loop.map(station);
      expect(Math.max(...at) - Math.min(...at)).toBeLessThan(0.4);
      for (const p of loop) expect(length(subtract(closestOn(sesamoid, p), p))).toBeLessThan(0.01);
      return at.reduce((s, q) => s + q, 0) / at.length;
    });
    expect(middles).toHaveLength(2);
    for (const m of middles) expect(Math.abs(m - 0.5)).toBeLessThan(0.2);
    const apart = Math.abs((middles[0] ?? 0) - (middles[1] ?? 0)) * axis.lengthMm;
    expect(apart / foot.reference.scale).toBeGreaterThan(0.4);
    expect(apart / foot.reference.scale).toBeLessThan(2);
  });
});

test('a left foot has their mirror images, still facing outwards', () => {
  const right = footOf('usual');
  const left = mirrorFoot(right);
  for (const id of IDS) {
    const [a, b] = [lookAlike(right, id), lookAlike(left, id)];
    expect(b.at[0], id).toBeCloseTo(-a.at[0], 3);
    expect(b.at[1], id).toBeCloseTo(a.at[1], 3);
    if (a.is === 'ossicle' && b.is === 'ossicle') expect(meshVolume(b.mesh)).toBeCloseTo(meshVolume(a.mesh), 3);
  }
});

test('one that is not told is an error', () => {
  const foot = { ...footOf('usual'), reference: { ...footOf('usual').reference, lookAlikes: [] } };
  expect(() => lookAlike(foot, 'os-peroneum')).toThrow('no look-alike os-peroneum');
});
