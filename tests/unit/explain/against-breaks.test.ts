/** Where the pull lies is told only where four fifths of the draws say what the told values say. */
import { expect, test } from 'vitest';
import { judged, type PlaceSaid } from '../../../src/explain/against-breaks';
import { idOf, type RegionId } from '../../../src/ids';

const [there, elsewhere] = [idOf<RegionId>('mt5-zone-3'), idOf<RegionId>('mt5-shaft')];
const inside: PlaceSaid = { peakRegion: there, carries: true, edge: true };
const outside: PlaceSaid = { peakRegion: elsewhere, carries: false, edge: false };
const of = (inDraws: number, outDraws: number): PlaceSaid[] => [
  ...Array.from({ length: inDraws }, () => inside),
  ...Array.from({ length: outDraws }, () => outside),
];

test('four fifths are enough, one draw less is not', () => {
  expect(judged(inside, of(8, 2), 10)).toMatchObject({
    verdict: 'pullAgrees',
    share: 0.8,
    peakRegion: there,
    edge: true,
  });
  expect(judged(inside, of(7, 3), 10)).toMatchObject({ verdict: 'pullUnsure', peakRegion: null, onePeak: false });
  expect(judged(outside, of(2, 8), 10)).toMatchObject({ verdict: 'pullDisagrees', peakRegion: elsewhere, edge: false });
});

test('a told run that nearly all draws contradict is no statement either', () => {
  expect(judged(inside, of(1, 9), 10).verdict).toBe('pullUnsure');
});

test('draws without an answer agree with nothing', () => {
  expect(judged(inside, of(7, 0), 10)).toMatchObject({ verdict: 'pullUnsure', share: 0.7 });
});
