import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileContent, formatProblem, reviewHash } from '../../../src/content';

const SOURCES = `review: { state: not reviewed }
records:
  - id: first-2001
    type: article-journal
    title: A paper
`;
const FACTORS = `review: { state: not reviewed }
records:
  - id: smoking
    studiedAt: null
    what: { patient: One., broadcast: Two., study: Three. }
    term: slower
    evidence: { source: first-2001, mark: seen }
    adultsOnly: false
  - id: diabetes
    studiedAt: null
    what: { patient: One., broadcast: Two., study: Three. }
    term: later
    evidence: { source: null, mark: from memory }
    adultsOnly: false
`;
const EFFECT = `
    effects:
      - measure: odds ratio
        value: 2
        low: 1
        high: 4
        n: 9
        of: { patient: One., broadcast: Two., study: Three. }
        about: healing
        bones: many bones
        inForecast: false
        evidence: { source: first-2001, mark: seen }
    limit: { patient: One., broadcast: Two., study: Three. }`;
const STUDIES = `review: { state: not reviewed }
records:
  - id: arm
    source: first-2001
    mark: seen
    injuries: []
    option: boot
    trial: arm
    design: series
    population: people
    level: everyday
    n: 3
    time: { endpoint: union, centreWeeks: 7, centre: mean, sdWeeks: null, rangeWeeks: [6, 8] }
    event: { what: union, count: 2, of: 3, percent: 67, lowHighPercent: null }
    asPrinted: as printed
    read: abstract
    plain: people
`;
const OPTIONS = `review: { state: not reviewed }
records:
  - id: boot
    term: boot
    plain: boot
    kind: non-operative
    what: { patient: One., broadcast: Two., study: Three. }
    does: { patient: One., broadcast: Two., study: Three. }
    burdens: []
    evidence: { source: null, mark: common practice }
`;
const FRAME = `review: { state: not reviewed }
records: []
`;
const WORDS = 'review: { state: not reviewed }\nwords:\n  a.b: Hello\n';
const GOOD: Readonly<Record<string, string>> = {
  'content/sources.yaml': SOURCES,
  'content/factors.yaml': FACTORS,
  'content/studies.yaml': STUDIES,
  'content/options.yaml': OPTIONS,
  'content/frame-figures.yaml': FRAME,
  'content/words.yaml': WORDS,
  'content/anatomy/scale.yaml': 'scale: { referenceHMm: 165 }\n',
};

const compile = (changes: Readonly<Record<string, string>> = {}) =>
  compileContent(new Map(Object.entries({ ...GOOD, ...changes })));

const problemsOf = (changes: Readonly<Record<string, string>>) => {
  const compiled = compile(changes);
  return compiled.ok ? [] : compiled.problems;
};

/** The text with the first match replaced; throws when there is none, so that no row of the table tests an unbroken file. */
const broken = (text: string, from: string, to: string): string => {
  if (!text.includes(from)) throw new Error(`not in the file: ${from}`);
  return text.replace(from, to);
};

test('the files of this test are good as they are', () => {
  const compiled = compile();
  expect(compiled).toMatchObject({ ok: true, content: { factors: [{ id: 'smoking' }, { id: 'diabetes' }] } });
  if (!compiled.ok) return;
  expect(compiled.content.words).toEqual({ 'a.b': 'Hello' });
  expect(compiled.content.shape).toEqual({ scale: { referenceHMm: 165 } });
  expect(compiled.content.reviews['anatomy/scale.yaml']).toEqual({ state: 'not reviewed' });
  expect(compiled.content.bones).toEqual([]);
});

interface Row {
  readonly mistake: string;
  readonly file: string;
  readonly text: string;
  readonly line: number;
  readonly path: string;
  readonly expected: RegExp;
  readonly got: RegExp;
}
const row = (
  mistake: string,
  file: string,
  text: string,
  line: number,
  path: string,
  expected: RegExp,
  got: RegExp,
): Row => ({ mistake, file, text, line, path, expected, got });

