/** What is drawn on a bone stays on its facet: where it was drawn, in any shape and pose of the foot, and unseen from behind. */
import { beforeAll, describe, expect, test } from 'vitest';
import { prepareAnatomy } from '../../../../src/anatomy';
import { firstHit } from '../../../../src/stage/draw/pick';
import { plateMesh } from '../../../../src/stage/draw/plate-mesh';
import { type PenPoint, penPointAt, penShapes, placeOf } from '../../../../src/stage/pen/stroke';
import { length, scale, subtract, type Vec3 } from '../../../../src/units';
import { builtFoot } from '../../../tools/built-foot';
import { modelFoot } from '../../../tools/model-foot';

const foot = modelFoot();
const mesh = plateMesh(foot.bones);
const EYE: Vec3 = [-1, 0, 0];
const down = (p: Vec3): [Vec3, Vec3] => [[p[0] - 400, p[1], p[2]], scale(EYE, -1)];
const spots: Vec3[] = [100, 104, 108, 112, 116].map((z) => [-30, 12, z]);

beforeAll(prepareAnatomy);

describe('a point drawn on a bone', () => {
  test('lies where the ray met it', () => {
    const hits = spots.map((spot) => firstHit(mesh, ...down(spot)));
    expect(hits.filter((hit) => hit !== null).length).toBeGreaterThan(2);
    for (const [i, spot] of spots.entries()) {
      const [hit, point] = [hits[i], penPointAt(mesh, ...down(spot))];
      if (hit == null || point === null) continue;
      expect(length(subtract(placeOf(mesh, point), hit.point))).toBeLessThan(1e-3);
      expect(Math.min(...point.shares)).toBeGreaterThan(-1e-6);
      expect(point.shares[0] + point.shares[1] + point.shares[2]).toBeCloseTo(1, 9);
    }
  });

  test('beside every bone there is none', () => {
    expect(penPointAt(mesh, [-400, 400, 100], [1, 0, 0])).toBeNull();
  });

  test('goes along with its bone into another pose and shape', () => {
    const point = penPointAt(mesh, ...down([-30, 12, 108]));
    if (point === null) throw new Error('the ray meets the fifth metatarsal');
    const before = mesh.ranges.find(({ start, count }) => point.facet >= start && point.facet < start + count);
    for (const other of [builtFoot({}, 'pushOff'), builtFoot({ arch: 1, heelToSecondHeadMm: 190 })]) {
      const there = plateMesh(other.bones);
      const range = there.ranges.find(({ bone }) => bone === before?.bone);
      expect(before).toBeDefined();
      expect(point.facet).toBeGreaterThanOrEqual(range?.start ?? Number.NaN);
      expect(length(subtract(placeOf(there, point), range?.centre ?? [0, 0, 0]))).toBeLessThan(
        1.05 * (range?.radiusMm ?? 0),
      );
    }
  });
});

describe('a stroke in the picture', () => {
  const piece = spots.map((spot) => penPointAt(mesh, ...down(spot))).filter((p): p is PenPoint => p !== null);
  const toScreen = ([, y, z]: Vec3): readonly [number, number] => [z, -y];
  test('is one line where it is seen, and nothing from the other side', () => {
    const seen = penShapes([[piece]], mesh, toScreen, EYE);
    expect(seen).toHaveLength(1);
    expect(seen[0]?.kind === 'line' && seen[0].points.length).toBe(piece.length);
    expect(penShapes([[piece]], mesh, toScreen, [1, 0, 0])).toEqual([]);
  });
  test('a dot is no line, and no stroke is nothing', () => {
    expect(penShapes([[piece.slice(0, 1)]], mesh, toScreen, EYE)).toEqual([]);
    expect(penShapes([], mesh, toScreen, EYE)).toEqual([]);
  });
});
