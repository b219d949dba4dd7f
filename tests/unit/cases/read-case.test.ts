import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CaseProblemCode, MAX_CASE_BYTES, readCase, tooBig, writeCase } from '../../../src/cases';
import { repeatedKey } from '../../../src/cases/json-keys';
import { anyCase } from './any-case';

const SIDE = { id: 'c1', subject: 'side', value: 'right', status: 'reported', source: { kind: 'person' } };
const caseWith = (claims: unknown, more: object = {}) => ({
  format: 'underfoot-case',
  version: 3,
  id: 'a-case',
  claims,
  forecasts: [],
  fixtures: [],
  ...more,
});
const claim = (more: object) => caseWith([{ ...SIDE, ...more }]);
const chain = (...supersedes: (string | undefined)[]) =>
  caseWith(supersedes.map((other, i) => ({ ...SIDE, id: `c${i + 1}`, ...(other ? { supersedes: other } : {}) })));

const expectProblem = (text: string, code: CaseProblemCode, where: string | null) => {
  const result = readCase(text);
  expect(result.ok, 'should be refused').toBe(false);
  if (result.ok) throw new Error('unreachable');
  expect({ code: result.problem.code, where: result.problem.where }).toEqual({ code, where });
  expect(result.problem.what).not.toMatch(/\{\w+\}|undefined|\[object/);
  expect(result.problem.remedy.length).toBeGreaterThan(5);
  return result.problem;
};

describe('a key that stands twice', () => {
  const text = (of: object): string => JSON.stringify(of, null, 2);
  test.each([
    ['of the case', text(caseWith([])).replace('{', '{"id": "other",'), 'id'],
    ['of a claim', text(claim({})).replace('"status"', '"value": "left", "status"'), 'claims[0].value'],
    ['of a source', text(claim({})).replace('"kind"', '"kind": "media", "kind"'), 'claims[0].source.kind'],
    ['written with escapes', text(claim({})).replace('"status"', '"v\\u0061lue": "left", "status"'), 'claims[0].value'],
  ])('%s is refused by its name and place', (_, file, where) => {
    const { what } = expectProblem(file, 'repeatedKey', where);
    expect(what).toContain(`"${where.split('.').at(-1)}"`);
    expect(what).toMatch(/line \d+/);
  });
  test('in two claims, or as text, is no repetition', () => {
    const two = caseWith([SIDE, { ...SIDE, id: 'c2', note: '"id": {"id", "id' }]);
    expect(readCase(text(two)).ok).toBe(true);
  });
  test('never accuses what JSON.stringify writes', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(repeatedKey(JSON.stringify(value))).toBeNull();
      }),
    );
  });
});

describe('the depth of a line', () => {
  const depth = (value: number) =>
    readCase(JSON.stringify(claim({ subject: 'measure', value: { what: 'line depth', value } })));
  test.each([0, 1, 100])('%s percent is read by the version that is', (value) => {
    expect(depth(value).ok).toBe(true);
  });
  test.each([-1, 0.5, 99.9])('%s is refused, with its bounds and that it is whole', (value) => {
    const result = depth(value);
    if (result.ok) throw new Error('read');
    expect(`${result.problem.what} ${result.problem.remedy}`).toContain('the line depth is 0 to 100, a whole number');
  });
});

