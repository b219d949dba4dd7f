import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  type ArchShape,
  assembleFoot,
  buildBone,
  buildFoot,
  DEFAULT_FOOT,
  eulerCharacteristic,
  type Foot,
  jointsOf,
  type Mesh,
  meshBounds,
  meshVolume,
  openEdges,
  type PoseName,
  prepareAnatomy,
} from '../../../src/anatomy';
import { verticesOf } from '../../../src/anatomy/mesh';
import { readShape } from '../../../src/cli/read-shape';
import { BONE_IDS } from '../../../src/ids';
import { distanceTo, isInside } from './inside';

const shape = readShape();
const STANCES: readonly (readonly [PoseName, ArchShape])[] = [
  ['asScanned', 'neutral'],
  ['standing', 'neutral'],
  ['standing', 'high'],
  ['standing', 'low'],
];
const feet = new Map<string, Foot>();
const footIn = (pose: PoseName, arch: ArchShape): Foot => {
  const key = `${pose} ${arch}`;
  const made = feet.get(key) ?? buildFoot(shape, { ...DEFAULT_FOOT, arch }, pose);
  feet.set(key, made);
  return made;
};

beforeAll(async () => {
  await prepareAnatomy();
  for (const [pose, arch] of STANCES) footIn(pose, arch);
}, 120_000);

const expectSolid = (mesh: Mesh): void => {
  expect(mesh.positions.every(Number.isFinite)).toBe(true);
  expect(openEdges(mesh)).toBe(0);
  expect(eulerCharacteristic(mesh)).toBe(2);
  expect(meshVolume(mesh)).toBeGreaterThan(20);
};

describe('the bones of a foot', () => {
  test('are 28, each closed, outward, in one piece without a tunnel, and few enough facets to be drawn as facets', () => {
    const foot = footIn('standing', 'neutral');
    expect([...foot.bones.keys()]).toEqual([...BONE_IDS]);
    for (const mesh of [...foot.bones.values(), foot.outline]) expectSolid(mesh);
    for (const mesh of foot.bones.values()) {
      expect(mesh.indices.length / 3).toBeGreaterThanOrEqual(100);
      expect(mesh.indices.length / 3).toBeLessThanOrEqual(260);
    }
  });

  test('stay closed, outward and finite for any foot', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 130, max: 200, noNaN: true }),
        fc.constantFrom<ArchShape>('neutral', 'high', 'low'),
        fc.constantFrom(...BONE_IDS),
        (heelToSecondHeadMm, arch, bone) => {
          const mesh = buildBone(shape, { heelToSecondHeadMm, arch }, bone, 'standing');
          expectSolid(mesh);
          const plain = footIn('standing', arch).bones.get(bone);
          const k = heelToSecondHeadMm / DEFAULT_FOOT.heelToSecondHeadMm;
          expect(meshVolume(mesh) / meshVolume(plain as Mesh)).toBeCloseTo(k ** 3, 3);
        },
      ),
      { numRuns: 25 },
    );
  }, 120_000);

  test.each(STANCES)(
    'keep clear of each other and inside the outline: %s %s',
    (pose, arch) => {
      const foot = footIn(pose, arch);
      for (const [bone, mesh] of foot.bones) {
        const box = meshBounds(mesh);
        for (const [other, its] of foot.bones) {
          if (other === bone) continue;
          for (const p of verticesOf(its)) {
            if (p.some((x, k) => x < (box.min[k] ?? 0) || x > (box.max[k] ?? 0))) continue;
            if (isInside(mesh, p)) expect(distanceTo(mesh, p), `${other} in ${bone}`).toBeLessThan(0.3);
          }
        }
        for (const p of verticesOf(mesh)) expect(isInside(foot.outline, p), `${bone} in the outline`).toBe(true);
      }
    },
    120_000,
  );

  test.each(STANCES)(
    'meet at their joints with a gap of a few millimetres: %s %s',
    (pose, arch) => {
      const foot = footIn(pose, arch);
      for (const j of foot.joints.values()) {
        const second = foot.bones.get(j.second) as Mesh;
        const gap = Math.min(...verticesOf(foot.bones.get(j.first) as Mesh).map((p) => distanceTo(second, p)));
        expect(gap, j.id).toBeLessThan(4.5);
      }
    },
    120_000,
  );

  test('a shape without a bone is a programmer error', () => {
    const { talus: _, ...tarsals } = shape.tarsals;
    expect(() => buildBone({ ...shape, tarsals }, DEFAULT_FOOT, 'talus', 'standing')).toThrow(RangeError);
    expect(() => jointsOf(shape, { heelToSecondHeadMm: Number.NaN, arch: 'neutral' }, 'standing')).toThrow(RangeError);
  });
});

