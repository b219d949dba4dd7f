/** The measure of fit on surfaces with known answers, and against slow ways of asking the same. mm. */
import { beforeAll, describe, expect, test } from 'vitest';
import {
  buildBone,
  DEFAULT_FOOT,
  type Fit,
  type Foot,
  fitOf,
  type JointFit,
  type Mesh,
  meshBounds,
  mirrorFoot,
  prepareAnatomy,
} from '../../../src/anatomy';
import { brokenRules } from '../../../src/anatomy/fit/rules';
import { surfaceIndex } from '../../../src/anatomy/fit/surface-index';
import type { BoneId } from '../../../src/ids';
import { length, seededRandom, subtract, type Vec3 } from '../../../src/units';
import { shape } from '../../tools/built-foot';
import { closestOn, isInside } from '../../tools/surface';
import { UNMOVED } from '../../tools/tubes';

beforeAll(prepareAnatomy);

/** Six faces given by eight corners: bit 0 of the place is x, bit 1 y, bit 2 z. */
const BOX = [
  0, 2, 3, 0, 3, 1, 4, 5, 7, 4, 7, 6, 0, 1, 5, 0, 5, 4, 2, 6, 7, 2, 7, 3, 0, 4, 6, 0, 6, 2, 1, 3, 7, 1, 7, 5,
];
const box = (low: Vec3, high: Vec3, move: (p: Vec3) => Vec3 = (p) => p): Mesh => ({
  positions: Float32Array.from(
    [0, 1, 2, 3, 4, 5, 6, 7].flatMap((i) =>
      move([i & 1 ? high[0] : low[0], i & 2 ? high[1] : low[1], i & 4 ? high[2] : low[2]]),
    ),
  ),
  indices: Uint32Array.from(BOX),
});

/** Each triangle cut in four, `times` over. */
const finer = (mesh: Mesh, times: number, where: (t: number) => boolean): Mesh => {
  if (times === 0) return mesh;
  const positions = [...mesh.positions];
  const indices: number[] = [];
  const at = (i: number, k: number): number => positions[3 * i + k] ?? 0;
  const middle = (i: number, j: number): number => {
    positions.push(...[0, 1, 2].map((k) => (at(i, k) + at(j, k)) / 2));
    return positions.length / 3 - 1;
  };
  for (let t = 0; t < mesh.indices.length / 3; t++) {
    const [a = 0, b = 0, c = 0] = mesh.indices.subarray(3 * t, 3 * t + 3);
    if (!where(t)) {
      indices.push(a, b, c);
      continue;
    }
    const [d, e, f] = [middle(a, b), middle(b, c), middle(c, a)];
    indices.push(a, d, f, d, b, e, f, e, c, d, e, f);
  }
  return finer({ positions: Float32Array.from(positions), indices: Uint32Array.from(indices) }, times - 1, () => true);
};

const footOf = (bones: Partial<Record<BoneId, Mesh>>, heelToSecondHeadMm = 165): Foot => ({
  parameters: { ...DEFAULT_FOOT, heelToSecondHeadMm },
  pose: 'asScanned',
  side: 'right',
  level: 'display',
  bones: new Map(Object.entries(bones) as [BoneId, Mesh][]),
  leg: new Map(),
  joints: new Map(),
  outline: { positions: new Float32Array(), indices: new Uint32Array() },
  reference: UNMOVED,
});
const pair = (cuboid: Mesh, metatarsal5: Mesh, h?: number): Fit => fitOf(shape, footOf({ cuboid, metatarsal5 }, h));
const only = (fit: Fit): JointFit => {
  expect(fit.joints.map(({ joint }) => joint)).toEqual(['cuboid-metatarsal5']);
  return fit.joints[0] as JointFit;
};

