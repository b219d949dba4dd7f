/** What stands beside the claims in a case file: forecasts, the clinic's own protocol, fixtures. Bad ones are refused by their place. */
import { describe, expect, test } from 'vitest';
import { type CaseProblemCode, MAX_CASE_BYTES, readCase, writeCase } from '../../../src/cases';
import { MAX_DEPTH } from '../../../src/cases/read-case';
import { ENDPOINTS } from '../../../src/ids';

const FORECAST = {
  endpoint: 'training',
  option: 'screw',
  injury: 'mt5-metaphyseal',
  madeOn: '2026-09-14',
  start: null,
  atWeek: 0,
  branches: [
    { name: 'uneventful', chance: 0.8, time: { mu: 2, sigma: 0.4 } },
    { name: 'problem', chance: 0.15, time: null },
    { name: 'notReturned', chance: 0.05, time: null },
  ],
  studies: ['a-study', 'another-study'],
};
const MET = { criterion: 'runs-half-an-hour', on: '2026-11-02' };
const NOTES = {
  struck: ['towel'],
  met: [MET, { criterion: 'bone-united', on: null }],
  weeks: { from: 2, to: 6 },
  sharePercent: null,
  note: 'two sticks',
};
const CLINIC = { stage: 'run', stages: { run: NOTES }, answers: { driving: 'after the boot' } };

const caseWith = (more: object) => ({
  format: 'underfoot-case',
  version: 3,
  id: 'a-case',
  claims: [],
  forecasts: [],
  fixtures: [],
  ...more,
});
const forecast = (more: object) => caseWith({ forecasts: [{ ...FORECAST, ...more }] });
const branches = (...changes: object[]) =>
  forecast({ branches: FORECAST.branches.map((branch, i) => ({ ...branch, ...changes[i] })) });
const clinic = (more: object) => caseWith({ clinic: { ...CLINIC, ...more } });
const notes = (more: object) => clinic({ stages: { run: { ...NOTES, ...more } } });
const outcome = (value: object) =>
  caseWith({ claims: [{ id: 'c1', subject: 'outcome', value, status: 'reported', source: { kind: 'person' } }] });
const ENDED = { endpoint: 'union', result: 'reached', on: '2026-09-14' };
const many = (n: number, of: (i: number) => unknown) => Array.from({ length: n }, (_, i) => of(i));
const tableOf = (n: number, of: unknown) => Object.fromEntries(many(n, (i) => [`k${i}`, of]) as [string, unknown][]);

test.each([
  ['a forecast', forecast({})],
  ['a protocol', clinic({})],
  ['a fixture', caseWith({ fixtures: [{ on: '2027-01-02', name: 'home game' }] })],
  ['an outcome', outcome(ENDED)],
  ['chances that rounding moved', branches({ chance: 0.8000005 })],
])('%s is read as it stands', (_, file) => {
  expect(readCase(JSON.stringify(file))).toEqual({ ok: true, file });
});

