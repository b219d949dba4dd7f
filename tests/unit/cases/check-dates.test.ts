import { expect, test } from 'vitest';
import { type CaseFile, checkDates, readCase } from '../../../src/cases';
import type { IsoDate } from '../../../src/units';

const TODAY = '2026-11-29' as IsoDate;
const caseWith = (more: object, of: object = {}): CaseFile =>
  ({
    format: 'underfoot-case',
    version: 3,
    id: 'a-case',
    claims: [{ id: 'c1', status: 'reported', source: { kind: 'person' }, ...more }],
    forecasts: [],
    fixtures: [],
    ...of,
  }) as unknown as CaseFile;
const injured = (value: string, of: object = {}) => caseWith({ subject: 'injuryDate', value }, of);

test.each([
  ['an injury of tomorrow', injured('2026-11-30'), 'claims[0].value'],
  [
    'a finding of next year',
    caseWith({ subject: 'followUp', value: { finding: 'tender', on: '2027-01-01' } }),
    'claims[0].value.on',
  ],
  [
    'an outcome of tomorrow',
    caseWith({ subject: 'outcome', value: { endpoint: 'union', result: 'reached', on: '2026-11-30' } }),
    'claims[0].value.on',
  ],
  [
    'a report of tomorrow',
    caseWith({ subject: 'side', value: 'left', source: { kind: 'team', on: '2026-11-30' } }),
    'claims[0].source.on',
  ],
])('%s is refused with what, where and what to do', (_, file, where) => {
  const [problem, ...others] = checkDates(file, TODAY);
  expect(others).toEqual([]);
  expect(problem).toMatchObject({ code: 'futureDate', where });
  expect(problem?.what).toContain(TODAY);
  expect(problem?.what).not.toMatch(/[{}]/);
  expect(problem?.remedy).toMatch(/Correct the date/);
});

const given = (madeOn: string | null, start: string | null) =>
  injured('2026-11-29', { forecasts: [{ madeOn, start }] });

test('a forecast that was made tomorrow is refused by its place', () => {
  const [problem, ...others] = checkDates(given('2026-11-30', null), TODAY);
  expect(others).toEqual([]);
  expect(problem).toMatchObject({ code: 'futureForecast', where: 'forecasts[0].madeOn' });
  expect(problem?.what).toContain('2026-11-30');
  expect(problem?.what).not.toMatch(/[{}]/);
});

test.each([
  ['a forecast of today that counts from a planned day', given('2026-11-29', '2026-12-24')],
  ['a forecast of no known day', given(null, null)],
  ['a fixture', injured('2026-11-29', { fixtures: [{ on: '2027-01-01', name: 'x' }] })],
  ['an injury of today', injured('2026-11-29')],
  ['a treatment that is planned', caseWith({ subject: 'treatment', value: { option: 'screw', on: '2026-12-24' } })],
  ['an invented example', injured('2027-01-01', { demo: { invented: true, scenario: 'x' } })],
])('%s is not', (_, file) => {
  expect(checkDates(file, TODAY)).toEqual([]);
});

test('no criterion is met on a day to come', () => {
  const ticked = (on: string) => {
    const notes = { struck: [], met: [{ criterion: 'bone-united', on }], weeks: null, sharePercent: null, note: null };
    const file = readCase(
      JSON.stringify({
        format: 'underfoot-case',
        version: 3,
        id: 'a-case',
        claims: [],
        forecasts: [],
        clinic: { stage: null, stages: { run: notes }, answers: {} },
        fixtures: [],
      }),
    );
    if (!file.ok) throw new Error(file.problem.what);
    return checkDates(file.file, '2026-11-02' as IsoDate).map(({ where }) => where);
  };
  expect(ticked('2026-11-02')).toEqual([]);
  expect(ticked('2026-11-03')).toEqual(['clinic.stages.run.met[0].on']);
});