describe('standing', () => {
  test.each(['neutral', 'high', 'low'] as const)('%s arch: heel and sesamoids on the ground, toes near it', (arch) => {
    const { bones } = footIn('standing', arch);
    const low = (id: (typeof BONE_IDS)[number]): number => meshBounds(bones.get(id) as Mesh).min[1];
    expect(low('calcaneus')).toBeCloseTo(0, 1);
    expect(Math.min(low('sesamoidMedial'), low('sesamoidLateral'))).toBeCloseTo(0, 0);
    for (const k of [2, 3, 4, 5] as const) {
      expect(low(`metatarsal${k}`)).toBeLessThan(5);
      expect(low(`phalanxDistal${k}`)).toBeGreaterThan(0);
      expect(low(`phalanxDistal${k}`)).toBeLessThan(11);
    }
    expect(meshBounds(bones.get('calcaneus') as Mesh).min[2]).toBeCloseTo(0, 1);
  });

  test('a high arch is higher and a low arch lower at the navicular', () => {
    const navicular = (arch: ArchShape): number =>
      meshBounds(footIn('standing', arch).bones.get('navicular') as Mesh).min[1];
    expect(navicular('high')).toBeGreaterThan(navicular('neutral') + 3);
    expect(navicular('low')).toBeLessThan(navicular('neutral') - 1);
  });

  test('given meshes are taken as they are', () => {
    const foot = footIn('standing', 'neutral');
    const again = assembleFoot(shape, DEFAULT_FOOT, 'standing', foot.bones, foot.outline);
    expect(again.bones).toBe(foot.bones);
    expect([...again.joints]).toEqual([...foot.joints]);
  });
});

describe('the fifth metatarsal', () => {
  const mesh = (id: 'metatarsal5' | 'cuboid'): Mesh => footIn('standing', 'neutral').bones.get(id) as Mesh;

  test('its tuberosity overhangs the cuboid outwards and backwards of the joint', () => {
    const joint = [...footIn('standing', 'neutral').joints.values()].find((j) => j.id === 'cuboid-metatarsal5');
    const bone = verticesOf(mesh('metatarsal5'));
    const tip = bone.reduce((a, b) => (b[2] < a[2] ? b : a));
    expect(tip[2]).toBeLessThan((joint?.centre[2] ?? 0) - 6);
    const outermostCuboid = Math.min(...verticesOf(mesh('cuboid')).map((p) => p[0]));
    const proximalThird = bone.filter((p) => p[2] < tip[2] + 23);
    expect(Math.min(...proximalThird.map((p) => p[0]))).toBeLessThan(outermostCuboid - 2);
  });

  test('is narrowest past its middle', () => {
    const bone = verticesOf(mesh('metatarsal5'));
    const [back, front] = [Math.min(...bone.map((p) => p[2])), Math.max(...bone.map((p) => p[2]))];
    const around = (share: number): number => {
      const near = bone.filter((p) => Math.abs((p[2] - back) / (front - back) - share) < 0.09);
      return Math.max(...near.map((p) => p[1])) - Math.min(...near.map((p) => p[1]));
    };
    expect(around(0.7)).toBeLessThan(around(0.25));
    expect(around(0.7)).toBeLessThan(around(0.92) + 4);
  });
});
