/** The stage's geometry on the foot that ships: what is engraved, picked and laid on the bone. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { boneAxis, inBone } from '../../../src/anatomy/bone-axis';
import { decodeGlb } from '../../../src/anatomy/glb';
import { DEFAULT_FOOT } from '../../../src/anatomy/parameters';
import type { Foot } from '../../../src/anatomy/types';
import { BONE_IDS } from '../../../src/ids';
import { contourMesh } from '../../../src/stage/draw/contour-mesh';
import { firstHit } from '../../../src/stage/draw/pick';
import { plateMesh } from '../../../src/stage/draw/plate-mesh';
import { breakLines, resample, ringAt, wayOf } from '../../../src/stage/scene/lines';
import { add, length, scale, subtract, type Vec3 } from '../../../src/units';
import { UNMOVED } from '../../tools/tubes';

const model = decodeGlb(
  new Uint8Array(readFileSync(new URL('../../../public/models/foot-right.glb', import.meta.url))),
);
const foot: Foot = {
  parameters: DEFAULT_FOOT,
  pose: 'standing',
  side: 'right',
  level: 'display',
  bones: model.bones,
  leg: model.leg,
  joints: new Map(),
  outline: model.outline,
  reference: UNMOVED,
};
const mesh = plateMesh(foot.bones);
const axis = boneAxis(foot, 'metatarsal5');
const bone = foot.bones.get('metatarsal5');
if (bone === undefined) throw new Error('the model has no fifth metatarsal');

const at = (a: Float32Array, v: number): Vec3 => [a[3 * v] ?? 0, a[3 * v + 1] ?? 0, a[3 * v + 2] ?? 0];

const firstOf = (id: (typeof BONE_IDS)[number]): number => foot.bones.get(id)?.indices[0] ?? 0;

describe('the merged mesh', () => {
  it('holds every bone once, in runs that tile it', () => {
    expect(mesh.ranges.map((r) => r.bone)).toEqual([...BONE_IDS]);
    let end = 0;
    for (const { start, count, bone: id } of mesh.ranges) {
      expect(start).toBe(end);
      expect(at(mesh.positions, start)).toEqual(at(foot.bones.get(id)?.positions ?? new Float32Array(), firstOf(id)));
      end = start + count;
    }
    expect(end).toBe(mesh.positions.length / 3);
  });

  it('stays within the triangles of a stage frame, contour included', () => {
    expect((2 * mesh.positions.length) / 9).toBeLessThan(60_000);
  });

  it('has unit normals that face away from the middle of a bone on the whole', () => {
    for (const range of mesh.ranges) {
      let outward = 0;
      for (let v = range.start; v < range.start + range.count; v += 3) {
        expect(length(at(mesh.normals, v))).toBeCloseTo(1, 5);
        const d = subtract(at(mesh.positions, v), range.centre);
        const n = at(mesh.normals, v);
        outward += d[0] * n[0] + d[1] * n[1] + d[2] * n[2] > 0 ? 1 : -1;
      }
      expect(outward, range.bone).toBeGreaterThan(0);
    }
  });
});

describe('the contour', () => {
  const contour = contourMesh(foot.bones);

  it('is of the same triangles, their corners shared, each the number of its bone', () => {
    expect(contour.indices.length).toBe(mesh.positions.length / 3);
    expect(contour.bone.length).toBe(contour.positions.length / 3);
    // A closed surface of Euler 2 has half as many corners as triangles, and two more.
    expect(contour.bone.length).toBe(contour.indices.length / 6 + 2 * BONE_IDS.length);
    const met = new Set([...contour.indices].map((i) => contour.bone[i]));
    expect([...met].sort((a, b) => (a ?? 0) - (b ?? 0))).toEqual(BONE_IDS.map((_, i) => i));
  });

  it('has unit directions, on the outer side of the facets around', () => {
    for (let v = 0; v < contour.bone.length; v += 1) expect(length(at(contour.smooth, v))).toBeCloseTo(1, 3);
    let outward = 0;
    let all = 0;
    for (const range of mesh.ranges) {
      const from = contour.bone.indexOf(BONE_IDS.indexOf(range.bone));
      const { indices = new Uint32Array() } = foot.bones.get(range.bone) ?? {};
      indices.forEach((i, corner) => {
        const [n, s] = [at(mesh.normals, range.start + corner), at(contour.smooth, from + i)];
        outward += n[0] * s[0] + n[1] * s[1] + n[2] * s[2] > 0 ? 1 : 0;
        all += 1;
      });
    }
    expect(outward / all).toBeGreaterThan(0.99);
  });
});

describe('picking', () => {
  it.each([
    ['metatarsal5', -1],
    ['metatarsal1', 1],
  ] as const)('meets %s first from its own edge of the foot', (id, side) => {
    const own = foot.bones.get(id);
    if (own === undefined) throw new Error(`no ${id}`);
    const ring = ringAt(own, boneAxis(foot, id), 20);
    const [, y, z] = scale(
      ring.reduce<Vec3>((sum, p) => add(sum, p), [0, 0, 0]),
      1 / ring.length,
    );
    expect(firstHit(mesh, [side * 500, y, z], [-side, 0, 0])?.bone).toBe(id);
  });

  it('meets nothing beside the foot and never the far side of a bone first', () => {
    expect(firstHit(mesh, [0, 500, -200], [0, -1, 0])).toBeNull();
    const hit = firstHit(mesh, [0, 500, 30], [0, -1, 0]);
    expect(hit).not.toBeNull();
    const again = firstHit(mesh, [0, (hit?.point[1] ?? 0) + 0.01, 30], [0, -1, 0]);
    expect(again?.distanceMm).toBeLessThan(0.02);
  });
});

describe('lines on the bone', () => {
  it('a ring lies at its station', () => {
    const ring = ringAt(bone, axis, 20);
    expect(ring.length).toBeGreaterThan(4);
    for (const p of ring) expect(inBone(axis, p).sMm).toBeCloseTo(20, 3);
  });

  it('off the bone there is none', () => {
    expect(ringAt(bone, axis, -5)).toEqual([]);
    expect(ringAt(bone, axis, axis.lengthMm + 5)).toEqual([]);
  });

  it.each(['transverse', 'oblique', 'spiral', 'avulsion', 'comminuted', 'incomplete', 'notStated'] as const)(
    'a break that runs %s stays near its station',
    (direction) => {
      const lines = breakLines(bone, axis, 22, direction);
      expect(lines.length).toBe(direction === 'comminuted' ? 2 : 1);
      for (const p of lines.flat()) expect(Math.abs(inBone(axis, p).sMm - 22)).toBeLessThan(14);
    },
  );

  it('a spiral turns round the bone while it runs along it; a transverse break does not run along it', () => {
    const extent = (direction: 'spiral' | 'transverse'): number => {
      const s = breakLines(bone, axis, 35, direction)
        .flat()
        .map((p) => inBone(axis, p).sMm);
      return Math.max(...s) - Math.min(...s);
    };
    expect(extent('spiral')).toBeGreaterThan(12);
    expect(extent('transverse')).toBeLessThan(2);
  });

  it('a break that does not go through is drawn on part of the ring only', () => {
    const half = breakLines(bone, axis, 22, 'incomplete')[0] ?? [];
    const whole = breakLines(bone, axis, 22, 'transverse')[0] ?? [];
    expect(wayOf(half)).toBeLessThan(0.75 * wayOf(whole));
  });

  it('resampling keeps both ends', () => {
    const line: Vec3[] = [
      [0, 0, 0],
      [3, 0, 0],
      [3, 4, 0],
    ];
    const points = resample(line, 1);
    expect(points).toHaveLength(8);
    expect(points[0]).toEqual([0, 0, 0]);
    expect(points.at(-1)).toEqual([3, 4, 0]);
  });
});