describe('gaps and areas', () => {
  const below = box([0, 0, 0], [20, 10, 10]);
  const tabled = shape.joints.find(({ id }) => id === 'cuboid-metatarsal5')?.area ?? Number.NaN;

  test('two equal faces 2 mm apart face each other all over, and nothing else of them does', () => {
    const row = only(pair(below, box([0, 0, 12], [20, 10, 22])));
    for (const gap of [row.meanMm, row.p5Mm, row.p95Mm]) expect(gap).toBeCloseTo(2, 6);
    expect(row.areaMm2).toBeCloseTo(200, 4);
    expect(row.areaShare).toBeCloseTo(200 / tabled, 4);
  });

  test('the tabled area grows with the square of H', () => {
    const at = (h: number): number => only(pair(below, box([0, 0, 12], [20, 10, 22]), h)).areaShare ?? Number.NaN;
    expect(at(330)).toBeCloseTo(at(165) / 4, 6);
  });

  test.each([
    // 1.6 mm beyond the least gap; nearer than that the angle of 56.6 deg (cosine 0.55) to the rim is the limit.
    [2, Math.sqrt(3.6 ** 2 - 2 ** 2)],
    [1.5, 1.5 * Math.tan(Math.acos(0.55))],
  ])('a face %f mm from a smaller one looks at its rim as well, as far as %f mm beside it', (gap, beside) => {
    const wide = 200 + 2 * (20 + 10) * beside + Math.PI * beside ** 2;
    const { areaMm2 } = only(pair(box([-10, -10, 0], [30, 20, 10]), box([0, 0, 10 + gap], [20, 10, 22])));
    expect(areaMm2 / ((wide + 200) / 2)).toBeGreaterThan(0.97);
    expect(areaMm2 / ((wide + 200) / 2)).toBeLessThan(1.03);
  });

  test('faces 4 mm apart are looked at to 1.6 mm beyond the least gap, and those 7 mm apart not at all', () => {
    const at = (gap: number): JointFit => only(pair(below, box([0, 0, 10 + gap], [20, 10, 20 + gap])));
    expect(at(4).areaMm2).toBeCloseTo(200, 4);
    expect(pair(below, box([0, 0, 17], [20, 10, 27])).joints).toEqual([]);
    // Their boxes reach each other, the surfaces do not.
    const beside = box([0, 0, 14], [20, 10, 20], ([x, y, z]) => [x + 24, y + 12, z]);
    expect(only(pair(below, beside)).p5Mm).toBeNaN();
  });

  test('a wedge from 1 to 3 mm: percentiles by area, however the triangles lie', () => {
    const wedge = box([0, 0, 11], [20, 10, 22], ([x, y, z]) => [x, y, z === 11 ? 11 + x / 10 : z]);
    const slope = Math.cos(Math.atan(0.1));
    for (const mesh of [below, finer(below, 5, (t) => t === 2)]) {
      const row = only(pair(mesh, wedge));
      expect(Math.abs(row.p5Mm - 1.1 * slope)).toBeLessThan(0.06);
      expect(Math.abs(row.p95Mm - 2.9 * slope)).toBeLessThan(0.06);
      expect(Math.abs(row.meanMm - 2 * slope)).toBeLessThan(0.03);
    }
  });
});

describe('bones with two joints between them', () => {
  /** A wedge from 1 to 3 mm, so far off that one of the two joints has all of it. */
  const [low, high] = [
    box([0, 500, 0], [20, 510, 10]),
    box([0, 500, 11], [20, 510, 22], ([x, y, z]) => [x, y, z === 11 ? 11 + x / 10 : z]),
  ];
  const areaOf = (foot: Foot): number => fitOf(shape, foot).joints.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);

  test('the subtalar facets are looked at to 2.4 mm, as the table was measured', () => {
    const upTo = (2.4 / Math.cos(Math.atan(0.1)) - 1) * 10;
    expect(areaOf(footOf({ calcaneus: low, talus: high })) / (upTo * 10)).toBeCloseTo(1, 1);
  });
  test('the two of the ankle to 3.2 mm like all others', () => {
    const ankle: Foot = { ...footOf({ talus: low }), leg: new Map([['tibia', high]]) };
    expect(areaOf(ankle) / 200).toBeCloseTo(1, 1);
  });
});

describe('overlap', () => {
  const block = box([-10, -10, -10], [10, 10, 10]);
  const deepest = (a: Mesh, b: Mesh): number => pair(a, b).overlaps[0]?.depthMm ?? 0;

  test('boxes that only come near do not overlap', () => {
    expect(deepest(block, box([-5, -5, 10.01], [5, 5, 20]))).toBe(0);
  });
  test('a face sunk by half a millimetre', () => {
    expect(deepest(block, box([-5, -5, 9.5], [5, 5, 20]))).toBeCloseTo(0.5, 5);
  });
  test('a spike far thinner than the points are apart, between the corners of both', () => {
    const spike: Mesh = {
      positions: Float32Array.from([3, 4, 9.96, 2.8, 3.8, 30, 3.2, 3.8, 30, 3, 4.2, 30]),
      indices: Uint32Array.from([0, 2, 1, 0, 3, 2, 0, 1, 3, 1, 2, 3]),
    };
    const depth = deepest(block, spike);
    expect(depth).toBeGreaterThan(0.01);
    expect(depth).toBeLessThanOrEqual(0.0401);
  });
  test('two bars through each other with no corner of one in the other', () => {
    const depth = deepest(box([-30, -4, -4], [30, 4, 4]), box([-3, -30, -3], [3, 30, 3]));
    // The middle of the thinner bar's side lies 4 mm under the surface of the thicker one.
    expect(depth).toBeGreaterThan(3.75);
    expect(depth).toBeLessThanOrEqual(4.0001);
  });
  test('a box wholly inside another', () => {
    expect(deepest(block, box([-2, -2, -2], [2, 2, 2]))).toBeCloseTo(8, 0);
  });
});

