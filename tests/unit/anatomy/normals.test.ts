/** Normals from the field: exact on a ball, out of the bone on bones, and the same after the model file, a turn, a mirror. */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, decodeGlb, encodeGlb, type Foot, mirrorFoot, prepareAnatomy } from '../../../src/anatomy';
import { boneField } from '../../../src/anatomy/bone-field';
import { vertexOf } from '../../../src/anatomy/mesh';
import { normalsFrom } from '../../../src/anatomy/normals';
import { settingOf } from '../../../src/anatomy/setting';
import { inverse, movePoint } from '../../../src/anatomy/stance/motion';
import { motionsOf } from '../../../src/anatomy/stance/stance';
import type { Mesh } from '../../../src/anatomy/types';
import { SKELETON_IDS } from '../../../src/ids';
import { add, dot, length, normalize, scale, subtract, type Vec3 } from '../../../src/units';
import { builtFoot, shape } from '../../tools/built-foot';

beforeAll(prepareAnatomy);

const normalOf = (mesh: Mesh, i: number): Vec3 =>
  vertexOf({ positions: mesh.normals ?? new Float32Array(), indices: mesh.indices }, i);
const meshesOf = (foot: Foot) => new Map<string, Mesh>([...foot.bones, ...foot.leg]);

test('on a ball they point away from its middle', () => {
  fc.assert(
    fc.property(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: -1, max: 1, noNaN: true }), (a, b) => {
      const way = normalize([a, b, 1]);
      const positions = Float32Array.from(scale(way, 12));
      const [x = 0, y = 0, z = 0] = normalsFrom((px, py, pz) => Math.hypot(px, py, pz) - 12, {
        positions,
        indices: new Uint32Array(),
      });
      expect(dot([x, y, z], way)).toBeGreaterThan(0.99999);
    }),
  );
});

describe.each(['display', 'fine'] as const)('%s bones of a foot of another shape and size, standing', (level) => {
  const parameters = { ...DEFAULT_FOOT, heelToSecondHeadMm: 190, arch: 0.7, adductusDeg: 12, halluxDeg: 14 };
  let foot: Foot;
  beforeAll(() => {
    foot = builtFoot(parameters, 'standing', level);
  }, 60_000);

  test('every bone has a unit normal at each vertex, along which one leaves the bone', () => {
    const motions = motionsOf(shape, parameters, 'standing');
    const k = parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
    for (const bone of SKELETON_IDS) {
      const mesh = meshesOf(foot).get(bone);
      const motion = motions.get(bone);
      if (mesh === undefined || motion === undefined) throw new Error(`no ${bone}`);
      const { field } = boneField(shape, bone, settingOf(shape, parameters, bone));
      let leaving = 0;
      const count = mesh.positions.length / 3;
      expect(mesh.normals?.length, bone).toBe(mesh.positions.length);
      for (let i = 0; i < count; i += 1) {
        const n = normalOf(mesh, i);
        expect(length(n)).toBeCloseTo(1, 3);
        const at = (mm: number): number =>
          field(...movePoint(inverse(motion), scale(add(vertexOf(mesh, i), scale(n, mm)), 1 / k)));
        leaving += at(1.5) > at(-1.5) ? 1 : 0;
      }
      expect(leaving, bone).toBe(count);
    }
  });

  test('they lie near those of the facets around: half within 15 degrees', () => {
    const off: number[] = [];
    for (const mesh of meshesOf(foot).values()) {
      const sums = Array.from({ length: mesh.positions.length / 3 }, (): Vec3 => [0, 0, 0]);
      for (let f = 0; f < mesh.indices.length; f += 3) {
        const [a = 0, b = 0, c = 0] = mesh.indices.slice(f, f + 3);
        const [u, v] = [subtract(vertexOf(mesh, b), vertexOf(mesh, a)), subtract(vertexOf(mesh, c), vertexOf(mesh, a))];
        const area: Vec3 = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
        for (const i of [a, b, c]) sums[i] = add(sums[i] ?? [0, 0, 0], area);
      }
      sums.forEach((sum, i) => {
        off.push((180 / Math.PI) * Math.acos(Math.min(1, dot(normalize(sum), normalOf(mesh, i)))));
      });
    }
    off.sort((a, b) => a - b);
    expect(off[Math.floor(off.length / 2)]).toBeLessThan(15);
    expect(off[Math.floor(off.length * 0.95)]).toBeLessThan(45);
  });
});

test('the model file keeps them, and a left foot has them mirrored', async () => {
  const foot = builtFoot();
  const read = decodeGlb(await encodeGlb(foot, new Map()));
  const left = mirrorFoot(foot);
  for (const [bone, mesh] of foot.bones) {
    const again = read.bones.get(bone);
    const other = left.bones.get(bone);
    if (again === undefined || other === undefined) throw new Error(`no ${bone}`);
    for (let i = 0; i < mesh.positions.length / 3; i += 1) {
      const [x, y, z] = normalOf(mesh, i);
      expect(length(subtract(normalOf(again, i), [x, y, z]))).toBeLessThan(2e-4);
      expect(normalOf(other, i)).toEqual([-x, y, z]);
    }
  }
  expect(read.outline.normals).toBeUndefined();
});
