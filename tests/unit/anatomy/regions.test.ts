import { describe, expect, test } from 'vitest';
import { boneAxis, inBone, stationOf } from '../../../src/anatomy/bone-axis';
import { MT5 } from '../../../src/anatomy/region-names';
import { regionsOf } from '../../../src/anatomy/regions';
import type { Vec3 } from '../../../src/units';
import { mirrored, tubeFoot } from '../../tools/tubes';

const foot = tubeFoot();
const axis = boneAxis(foot, 'metatarsal5');
const regions = regionsOf(foot);
const regionOf = (id: string) => {
  const region = regions.find((r) => r.id === id);
  if (!region) throw new Error(`no region ${id}`);
  return region;
};
const spanOf = (id: string): readonly [number, number] => regionOf(id).spanMm ?? [Number.NaN, Number.NaN];
const surface: Vec3[] = [];
const { positions } = foot.bones.get('metatarsal5') ?? { positions: new Float32Array() };
for (let i = 0; i < positions.length; i += 3) {
  surface.push([positions[i] ?? 0, positions[i + 1] ?? 0, positions[i + 2] ?? 0]);
}

describe('regionsOf', () => {
  test('ids are unique and well-formed', () => {
    const ids = regions.map((r) => r.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/);
  });

  test('every surface point of the bone lies in exactly one zone', () => {
    const zones = regions.filter((r) => r.kind === 'zone');
    for (const p of surface) expect(zones.filter((z) => z.contains(p))).toHaveLength(1);
  });

  test('both bones of a joint have its facet', () => {
    expect(regionOf('metatarsal4-facet-metatarsal5').bone).toBe('metatarsal4');
    expect(regionOf('mt5-facet-mt4').bone).toBe('metatarsal5');
  });

  test('footprints contain their centre, which lies on the surface, and not the far side of the bone', () => {
    for (const id of [MT5.brevis, MT5.tertius, MT5.aponeurosis, MT5.foramen]) {
      const region = regionOf(id);
      expect(region.contains(region.centre)).toBe(true);
      const c = inBone(axis, region.centre);
      expect(Math.hypot(c.dorsalMm, c.lateralMm)).toBeGreaterThan(4);
      const far: Vec3 = [
        region.centre[0] - 2 * (axis.dorsal[0] * c.dorsalMm + axis.lateral[0] * c.lateralMm),
        region.centre[1] - 2 * (axis.dorsal[1] * c.dorsalMm + axis.lateral[1] * c.lateralMm),
        region.centre[2],
      ];
      expect(region.contains(far)).toBe(false);
    }
  });

  test('brevis ends dorsal and lateral in zone 1, the lateral band plantar, tertius on the border', () => {
    const brevis = inBone(axis, regionOf(MT5.brevis).centre);
    expect(brevis.dorsalMm).toBeGreaterThan(0);
    expect(brevis.lateralMm).toBeGreaterThan(0);
    expect(brevis.sMm).toBeLessThan(spanOf(MT5.zone1)[1]);
    expect(inBone(axis, regionOf(MT5.aponeurosis).centre).dorsalMm).toBeLessThan(0);
    const [from, to] = spanOf(MT5.tertius);
    const [, border] = spanOf(MT5.zone1);
    expect(from).toBeLessThan(border);
    expect(to).toBeGreaterThan(border);
  });

  test('the foramen lies plantar and medial, 19 to 40 mm from the medial base', () => {
    const foramen = inBone(axis, regionOf(MT5.foramen).centre);
    expect(foramen.dorsalMm).toBeLessThan(0);
    expect(foramen.lateralMm).toBeLessThan(0);
    const fromBase = foramen.sMm - spanOf(MT5.zone1)[1];
    expect(fromBase).toBeGreaterThanOrEqual(19);
    expect(fromBase).toBeLessThanOrEqual(40);
  });

  test('do not depend on the triangulation', () => {
    const coarse = regionsOf(tubeFoot({ around: 32, along: 20 }));
    for (const r of regions) {
      const other = coarse.find((c) => c.id === r.id);
      for (const i of [0, 1, 2] as const) expect(Math.abs((other?.centre[i] ?? 0) - r.centre[i])).toBeLessThan(0.3);
    }
  });

  test('the mirrored foot has the mirrored regions', () => {
    for (const r of regionsOf(mirrored(foot))) {
      const other = regionOf(r.id);
      expect(r.centre[0]).toBeCloseTo(-other.centre[0], 4);
      expect(r.centre[2]).toBeCloseTo(other.centre[2], 4);
      for (const p of surface) {
        // Points on a rim may fall either way in single precision; stay clear of it by asking near the centre only.
        if (Math.abs(stationOf(axis, p) - stationOf(axis, other.centre)) > 1) continue;
        expect(r.contains([-p[0], p[1], p[2]])).toBe(other.contains(p));
      }
    }
  });
});
