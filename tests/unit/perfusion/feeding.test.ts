/** What a break leaves of a bar's feeding, worked by hand, and what holds whatever the break and the vessels. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FEEDING_STATES, type FeedingTable, feedingOf, type VesselNode } from '../../../src/perfusion';
import { type Asked, BAR, fed, inputOf, place, vessel, vesselId, ZONES } from '../../tools/fed-bar';

/** Entries as in the fifth metatarsal: hole at 41.8, base all over zone 1 (to 15), head all over the head (from 57). */
const FORAMEN = 41.8;
const nutrient = vessel('nutrient', ['foramen']);
const metaphyseal = vessel('metaphyseal', ['zone-1']);
const capital = vessel('capital', ['head']);
const net = vessel('periosteal', [null]);
const vessels = [nutrient, metaphyseal, capital, net];
const places = [place('foramen', FORAMEN)];

const at = (breakMm: number | null, asked: Partial<Asked> = {}): FeedingTable =>
  fed({ vessels, places, breakMm, ...asked });
const told = (table: FeedingTable) =>
  table.parts.map(
    (p) => `${p.region} ${p.fromMm}-${p.toMm} ${p.state} [${p.remaining.join(' ')}] (${p.fromBorder.join(' ')})`,
  );

describe('what a break leaves of a bar fed like the fifth metatarsal, worked by hand', () => {
  test('borders lie half way between entries: (15 + 41.8) / 2 = 28.4 and (41.8 + 57) / 2 = 49.4', () => {
    const { borders } = at(null);
    expect(borders.map((b) => b.between.join(' '))).toEqual(['metaphyseal nutrient', 'nutrient capital']);
    // A cell is 0.87 mm; the far side of the bar, 6 mm across from the hole, is up to 0.7 mm farther from it.
    expect(borders[0]?.sMm).toBeGreaterThan(28.4 - 0.9);
    expect(borders[0]?.sMm).toBeLessThan(28.4 + 1.6);
    expect(borders[1]?.sMm).toBeGreaterThan(49.4 - 1.6);
    expect(borders[1]?.sMm).toBeLessThan(49.4 + 0.9);
  });

  test('the whole bar is fed as before, main feeder first, the net last', () => {
    expect(at(null).parts.every((p) => p.state === 'asBefore' && p.keeps === 1)).toBe(true);
    expect(at(null).parts.map((p) => p.feeders.join(' '))).toEqual([
      'metaphyseal periosteal',
      'metaphyseal periosteal',
      'nutrient periosteal',
      'capital nutrient periosteal',
      'capital periosteal',
    ]);
  });

  test('zone 1: both sides keep vessels of the base, and no part loses its main feeder', () => {
    expect(told(at(8))).toEqual([
      'zone-1 0-8 asBefore [metaphyseal periosteal] ()',
      'zone-1 8-15 asBefore [metaphyseal periosteal] ()',
      'zone-2 15-28 asBefore [metaphyseal periosteal] ()',
      'zone-3 28-43 asBefore [nutrient periosteal] ()',
      'shaft 43-57 asBefore [capital nutrient periosteal] ()',
      'head 57-70 asBefore [capital periosteal] ()',
    ]);
  });

  // While main feeders were written by hand (in zone 2 the nutrient artery, from memory), it was the piece behind the break that lived
  // on its borders. By the nearest entry the border lies at the end of zone 2, so that the piece ahead of the break is cut off.
  test('zone 2: the piece ahead of the break loses the base and lives on the nutrient artery next door', () => {
    expect(told(at(20))).toEqual([
      'zone-1 0-15 asBefore [metaphyseal periosteal] ()',
      'zone-2 15-20 asBefore [metaphyseal periosteal] ()',
      'zone-2 20-28 borderOnly [periosteal] (nutrient)',
      'zone-3 28-43 asBefore [nutrient periosteal] ()',
      'shaft 43-57 asBefore [capital nutrient periosteal] ()',
      'head 57-70 asBefore [capital periosteal] ()',
    ]);
  });

  test('zone 3, proximal to the foramen: the stump of zone 3 loses the nutrient artery', () => {
    expect(told(at(35))).toEqual([
      'zone-1 0-15 asBefore [metaphyseal periosteal] ()',
      'zone-2 15-28 asBefore [metaphyseal periosteal] ()',
      'zone-3 28-35 borderOnly [periosteal] (metaphyseal)',
      'zone-3 35-43 asBefore [nutrient periosteal] ()',
      'shaft 43-57 asBefore [capital nutrient periosteal] ()',
      'head 57-70 asBefore [capital periosteal] ()',
    ]);
  });

  test('shaft: beyond the border the head feeds, so a break there costs the stump nothing of its own', () => {
    expect(told(at(51)).slice(3)).toEqual([
      'shaft 43-51 asBefore [nutrient periosteal] ()',
      'shaft 51-57 asBefore [capital periosteal] ()',
      'head 57-70 asBefore [capital periosteal] ()',
    ]);
  });

  test('a source that names the nutrient artery the main feeder of the shaft wins: the same stump has lost it', () => {
    const named = [vessel('nutrient', ['foramen'], ['shaft']), metaphyseal, capital, net];
    const stump = at(51, { vessels: named }).parts[4];
    expect(stump).toMatchObject({ main: ['nutrient'], mainBy: 'source', state: 'mainCut' });
    expect(stump?.remaining).toEqual(['capital', 'periosteal']);
  });

  test('where two are named main feeders, losing one is losing main supply', () => {
    const two = [vessel('nutrient', ['foramen'], ['zone-3']), vessel('other', ['second'], ['zone-3']), capital];
    const asked = { vessels: two, places: [...places, place('second', 38)] };
    expect(fed(asked).parts[2]?.state).toBe('asBefore');
    expect(fed({ ...asked, cuts: ['other>second'] }).parts[2]?.state).toBe('mainCut');
  });

  test('without net and base nothing reaches the stump of zone 3', () => {
    const stump = at(35, { vessels: [nutrient, metaphyseal, capital], cuts: ['metaphyseal>zone-1'] }).parts[2];
    expect(stump).toMatchObject({ fromMm: 28, toMm: 35, state: 'none', remaining: [], fromBorder: [], keeps: 0 });
  });

  test('a break through the foramen takes the nutrient artery from both sides', () => {
    for (const p of at(FORAMEN).parts) expect(p.remaining).not.toContain('nutrient');
    expect(at(FORAMEN + 1.5).parts.some((p) => p.remaining.includes(vesselId('nutrient')))).toBe(true);
  });

  test('a part without vessels inside has none, before any break, and parts what lies on its sides', () => {
    const table = fed({ vessels: [capital], bare: ['zone-3'] });
    expect(table.parts.map((p) => p.state)).toEqual(['none', 'none', 'none', 'asBefore', 'asBefore']);
  });

  test('a piece thinner than a cell at the tip still has an answer: that of what enters all over its part', () => {
    expect(at(0.01).parts[0]).toMatchObject({ toMm: 0.01, state: 'asBefore' });
  });

  test('borders are those of the whole bar whatever the break, and none where a source says that all joins', () => {
    expect(at(20).borders).toEqual(at(null).borders);
    expect(feedingOf({ ...inputOf({ vessels, places }), joined: true }).borders).toEqual([]);
  });
});