describe('bad files: each refused with what, where and what to do', () => {
  const bad: readonly (readonly [string, object, CaseProblemCode, string | null])[] = [
    ['unknown key of the case', caseWith([], { patient: 'x' }), 'unknownKey', 'patient'],
    ['unknown key of a claim', claim({ colour: 1 }), 'unknownKey', 'claims[0].colour'],
    ['constructor as a key', claim({ constructor: 1 }), 'unknownKey', 'claims[0].constructor'],
    ['missing id', caseWith([], { id: undefined }), 'missing', 'id'],
    ['missing subject', claim({ subject: undefined }), 'missing', 'claims[0].subject'],
    ['missing value', claim({ value: undefined }), 'missing', 'claims[0].value'],
    ['claims not a list', caseWith({}), 'badValue', 'claims'],
    ['a claim that is text', caseWith(['right']), 'badValue', 'claims[0]'],
    ['unknown subject', claim({ subject: 'name' }), 'badValue', 'claims[0].subject'],
    ['value of the wrong kind', claim({ value: 3 }), 'badValue', 'claims[0].value'],
    ['mass of 7500 kg', claim({ subject: 'massKg', value: 7500 }), 'wrongUnit', 'claims[0].value'],
    ['mass as text', claim({ subject: 'massKg', value: 'NaN' }), 'badValue', 'claims[0].value'],
    ['mass null', claim({ subject: 'massKg', value: null }), 'badValue', 'claims[0].value'],
    [
      'negative distance',
      claim({ subject: 'place', value: { by: 'distance', mm: -1 } }),
      'wrongUnit',
      'claims[0].value.mm',
    ],
    ['30 February', claim({ subject: 'injuryDate', value: '2026-02-30' }), 'badValue', 'claims[0].value'],
    ['a bone there is not', claim({ subject: 'bone', value: 'metatarsal6' }), 'badValue', 'claims[0].value'],
    ['an id with blanks', claim({ subject: 'injury', value: 'a b' }), 'badValue', 'claims[0].value'],
    [
      'a demo that is not invented',
      caseWith([], { demo: { invented: false, scenario: 'x' } }),
      'badValue',
      'demo.invented',
    ],
    ['a note that is too long', caseWith([], { note: 'x'.repeat(1001) }), 'badValue', 'note'],
    ['201 claims', caseWith(Array.from({ length: 201 }, () => 1)), 'badValue', 'claims'],
    ['two claims with one id', caseWith([SIDE, SIDE]), 'duplicateId', 'claims[1].id'],
    ['a claim that replaces itself', claim({ supersedes: 'c1' }), 'supersedesItself', 'claims[0].supersedes'],
    ['a claim that replaces nothing known', claim({ supersedes: 'c9' }), 'supersedesUnknown', 'claims[0].supersedes'],
    ['a circle of two', chain('c2', 'c1'), 'supersedesCycle', 'claims[0].supersedes'],
    ['a circle of three behind a tail', chain('c2', 'c3', 'c4', 'c2'), 'supersedesCycle', 'claims[1].supersedes'],
    [
      'replacing a claim about something else',
      caseWith([SIDE, { ...SIDE, id: 'c2', subject: 'footShape', value: 'low', supersedes: 'c1' }]),
      'supersedesOtherSubject',
      'claims[1].supersedes',
    ],
    ['a person confirming', claim({ status: 'confirmed' }), 'statusNotAllowed', 'claims[0].status'],
    ['version from the future', caseWith([], { version: 4 }), 'newer', 'version'],
    ['version before the first', caseWith([], { version: -1 }), 'badVersion', 'version'],
    ['version as text', caseWith([], { version: '2' }), 'badVersion', 'version'],
    ['no version', caseWith([], { version: undefined }), 'badVersion', 'version'],
    ['not a case', { hello: 1 }, 'notACase', null],
    ['a list', [1], 'notACase', null],
  ];
  test.each(bad)('%s', (_, file, code, where) => {
    expectProblem(JSON.stringify(file), code, where);
  });

  test('__proto__ is an unknown key, not a way in', () => {
    const text = JSON.stringify(claim({})).replace('"id":"c1"', '"id":"c1","__proto__":{"status":"confirmed"}');
    expectProblem(text, 'unknownKey', 'claims[0].__proto__');
    expectProblem('{"__proto__":{"format":"underfoot-case"}}', 'notACase', null);
  });

  test('says where the JSON breaks', () => {
    expect(expectProblem('{\n  "format": underfoot\n}', 'notJson', null).what).toContain('line 2, column 13');
    expect(expectProblem('{"format": NaN}', 'notJson', null).what).toContain('line 1, column 12');
    expectProblem('{"format"', 'notJson', null);
    expectProblem(' \n', 'empty', null);
    expectProblem('%PDF-1.7', 'notJson', null);
  });

  test('a number too large for a computer is out of range', () => {
    const text = JSON.stringify(claim({ subject: 'massKg', value: 7 })).replace('"value":7', '"value":1e999');
    expect(expectProblem(text, 'wrongUnit', 'claims[0].value').what).toContain('Infinity');
  });

  test('several problems come together, in the order of the file', () => {
    const result = readCase(
      JSON.stringify(
        caseWith([
          { ...SIDE, value: 1 },
          { ...SIDE, status: 'sure' },
        ]),
      ),
    );
    expect(result.ok ? [] : result.problems.map((p) => p.where)).toEqual(['claims[0].value', 'claims[1].status']);
  });
});

describe('units that people mix up', () => {
  test.each([
    ['massKg', 75000, 'grams', '75'],
    ['massKg', 300, 'pounds', '136'],
    ['massKg', 12, 'stone', '76'],
    ['heightCm', 1.75, 'metres', '175'],
    ['heightCm', 1750, 'millimetres', '175'],
    ['heightCm', 5.9, 'feet', '180'],
    ['heightCm', 68, 'inches', '173'],
  ])('%s %d looks like %s: %s', (subject, value, unit, ours) => {
    const problem = expectProblem(JSON.stringify(claim({ subject, value })), 'wrongUnit', 'claims[0].value');
    expect(problem.what).toContain('is it in another unit?');
    expect(problem.remedy).toContain(unit);
    expect(problem.remedy).toContain(`(${ours})`);
  });

  test('7500 fits no unit we know: asks for one in range', () => {
    const problem = expectProblem(
      JSON.stringify(claim({ subject: 'massKg', value: 7500 })),
      'wrongUnit',
      'claims[0].value',
    );
    expect(problem.remedy).toBe('Write it in kg, between 20 and 250.');
  });
});

