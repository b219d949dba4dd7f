import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boneAxis, fromBone } from '../../../src/anatomy/bone-axis';
import { zoneAt, zonesOf } from '../../../src/anatomy/zones';
import { mirrored, tubeFoot } from '../../tools/tubes';

describe('zones of the fifth metatarsal', () => {
  const foot = tubeFoot();
  const zones = zonesOf(foot);

  test('tile the bone once, tip to head', () => {
    expect(zones.map((z) => z.region)).toEqual(['mt5-zone-1', 'mt5-zone-2', 'mt5-zone-3', 'mt5-shaft', 'mt5-head']);
    expect(zones[0]?.fromMm).toBe(0);
    for (const [i, z] of zones.slice(1).entries()) expect(z.fromMm).toBe(zones[i]?.toMm);
    expect(zones.at(-1)?.toMm).toBeCloseTo(70, 4);
  });

  test('borders are the edges of the 4-5 facet, then 15 mm', () => {
    expect(zones[0]?.toMm).toBeCloseTo(18, 3);
    expect(zones[1]?.toMm).toBeCloseTo(30, 3);
    expect(zones[2]?.toMm).toBeCloseTo(45, 3);
  });

  test('follow the facet when it moves', () => {
    const joints = new Map(
      [...foot.joints].map(([id, j]) => [id, { ...j, centre: [j.centre[0], 12, j.centre[2] + 4] as const }]),
    );
    const moved = zonesOf({ ...foot, joints });
    expect((moved[0]?.toMm ?? 0) - (zones[0]?.toMm ?? 0)).toBeCloseTo(4, 6);
    expect((moved[2]?.toMm ?? 0) - (zones[2]?.toMm ?? 0)).toBeCloseTo(4, 6);
  });

  test('every station lies in exactly one zone, and a station off the bone in none', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 70, noNaN: true }), (s) => {
        const within = zones.filter((z) => s >= z.fromMm && s < z.toMm);
        fc.pre(s < (zones.at(-1)?.toMm ?? 0));
        expect(within).toHaveLength(1);
        expect(zoneAt(zones, s)).toBe(within[0]?.region);
      }),
    );
    expect(zoneAt(zones, -0.1)).toBeNull();
    expect(zoneAt(zones, 71)).toBeNull();
    expect(zoneAt(zones, zones.at(-1)?.toMm ?? 0)).toBe('mt5-head');
  });

  test('are the same on the mirrored foot', () => {
    zonesOf(mirrored(foot)).forEach((z, i) => {
      expect(z.region).toBe(zones[i]?.region);
      expect(z.toMm).toBeCloseTo(zones[i]?.toMm ?? 0, 5);
    });
  });

  test('a facet beyond the head is an error, not a zone of negative length', () => {
    const axis = boneAxis(foot, 'metatarsal5');
    const joints = new Map([...foot.joints].map(([id, j]) => [id, { ...j, centre: fromBone(axis, 66) }]));
    expect(() => zonesOf({ ...foot, joints })).toThrow('mt5-shaft');
  });
});
