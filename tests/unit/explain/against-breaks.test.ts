/** Where the pull lies is told only where four fifths of the draws say what the told values say. */
import { expect, test } from 'vitest';
import { judged, type PlaceSaid, partsUnder } from '../../../src/explain/against-breaks';
import { idOf, type RegionId } from '../../../src/ids';

const [there, elsewhere] = [idOf<RegionId>('mt5-zone-3'), idOf<RegionId>('mt5-shaft')];
const inside: PlaceSaid = { parts: [there], carries: true, edge: true };
const outside: PlaceSaid = { parts: [elsewhere], carries: false, edge: false };
const of = (inDraws: number, outDraws: number): PlaceSaid[] => [
  ...Array.from({ length: inDraws }, () => inside),
  ...Array.from({ length: outDraws }, () => outside),
];

test('four fifths are enough, one draw less is not', () => {
  expect(judged(inside, of(8, 2), 10)).toMatchObject({
    verdict: 'pullAgrees',
    agreed: { share: { value: 0.8 }, enough: true },
    parts: [there],
    perhaps: [],
    edge: true,
  });
  expect(judged(inside, of(7, 3), 10)).toMatchObject({
    verdict: 'pullUnsure',
    parts: [],
    perhaps: [there, elsewhere],
    edge: false,
  });
  expect(judged(outside, of(2, 8), 10)).toMatchObject({ verdict: 'pullDisagrees', parts: [elsewhere], edge: false });
});

test('what nearly all draws say against the told run is what is stated, and that this run stands alone', () => {
  expect(judged(inside, of(2, 8), 10)).toMatchObject({
    verdict: 'pullDisagrees',
    agreed: { share: { value: 0.8 }, enough: true, contrary: true },
    parts: [elsewhere],
  });
  expect(judged(outside, of(9, 1), 10)).toMatchObject({ verdict: 'pullAgrees', agreed: { contrary: true } });
  expect(judged(outside, of(8, 2), 10).agreed.contrary).toBe(true);
  expect(judged(inside, of(8, 2), 10).agreed.contrary).toBeUndefined();
});

test('draws without an answer agree with nothing, nor with its contrary', () => {
  expect(judged(inside, of(7, 0), 10)).toMatchObject({ verdict: 'pullUnsure', agreed: { share: { value: 0.7 } } });
  expect(judged(outside, of(7, 0), 10)).toMatchObject({ verdict: 'pullUnsure', agreed: { share: { value: 0 } } });
});

test('a stretch is in every part that it covers by more than a station, not only in that of its peak', () => {
  expect(partsUnder([there, elsewhere, elsewhere], there)).toEqual([there, elsewhere]);
  expect(partsUnder([there, there, elsewhere], there)).toEqual([there]);
  expect(partsUnder([there, elsewhere], elsewhere)).toEqual([elsewhere]);
  expect(partsUnder([null, null], null)).toEqual([]);
  const both: PlaceSaid = { ...inside, parts: [there, elsewhere] };
  expect(judged(both, [...Array(8).fill(both), ...of(2, 0)], 10).parts).toEqual([there, elsewhere]);
  expect(judged(both, [...Array(5).fill(both), ...of(5, 0)], 10)).toMatchObject({
    parts: [there],
    perhaps: [elsewhere],
  });
});