describe('size and depth are looked at before anything is parsed', () => {
  test('40 MB', () => {
    expect(tooBig(40 * 1024 * 1024)?.code).toBe('tooBig');
    expect(tooBig(MAX_CASE_BYTES)).toBe(null);
    // Not JSON at all: had it been parsed, the answer would be another.
    expectProblem('x'.repeat(40 * 1024 * 1024), 'tooBig', null);
  });
  test('a million brackets', () => {
    expectProblem('['.repeat(1_000_000), 'tooDeep', null);
    expectProblem(`${'{"a":'.repeat(5000)}1${'}'.repeat(5000)}`, 'tooDeep', null);
  });
  test('brackets inside text are text', () => {
    expect(readCase(JSON.stringify(claim({ note: `${'['.repeat(50)}\\"${'{'.repeat(50)}` }))).ok).toBe(true);
  });
  test('half a million broken claims give one problem, not half a million', () => {
    const result = readCase(JSON.stringify(caseWith(Array.from({ length: 500_000 }, () => 1))));
    expect(result.ok ? 0 : result.problems.length).toBe(1);
  });
});

describe('what is read', () => {
  test('a byte order mark does no harm', () => {
    expect(readCase(`\uFEFF${JSON.stringify(claim({}))}`).ok).toBe(true);
  });

  test('a piece in line that is 5 mm apart is refused, with the place and what to do', () => {
    const of = (value: object): string => JSON.stringify(claim({ subject: 'displacement', value }));
    const problem = expectProblem(of({ displaced: false, mm: 5 }), 'inLineYetApart', 'claims[0].value.mm');
    expect(problem.what).toContain('5 mm');
    expect(problem.remedy).toMatch(/displaced.*leave the millimetres out/);
    const nothing = expectProblem(of({ displaced: true, mm: 0 }), 'apartByNothing', 'claims[0].value.mm');
    expect(nothing.what).toContain('0 mm');
    expect(nothing.remedy).toMatch(/not displaced.*leave the millimetres out/);
    for (const value of [
      { displaced: true },
      { displaced: false },
      { displaced: false, mm: 0 },
      { displaced: true, mm: 5 },
    ])
      expect(readCase(of(value)).ok).toBe(true);
  });

  test('a measure is kept as it was given', () => {
    const read = readCase(JSON.stringify(claim({ subject: 'measure', value: { what: 'diastasis', value: 4.96 } })));
    expect(read.ok && read.file.claims[0]?.value).toEqual({ what: 'diastasis', value: 4.96 });
  });

  test('mass and height are rounded', () => {
    const result = readCase(JSON.stringify(claim({ subject: 'massKg', value: 71.6 })));
    expect(result.ok && result.file.claims[0]?.value).toBe(72);
  });

  test('readCase(writeCase(x)) = x, and writing again gives the same text', () => {
    fc.assert(
      fc.property(anyCase(), (file) => {
        const text = writeCase(file);
        const back = readCase(text);
        expect(back).toEqual({ ok: true, file });
        if (back.ok) expect(writeCase(back.file)).toBe(text);
      }),
    );
  });

  test('writeCase refuses to write what could not be read', () => {
    const [broken] = [{ ...caseWith([SIDE, SIDE]) }];
    expect(() => writeCase(broken as never)).toThrow(/claims\[1\]\.id/);
  });
});

describe('the name of a fixture in a file', () => {
  const named = (name: string) => readCase(JSON.stringify(caseWith([], { fixtures: [{ on: '2026-03-14', name }] })));

  test.each([
    ['a line break', 'away\nmatch', 'away match'],
    ['what turns the direction of text', 'final \u202Etam', 'final tam'],
    ['a sign that rings a bell', '\u0007match', 'match'],
    ['nothing to clean', 'Spiel gegen die Ärzte', 'Spiel gegen die Ärzte'],
  ])('is cleaned as one from a calendar is: %s', (_, name, clean) => {
    const result = named(name);
    expect(result.ok && result.file.fixtures).toEqual([{ on: '2026-03-14', name: clean }]);
  });

  test('is refused, with its place, when nothing of it can be seen', () => {
    for (const name of [' ', '\u0000', '\u200B\u202E']) {
      const result = named(name);
      expect(result.ok ? 'taken' : result.problem.where).toBe('fixtures[0].name');
    }
  });
});
