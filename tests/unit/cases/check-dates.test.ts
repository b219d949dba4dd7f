import { expect, test } from 'vitest';
import { type CaseFile, checkDates } from '../../../src/cases';
import type { IsoDate } from '../../../src/units';

const TODAY = '2026-11-29' as IsoDate;
const caseWith = (more: object, of: object = {}): CaseFile =>
  ({
    format: 'underfoot-case',
    version: 1,
    id: 'a-case',
    claims: [{ id: 'c1', status: 'reported', source: { kind: 'person' }, ...more }],
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

test.each([
  ['an injury of today', injured('2026-11-29')],
  ['a treatment that is planned', caseWith({ subject: 'treatment', value: { option: 'screw', on: '2026-12-24' } })],
  ['an invented example', injured('2027-01-01', { demo: { invented: true, scenario: 'x' } })],
])('%s is not', (_, file) => {
  expect(checkDates(file, TODAY)).toEqual([]);
});
