/** Each published count stands once in all of the content; other texts quote it, and what they quote stands beside its source. */
import { describe, expect, it, test } from 'vitest';
import { parse } from 'yaml';
import { contentFiles, readContent } from '../../../src/cli/read-content';
import { compileContent } from '../../../src/content';
import { placesIn } from '../../../src/content/quoted';
import { figuresIn, NO_COUNTS, writtenTwice } from '../../../src/content/written-twice';

const files = contentFiles();
const content = readContent();
const told = (found: ReturnType<typeof writtenTwice>): readonly string[] =>
  found.map(({ figure, source, places }) => `${figure} of ${source}: ${places.join(' and ')}`);

const LISFRANC = 'content/injuries/lisfranc.yaml';

/** The content with one more text of a file, at the place of an old one. */
const planted = (path: string, old: string, text: string): ReadonlyMap<string, string> => {
  const before = files.get(path);
  if (before === undefined || !before.includes(old)) throw new Error(`nothing to plant at in ${path}`);
  return new Map([...files, [path, before.replace(old, text)]]);
};

/** Of these only: each try reads its files anew. */
const HOLDING = [
  'factors',
  'studies',
  'rates',
  'counts',
  'vessel-patterns',
  'injuries/lisfranc',
  'injuries/mt5-2-metaphyseal',
];
const few = (all: ReadonlyMap<string, string>): ReadonlyMap<string, string> =>
  new Map([...all].filter(([path]) => HOLDING.some((name) => path === `content/${name}.yaml`)));

describe('no count is written twice', () => {
  it('in any text of the content', () => {
    expect(told(writtenTwice(files, content.sources))).toEqual([]);
  });

  const AT = '; the injuries were not alike."';
  it.each([
    ['a count of a study, by the name of its author', '; 5 of 18 (Mologne 2005)."', '5/18 of mologne-2005'],
    ['the same with what was counted in between', '; 5 people of 18 (Mologne 2005)."', '5/18 of mologne-2005'],
    ['the same with another word for of', '; 5 nonunions in 18 (Mologne 2005)."', '5/18 of mologne-2005'],
    ['the same with a slash', '; 5/18 (Mologne 2005)."', '5/18 of mologne-2005'],
    ['its share, which nobody printed', '; 28 % (Mologne 2005)."', '28 % of mologne-2005'],
    [
      'a percentage as printed, by the nearest source',
      '; 78 % after open fixation."',
      '78 % of robertson-2019-lisfranc',
    ],
    ['the first of two percentages', '; 78 and 98 %."', '78 % of robertson-2019-lisfranc'],
    ['a ratio with its interval', '; 2.2 (1.9 to 2.6) (Pearson 2016)."', '2.2 (1.9 to 2.6) of pearson-2016'],
    ['weeks of a factor', '; a mean of 15 weeks (Luo 2023)."', '15 weeks of luo-2023'],
    ['weeks of a study', '; 6.2 weeks (O\'Malley 1996)."', '6.2 weeks of omalley-1996-mt2-base'],
    ['a rate', '; 7 of 62 (Saxena 2017)."', '7/62 of saxena-2017'],
    ['a pattern of vessels', '; 30 of 54 feet (McKeon 2012)."', '30/54 of mckeon-2012'],
    ['a count that texts quote', '; 43 of 95 (Baumbach 2020)."', '43/95 of baumbach-2020'],
    ['a count of thousands', '; 645 of 2,459 (Kingery 2023)."', '645/2459 of kingery-2023-zones'],
  ])('%s is found', (_, text, found) => {
    const twice = told(writtenTwice(few(planted(LISFRANC, AT, text)), content.sources));
    expect(
      twice.filter((line) => line.startsWith(found) && line.includes('injuries lisfranc.heals.what.study')).length,
    ).toBeGreaterThan(0);
  });

  it('the same count of another source is another fact', () => {
    const other = planted(LISFRANC, AT, '; 5 of 18 (Porter 2005)."');
    expect(told(writtenTwice(few(other), content.sources))).toEqual([]);
  });

  it('what is listed as no count is in the content still', () => {
    const all = writtenTwice(files, content.sources, []);
    for (const { source, figure } of NO_COUNTS)
      expect(
        all.some((each) => each.source === source && each.figure === figure),
        `${source} ${figure}`,
      ).toBe(true);
  });

  it.each([
    ['wholly proximal to the zone 1/2 border', []],
    ['pain at most 2 of 10 in drills', []],
    ['12 to 13 weeks and 96 %', ['96 %']],
    ['sensitivity 86 to 99 %', ['86 %', '99 %']],
    ['1.5 of 2.5 mm', []],
    ['6 weeks in a cast, 12.3 weeks to sport', ['12.3 weeks']],
    ['back at a mean of 15 weeks (5 to 34)', ['15 weeks']],
    ['odds ratio 2.4 (1.2 to 4.8)', ['2.4 (1.2 to 4.8)']],
  ])('in "%s" it reads %j', (text, figures) => expect(figuresIn(text)).toEqual(figures));
});

