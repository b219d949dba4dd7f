/** `npm run words` lists what people see: known strings of each kind, and every text of content/ that is more than one word. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { contentFiles, readContent } from '../../../src/cli/read-content';
import { allWords } from '../../../src/cli/words';
import { quotableOf, quotedIn } from '../../../src/content/quoted';

/** Fields that nobody reads on a screen: addresses, file names, codes, closed words of the schema. */
const UNSEEN = new Set([
  'source',
  'mark',
  'latinMark',
  'unit',
  'kind',
  'type',
  'design',
  'level',
  'ages',
  'id',
  'bone',
  'model',
  'centre',
  'endpoint',
  'edition',
  'given',
  'publisher-place',
  'DOI',
  'URL',
  'page',
  'volume',
  'issue',
  'basis',
  'contact',
  // How a code goes on and which visits it has: closed words of its rule.
  'by',
  'visit',
  'says',
  'measure',
  'about',
  'bones',
  'since',
  'what',
  'branch',
  'by',
  'visit',
  'finding',
  // How a class comes on: closed words of its rule.
  'onsets',
  // What a word that denies reaches: closed words of its rule.
  'binds',
  'is',
]);

const textsIn = (value: unknown, key: string): string[] => {
  if (typeof value === 'string') return /\s/.test(value) && !UNSEEN.has(key) ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((item) => textsIn(item, key));
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([k, item]) => textsIn(item, k));
};

/** Of measures and look-alikes a reference is printed as it stands. */
const UNSEEN_OF_FOOT = new Set(['how', 'view', 'unit', 'id', 'bone', 'shape']);
const seenOfFoot = (value: unknown, key: string): string[] => {
  if (typeof value === 'string') return UNSEEN_OF_FOOT.has(key) ? [] : [value.trim()];
  if (Array.isArray(value)) return value.flatMap((item) => seenOfFoot(item, key));
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([k, item]) => (UNSEEN_OF_FOOT.has(k) ? [] : seenOfFoot(item, k)));
};

const words = allWords();
const texts = new Set(words.map(({ text }) => text.trim()));

describe('the list of words', () => {
  it.each([
    ['a bone', 'fifth metatarsal'],
    ['a bone in everyday words', 'heel bone'],
    ['a prompt of the quiz', 'Which bone is lit?'],
    ['a line of teach-back', 'Which foot are we talking about?'],
    ['a line of a still', 'Illustration, not an image of any person'],
    ['a piece of a forecast', 'By week {week} about 50 of them {reach}.'],
    ['what is wrong with a calendar', 'There is nothing in it.'],
    ['what to do about it', 'Export the calendar again, or type the dates as a list.'],
  ])('holds %s', (_what, text) => {
    expect(texts).toContain(text);
  });

  it('holds every template of the wording, of the screens, of telling and study', () => {
    for (const folder of ['content/words/', 'wording', 'telling/', 'study/', 'problems/FIXTURE_', 'problems/CASE_'])
      expect(words.filter(({ where }) => where.startsWith(folder)).length, folder).toBeGreaterThan(10);
  });

  it('leaves out no text of content/ that has more than one word', () => {
    const from = quotableOf(readContent());
    const missing = [...contentFiles()]
      .filter(([name]) => !name.startsWith('content/anatomy/'))
      .flatMap(([name, file]) =>
        textsIn(quotedIn(parse(file).records ?? [], from).record, '').map((text) => `${name}: ${text.trim()}`),
      )
      .filter((line) => !texts.has(line.slice(line.indexOf(': ') + 2)));
    expect(missing).toEqual([]);
  });

  it.each(['angles', 'look-alikes'])('leaves out no text of content/anatomy/%s.yaml', (name) => {
    const file: unknown = parse(contentFiles().get(`content/anatomy/${name}.yaml`) ?? '');
    const { review: _, ...records } = file as Record<string, unknown>;
    const all = seenOfFoot(records, '');
    expect(all.length).toBeGreaterThan(40);
    expect(all.filter((text) => !texts.has(text))).toEqual([]);
  });

  it('names no text twice at the same place', () => {
    const places = words.map(({ where }) => where);
    expect(new Set(places).size).toBe(places.length);
  });
});
