/** The border of a region as it is drawn: on the surface, where the region ends, and as long as its ellipse is round. */
import { beforeAll, describe, expect, test } from 'vitest';
import { type Foot, prepareAnatomy, regionsOf } from '../../../src/anatomy';
import { outlineOfRegion } from '../../../src/anatomy/region-outline';
import { add, length, normalize, scale, subtract, type Vec3 } from '../../../src/units';
import { builtFoot, shape } from '../../tools/built-foot';
import { closestOn } from '../../tools/surface';

const SPOTS = shape.regions.patches.filter(({ kind }) => kind === 'spot');
let foot: Foot;
beforeAll(async () => {
  await prepareAnatomy();
  foot = builtFoot();
}, 60_000);

const drawn = (id: string) => {
  const region = regionsOf(foot).find((r) => r.id === id);
  const mesh = region === undefined ? undefined : foot.bones.get(region.bone);
  if (region === undefined || mesh === undefined) throw new Error(id);
  return { region, mesh, lines: outlineOfRegion(mesh, region) };
};

describe.each(SPOTS.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  test('lies on the bone, with the region on one side of it and not on the other', () => {
    const { region, mesh, lines } = drawn(id);
    expect(lines.length).toBeGreaterThan(10);
    for (const [a, b] of lines as readonly (readonly [Vec3, Vec3])[]) {
      const middle = scale(add(a, b), 0.5);
      expect(length(subtract(closestOn(mesh, middle), middle))).toBeLessThan(0.05);
      const out = normalize(subtract(a, region.centre));
      expect(region.contains(subtract(a, scale(out, 0.4)))).toBe(true);
      expect(region.contains(add(a, scale(out, 0.4)))).toBe(false);
    }
  });

  test('is as long as its ellipse is round, within a quarter', () => {
    const { lines } = drawn(id);
    const long = lines.reduce((sum, [a, b]) => sum + (a && b ? length(subtract(a, b)) : 0), 0);
    const [x, y] = [(rule.size[0] * foot.reference.scale) / 2, (rule.size[1] * foot.reference.scale) / 2];
    // Ramanujan's approximation of the perimeter of an ellipse.
    const round = Math.PI * (3 * (x + y) - Math.sqrt((3 * x + y) * (x + 3 * y)));
    expect(long / round).toBeGreaterThan(0.75);
    expect(long / round).toBeLessThan(1.25);
  });
});

test('a part of a bone is outlined at its ends', () => {
  const { lines, region } = drawn('mt5-zone-2');
  const [from, to] = region.spanMm ?? [0, 0];
  expect(to - from).toBeGreaterThan(3);
  expect(lines.length).toBeGreaterThan(20);
});
