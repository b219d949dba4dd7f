/** Anything may be in a file. `readCase` never throws, never lets through what the rules forbid, and says where it looked. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkCaseFile, type ReadResult, readCase, writeCase } from '../../../src/cases';
import { anyCase } from './any-case';

const PATH = /^[^\s]+$/;

const sane = (result: ReadResult, raw: unknown): void => {
  if (result.ok) {
    expect(checkCaseFile(result.file)).toEqual([]);
    // What it accepted is what stood there, apart from rounding and the order of keys.
    expect(readCase(writeCase(result.file))).toEqual(result);
    return;
  }
  expect(result.problems.length).toBeGreaterThan(0);
  for (const problem of result.problems) {
    expect(problem.what.length).toBeLessThan(400);
    expect(problem.what.length + problem.remedy.length).toBeGreaterThan(20);
    if (problem.where !== null) {
      expect(problem.where).toMatch(PATH);
      const [top] = problem.where.split(/[.[]/);
      const known = ['format', 'version', 'id', 'demo', 'claims', 'note', 'forecasts', 'clinic', 'fixtures'].includes(
        top ?? '',
      );
      expect(known || (typeof raw === 'object' && raw !== null && Object.hasOwn(raw, top ?? ''))).toBe(true);
    }
  }
};

test('any text', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => sane(readCase(text), null)));
});

test('any JSON', () => {
  fc.assert(fc.property(fc.jsonValue(), (value) => sane(readCase(JSON.stringify(value)), value)));
});

test('any JSON that says it is a case', () => {
  const dressed = fc.record({ id: fc.jsonValue(), claims: fc.jsonValue(), version: fc.constantFrom(0, 1, 2) });
  fc.assert(
    fc.property(dressed, (value) => {
      const raw = { format: 'underfoot-case', ...value };
      sane(readCase(JSON.stringify(raw)), raw);
    }),
  );
});

/** Every place in a JSON value, as a list of keys. */
const places = (value: unknown, at: readonly string[] = []): (readonly string[])[] =>
  typeof value === 'object' && value !== null
    ? [at, ...Object.entries(value).flatMap(([key, part]) => places(part, [...at, key]))]
    : [at];

const changed = (value: unknown, [key, ...rest]: readonly string[], by: (old: unknown) => unknown): unknown => {
  if (key === undefined) return by(value);
  const copy: Record<string, unknown> = Array.isArray(value) ? (value.slice() as never) : { ...(value as object) };
  const next = changed(copy[key], rest, by);
  if (next === GONE) delete copy[key];
  else copy[key] = next;
  return copy;
};
const GONE = Symbol('gone');

const NASTY: readonly unknown[] = [
  GONE,
  null,
  'NaN',
  'Infinity',
  '',
  '__proto__',
  'constructor',
  -1,
  1e308,
  Number.MAX_SAFE_INTEGER,
  0.1,
  true,
  [],
  {},
  [[[[[[[[[[[[[[[]]]]]]]]]]]]]]],
  { value: 'right' },
  'confirmed',
  'ruledOut',
  'c1',
  '2026-13-01',
  'x'.repeat(2000),
];

test('a valid case with one thing changed is refused or still valid, never a crash', () => {
  let refused = 0;
  fc.assert(
    fc.property(anyCase(), fc.nat(), fc.constantFrom(...NASTY), (file, pick, nasty) => {
      const all = places(file).slice(1);
      const place = all[pick % all.length] ?? [];
      const raw = changed(file, place, () => nasty);
      const result = readCase(JSON.stringify(raw));
      sane(result, raw);
      if (!result.ok) refused++;
    }),
    { numRuns: 1000 },
  );
  // The mutations bite: a reader that let everything through would not get here.
  expect(refused).toBeGreaterThan(500);
});

/** Tables from id to value, where a new key is a new entry. */
const TABLES = ['clinic.stages', 'clinic.answers'];

test('a key that no case has, put anywhere into a valid case, is refused and named', () => {
  fc.assert(
    fc.property(
      anyCase(),
      fc.nat(),
      fc.constantFrom('patientName', 'toString', 'valueOf', 'a key'),
      (file, pick, key) => {
        const objects = places(file).filter((at) => {
          const value = at.reduce<unknown>((v, k) => (v as Record<string, unknown>)[k], file);
          if (TABLES.includes(at.join('.'))) return false;
          return typeof value === 'object' && value !== null && !Array.isArray(value);
        });
        const at = objects[pick % objects.length] ?? [];
        const result = readCase(JSON.stringify(changed(file, at, (old) => ({ ...(old as object), [key]: 1 }))));
        expect(result.ok).toBe(false);
        if (!result.ok) {
          expect(result.problem.code).toBe('unknownKey');
          expect(result.problem.where?.endsWith(key)).toBe(true);
        }
      },
    ),
  );
});
