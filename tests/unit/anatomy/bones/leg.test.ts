/** The lower ends of tibia and fibula: what an anatomist names them by, measured on the built surfaces. As scanned, mm. */
import { beforeAll, describe, expect, test } from 'vitest';
import {
  buildBone,
  DEFAULT_FOOT,
  eulerCharacteristic,
  openEdges,
  prepareAnatomy,
  sliceMesh,
} from '../../../../src/anatomy';
import { boneField, boneShapeOf } from '../../../../src/anatomy/bone-field';
import { centreOfCurvature, frameOfJoint } from '../../../../src/anatomy/joint-surface';
import { verticesOf } from '../../../../src/anatomy/mesh';
import type { JointShape, Shape } from '../../../../src/anatomy/shape';
import type { Mesh } from '../../../../src/anatomy/types';
import type { LegId } from '../../../../src/ids';
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../../../src/units';
import { shape } from '../../../tools/built-foot';
import { closestOn, isInside, spread } from '../../../tools/surface';

const joint = (id: string): JointShape => {
  const found = shape.joints.find((j) => j.id === id);
  if (!found) throw new Error(id);
  return found;
};
const valuesOf = (bone: LegId): Readonly<Record<string, number>> =>
  boneShapeOf(shape, bone).values as Readonly<Record<string, number>>;

const dome = joint('tibia-talus');
const { u: medial, w: down } = frameOfJoint(dome);
/** The shaft leans forwards on the plafond by `shaftLean`. */
const lean = ((valuesOf('tibia').shaftLean ?? 0) * Math.PI) / 180;
const ahead = cross(down, medial);
const up = normalize(add(scale(down, -Math.cos(lean)), scale(ahead, Math.sin(lean))));
const front = cross(medial, up);

let tibia: Mesh;
let fibula: Mesh;
let talus: Mesh;
beforeAll(async () => {
  await prepareAnatomy();
  [tibia, fibula, talus] = (['tibia', 'fibula', 'talus'] as const).map((b) =>
    buildBone(shape, DEFAULT_FOOT, b, 'asScanned', 'fine'),
  ) as [Mesh, Mesh, Mesh];
});

const along = (d: Vec3) => (p: Vec3) => dot(subtract(p, dome.centre), d);
const lowest = (points: readonly Vec3[]): number => Math.min(...points.map(along(up)));
const extent = (points: readonly Vec3[], d: Vec3): number =>
  Math.max(...points.map(along(d))) - Math.min(...points.map(along(d)));
const cutAt = (mesh: Mesh, level: number): Vec3[] => sliceMesh(mesh, add(dome.centre, scale(up, level)), up).flat();

test('both are closed surfaces with a flat top, its rim rounded', () => {
  for (const mesh of [tibia, fibula]) {
    expect(openEdges(mesh)).toBe(0);
    expect(eulerCharacteristic(mesh)).toBe(2);
    const top = Math.max(...verticesOf(mesh).map(along(up)));
    const flat = spread(mesh, 2).filter(({ at }) => along(up)(at) > top - 0.6);
    const area = flat.reduce((sum, f) => sum + f.area, 0);
    const below = cutAt(mesh, top - 4);
    const box = extent(below, medial) * extent(below, front);
    expect(area).toBeGreaterThan(0.3 * box);
    expect(area).toBeLessThan(0.75 * box);
  }
});

describe('tibia', () => {
  test('ends about 45 mm above the plafond', () => {
    const top = Math.max(...verticesOf(tibia).map(along(up)));
    expect(top).toBeGreaterThan(42);
    expect(top).toBeLessThan(48);
  });

  test('the plafond is a hollow cylinder about the axis of the dome', () => {
    const centre = centreOfCurvature(dome, dome.major);
    if (!centre) throw new Error('the dome is flat');
    const reach = [-32, -16, 0, 16, 32].flatMap((deg) =>
      [-9, 0, 9].map((side) => {
        const turn = (deg * Math.PI) / 180;
        const way = add(scale(down, -Math.cos(turn)), scale(ahead, Math.sin(turn)));
        const from = add(centre, scale(medial, side));
        // Step outwards from the axis until the bone begins.
        let r = 12;
        while (!isInside(tibia, add(from, scale(way, r))) && r < 40) r += 0.25;
        return r;
      }),
    );
    expect(Math.min(...reach)).toBeGreaterThan(17.5);
    expect(Math.max(...reach) - Math.min(...reach)).toBeLessThan(2.5);
  });

  test('its hind lip lies lower than its front lip', () => {
    const lip = (side: 1 | -1): number =>
      lowest(
        verticesOf(tibia).filter((p) => side * along(front)(p) > 8 && along(medial)(p) < 10 && along(medial)(p) > -14),
      );
    expect(lip(1) - lip(-1)).toBeGreaterThan(2);
  });

  test('the medial malleolus has a longer front colliculus and a shorter hind one with a notch between', () => {
    const malleolus = spread(tibia, 1)
      .map(({ at }) => at)
      .filter((p) => along(medial)(p) > 16);
    const reach = (from: number, to: number): number =>
      lowest(malleolus.filter((p) => along(front)(p) >= from && along(front)(p) < to));
    const [hind, notch, fore] = [reach(-10, -3), reach(-2, 2), reach(4, 12)];
    expect(hind - fore).toBeGreaterThan(2.5);
    expect(notch - hind).toBeGreaterThan(0.7);
    expect(notch - hind).toBeLessThan(2.5);
    expect(fore).toBeLessThan(-12);
  });

  test('the notch for the fibula is hollow between two tubercles', () => {
    const loop = cutAt(tibia, 7);
    const lateral = (from: number, to: number): number =>
      Math.max(...loop.filter((p) => along(front)(p) > from && along(front)(p) < to).map((p) => -along(medial)(p)));
    const floor = lateral(-6, 0);
    expect(lateral(4, 14) - floor).toBeGreaterThan(1.5);
    expect(lateral(-18, -9) - floor).toBeGreaterThan(-2);
  });
});

