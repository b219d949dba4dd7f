import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Zone } from '../../../src/anatomy/types';
import { idOf, type RegionId, type VesselId } from '../../../src/ids';
import { FEEDING_STATES, type FeedingTable, feedingOf, type VesselLike } from '../../../src/perfusion';

const region = (name: string) => idOf<RegionId>(`mt5-${name}`);
const zone = (name: string, fromMm: number, toMm: number): Zone => ({ region: region(name), fromMm, toMm });
const zones = [
  zone('zone-1', 0, 15),
  zone('zone-2', 15, 28),
  zone('zone-3', 28, 43),
  zone('shaft', 43, 57),
  zone('head', 57, 70),
];
const FORAMEN = 41.8;

const vessel = (id: string, enters: string, main: string[], others: string[], net = false): VesselLike => ({
  id: idOf<VesselId>(id),
  bone: 'metatarsal5',
  enters: region(enters),
  feeds: [
    ...main.map((r) => ({ region: region(r), main: true })),
    ...others.map((r) => ({ region: region(r), main: false })),
  ],
  net,
});
const inner = [
  vessel('nutrient', 'foramen-nutrient', ['zone-2', 'zone-3', 'shaft'], ['head']),
  vessel('metaphyseal', 'zone-1', ['zone-1'], ['zone-2']),
  vessel('capital', 'head', ['head'], []),
];
const net = vessel('periosteal', 'shaft', [], ['zone-1', 'zone-2', 'zone-3', 'shaft', 'head'], true);
const vessels = [...inner, net];
const at = (sMm: number | null, of = vessels): FeedingTable =>
  feedingOf(zones, of, sMm === null ? null : { sMm }, () => FORAMEN);
const told = (table: FeedingTable) =>
  table.parts.map((p) => `${p.region.slice(4)} ${p.fromMm}-${p.toMm} ${p.state} [${p.remaining.join(' ')}]`);

describe('what a break leaves of the feeding of the fifth metatarsal, worked by hand', () => {
  test('the whole bone is fed as before, main feeder first', () => {
    expect(at(null).parts.every((p) => p.state === 'asBefore')).toBe(true);
    expect(at(null).parts[1]?.feeders).toEqual(['nutrient', 'metaphyseal', 'periosteal']);
  });

  test('zone 1: both sides keep vessels of the base, and no part loses its main feeder', () => {
    // The base's vessels enter all over zone 1, so that the tip and the rest both keep some. A break does not come
    // between the foramen and anything the nutrient artery feeds, and zone 2 still has the entries distal to the break.
    expect(told(at(8))).toEqual([
      'zone-1 0-8 asBefore [metaphyseal periosteal]',
      'zone-1 8-15 asBefore [metaphyseal periosteal]',
      'zone-2 15-28 asBefore [nutrient metaphyseal periosteal]',
      'zone-3 28-43 asBefore [nutrient periosteal]',
      'shaft 43-57 asBefore [nutrient periosteal]',
      'head 57-70 asBefore [capital nutrient periosteal]',
    ]);
  });

  test('zone 2: the proximal piece loses the nutrient artery and lives on its borders', () => {
    expect(told(at(20))).toEqual([
      'zone-1 0-15 asBefore [metaphyseal periosteal]',
      'zone-2 15-20 borderOnly [metaphyseal periosteal]',
      'zone-2 20-28 asBefore [nutrient periosteal]',
      'zone-3 28-43 asBefore [nutrient periosteal]',
      'shaft 43-57 asBefore [nutrient periosteal]',
      'head 57-70 asBefore [capital nutrient periosteal]',
    ]);
  });

  test('zone 3, proximal to the foramen: zone 2 and the stump of zone 3 lose the nutrient artery', () => {
    expect(told(at(33))).toEqual([
      'zone-1 0-15 asBefore [metaphyseal periosteal]',
      'zone-2 15-28 borderOnly [metaphyseal periosteal]',
      'zone-3 28-33 borderOnly [periosteal]',
      'zone-3 33-43 asBefore [nutrient periosteal]',
      'shaft 43-57 asBefore [nutrient periosteal]',
      'head 57-70 asBefore [capital nutrient periosteal]',
    ]);
  });

  test('shaft, distal to the foramen: the distal stump loses it, base and head do not suffer', () => {
    expect(told(at(50))).toEqual([
      'zone-1 0-15 asBefore [metaphyseal periosteal]',
      'zone-2 15-28 asBefore [nutrient metaphyseal periosteal]',
      'zone-3 28-43 asBefore [nutrient periosteal]',
      'shaft 43-50 asBefore [nutrient periosteal]',
      'shaft 50-57 borderOnly [periosteal]',
      'head 57-70 asBefore [capital periosteal]',
    ]);
  });

  test('without the surface net the stump of zone 3 has nothing we know of', () => {
    expect(told(at(33, inner))[2]).toBe('zone-3 28-33 none []');
  });

  test('a second feeder of its own makes it: main feeder cut, others remain', () => {
    const second = vessel('accessory', 'zone-2', [], ['zone-2']);
    expect(told(at(20, [...inner, second]))[1]).toBe('zone-2 15-20 mainCut [metaphyseal accessory]');
  });

  test('a break through the foramen takes the nutrient artery from both sides', () => {
    for (const p of at(FORAMEN).parts) expect(p.remaining).not.toContain('nutrient');
  });

  test('the border between the territories is drawn over zone 2', () => {
    expect(at(null).borderMm).toEqual({ sMm: 21.5, halfWidthMm: 6.5 });
    expect(at(20).borderMm).toEqual({ sMm: 21.5, halfWidthMm: 6.5 });
    expect(
      at(
        null,
        [inner[2], net].filter((v) => v !== undefined),
      ).borderMm,
    ).toBeNull();
  });
});

