/** Where forces are only more and less, the table of stations has no newtons: stress stays, as a multiple. */
import { expect, test } from 'vitest';
import { columnsFor, STATION_COLUMNS } from '../../../../src/pages/how/strips';

test('forces leave the table where they have no sizes, and stress stays', () => {
  expect(columnsFor(true).map(({ key }) => key)).toEqual(['tension', 'compression']);
  expect(columnsFor(false)).toEqual(STATION_COLUMNS);
});