describe('on real bones', () => {
  const bone = (id: BoneId): Mesh => buildBone(shape, DEFAULT_FOOT, id, 'asScanned');

  test.each(['calcaneus', 'talus'] as const)(
    '%s: the nearest place and the side of it as the slow ways have them',
    (id) => {
      const mesh = bone(id);
      const index = surfaceIndex(mesh);
      const { min, max } = meshBounds(mesh);
      const random = seededRandom(7);
      let insides = 0;
      for (let n = 0; n < 1500; n++) {
        const p = [0, 1, 2].map(
          (k) => (min[k] ?? 0) - 3 + random() * ((max[k] ?? 0) - (min[k] ?? 0) + 6),
        ) as unknown as Vec3;
        const hit = index.nearest(...p, 100);
        expect(hit?.distanceMm).toBeCloseTo(length(subtract(closestOn(mesh, p), p)), 6);
        expect(hit?.inside, p.join(' ')).toBe(isInside(mesh, p));
        insides += hit?.inside ? 1 : 0;
      }
      expect(insides).toBeGreaterThan(200);
      expect(insides).toBeLessThan(1300);
    },
  );

  const subtalar = (): Foot =>
    footOf({ calcaneus: bone('calcaneus'), talus: bone('talus'), navicular: bone('navicular') });
  const rounded = (fit: Fit): unknown =>
    JSON.parse(JSON.stringify(fit), (_, v) => (typeof v === 'number' ? v.toFixed(5) : v));

  test('the order of the triangles changes nothing', () => {
    const foot = subtalar();
    const turned = ({ positions, indices }: Mesh): Mesh => ({
      positions,
      indices: Uint32Array.from({ length: indices.length }, (_, i) => {
        const t = indices.length / 3 - 1 - Math.floor(i / 3);
        return indices[3 * t + ((i + 1) % 3)] ?? 0;
      }),
    });
    const other = { ...foot, bones: new Map([...foot.bones].map(([id, mesh]) => [id, turned(mesh)])) };
    expect(foot.bones.size).toBe(3);
    expect(rounded(fitOf(shape, other))).toEqual(rounded(fitOf(shape, foot)));
  });

  test('a left foot fits as the right one does, at both joints of the talus and calcaneus', () => {
    const foot = subtalar();
    const right = fitOf(shape, foot);
    const left = fitOf(shape, mirrorFoot(foot));
    expect(
      right.joints.filter(({ joint, areaMm2 }) => joint.startsWith('talus-calcaneus') && areaMm2 > 20),
    ).toHaveLength(2);
    expect(left.joints.map(({ joint }) => joint)).toEqual(right.joints.map(({ joint }) => joint));
    left.joints.forEach((row, i) => {
      expect(row.areaMm2 / (right.joints[i]?.areaMm2 ?? 0) || 1).toBeCloseTo(1, 3);
    });
  });
});

describe('the rules', () => {
  const good = (): JointFit[] =>
    shape.joints
      .filter(({ articular }) => articular)
      .map(({ id }) => ({ joint: id, articular: true, meanMm: 2, p5Mm: 1.3, p95Mm: 3.7, areaMm2: 9, areaShare: 0.8 }));
  const withFirst = (change: Partial<JointFit>): Fit => {
    const [first, ...rest] = good();
    return { joints: [{ ...(first as JointFit), ...change }, ...rest], overlaps: [] };
  };
  const overlapping = (depthMm: number): Fit => ({
    joints: good(),
    overlaps: [{ bones: ['talus', 'calcaneus'], depthMm }],
  });

  test('a foot at the limits breaks none', () => {
    expect(brokenRules(shape, { joints: good(), overlaps: [] }, 'standing')).toEqual([]);
  });
  test.each([
    ['a gap too narrow', { p5Mm: 1.29 }],
    ['a gap too wide', { p95Mm: 3.71 }],
    ['a facet too small', { areaShare: 0.79 }],
    ['gaps that are no numbers', { p5Mm: Number.NaN }],
  ])('%s breaks one, and only in standing', (_, change) => {
    expect(brokenRules(shape, withFirst(change), 'standing')).toHaveLength(1);
    expect(brokenRules(shape, withFirst(change), 'pushOff')).toEqual([]);
  });
  test('joints without a facet or a tabled area may be as they are', () => {
    expect(brokenRules(shape, withFirst({ areaShare: null }), 'standing')).toEqual([]);
    const free = { ...(good()[0] as JointFit), joint: 'metatarsal1-metatarsal2', articular: false, p5Mm: Number.NaN };
    expect(brokenRules(shape, { joints: [...good(), free], overlaps: [] }, 'standing')).toEqual([]);
  });
  test('an articular joint whose bones never meet breaks one', () => {
    expect(brokenRules(shape, { joints: good().slice(1), overlaps: [] }, 'standing')).toHaveLength(1);
  });
  test('any overlap breaks one in standing, one over 0.8 mm in other poses', () => {
    expect(brokenRules(shape, overlapping(0.001), 'standing')).toHaveLength(1);
    expect(brokenRules(shape, overlapping(0.8), 'heelRaise')).toEqual([]);
    expect(brokenRules(shape, overlapping(0.81), 'heelRaise')).toHaveLength(1);
  });
});