const TABLE: readonly Row[] = [
  row(
    'unknown key',
    'factors.yaml',
    broken(FACTORS, 'term: slower', 'term: slower\n    colour: red'),
    7,
    'records[0](smoking).colour',
    /no such key/,
    /colour/,
  ),
  row(
    'missing key',
    'factors.yaml',
    broken(FACTORS, '    term: slower\n', ''),
    3,
    'records[0](smoking).term',
    /term/,
    /nothing/,
  ),
  row('wrong type', 'studies.yaml', broken(STUDIES, 'n: 3', 'n: three'), 12, 'records[0](arm).n', /number/, /three/),
  row(
    'not in the list',
    'studies.yaml',
    broken(STUDIES, 'level: everyday', 'level: hero'),
    11,
    'records[0](arm).level',
    /everyday.*professional/,
    /hero/,
  ),
  row(
    'not an id',
    'factors.yaml',
    broken(FACTORS, 'id: diabetes', 'id: Dia betes'),
    9,
    'records[1](Dia betes).id',
    /an id/,
    /Dia betes/,
  ),
  row(
    'text too long',
    'factors.yaml',
    broken(FACTORS, 'term: later', `term: ${'x'.repeat(99)}`),
    12,
    'records[1](diabetes).term',
    /at most 80 characters/,
    /99/,
  ),
  row(
    'not finite',
    'studies.yaml',
    broken(STUDIES, 'centreWeeks: 7', 'centreWeeks: .nan'),
    13,
    'records[0](arm).time.centreWeeks',
    /number|finite/,
    /NaN/,
  ),
  row(
    'source that does not exist',
    'factors.yaml',
    broken(FACTORS, 'first-2001', 'none-1999'),
    7,
    'records[0](smoking).evidence.source',
    /sources\.yaml/,
    /none-1999/,
  ),
  row(
    'option that does not exist',
    'studies.yaml',
    broken(STUDIES, 'option: boot', 'option: magic'),
    7,
    'records[0](arm).option',
    /options\.yaml/,
    /magic/,
  ),
  row(
    'class that no injury of the study has',
    'studies.yaml',
    broken(STUDIES, '    option: boot', '    classes: [stage-9]\n    option: boot'),
    7,
    'records[0](arm).classes[0]',
    /one of/,
    /stage-9/,
  ),
  row(
    'injury that does not exist',
    'studies.yaml',
    broken(STUDIES, 'injuries: []', 'injuries: [toe]'),
    6,
    'records[0](arm).injuries[0]',
    /injuries\//,
    /toe/,
  ),
  row(
    'same id twice',
    'factors.yaml',
    broken(FACTORS, 'id: diabetes', 'id: smoking'),
    9,
    'records[1](smoking).id',
    /not used before/,
    /smoking/,
  ),
  row(
    'seen without a source',
    'factors.yaml',
    broken(FACTORS, 'source: null, mark: from memory', 'source: null, mark: seen'),
    13,
    'records[1](diabetes).evidence.source',
    /a source, because the mark is "seen"/,
    /none/,
  ),
  row(
    'range upside down',
    'studies.yaml',
    broken(STUDIES, '[6, 8]', '[8, 6]'),
    13,
    'records[0](arm).time.rangeWeeks',
    /low first/,
    /8, 6/,
  ),
  row(
    'centre outside its range',
    'studies.yaml',
    broken(STUDIES, 'centreWeeks: 7', 'centreWeeks: 70'),
    13,
    'records[0](arm).time.centreWeeks',
    /inside 6 to 8/,
    /70/,
  ),
  row(
    'more events than people',
    'studies.yaml',
    broken(STUDIES, 'count: 2', 'count: 4'),
    14,
    'records[0](arm).event.count',
    /0 to 3/,
    /4/,
  ),
  row(
    'percentage over 100',
    'studies.yaml',
    broken(STUDIES, 'percent: 67', 'percent: 670'),
    14,
    'records[0](arm).event.percent',
    /0 to 100/,
    /670/,
  ),
  ...(
    [
      ['a size outside its interval', 'high: 4', 'high: 1.5', 9, 'value', /inside its interval/, /2 \(1 to 1.5\)/],
      ['a ratio of nothing', 'low: 1', 'low: 0', 9, 'value', /above 0/, /2 \(0 to 4\)/],
      [
        'a size of other bones in the forecast',
        'inForecast: false',
        'inForecast: true',
        16,
        'inForecast',
        /these breaks/,
        /true/,
      ],
    ] as const
  ).map(([mistake, from, to, line, key, expected, got]) =>
    row(
      mistake,
      'factors.yaml',
      broken(FACTORS, 'term: slower', `term: slower${broken(EFFECT, from, to)}`),
      line,
      `records[0](smoking).effects[0].${key}`,
      expected,
      got,
    ),
  ),
  row(
    'a size that changes no forecast and does not say why',
    'factors.yaml',
    broken(FACTORS, 'term: slower', `term: slower${EFFECT.replace(/\n *limit.*/, '')}`),
    3,
    'records[0](smoking).limit',
    /why it changes no forecast/,
    /none/,
  ),
  row(
    'quartiles the wrong way round',
    'studies.yaml',
    broken(STUDIES, 'rangeWeeks: [6, 8] }', 'rangeWeeks: [6, 8], quartilesWeeks: [8, 6] }'),
    13,
    'records[0](arm).time.quartilesWeeks',
    /low first/,
    /8, 6/,
  ),
  row(
    'a median outside its quartiles',
    'studies.yaml',
    broken(
      STUDIES,
      'centre: mean, sdWeeks: null, rangeWeeks: [6, 8] }',
      'centre: median, sdWeeks: null, rangeWeeks: null, quartilesWeeks: [8, 9] }',
    ),
    13,
    'records[0](arm).time.centreWeeks',
    /inside 8 to 9/,
    /7/,
  ),
  row(
    'a standard deviation of nothing',
    'studies.yaml',
    broken(STUDIES, 'sdWeeks: null', 'sdWeeks: 0'),
    13,
    'records[0](arm).time.sdWeeks',
    /more than 0/,
    /0/,
  ),
  row(
    'weeks before the start',
    'studies.yaml',
    broken(STUDIES, 'rangeWeeks: [6, 8]', 'rangeWeeks: [-6, 8]'),
    13,
    'records[0](arm).time.rangeWeeks',
    /from 0/,
    /-6/,
  ),
  row(
    'more people than there were in a further event',
    'studies.yaml',
    broken(
      STUDIES,
      '    asPrinted: as printed',
      '    events: [{ what: not returned, count: 4, of: 3, percent: null, lowHighPercent: null }]\n    asPrinted: as printed',
    ),
    15,
    'records[0](arm).events[0].count',
    /0 to 3/,
    /4/,
  ),
  row(
    'broken YAML',
    'factors.yaml',
    broken(FACTORS, 'term: slower', 'term: "slower'),
    15,
    '(file)',
    /YAML/,
    /quote|closing/i,
  ),
  row(
    'same key twice',
    'factors.yaml',
    broken(FACTORS, 'term: slower', 'studiedAt: null'),
    6,
    '(file)',
    /YAML/,
    /unique/i,
  ),
  row(
    'alias',
    'factors.yaml',
    broken(broken(FACTORS, 'term: slower', 'term: &e slower'), 'term: later', 'term: *e'),
    1,
    '(file)',
    /no anchors or aliases/,
    /alias/i,
  ),
  row('a list instead of a mapping', 'factors.yaml', '- a\n- b\n', 1, '(file)', /keys and values/, /object/),
  row('empty file', 'factors.yaml', '', 1, '(file)', /keys and values/, /nothing/),
  row(
    'no review',
    'factors.yaml',
    broken(FACTORS, 'review: { state: not reviewed }\n', ''),
    1,
    'review',
    /review/,
    /nothing/,
  ),
  row(
    'review without role',
    'factors.yaml',
    broken(FACTORS, '{ state: not reviewed }', '{ state: reviewed, on: 2026-01-02, hash: x }'),
    1,
    'review.role',
    /role/,
    /nothing/,
  ),
  row('file of no kind', 'extra.yaml', SOURCES, 1, '(file)', /one of bones\.yaml/, /extra\.yaml/),
  row('shape key in two files', 'anatomy/zoom.yaml', 'scale: 2\n', 1, 'scale', /no other file of anatomy/, /scale/),
  row('word key with a space', 'words.yaml', broken(WORDS, 'a.b', 'a b'), 3, 'words.a b', /a-z/, /a b/),
];

