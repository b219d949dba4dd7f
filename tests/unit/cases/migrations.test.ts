import { describe, expect, test } from 'vitest';
import { CASE_VERSION, readCase, writeCase } from '../../../src/cases';
import { caseMigrations, defineMigrations } from '../../../src/cases/migrations';
import { readContent } from '../../../src/cli/read-content';

const step = (from: number) => ({ from, why: 'a test', up: (file: object) => ({ ...file, [`step${from}`]: true }) });

describe('a list of migrations', () => {
  test('must have no gap, be in order, and end at the current version', () => {
    expect(() => defineMigrations(3, [step(0), step(2)])).toThrow(RangeError);
    expect(() => defineMigrations(2, [step(1), step(0)])).toThrow(RangeError);
    expect(() => defineMigrations(3, [step(0), step(1)])).toThrow(RangeError);
    expect(() => defineMigrations(2, [step(0), step(1)])).not.toThrow();
    expect(() => defineMigrations(1, [])).not.toThrow();
  });

  const three = defineMigrations(3, [step(1), step(2)]);
  test.each([
    [1, { version: 3, step1: true, step2: true }],
    [2, { version: 3, step2: true }],
    [3, { version: 3 }],
  ])('takes version %d to 3 by the steps that are missing', (version, file) => {
    expect(three.migrate({ version })).toEqual({ ok: true, file });
  });

  test.each([
    [4, 'newer'],
    [0, 'badVersion'],
    [1.5, 'badVersion'],
    ['2', 'badVersion'],
    [undefined, 'badVersion'],
  ])('answers version %s with a reason', (version, reason) => {
    expect(three.migrate({ version })).toEqual({ ok: false, reason, found: version });
  });

  test('a version that is only inherited does not count', () => {
    expect(three.migrate(Object.create({ version: 3 })).ok).toBe(false);
  });

  test('the list of the case file ends at the version it is written in', () => {
    expect(caseMigrations.current).toBe(CASE_VERSION);
    expect(caseMigrations.oldest).toBe(0);
  });
});

describe('version 0, the draft', () => {
  const draft = {
    format: 'underfoot-case',
    version: 0,
    id: 'old-case',
    claims: [
      { id: 'c1', subject: 'mass', value: 71, certainty: 'said', from: 'person', on: '2026-01-02' },
      { id: 'c2', subject: 'side', value: 'left', certainty: 'excluded', from: 'imaging' },
      { id: 'c3', subject: 'side', value: 'right', certainty: 'confirmed', from: 'imaging', note: 'x' },
      { id: 'c4', subject: 'height', value: 180, certainty: 'guessed', from: 'generalKnowledge' },
    ],
  };

  test('is read as the same case', () => {
    expect(readCase(JSON.stringify(draft))).toEqual({
      ok: true,
      file: {
        format: 'underfoot-case',
        version: 3,
        id: 'old-case',
        forecasts: [],
        fixtures: [],
        claims: [
          { id: 'c1', subject: 'massKg', value: 71, status: 'reported', source: { kind: 'person', on: '2026-01-02' } },
          { id: 'c2', subject: 'side', value: 'left', status: 'ruledOut', source: { kind: 'imaging' } },
          { id: 'c3', subject: 'side', value: 'right', status: 'confirmed', source: { kind: 'imaging' }, note: 'x' },
          { id: 'c4', subject: 'heightCm', value: 180, status: 'inferred', source: { kind: 'generalKnowledge' } },
        ],
      },
    });
  });

  test.each([
    ['an unknown key', { ...draft.claims[0], colour: 1 }, 'claims[0].colour'],
    ['a word for a status that there never was', { ...draft.claims[0], certainty: 'sure' }, 'claims[0].status'],
    ['no status', { ...draft.claims[0], certainty: undefined }, 'claims[0].status'],
    ['a claim that is text', 'right', 'claims[0]'],
  ])('with %s it is refused, and the place named', (_, claim, where) => {
    const result = readCase(JSON.stringify({ ...draft, claims: [claim] }));
    expect(result.ok ? null : result.problem.where).toBe(where);
  });

  test('cannot raise a status on the way: a person still only reports', () => {
    const claims = [{ ...draft.claims[0], certainty: 'confirmed' }];
    const result = readCase(JSON.stringify({ ...draft, claims }));
    expect(result.ok ? null : result.problem.code).toBe('statusNotAllowed');
  });
});

