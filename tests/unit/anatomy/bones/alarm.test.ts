/**
 * An alarm for dead parameters: a fifth more or less of any named value, and any named mass or hollow left out, must move the
 * surface of its bone somewhere. Read at the vertices of the mesh that is drawn, and in the middles of its triangles. mm.
 */
import { beforeAll, expect, test, vi } from 'vitest';
import { buildBone, DEFAULT_FOOT, prepareAnatomy } from '../../../../src/anatomy';
import { boneField, boneShapeOf } from '../../../../src/anatomy/bone-field';
import { RECIPES } from '../../../../src/anatomy/bones';
import type { Parts } from '../../../../src/anatomy/bones/mass';
import type { Term } from '../../../../src/anatomy/bones/recipe';
import { verticesOf } from '../../../../src/anatomy/mesh';
import { settingOf } from '../../../../src/anatomy/setting';
import type { JointShape, Shape } from '../../../../src/anatomy/shape';
import { SKELETON_IDS, type SkeletonId } from '../../../../src/ids';
import type { Vec3 } from '../../../../src/units';
import { shape } from '../../../tools/built-foot';
import { spread } from '../../../tools/surface';

const LEAST_MM = 0.15;

const PARTS = ['hindfoot', 'midfoot', 'metatarsals', 'toes', 'leg'] as const;

interface Now {
  readonly points: readonly Vec3[];
  readonly joints: readonly JointShape[];
  readonly values: readonly number[];
}
const now = new Map<SkeletonId, Now>();
const nowOf = (bone: SkeletonId): Now => now.get(bone) as Now;

beforeAll(async () => {
  await prepareAnatomy();
  for (const bone of SKELETON_IDS) {
    const mesh = buildBone(shape, DEFAULT_FOOT, bone, 'asScanned');
    const points = [...verticesOf(mesh), ...spread(mesh, 6).map(({ at }) => at)];
    const joints = settingOf(shape, DEFAULT_FOOT, bone);
    const { field } = boneField(shape, bone, joints);
    now.set(bone, { points, joints, values: points.map((p) => field(...p)) });
  }
}, 60_000);

/** How far the field of the bone differs from what it was, at most. */
const moved = (from: Shape, bone: SkeletonId): number => {
  const { points, joints, values } = nowOf(bone);
  const { field } = boneField(from, bone, joints);
  return points.reduce((most, p, i) => Math.max(most, Math.abs(field(...p) - (values[i] ?? 0))), 0);
};

const withValue = (bone: SkeletonId, name: string, value: number): Shape => {
  const part = PARTS.find((p) => Object.hasOwn(shape[p], bone));
  if (part === undefined) throw new Error(`no values of ${bone}`);
  const bones = shape[part] as Readonly<Record<string, object>>;
  const values = { ...(boneShapeOf(shape, bone).values as object), [name]: value };
  return { ...shape, [part]: { ...bones, [bone]: { ...bones[bone], values } } } as Shape;
};

const stepOf = ({ unit }: Term, value: number): number =>
  unit === 'deg' ? 10 : unit === 'share' ? 0.1 : Math.max(1, Math.abs(value) * 0.2);

test('nothing moves where nothing is changed', () => {
  for (const bone of SKELETON_IDS) expect(moved(shape, bone)).toBe(0);
});

test('every named value of every bone moves its surface', () => {
  let count = 0;
  const faint: string[] = [];
  for (const bone of SKELETON_IDS) {
    const values = boneShapeOf(shape, bone).values as Readonly<Record<string, number>>;
    for (const [name, term] of Object.entries(RECIPES[bone].terms)) {
      const value = values[name] ?? Number.NaN;
      const step = stepOf(term, value);
      const most = Math.max(...[step, -step].map((by) => moved(withValue(bone, name, value + by), bone)));
      count++;
      if (!(most > LEAST_MM)) faint.push(`${bone} ${name} ${value} +/- ${step.toFixed(2)}: ${most.toFixed(3)} mm`);
    }
  }
  expect(count).toBeGreaterThan(300);
  expect(faint).toEqual([]);
}, 120_000);

/** The recipe's parts less one. */
const without = (parts: Parts, kind: 'masses' | 'hollows' | 'cuts', index: number): Parts => ({
  ...parts,
  [kind]: (parts[kind] ?? []).filter((_, i) => i !== index),
});

test('every mass, hollow and cut of every bone is seen when it is left out', () => {
  let count = 0;
  const faint: string[] = [];
  for (const bone of SKELETON_IDS) {
    const recipe = RECIPES[bone];
    const make = recipe.make;
    const spy = vi.spyOn(recipe, 'make');
    let parts: Parts = { masses: [] };
    spy.mockImplementation((values, site) => {
      parts = make(values, site);
      return parts;
    });
    expect(moved(shape, bone)).toBe(0);
    for (const kind of ['masses', 'hollows', 'cuts'] as const)
      for (const [i, each] of (parts[kind] ?? []).entries()) {
        spy.mockImplementation((values, site) => without(make(values, site), kind, i));
        const most = moved(shape, bone);
        count++;
        if (!(most > LEAST_MM)) faint.push(`${bone} ${each.name} ${kind}: ${most.toFixed(3)} mm`);
      }
    spy.mockRestore();
  }
  expect(count).toBeGreaterThan(170);
  expect(faint).toEqual([]);
}, 120_000);
