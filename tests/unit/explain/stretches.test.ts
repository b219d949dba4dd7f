/** Where beam theory speaks and where not: the two meet, and nothing of the bone is left between. */
import { expect, test } from 'vitest';
import { plateauAsTold, plateauInBands, spokenStretch, stretchesOf } from '../../../src/explain/stretches';
import type { StationTable } from '../../../src/mechanics/types';

const station = (sMm: number, outsideBeamTheory: boolean, tensionMPa = 0) => ({ sMm, outsideBeamTheory, tensionMPa });
const bone = [station(2, true), station(4, true), station(6, false, 10), station(8, false, 9.5), station(10, true)];

test('stretches run from tip to head, border to border half-way between stations', () => {
  const found = stretchesOf(bone, 12);
  expect(found).toEqual([
    { outside: true, fromMm: 0, toMm: 5 },
    { outside: false, fromMm: 5, toMm: 9 },
    { outside: true, fromMm: 9, toMm: 12 },
  ]);
  expect(spokenStretch(found)).toEqual({ value: 5, unit: 'mm', lowHigh: [5, 9] });
  expect(stretchesOf([station(2, false), station(4, false)], 6)).toEqual([{ outside: false, fromMm: 0, toMm: 6 }]);
});

test('a plateau has the spread of the draws at either end, and the told end lies in it', () => {
  const ends = [
    { told: 6, low: 6.04, high: 9.96 },
    { told: 8, low: 6, high: 12 },
  ] as const;
  expect(plateauInBands({ plateauMm: ends })).toEqual({
    from: { value: 6, unit: 'mm', lowHigh: [6, 10] },
    to: { value: 8, unit: 'mm', lowHigh: [6, 12] },
  });
});

test('an end on which the draws agree to the millimetre has no spread', () => {
  const end = { told: 34.5, low: 34.51, high: 34.49 };
  expect(plateauInBands({ plateauMm: [end, end] }).from).toEqual({ value: 34.5, unit: 'mm' });
});

test('before the draws have come it is that of the told run, without a spread', () => {
  const table = { stations: bone, peakTension: { sMm: 6, mpa: 10, atEdgeOfTheory: true } } as unknown as StationTable;
  expect(plateauAsTold(table)).toEqual({ from: { value: 6, unit: 'mm' }, to: { value: 8, unit: 'mm' } });
});