describe('a text that quotes a count', () => {
  it('shows it, and no place is left unfilled', () => {
    const { injuries } = content;
    const says = (id: string): string => injuries.find((each) => each.id === id)?.heals.what.study ?? '';
    expect(says('mt5-metaphyseal')).toContain('5 of 18 in a cast (Mologne 2005), 29 of 475 mixed adults');
    expect(says('mt5-proximal-shaft')).toContain('union 87 % (83 to 90) with and 56 % (41 to 70) without surgery');
    expect(placesIn(JSON.stringify(content))).toEqual([]);
  });

  it('of which nothing stands at a place does not compile, and the line is told', () => {
    const places = [
      'studies/mologne-2005-cast-sport/union',
      'studies/nobody/union',
      'studies/looney-2020/weeks',
      'factors/smoking/effects/9',
      'factors/smoking/waits/0',
      'rates/nobody',
      'counts/coded-clots/x',
      'counts/',
    ];
    const compiled = compileContent(
      planted(LISFRANC, '(pooled, Robertson 2019)', places.map((place) => `{${place}}`).join(' ')),
    );
    if (compiled.ok) throw new Error('compiled');
    expect(compiled.problems.map(({ got }) => got).toSorted()).toEqual(places.toSorted());
    for (const { file, path } of compiled.problems) {
      expect(file).toBe('injuries/lisfranc.yaml');
      expect(path).toContain('heals.what.study');
    }
  });

  it('has its source beside it: in its evidence, or by the name of the author', () => {
    const sourceOf = (place: string): string | undefined => {
      const [kind, id, choice] = place.split('/');
      if (kind === 'studies') return content.studies.find((s) => s.id === id)?.source;
      if (kind === 'rates') return content.rates.find((s) => s.id === id)?.source;
      if (kind === 'counts') return content.counts.find((s) => s.id === id)?.evidence.source ?? undefined;
      if (kind === 'factors') {
        const factor = content.factors.find((s) => s.id === id);
        const list = choice === 'effects' ? factor?.effects : factor?.waits;
        const size = list?.[Number(place.split('/')[3])];
        return size !== undefined && 'evidence' in size ? (size.evidence.source ?? undefined) : undefined;
      }
      const pattern = content.vesselPatterns.find((s) => s.id === id);
      return pattern?.choices.find((c) => c.id === choice)?.counted?.evidence.source ?? undefined;
    };
    const quotes: string[] = [];
    const bare: string[] = [];
    const walk = (value: unknown, near: string | null): void => {
      if (typeof value === 'string')
        for (const place of placesIn(value)) {
          quotes.push(place);
          const source = sourceOf(place);
          const [author] = content.sources.find(({ id }) => id === source)?.author ?? [];
          if (source !== near && !value.includes(author?.family ?? author?.literal ?? '(nobody)')) bare.push(place);
        }
      if (value === null || typeof value !== 'object') return;
      const { evidence } = value as { evidence?: { source: string | null } };
      for (const inner of Object.values(value)) walk(inner, evidence?.source ?? near);
    };
    for (const text of files.values()) walk(parse(text), null);
    expect(quotes.length).toBeGreaterThan(30);
    expect(bare).toEqual([]);
  });

  test('and what stands in counts.yaml is quoted at least twice, else it could stand where it is told', () => {
    const all = [...files.values()].join('\n');
    for (const { id } of content.counts) expect(all.split(`{counts/${id}}`).length - 1, id).toBeGreaterThan(1);
  });
});