describe('whatever the break and the vessels', () => {
  const station = fc.double({ min: -5, max: 75, noNaN: true });
  const names = ['zone-1', 'zone-2', 'zone-3', 'shaft', 'head'];
  const anyVessel = fc
    .record({
      enters: fc.constantFrom(...names, 'foramen-nutrient'),
      main: fc.subarray(names),
      others: fc.subarray(names),
      net: fc.boolean(),
    })
    .map((v) => ({ ...v, others: v.others.filter((r) => !v.main.includes(r)) }));
  const anyVessels = fc
    .array(anyVessel, { maxLength: 5 })
    .map((list) => list.map((v, i) => vessel(`v${i}`, v.enters, v.main, v.others, v.net)));
  const rank = (state: string) => FEEDING_STATES.indexOf(state as (typeof FEEDING_STATES)[number]);

  test('parts tile the bone once', () => {
    fc.assert(
      fc.property(station, anyVessels, (s, list) => {
        const { parts } = at(s, list);
        expect(parts[0]?.fromMm).toBe(0);
        expect(parts.at(-1)?.toMm).toBe(70);
        for (const [i, p] of parts.entries()) if (i > 0) expect(p.fromMm).toBe(parts[i - 1]?.toMm);
      }),
    );
  });

  test('a break never brings a feeder, and never makes a part better fed than the whole bone', () => {
    fc.assert(
      fc.property(station, anyVessels, (s, list) => {
        const whole = at(null, list);
        for (const p of at(s, list).parts) {
          const before = whole.parts.find((w) => w.region === p.region);
          for (const v of p.remaining) expect(before?.remaining).toContain(v);
          expect(rank(p.state)).toBeGreaterThanOrEqual(rank(before?.state ?? 'none'));
        }
      }),
    );
  });

  test('losing a secondary vessel as well never makes a part better fed', () => {
    fc.assert(
      fc.property(station, anyVessels, fc.nat(4), (s, list, k) => {
        const lost = list[k];
        fc.pre(lost !== undefined && !lost.feeds.some((f) => f.main));
        const fewer = at(
          s,
          list.filter((v) => v !== lost),
        );
        for (const [i, p] of at(s, list).parts.entries()) {
          expect(rank(fewer.parts[i]?.state ?? 'none')).toBeGreaterThanOrEqual(rank(p.state));
        }
      }),
    );
  });

  test('turning the bone end for end turns the answer', () => {
    const flipped = [...zones].reverse().map((z) => ({ region: z.region, fromMm: 70 - z.toMm, toMm: 70 - z.fromMm }));
    // Quarters of a millimetre, so that turning the bone rounds nothing.
    const quarter = fc.integer({ min: -20, max: 300 }).map((n) => n / 4);
    fc.assert(
      fc.property(quarter, anyVessels, (s, list) => {
        const there = feedingOf(zones, list, { sMm: s }, () => 41.75).parts.map(
          (p) => `${p.region} ${p.state} ${p.remaining}`,
        );
        const back = feedingOf(flipped, list, { sMm: 70 - s }, () => 70 - 41.75).parts.map(
          (p) => `${p.region} ${p.state} ${p.remaining}`,
        );
        expect(back.reverse()).toEqual(there);
      }),
    );
  });
});
