/** Film measures on a real mesh: a bone turned by a known angle changes exactly its own measures, and by that angle. */
import { describe, expect, test } from 'vitest';
import { type Foot, mirrorFoot, prepareAnatomy } from '../../../../src/anatomy';
import { ANGLE_IDS, type AngleId, radiographicAngles } from '../../../../src/anatomy/angles';
import { slopeIn } from '../../../../src/anatomy/angles/angle';
import { mapMesh, meshCentroid } from '../../../../src/anatomy/mesh';
import { movePoint, turning } from '../../../../src/anatomy/stance/motion';
import type { SkeletonId } from '../../../../src/ids';
import { scale, type Vec3 } from '../../../../src/units';
import { builtFoot } from '../../../tools/built-foot';

await prepareAnatomy();
const foot = builtFoot();
const X: Vec3 = [1, 0, 0];
const Y: Vec3 = [0, 1, 0];
const Z: Vec3 = [0, 0, 1];

const valuesOf = (of: Foot): Record<AngleId, number> =>
  Object.fromEntries(radiographicAngles(of).map(({ id, value }) => [id, value])) as Record<AngleId, number>;
const usual = valuesOf(foot);

const moved = (of: Foot, move: (bone: SkeletonId, p: Vec3) => Vec3): Foot => ({
  ...of,
  bones: new Map([...of.bones].map(([id, mesh]) => [id, mapMesh(mesh, (p) => move(id, p))])),
  leg: new Map([...of.leg].map(([id, mesh]) => [id, mapMesh(mesh, (p) => move(id, p))])),
});

/** The foot with one bone turned about its own middle. */
const turned = (bone: SkeletonId, axis: Vec3, deg: number): Foot => {
  const mesh = [...foot.bones, ...foot.leg].find(([id]) => id === bone)?.[1];
  if (!mesh) throw new Error(bone);
  const motion = turning(meshCentroid(mesh), axis, deg);
  return moved(foot, (id, p) => (id === bone ? movePoint(motion, p) : p));
};

/** Positions are single precision: some 0.00001 mm, and a line is no shorter than a centimetre. */
const EXACT = 2;
/** The heel is cut at heights over its lowest point, which is another corner of it once it is tilted. */
const CUT_ANEW: readonly AngleId[] = ['hindfootAlignment'];

describe('one bone turned', () => {
  const rows: readonly (readonly [string, SkeletonId, Vec3, number, Partial<Record<AngleId, number>>])[] = [
    [
      'calcaneus, front down',
      'calcaneus',
      X,
      6,
      {
        calcanealPitch: -6,
        calcaneusFirstMetatarsal: 6,
        talocalcanealLateral: -6,
        boehler: 0,
        gissaneChordal: 0,
        gissaneTangent: 0,
      },
    ],
    ['talus, front down', 'talus', X, 4, { talarDeclination: 4, meary: 4, talocalcanealLateral: 4, calcanealPitch: 0 }],
    [
      'first metatarsal, front down',
      'metatarsal1',
      X,
      5,
      { metatarsalDeclination1: 5, meary: -5, calcaneusFirstMetatarsal: -5, metatarsalDeclination2: 0 },
    ],
    ['second metatarsal, front up', 'metatarsal2', X, -5, { metatarsalDeclination2: -5, metatarsalDeclination1: 0 }],
    ['third metatarsal, front down', 'metatarsal3', X, 3, { metatarsalDeclination3: 3 }],
    ['fourth metatarsal, front down', 'metatarsal4', X, 3, { metatarsalDeclination4: 3 }],
    ['fifth metatarsal, front down', 'metatarsal5', X, 3, { metatarsalDeclination5: 3, intermetatarsal12: 0 }],
    [
      'first metatarsal, front inwards',
      'metatarsal1',
      Y,
      6,
      { intermetatarsal12: 6, halluxValgus: 6, intermetatarsal45: 0 },
    ],
    ['first toe, front outwards', 'phalanxProximal1', Y, -8, { halluxValgus: 8, intermetatarsal12: 0 }],
    ['fifth metatarsal, front outwards', 'metatarsal5', Y, -4, { intermetatarsal45: 4 }],
    [
      'second metatarsal, front inwards',
      'metatarsal2',
      Y,
      3,
      { intermetatarsal12: -3, talusSecondMetatarsal: -3, metatarsusAdductus: 3 },
    ],
    [
      'talus, front inwards',
      'talus',
      Y,
      5,
      { talocalcanealDorsoplantar: 5, talusSecondMetatarsal: 5, halluxValgus: 0 },
    ],
    ['calcaneus, front outwards', 'calcaneus', Y, -5, { talocalcanealDorsoplantar: 5 }],
    ['navicular, front outwards', 'navicular', Y, -5, { talonavicularCoverage: 5 }],
    ['calcaneus, top outwards', 'calcaneus', Z, 4, { hindfootAlignment: 4 }],
    ['tibia, top outwards', 'tibia', Z, 3, { hindfootAlignment: -3, calcanealPitch: 0 }],
  ];
  test.each(rows)('%s', (_, bone, axis, deg, expected) => {
    const now = valuesOf(turned(bone, axis, deg));
    for (const [id, change] of Object.entries(expected) as [AngleId, number][]) {
      expect(now[id] - usual[id], id).toBeCloseTo(change, CUT_ANEW.includes(id) ? 1 : EXACT);
    }
  });
});

