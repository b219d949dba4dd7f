/** Every string a person can see, with where it comes from: texts of content/, words of the screens, templates of the tellings. */
import type { Content } from '../content';

export interface ListedWord {
  readonly where: string;
  readonly text: string;
}

/** Fields of content records that are printed or spoken. The others are ids, closed words, addresses and figures. */
export const SEEN_FIELDS: ReadonlySet<string> = new Set([
  'term',
  'plain',
  'latin',
  'synonyms',
  'patient',
  'broadcast',
  'study',
  'border',
  'structure',
  'scheme',
  'population',
  'asPrinted',
  'title',
  'container-title',
  'publisher',
  'note',
  'family',
  'literal',
  'step',
  'text',
  'task',
  'numbers',
  'published',
  'tolerance',
  'madeFor',
  'findBy',
  'p',
  // What somebody may type, and is told back.
  'findBy',
  'words',
]);

/** Printed in records of one kind only: elsewhere these keys hold closed words. */
const SEEN_IN_KIND: Readonly<Partial<Record<string, readonly string[]>>> = {
  rates: ['group', 'type', 'span'],
  troubles: ['breaks'],
  contradictions: ['topic', 'says'],
  counts: ['says'],
  decisionRules: ['what', 'of'],
};
const seenOfKind = (kind: string): ReadonlySet<string> => new Set([...SEEN_FIELDS, ...(SEEN_IN_KIND[kind] ?? [])]);

/** What is printed of the measures and look-alikes of the foot: there a source is the reference itself. */
const SEEN_OF_FOOT: ReadonlySet<string> = new Set([
  ...SEEN_FIELDS,
  'name',
  'trade',
  'definition',
  'of',
  'source',
  'text',
]);
/** Keys of content/anatomy with words that people see; the others are shapes. */
const WORDS_OF_FOOT = ['angles', 'lookAlikes'] as const;

const seenIn = (value: unknown, where: string, seen: boolean, fields = SEEN_FIELDS): ListedWord[] => {
  if (typeof value === 'string') return seen ? [{ where, text: value }] : [];
  if (Array.isArray(value)) return value.flatMap((item, i) => seenIn(item, `${where}/${i}`, seen, fields));
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, item]) => seenIn(item, `${where}/${key}`, fields.has(key), fields));
};

const idIn = (record: unknown, index: number): string =>
  record !== null && typeof record === 'object' && 'id' in record ? String(record.id) : String(index);

const recordsOf = (shape: unknown, key: string): readonly unknown[] => {
  const records = typeof shape === 'object' && shape !== null ? (shape as Record<string, unknown>)[key] : undefined;
  return Array.isArray(records) ? records : [];
};

export const wordsOfContent = (content: Content): ListedWord[] => {
  const { words, shape, reviews: _, ...kinds } = content;
  return [
    ...Object.entries(words).map(([key, text]) => ({ where: `content/words/${key}`, text })),
    ...Object.entries(kinds).flatMap(([kind, records]) =>
      records.flatMap((record: unknown, i: number) =>
        seenIn(record, `content/${kind}/${idIn(record, i)}`, false, seenOfKind(kind)),
      ),
    ),
    ...WORDS_OF_FOOT.flatMap((key) =>
      recordsOf(shape, key).flatMap((record, i) =>
        seenIn(record, `content/anatomy/${key}/${idIn(record, i)}`, false, SEEN_OF_FOOT),
      ),
    ),
  ];
};

/** One a line, `where<TAB>text`; a line break or tab inside a text becomes a blank. */
export const wordsText = (words: readonly ListedWord[]): string =>
  words.map(({ where, text }) => `${where}\t${text.replace(/\s+/g, ' ').trim()}\n`).join('');
