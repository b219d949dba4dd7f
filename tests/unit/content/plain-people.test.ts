/** Who was studied has plain words beside those of the study, and whoever does not study reads only these. */
import { describe, expect, it, test } from 'vitest';
import { contentFiles, readContent } from '../../../src/cli/read-content';
import { compileContent } from '../../../src/content';
import { writingFaults } from '../../../src/content/writing';
import { plainText, wordBasis, wordFinding } from '../../../src/wording';
import { caseOf, explained } from '../../tools/explained';
import { readingOf } from '../../tools/reading-grade';

const files = contentFiles();
const content = readContent();

const without = (path: string, line: RegExp): ReturnType<typeof compileContent> => {
  const text = files.get(path) ?? '';
  expect(text).toMatch(line);
  return compileContent(new Map([...files, [path, text.replace(line, '')]]));
};

describe('the plain words of people', () => {
  it.each([
    ['content/studies.yaml', /^ {4}plain: .*\n/m, /studies|records\[0\].*plain/],
    ['content/rates.yaml', /^ {4}plain: .*\n/m, /records\[0\].*plain/],
  ])('are missed where %s has none', (path, line, where) => {
    const compiled = without(path, line);
    if (compiled.ok) throw new Error('compiled');
    expect(compiled.problems).toHaveLength(1);
    expect(`${compiled.problems[0]?.file} ${compiled.problems[0]?.path}`).toMatch(where);
    expect(compiled.problems[0]?.got).toBe('nothing');
  });

  it('have words for a type where there is one, and only there', () => {
    const path = 'content/rates.yaml';
    const text = (files.get(path) ?? '').replace('type: "other operations" }', 'type: null }');
    expect(compileContent(new Map([...files, [path, text]]))).toMatchObject({
      ok: false,
      problems: [{ file: 'rates.yaml', expected: expect.stringContaining('plain words') }],
    });
  });

  it.each([
    ['12 adults of one city', 'figure'],
    ['people with a nonunion', 'look up'],
    ['people who all had the very same break in the very same long bone of the very same foot', 'more than 15 words'],
  ])('"%s" is told to be written otherwise', (plain, fault) => {
    const [first, ...rest] = content.studies;
    if (first === undefined) throw new Error('no study');
    const faults = writingFaults({ ...content, studies: [{ ...first, plain }, ...rest] });
    expect(faults).toEqual([expect.stringContaining(`studies ${first.id}.plain: `)]);
    expect(faults[0]).toContain(fault);
  });

  it('read at grade 8 or below', () => {
    const all = [...content.studies.map(({ plain }) => plain), ...content.rates.map(({ plain }) => plain.group)];
    const { words, grade } = readingOf([...new Set(all)].map((plain) => `They were ${plain}.`).join(' '));
    expect(words).toBeGreaterThan(500);
    expect(grade).toBeLessThanOrEqual(8);
  });
});

test('no patient or listener is told who was studied in words of the study', () => {
  const hard = [...content.studies, ...content.rates].flatMap((record) =>
    'population' in record
      ? record.population === record.plain
        ? []
        : [record.population]
      : record.group === record.plain.group
        ? []
        : [record.group],
  );
  let told = 0;
  for (const { id } of content.injuries) {
    const explanation = explained(caseOf(['injury', id]));
    for (const finding of explanation.questions.flatMap(({ findings }) => findings))
      for (const reader of ['patient', 'broadcast'] as const) {
        const people = wordBasis(content, explanation, finding, reader).sources.flatMap((source) => source.people);
        const texts = [plainText(wordFinding(content, explanation, finding, reader)), ...people];
        if (people.length > 0) told += 1;
        for (const text of texts)
          expect(
            hard.filter((wording) => text.includes(wording)),
            `${id} ${finding.id}`,
          ).toEqual([]);
      }
  }
  expect(told).toBeGreaterThan(100);
}, 120_000);
