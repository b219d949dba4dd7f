/** An alarm for dead parameters: every named value of a bone, a third more or less, must move its surface. */
import { expect, test } from 'vitest';
import { buildBone, DEFAULT_FOOT, prepareAnatomy } from '../../src/anatomy';
import { boneField, boneShapeOf } from '../../src/anatomy/bone-field';
import type { Shape } from '../../src/anatomy/shape';
import { readShape } from '../../src/cli/read-shape';
import type { SkeletonId } from '../../src/ids';
import { spread } from './surface';

const shape = readShape();
const PARTS = ['hindfoot', 'midfoot', 'metatarsals', 'toes', 'leg'] as const;

const changed = (bone: SkeletonId, name: string, value: number): Shape => {
  const part = PARTS.find((p) => Object.hasOwn(shape[p], bone));
  if (part === undefined) throw new Error(`no values of ${bone}`);
  const bones = shape[part] as Readonly<Record<string, object>>;
  const values = { ...(boneShapeOf(shape, bone).values as object), [name]: value };
  return { ...shape, [part]: { ...bones, [bone]: { ...bones[bone], values } } } as Shape;
};

/** One test a value; `leastMm`: how far the surface must move somewhere. */
export const expectEveryValueToMatter = (bone: SkeletonId, leastMm: number): void => {
  const values = boneShapeOf(shape, bone).values as Readonly<Record<string, number>>;
  test.each(Object.entries(values))('%s', async (name, value) => {
    await prepareAnatomy();
    expect(value).not.toBe(0);
    const surface = spread(buildBone(shape, DEFAULT_FOOT, bone, 'asScanned', 'fine'), 1.5);
    const before = boneField(shape, bone).field;
    const moved = [1.33, 0.67].flatMap((k) => {
      const after = boneField(changed(bone, name, value * k), bone).field;
      return surface.map(({ at }) => Math.abs(after(...at) - before(...at)));
    });
    expect(moved.reduce((a, b) => Math.max(a, b))).toBeGreaterThan(leastMm);
  });
};