describe('whatever the break and the vessels', () => {
  const station = fc.double({ min: -5, max: 75, noNaN: true });
  const names = ZONES.map((z) => z.region as string);
  const holes = [5, 22, 41.8, 50, 64].map((s, i) => place(`hole-${i}`, s, 'spot'));
  const entries: (string | null)[] = [...names, ...holes.map((h) => h.id as string), null];
  const anyVessels: fc.Arbitrary<VesselNode[]> = fc
    .array(
      fc.record({
        enters: fc.subarray(entries, { minLength: 1, maxLength: 3 }),
        said: fc.subarray(names, { maxLength: 2 }),
      }),
      {
        maxLength: 5,
      },
    )
    .map((list) => list.map((v, i) => vessel(`v${i}`, v.enters, v.said)));
  const rank = (state: string) => FEEDING_STATES.indexOf(state as (typeof FEEDING_STATES)[number]);
  const small = { places: holes, cells: 500 } as const;
  const edges = (list: readonly VesselNode[]) => list.flatMap((v) => v.ends.map((e) => `${v.id}>${e.at ?? e.bone}`));
  const runs = { numRuns: 60 };

  test('parts tile the bone once, and territories cover each part once', () => {
    fc.assert(
      fc.property(station, anyVessels, (s, list) => {
        const { parts } = fed({ vessels: list, breakMm: s, ...small });
        expect(parts[0]?.fromMm).toBe(0);
        expect(parts.at(-1)?.toMm).toBe(BAR.lengthMm);
        for (const [i, p] of parts.entries()) {
          if (i > 0) expect(p.fromMm).toBe(parts[i - 1]?.toMm);
          const covered = p.territories.reduce((sum, { share }) => sum + share, 0);
          const enters = list.some((v) => v.ends.some((e) => e.at !== null));
          expect(covered).toBeCloseTo(enters ? 1 : 0, 9);
        }
      }),
      runs,
    );
  });

  test('a break never brings a feeder, and never makes a part better fed than the whole bone', () => {
    fc.assert(
      fc.property(station, anyVessels, (s, list) => {
        for (const p of fed({ vessels: list, breakMm: s, ...small }).parts) {
          for (const v of p.remaining) expect(p.feeders).toContain(v);
          const uncut = p.feeders.length === 0 ? 'none' : 'asBefore';
          expect(rank(p.state)).toBeGreaterThanOrEqual(p.main.length === 0 ? 0 : rank(uncut));
        }
      }),
      runs,
    );
  });

  test('more cuts never feed more', () => {
    fc.assert(
      fc.property(
        station,
        anyVessels,
        fc.infiniteStream(fc.boolean()),
        fc.infiniteStream(fc.boolean()),
        (s, list, first, second) => {
          const few = edges(list).filter(() => first.next().value);
          const more = edges(list).filter((edge) => few.includes(edge) || second.next().value);
          const [a, b] = [few, more].map((cuts) => fed({ vessels: list, breakMm: s, cuts, ...small }).parts);
          for (const [i, p] of (a ?? []).entries()) {
            const after = b?.[i];
            expect(rank(after?.state ?? 'asBefore')).toBeGreaterThanOrEqual(rank(p.state));
            expect(after?.keeps).toBeLessThanOrEqual(p.keeps + 1e-12);
            for (const v of after?.remaining ?? []) expect(p.remaining).toContain(v);
          }
        },
      ),
      runs,
    );
  });

  test('turning the bar end for end turns the answer', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 69, noNaN: true }), anyVessels, (s, list) => {
        const parts = (turned: boolean) =>
          fed({ vessels: list, breakMm: s, turned, ...small }).parts.map((p) => ({
            region: p.region,
            state: p.state,
            keeps: p.keeps,
          }));
        const there = parts(false);
        for (const [i, p] of parts(true).reverse().entries()) {
          expect(p.region).toBe(there[i]?.region);
          expect(p.state).toBe(there[i]?.state);
          expect(p.keeps).toBeCloseTo(there[i]?.keeps ?? -1, 6);
        }
      }),
      runs,
    );
  });
});