describe('fibula', () => {
  test('reaches about 10 mm further down than the medial malleolus', () => {
    const further = lowest(verticesOf(tibia)) - lowest(verticesOf(fibula));
    expect(further).toBeGreaterThan(7);
    expect(further).toBeLessThan(13);
  });

  test('its malleolus is flattened from side to side and deeper than the shaft', () => {
    const [low, high] = [cutAt(fibula, -12), cutAt(fibula, 35)];
    expect(extent(low, front) / extent(low, medial)).toBeGreaterThan(1.35);
    expect(extent(low, front) / extent(high, front)).toBeGreaterThan(1.4);
  });

  test('its tip lies behind the middle of the malleolus and on its outer side', () => {
    const middleOf = (points: readonly Vec3[], d: Vec3): number => {
      const reach = points.map(along(d));
      return (Math.min(...reach) + Math.max(...reach)) / 2;
    };
    const bottom = lowest(verticesOf(fibula));
    const [tip, widest] = [cutAt(fibula, bottom + 2), cutAt(fibula, bottom + 17)];
    expect(middleOf(widest, front) - middleOf(tip, front)).toBeGreaterThan(3);
    expect(middleOf(widest, medial) - middleOf(tip, medial)).toBeGreaterThan(1.5);
  });
});

describe('mortise', () => {
  const gaps = (a: Mesh, b: Mesh): number[] =>
    spread(a, 3)
      .filter(({ at }) => along(up)(at) < 30)
      .map(({ at }) => length(subtract(closestOn(b, at), at)))
      .filter((d) => d < 4)
      .sort((p, q) => p - q);

  test('talus, tibia and fibula nowhere overlap', () => {
    for (const [a, b] of [
      [tibia, talus],
      [fibula, talus],
      [tibia, fibula],
    ] as const) {
      expect(verticesOf(a).filter((p) => isInside(b, p))).toEqual([]);
      expect(verticesOf(b).filter((p) => isInside(a, p))).toEqual([]);
    }
  });

  test('the joint spaces are as wide as a joint’s', () => {
    for (const leg of [tibia, fibula]) {
      const all = gaps(leg, talus);
      expect(all[Math.floor(all.length * 0.05)]).toBeGreaterThan(1.2);
      // Bone to bone: two coats of cartilage lie between.
      expect(all[Math.floor(all.length / 2)]).toBeLessThan(3.2);
    }
    expect(gaps(tibia, fibula)[0]).toBeGreaterThan(2);
  });

  test('it covers at least 80 % of the measured 851 and 243 mm2', () => {
    const facing = (a: Mesh, b: Mesh): number =>
      spread(a, 2)
        .filter(({ at }) => along(up)(at) < 8 && length(subtract(closestOn(b, at), at)) < 3.2)
        .reduce((sum, { area }) => sum + area, 0);
    expect(facing(tibia, talus)).toBeGreaterThan(0.8 * 851);
    expect(facing(fibula, talus)).toBeGreaterThan(0.8 * 243);
  });
});

describe.each(['tibia', 'fibula'] as const)('every named value of the %s', (bone: LegId) => {
  test.each(Object.keys(valuesOf(bone)))('%s: a third more changes the surface', (name) => {
    const values = valuesOf(bone);
    const told = shape.leg as Readonly<Record<string, object>>;
    const changed: Shape = {
      ...shape,
      leg: { ...told, [bone]: { ...told[bone], values: { ...values, [name]: (values[name] ?? 0) * 1.33 } } },
    } as unknown as Shape;
    const [before, after] = [boneField(shape, bone).field, boneField(changed, bone).field];
    const points = verticesOf(bone === 'tibia' ? tibia : fibula);
    expect(Math.max(...points.map((p) => Math.abs(after(...p) - before(...p))))).toBeGreaterThan(0.4);
  });
});