const bad: readonly (readonly [string, object, CaseProblemCode, string])[] = [
  ['no list of forecasts', caseWith({ forecasts: undefined }), 'missing', 'forecasts'],
  ['forecasts that are no list', caseWith({ forecasts: { length: 1 } }), 'badValue', 'forecasts'],
  ['a forecast that is text', caseWith({ forecasts: ['soon'] }), 'badValue', 'forecasts[0]'],
  ['an unknown endpoint', forecast({ endpoint: 'dancing' }), 'badValue', 'forecasts[0].endpoint'],
  ['a forecast without its day', forecast({ madeOn: undefined }), 'missing', 'forecasts[0].madeOn'],
  ['30 February', forecast({ start: '2026-02-30' }), 'badValue', 'forecasts[0].start'],
  ['a week before the start', forecast({ atWeek: -1 }), 'badValue', 'forecasts[0].atWeek'],
  ['two branches', forecast({ branches: FORECAST.branches.slice(0, 2) }), 'missing', 'forecasts[0].branches[2]'],
  [
    'four branches',
    forecast({ branches: [...FORECAST.branches, FORECAST.branches[2]] }),
    'unknownKey',
    'forecasts[0].branches[3]',
  ],
  ['branches out of order', branches({ name: 'problem' }), 'badValue', 'forecasts[0].branches[0]'],
  ['a branch there is not', branches({ name: 'lucky' }), 'badValue', 'forecasts[0].branches[0].name'],
  ['a chance above one', branches({ chance: 1.2 }), 'badValue', 'forecasts[0].branches[0].chance'],
  ['a chance below zero', branches({}, { chance: -0.1 }), 'badValue', 'forecasts[0].branches[1].chance'],
  ['chances that do not add up', branches({ chance: 0.800002 }), 'badValue', 'forecasts[0].branches'],
  ['no spread', branches({ time: { mu: 2, sigma: 0 } }), 'badValue', 'forecasts[0].branches[0].time.sigma'],
  ['a spread below zero', branches({ time: { mu: 2, sigma: -1 } }), 'badValue', 'forecasts[0].branches[0].time.sigma'],
  ['a time out of reach', branches({ time: { mu: 400, sigma: 1 } }), 'badValue', 'forecasts[0].branches[0].time.mu'],
  ['a time without a middle', branches({ time: { sigma: 1 } }), 'missing', 'forecasts[0].branches[0].time.mu'],
  ['a time of not returning', branches({}, {}, { time: { mu: 2, sigma: 1 } }), 'badValue', 'forecasts[0].branches[2]'],
  ['a study that is a number', forecast({ studies: ['a', 7] }), 'badValue', 'forecasts[0].studies[1]'],
  ['an unknown key of a forecast', forecast({ score: 1 }), 'unknownKey', 'forecasts[0].score'],

  ['a protocol that is null', caseWith({ clinic: null }), 'badValue', 'clinic'],
  ['a stage that is no id', clinic({ stage: 'run fast' }), 'badValue', 'clinic.stage'],
  ['stages in a list', clinic({ stages: [NOTES] }), 'badValue', 'clinic.stages'],
  ['a key that is no id', clinic({ stages: { 'run fast': NOTES } }), 'badValue', 'clinic.stages.run fast'],
  ['constructor for a stage', clinic({ stages: { constructor: NOTES } }), 'badValue', 'clinic.stages.constructor'],
  ['an unknown key of a stage', notes({ by: 'x' }), 'unknownKey', 'clinic.stages.run.by'],
  ['an exercise struck twice', notes({ struck: ['towel', 'towel'] }), 'badValue', 'clinic.stages.run.struck'],
  ['a criterion by its place', notes({ met: [0] }), 'badValue', 'clinic.stages.run.met[0]'],
  ['a criterion twice', notes({ met: [MET, { ...MET, on: null }] }), 'badValue', 'clinic.stages.run.met'],
  ['a criterion without a day', notes({ met: [{ criterion: 'x' }] }), 'missing', 'clinic.stages.run.met[0].on'],
  [
    'a criterion met on no day',
    notes({ met: [{ ...MET, on: '2026-02-30' }] }),
    'badValue',
    'clinic.stages.run.met[0].on',
  ],
  ['weeks the wrong way round', notes({ weeks: { from: 6, to: 2 } }), 'badValue', 'clinic.stages.run.weeks'],
  ['weeks without an end', notes({ weeks: { from: 6 } }), 'missing', 'clinic.stages.run.weeks.to'],
  [
    'more than the whole weight',
    notes({ sharePercent: { low: 50, high: 120 } }),
    'badValue',
    'clinic.stages.run.sharePercent.high',
  ],
  ['a note that says nothing', notes({ note: '' }), 'badValue', 'clinic.stages.run.note'],
  ['a note that is too long', notes({ note: 'x'.repeat(301) }), 'badValue', 'clinic.stages.run.note'],
  ['an answer that is too long', clinic({ answers: { a: 'x'.repeat(301) } }), 'badValue', 'clinic.answers.a'],
  ['an answer that is a list', clinic({ answers: { a: ['x'] } }), 'badValue', 'clinic.answers.a'],

  ['a fixture without a name', caseWith({ fixtures: [{ on: '2027-01-02' }] }), 'missing', 'fixtures[0].name'],
  ['no such day', caseWith({ fixtures: [{ on: '2027-02-29', name: 'x' }] }), 'badValue', 'fixtures[0].on'],
  [
    'a name that is too long',
    caseWith({ fixtures: [{ on: '2027-01-02', name: 'x'.repeat(61) }] }),
    'badValue',
    'fixtures[0].name',
  ],
  ['an outcome without its day', outcome({ ...ENDED, on: undefined }), 'missing', 'claims[0].value.on'],
  ['a result there is not', outcome({ ...ENDED, result: 'nearly' }), 'badValue', 'claims[0].value.result'],
];
test.each(bad)('%s is refused, and the place named', (_, file, code, where) => {
  const result = readCase(JSON.stringify(file));
  expect(result.ok ? null : { code: result.problem.code, where: result.problem.where }).toEqual({ code, where });
  if (!result.ok) expect(result.problem.what).not.toMatch(/\{\w+\}|undefined|\[object|unknown/);
});

test('__proto__ for a stage or a topic is refused, not passed over', () => {
  for (const [table, where] of [
    ['"stages":{', 'clinic.stages.__proto__'],
    ['"answers":{', 'clinic.answers.__proto__'],
  ] as const) {
    const text = JSON.stringify(clinic({})).replace(table, `${table}"__proto__":"x",`);
    const result = readCase(text);
    expect(result.ok ? null : result.problem.where).toBe(where);
  }
});

describe('a list or table beyond its bound gives one problem, however broken its entries are', () => {
  test.each([
    ['forecasts', caseWith({ forecasts: many(100_000, () => 1) }), 'forecasts'],
    ['one forecast more', caseWith({ forecasts: many(51, () => FORECAST) }), 'forecasts'],
    ['fixtures', caseWith({ fixtures: many(100_000, () => 1) }), 'fixtures'],
    ['one fixture more', caseWith({ fixtures: many(61, () => ({ on: '2027-01-02', name: 'x' })) }), 'fixtures'],
    ['studies', forecast({ studies: many(100_000, () => 1) }), 'forecasts[0].studies'],
    ['stages', clinic({ stages: tableOf(50_000, 1) }), 'clinic.stages'],
    ['answers', clinic({ answers: tableOf(50_000, 1) }), 'clinic.answers'],
    ['exercises', notes({ struck: many(100_000, () => 1) }), 'clinic.stages.run.struck'],
    ['criteria', notes({ met: many(100_000, () => 'x') }), 'clinic.stages.run.met'],
  ])('%s', (_, file, where) => {
    const result = readCase(JSON.stringify(file));
    expect(result.ok ? [] : result.problems.map((problem) => problem.where)).toEqual([where]);
  });

  test('of the fullest case there is, written in letters that JSON writes longest, there is room in a file', () => {
    const id = (i: number) => `${'x'.repeat(57)}${100 + i}`;
    const longest = (n: number) => '\u0001'.repeat(n);
    const exact = 0.12345678901234568;
    const said = { status: 'confirmed', source: { kind: 'examination', on: '2026-09-14' }, note: longest(300) };
    const branch = (i: number) => ({
      ...FORECAST.branches[i],
      chance: [1 - 2 * exact, exact, exact][i],
      time: i === 2 ? null : { mu: -exact, sigma: exact },
    });
    const whole = caseWith({
      note: longest(1000),
      claims: many(200, (i) => ({
        id: id(i),
        subject: 'outcome',
        value: { endpoint: ENDPOINTS[1], result: 'given up', on: '2026-09-14' },
        ...said,
      })),
      forecasts: many(50, () => ({
        ...FORECAST,
        option: id(0),
        injury: id(0),
        start: '2026-09-14',
        branches: many(3, (i) => branch(i)),
        studies: many(60, id),
      })),
      clinic: {
        stage: id(0),
        stages: Object.fromEntries(
          many(40, id).map((key) => [
            key,
            {
              struck: many(40, id),
              met: many(40, (i) => ({ criterion: id(i), on: '2026-09-14' })),
              weeks: { from: exact, to: 1 + exact },
              sharePercent: { low: exact, high: 1 + exact },
              note: longest(300),
            },
          ]),
        ),
        answers: Object.fromEntries(many(40, id).map((key) => [key, longest(300)])),
      },
      // Of a name only what can be seen is kept: of that, JSON writes a quotation mark longest.
      fixtures: many(60, () => ({ on: '2027-01-02', name: '"'.repeat(60) })),
    });
    const read = readCase(JSON.stringify(whole));
    expect(read).toEqual({ ok: true, file: whole });
    if (!read.ok) return;
    const text = writeCase(read.file);
    expect(text.length).toBeGreaterThan(MAX_CASE_BYTES / 4);
    expect(text.length).toBeLessThan(MAX_CASE_BYTES * 0.75);
    const deepest = Math.max(...[...text.matchAll(/^ */gm)].map(([blanks]) => blanks.length / 2));
    expect(deepest).toBeLessThan(MAX_DEPTH);
  });
});

test('minus zero, which JSON text can say and not keep, is read as zero wherever a number stands', () => {
  const zeroes = {
    ...notes({ weeks: { from: 0, to: 0 }, sharePercent: { low: 0, high: 0 } }),
    forecasts: [
      {
        ...FORECAST,
        branches: [
          { name: 'uneventful', chance: 1, time: { mu: 0, sigma: 1 } },
          { name: 'problem', chance: 0, time: null },
          { name: 'notReturned', chance: 0, time: null },
        ],
      },
    ],
  };
  const text = JSON.stringify(zeroes).replace(/([:[])0(?=[,}\]])/g, '$1-0');
  expect(text.match(/-0(?![\d.])/g)).toHaveLength(8);
  // toEqual tells the two zeroes apart.
  expect(readCase(text)).toEqual({ ok: true, file: zeroes });
});
