/** The table of dates: weeks from the start, chances by the forecast, and no chance that is rounded to none or to all. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { idOf, type OptionId } from '../../../src/ids';
import { chancePercent, chanceWords } from '../../../src/pages/back/chance-words';
import { fixtureTable } from '../../../src/pages/back/fixture-rows';
import { makeSay } from '../../../src/pages/words';
import { chanceBy, type Forecast } from '../../../src/recovery';
import type { IsoDate } from '../../../src/units';

const say = makeSay(readContent().words);
const at = (on: string, name = 'match') => ({ on: on as IsoDate, name });
const START = '2026-09-14' as IsoDate;
const FORECAST: Forecast = {
  endpoint: 'match play',
  option: idOf<OptionId>('screw'),
  branches: [
    { name: 'uneventful', chance: 0.8, time: { mu: Math.log(12), sigma: 0.3 } },
    { name: 'problem', chance: 0.12, time: null },
    { name: 'notReturned', chance: 0.08, time: null },
  ],
  afterWeek: 0,
};

describe('rows', () => {
  const fixtures = [at('2026-09-10'), at('2026-09-14'), at('2026-12-10'), at('2026-12-10'), at('2027-02-01')];
  const { rows, missed } = fixtureTable(fixtures, START, FORECAST);

  test('count weeks from the start, parts of weeks too', () => {
    expect(rows.map(({ week }) => week)).toEqual([-4 / 7, 0, 87 / 7, 87 / 7, 20]);
  });

  test('have each the chance of its own week, and none before the start', () => {
    expect(rows.map(({ chance }) => chance)).toEqual([
      null,
      0,
      chanceBy(FORECAST, 87 / 7),
      chanceBy(FORECAST, 87 / 7),
      chanceBy(FORECAST, 20),
    ]);
  });

  test('count as missed only what lies after the start', () => {
    expect(missed?.of).toBe(4);
  });

  test('have keys of their own where a day and a name stand twice', () => {
    expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length);
  });

  test('have no week without a start and no chance without a forecast', () => {
    const noStart = fixtureTable(fixtures, null, FORECAST);
    expect(noStart.rows.every(({ week, chance }) => week === null && chance === null)).toBe(true);
    expect(noStart.missed).toBeNull();
    const noForecast = fixtureTable(fixtures, START, null);
    expect(noForecast.rows.every(({ week, chance }) => week !== null && chance === null)).toBe(true);
    expect(noForecast.missed).toBeNull();
  });
});

describe('a chance in words', () => {
  test.each([
    [0, 'No, as is known', '0 %'],
    [0.001, 'Fewer than 1 of 10', 'under 1 %'],
    [0.041, 'Fewer than 1 of 10', '4 %'],
    [0.05, 'About 1 of 10', '5 %'],
    [0.41, 'About 4 of 10', '41 %'],
    [0.949, 'About 9 of 10', '95 %'],
    [0.95, 'More than 9 of 10', '95 %'],
    [0.9999, 'More than 9 of 10', '99 %'],
  ])('%d', (chance, words, percent) => {
    expect(chanceWords(say, chance)).toBe(words);
    expect(chancePercent(say, chance)).toBe(percent);
  });

  test('is never "none" or "all" for what is between', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }), (chance) => {
        expect(chancePercent(say, chance)).not.toMatch(/^(0|100) %$/);
        expect(chanceWords(say, chance)).not.toMatch(/\b(0|10) of 10|^No/);
      }),
    );
  });
});
