/** What the content itself must hold to, beyond its form. */
import { describe, expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { TOLD_KINDS, toldOf, writingFaults } from '../../../src/content/writing';
import { BONE_IDS, QUESTION_IDS } from '../../../src/ids';
import { readingOf } from '../../tools/reading-grade';

const content = readContent();
const TOLD = toldOf(content);

test('there are tellings to check', () => {
  expect(TOLD.length).toBeGreaterThan(120);
});

describe('patient text', () => {
  test.each(TOLD_KINDS)('%s: reading grade at most 8 over at least 80 words', (kind) => {
    const text = TOLD.filter((t) => t.where.startsWith(kind))
      .map((t) => t.tellings.patient)
      .join(' ');
    const { words, grade } = readingOf(text);
    expect(words).toBeGreaterThanOrEqual(80);
    expect(grade).toBeLessThanOrEqual(8);
  });

  test('all of it together reads at grade 6 or below', () => {
    expect(readingOf(TOLD.map((t) => t.tellings.patient).join(' ')).grade).toBeLessThanOrEqual(6);
  });
});

test('texts are written by the rules: figures, lengths, plain words, what can be spoken, sources', () => {
  expect(writingFaults(content)).toEqual([]);
});

test('the 28 bones stand heel to toe', () => {
  expect(content.bones.map((b) => b.id)).toEqual(BONE_IDS);
  expect(content.bones.map((b) => b.order)).toEqual(BONE_IDS.map((_, i) => i + 1));
  const ids = content.bones.filter((b) => b.group !== 'sesamoids').map((b) => b.fma);
  expect(new Set(ids).size).toBe(ids.length);
});

describe.each(content.injuries.map((i) => [i.id, i] as const))('injury %s', (id, injury) => {
  test('its places are zones of its bone', () => {
    for (const region of [injury.region, injury.occursAt.region]) {
      expect(content.regions.find((r) => r.id === region)).toMatchObject({ bone: injury.bone, kind: 'zone' });
    }
  });

  test('each option has its own way back, first stage to return, in the order of the stages and without going back in time', () => {
    const order = content.stages.map((s) => s.id);
    for (const option of injury.options) {
      const way = injury.stages.filter((s) => s.option === option || s.option === null);
      const places = way.map((s) => order.indexOf(s.stage));
      expect(places, `${id} ${option}`).toEqual(places.toSorted((a, b) => a - b));
      expect(way[0]?.stage).toBe('protect');
      expect(way.at(-1)?.stage).toBe('return');
      const starts = way.flatMap((s) => (s.weeksFrom === null ? [] : [s.weeksFrom]));
      expect(starts).toEqual(starts.toSorted((a, b) => a - b));
    }
  });

  test('no date is promised for the return: criteria open it', () => {
    for (const s of injury.stages.filter((s) => s.stage === 'return'))
      expect([s.weeksFrom, s.weeksTo]).toEqual([null, null]);
  });

  // That no study speaks of a class is no fault: `npm run -s content` tells it as missing.
  test('an ambiguous name carries its caveat', () => {
    if (injury.synonyms.some((s) => /jones|dancer/i.test(s))) expect(injury.nameCaveat).not.toBeNull();
  });

  test('every study arm of it is about an option that is offered, or about a late stage', () => {
    // Of a kind of treatment that no source names, people are told of, and nobody is offered it.
    const unnamed = new Set(content.options.filter(({ named }) => !named).map(({ id }) => id));
    const arms = content.studies.filter(
      (s) => s.injuries.includes(injury.id) && !injury.options.includes(s.option) && !unnamed.has(s.option),
    );
    expect(arms.map((a) => a.id)).toEqual(arms.filter((a) => a.id === 'torg-1984-delayed').map((a) => a.id));
  });
});

test('every question of every reader has a caution, and red flags reach the patient', () => {
  for (const question of QUESTION_IDS) {
    const cautions = content.cautions.filter((c) => c.questions.length === 0 || c.questions.includes(question));
    expect(cautions.some((c) => c.readers.includes('patient'))).toBe(true);
  }
  for (const caution of content.cautions.filter((c) => c.kind === 'red flag')) {
    expect(caution.readers).toContain('patient');
  }
  for (const caution of content.cautions.filter((c) => c.kind === 'do not say')) {
    expect(caution.readers).toEqual(['broadcast']);
  }
});

test('second-hand rows are never marked seen', () => {
  for (const study of content.studies) if (study.read === 'secondary') expect(study.mark).not.toBe('seen');
});

test('no source is listed that nothing cites, by id or by name and year', () => {
  const { sources, ...rest } = content;
  const cited = JSON.stringify(rest);
  const isCited = ({ id, author, issued }: (typeof sources)[number]): boolean =>
    cited.includes(`"source":"${id}"`) || cited.includes(`${author?.[0]?.family} ${issued?.['date-parts'][0]?.[0]}`);
  expect(sources.filter((s) => !isCited(s)).map((s) => s.id)).toEqual([]);
});

test('a source whose title was not seen says so', () => {
  for (const source of content.sources)
    if (source.title.startsWith('[')) expect(source.note ?? '', source.id).not.toBe('');
});

test('what tells injuries apart and their names do not speak of a person’s own: they stand without "if the report is right"', () => {
  const texts = content.injuries.flatMap(({ nameCaveat, tellApart }) =>
    [...(nameCaveat === null ? [] : [nameCaveat]), ...tellApart.map(({ how }) => how)].flatMap((each) =>
      Object.values(each),
    ),
  );
  expect(texts.filter((text) => /\byours\b/i.test(text))).toEqual([]);
});