describe('a broken file is told with file, line, path, what was expected and what was found', () => {
  test.each(TABLE)('$mistake', ({ file, text, line, path, expected, got }) => {
    const [problem] = problemsOf({ [`content/${file}`]: text });
    expect(problem).toMatchObject({ file, line, path });
    expect(problem?.expected).toMatch(expected);
    expect(problem?.got).toMatch(got);
    expect(problem && formatProblem(problem)).toContain(`${file}:${line}: ${path}: expected `);
  });

  test('every mistake of a file is told at once, in the order of the lines', () => {
    const text = broken(broken(FACTORS, 'term: slower', 'term: ""'), 'term: later', 'term: ""');
    expect(problemsOf({ 'content/factors.yaml': text }).map((p) => p.line)).toEqual([6, 12]);
  });

  test('a file that cannot be read does not make every reference to it a false alarm', () => {
    const problems = problemsOf({ 'content/sources.yaml': 'x: [' });
    expect(new Set(problems.map((p) => p.file))).toEqual(new Set(['sources.yaml']));
  });
});

describe('a review covers the text it saw', () => {
  const reviewed = (text: string, hash: string): string =>
    broken(text, '{ state: not reviewed }', `{ state: reviewed, role: clinician, on: 2026-01-02, hash: ${hash} }`);

  test('with the hash of what is written it counts', () => {
    const compiled = compile({ 'content/factors.yaml': reviewed(FACTORS, reviewHash(FACTORS) ?? '') });
    expect(compiled).toMatchObject({ ok: true, content: { reviews: { 'factors.yaml': { state: 'reviewed' } } } });
  });

  test('a changed word afterwards is a problem that says what to do', () => {
    const after = broken(reviewed(FACTORS, reviewHash(FACTORS) ?? ''), 'term: slower', 'term: much slower');
    const [problem] = problemsOf({ 'content/factors.yaml': after });
    expect(problem).toMatchObject({ file: 'factors.yaml', line: 1, path: 'review.hash' });
    expect(problem?.expected).toMatch(/reviewed again.*not reviewed/);
  });

  test('comments, order of keys and the review itself do not change the hash', () => {
    const same = broken(`# a note\n${FACTORS}`, '    studiedAt: null\n', '').replace(
      'term: slower',
      'term: slower\n    studiedAt: null',
    );
    expect(reviewHash(same)).toBe(reviewHash(FACTORS));
    expect(reviewHash(reviewed(FACTORS, 'x'))).toBe(reviewHash(FACTORS));
  });

  test('any other text of any record gives another hash', () => {
    const word = fc.stringMatching(/^[a-z]{1,12}$/).filter((w) => w !== 'slower');
    fc.assert(
      fc.property(word, (w) => {
        expect(reviewHash(broken(FACTORS, 'term: slower', `term: ${w}x`))).not.toBe(reviewHash(FACTORS));
      }),
    );
  });
});

test('the same files give the same content, whatever their order and folder', () => {
  const entries = Object.entries(GOOD);
  const want = JSON.stringify(compile());
  fc.assert(
    fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), fc.boolean(), (shuffled, deep) => {
      const files = new Map(shuffled.map(([name, text]) => [deep ? `/somewhere/${name}` : name, text]));
      expect(JSON.stringify(compileContent(files))).toBe(want);
    }),
  );
});

test('no text makes the compiler throw', () => {
  fc.assert(
    fc.property(fc.constantFrom(...Object.keys(GOOD)), fc.string({ maxLength: 200 }), (name, text) => {
      expect(typeof compile({ [name]: text }).ok).toBe('boolean');
    }),
    { numRuns: 300 },
  );
});