describe('version 1, claims alone', () => {
  /** As version 1 wrote it, letter for letter. */
  const stored = `{
  "format": "underfoot-case",
  "version": 1,
  "id": "stored",
  "claims": [
    {
      "id": "c1",
      "subject": "followUp",
      "value": {
        "finding": "tender",
        "on": "2026-09-07"
      },
      "status": "confirmed",
      "source": {
        "kind": "examination",
        "on": "2026-09-07"
      }
    }
  ],
  "note": "x"
}
`;

  test('opens as the same case, with no forecasts and no fixtures, and stays so once written', () => {
    const { version: _, ...old } = JSON.parse(stored);
    const file = { ...old, version: 3, forecasts: [], fixtures: [] };
    const read = readCase(stored);
    expect(read).toEqual({ ok: true, file });
    if (read.ok) expect(readCase(writeCase(read.file))).toEqual({ ok: true, file });
  });

  test.each([
    ['forecasts that are none', { forecasts: null }, 'forecasts'],
    ['fixtures that are none', { fixtures: 'x' }, 'fixtures'],
    ['a key that no version has', { patient: 'x' }, 'patient'],
    ['a claim that is none', { claims: [1] }, 'claims[0]'],
    ['no claims', { claims: undefined }, 'claims'],
  ])('with %s it is refused, and nothing is put in their place', (_, more, where) => {
    const result = readCase(JSON.stringify({ ...JSON.parse(stored), ...more }));
    expect(result.ok ? null : result.problem.where).toBe(where);
  });
});

describe('version 2, ticked criteria by their place in a list', () => {
  /** As version 2 wrote it. */
  const stored = (met: unknown, stage = 'run') => ({
    format: 'underfoot-case',
    version: 2,
    id: 'stored',
    claims: [],
    forecasts: [],
    clinic: {
      stage,
      stages: { [stage]: { struck: ['towel'], met, weeks: { from: 12, to: 14 }, sharePercent: null, note: 'x' } },
      answers: {},
    },
    fixtures: [],
  });
  const metIn = (file: object): unknown => {
    const read = readCase(JSON.stringify(file));
    return read.ok ? Object.values(read.file.clinic?.stages ?? {})[0]?.met : read.problem.where;
  };

  test('opens with the same criteria by name, and no day, for none was noted', () => {
    expect(metIn(stored([1]))).toEqual([{ criterion: 'bone-united', on: null }]);
    expect(metIn(stored([0, 1]))).toEqual([
      { criterion: 'runs-half-an-hour', on: null },
      { criterion: 'bone-united', on: null },
    ]);
    const read = readCase(JSON.stringify(stored([])));
    expect(read).toEqual({ ok: true, file: { ...stored([]), version: 3 } });
  });

  test('every number of version 2 is a criterion that the content knows, though some have moved to another stage since', () => {
    const { stages } = readContent();
    const known = stages.flatMap(({ opensNext }) => opensNext.map(({ id }) => String(id)));
    for (const { id } of stages)
      for (const tick of metIn(stored([0, 1], id)) as readonly { readonly criterion: string }[])
        expect(known).toContain(tick.criterion);
  });

  test('a number beyond the list was never shown as anything, and is left out', () => {
    expect(metIn(stored([7]))).toEqual([]);
    expect(metIn(stored([0], 'no-such-stage'))).toEqual([]);
    expect(metIn(stored([0], 'constructor'))).toBe('clinic.stages.constructor');
  });

  test.each([
    ['half a criterion', [0.5], 'clinic.stages.run.met[0]'],
    ['one before the first', [-1], 'clinic.stages.run.met[0]'],
    ['a word', ['x'], 'clinic.stages.run.met[0]'],
    ['no list', { 0: true }, 'clinic.stages.run.met'],
    ['the same twice', [1, 1], 'clinic.stages.run.met'],
  ])('with %s it is refused, and the place named', (_, met, where) => {
    expect(metIn(stored(met))).toBe(where);
  });

  test('a protocol that is none is left for the schema to name', () => {
    for (const clinic of [null, 'x', [], { stage: null, stages: 'x', answers: {} }])
      expect(readCase(JSON.stringify({ ...stored([]), clinic })).ok).toBe(false);
  });
});
