/** A preview is nearly the exact foot, and whatever is placed on it lies where it will lie. mm. */
import { beforeAll, describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, type Foot, type FootParameters, prepareAnatomy, previewFoot } from '../../../src/anatomy';
import { lookAlike } from '../../../src/anatomy/look-alikes';
import { regionsOf } from '../../../src/anatomy/regions';
import { zonesOf } from '../../../src/anatomy/zones';
import { length, subtract } from '../../../src/units';
import { builtFoot, shape } from '../../tools/built-foot';

const FEET: readonly Partial<FootParameters>[] = [
  { heelToSecondHeadMm: 130 },
  { heelToSecondHeadMm: 205 },
  { arch: 1 },
  { arch: -1, hindfootDeg: -6 },
  { adductusDeg: 25 },
  { halluxDeg: 12, firstRayMm: 4 },
];
let usual: Foot;
beforeAll(async () => {
  await prepareAnatomy();
  usual = builtFoot();
}, 60_000);

test('of the usual foot is the usual foot', () => {
  const same = previewFoot(shape, usual, { ...DEFAULT_FOOT });
  for (const [bone, mesh] of usual.bones) {
    const other = same.bones.get(bone)?.positions ?? new Float32Array();
    expect(Math.max(...mesh.positions.map((p, i) => Math.abs(p - (other[i] ?? 1e9)))), bone).toBeLessThan(0.01);
  }
});

describe.each(FEET)('%o', (changed) => {
  const parameters = { ...DEFAULT_FOOT, ...changed };
  let preview: Foot;
  let exact: Foot;
  beforeAll(() => {
    preview = previewFoot(shape, usual, parameters);
    exact = builtFoot(changed);
  });
  /** Surfaces are off by this share of H at most: 2 mm of the reference foot. */
  const near = () => (2 * parameters.heelToSecondHeadMm) / shape.scale.referenceHMm;

  test('vertices lie within 2 mm of the exact ones, joints where they are', () => {
    for (const [bone, mesh] of exact.bones) {
      const other = preview.bones.get(bone)?.positions ?? new Float32Array();
      expect(Math.max(...mesh.positions.map((p, i) => Math.abs(p - (other[i] ?? 1e9)))), bone).toBeLessThan(near());
    }
    for (const [id, joint] of exact.joints)
      expect(length(subtract(joint.centre, preview.joints.get(id)?.centre ?? [1e9, 0, 0])), id).toBeLessThan(1e-9);
  });

  test('zones, regions and look-alikes are found where the exact foot has them', () => {
    const [zones, found] = [zonesOf(exact), zonesOf(preview)];
    expect(found.map(({ region }) => region)).toEqual(zones.map(({ region }) => region));
    for (const [i, zone] of zones.entries()) expect(Math.abs((found[i]?.toMm ?? 1e9) - zone.toMm)).toBeLessThan(near());
    const regions = new Map(regionsOf(preview).map((region) => [region.id, region]));
    for (const region of regionsOf(exact))
      expect(length(subtract(region.centre, regions.get(region.id)?.centre ?? [1e9, 0, 0])), region.id).toBeLessThan(
        1.5 * near(),
      );
    for (const { id } of shape.lookAlikes)
      expect(length(subtract(lookAlike(preview, id).at, lookAlike(exact, id).at)), id).toBeLessThan(1.5 * near());
  });
});
