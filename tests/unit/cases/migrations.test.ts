import { describe, expect, test } from 'vitest';
import { CASE_VERSION, readCase } from '../../../src/cases';
import { caseMigrations, defineMigrations } from '../../../src/cases/migrations';

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
        version: 1,
        id: 'old-case',
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