describe('the whole foot', () => {
  const all = (axis: Vec3, deg: number): Record<AngleId, number> => {
    const motion = turning([0, 0, 0], axis, deg);
    return valuesOf(moved(foot, (_, p) => movePoint(motion, p)));
  };

  test('tipped forwards, what is measured against the ground changes and what is measured between bones does not', () => {
    const now = all(X, 7);
    const ground: Partial<Record<AngleId, number>> = { calcanealPitch: -7, talarDeclination: 7 };
    for (const ray of [1, 2, 3, 4, 5] as const) ground[`metatarsalDeclination${ray}`] = 7;
    for (const id of [
      'meary',
      'calcaneusFirstMetatarsal',
      'talocalcanealLateral',
      'boehler',
      'gissaneTangent',
    ] as const) {
      ground[id] = 0;
    }
    for (const [id, change] of Object.entries(ground) as [AngleId, number][]) {
      expect(now[id] - usual[id], id).toBeCloseTo(change, EXACT);
    }
  });

  test('turned on the ground, no measure of the dorsoplantar view changes but by where its joint lines are found to end', () => {
    const now = all(Y, 10);
    for (const { id, view } of radiographicAngles(foot)) {
      if (view !== 'dorsoplantar' || id.startsWith('protrusion') || id === 'metatarsusAdductus') continue;
      expect(now[id] - usual[id], id).toBeCloseTo(0, EXACT);
    }
    // The end of a joint line is its point farthest inwards or outwards of the foot, and the foot was turned.
    expect(Math.abs(now.metatarsusAdductus - usual.metatarsusAdductus)).toBeLessThan(4);
  });

  test('grown by a third, angles and shares stay and lengths grow by a third', () => {
    const now = valuesOf(moved(foot, (_, p) => scale(p, 4 / 3)));
    for (const { id, unit } of radiographicAngles(foot)) {
      // The small parts that a joint's surface is tried by lie in or out of its reach by less than the rounding of a position.
      const digits = id === 'metatarsusAdductus' || id.startsWith('protrusion') ? 0 : EXACT;
      expect(now[id], id).toBeCloseTo(usual[id] * (unit === 'mm' ? 4 / 3 : 1), digits);
    }
  });

  test('as a left foot it has the same values, and lines mirrored', () => {
    const right = radiographicAngles(foot);
    for (const [i, left] of radiographicAngles(mirrorFoot(foot)).entries()) {
      const same = right[i];
      expect(left.value, left.id).toBe(same?.value);
      expect(left.lines[1][1][0], left.id).toBe(-(same?.lines[1][1][0] ?? Number.NaN));
      expect(left.lines[1][1][1], left.id).toBe(same?.lines[1][1][1]);
      expect(left.vertex?.[0], left.id).toEqual(same?.vertex ? -same.vertex[0] : undefined);
    }
  });
});

describe('every measure', () => {
  const angles = radiographicAngles(foot);

  test('is there once, in order, and comes out the same again', () => {
    expect(angles.map(({ id }) => id)).toEqual(ANGLE_IDS);
    expect(radiographicAngles({ ...foot })).toEqual(angles);
  });

  test.each(angles.filter(({ unit }) => unit === 'deg').map((angle) => [angle.id, angle] as const))(
    '%s is the angle between its two lines in its view',
    (_, { value, view, lines }) => {
      const between = Math.abs(slopeIn(view, lines[0]) - slopeIn(view, lines[1])) % 180;
      const acute = Math.min(between, 180 - between);
      expect(acute).toBeCloseTo(Math.min(Math.abs(value), 180 - Math.abs(value)), 6);
    },
  );

  test('has its lines on the foot', () => {
    for (const { id, lines } of angles)
      for (const [x, y, z] of lines.flat()) {
        expect(Math.abs(x), id).toBeLessThan(60);
        expect(y, id).toBeGreaterThan(-10);
        expect(y, id).toBeLessThan(130);
        expect(z, id).toBeGreaterThan(-15);
        expect(z, id).toBeLessThan(230);
      }
  });

  test('needs its bones', () => {
    const without = (bone: SkeletonId): Foot => ({
      ...foot,
      bones: new Map([...foot.bones].filter(([id]) => id !== bone)),
      leg: new Map([...foot.leg].filter(([id]) => id !== bone)),
    });
    for (const bone of ['calcaneus', 'metatarsal3', 'navicular', 'tibia'] as const) {
      expect(() => radiographicAngles(without(bone)), bone).toThrow(RangeError);
    }
  });

  test('says so when two bones of a joint do not meet', () => {
    const apart = moved(foot, (id, p) => (id === 'navicular' ? [p[0], p[1] + 60, p[2]] : p));
    expect(() => radiographicAngles(apart)).toThrow(/talus and navicular/);
  });
});
