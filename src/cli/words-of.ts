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
  'effect',
  'population',
  'asPrinted',
  'title',
  'container-title',
  'publisher',
  'note',
  'family',
  'literal',
]);

const seenIn = (value: unknown, where: string, seen: boolean): ListedWord[] => {
  if (typeof value === 'string') return seen ? [{ where, text: value }] : [];
  if (Array.isArray(value)) return value.flatMap((item, i) => seenIn(item, `${where}/${i}`, seen));
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, item]) => seenIn(item, `${where}/${key}`, SEEN_FIELDS.has(key)));
};

const idIn = (record: unknown, index: number): string =>
  record !== null && typeof record === 'object' && 'id' in record ? String(record.id) : String(index);

export const wordsOfContent = (content: Content): ListedWord[] => {
  const { words, shape: _, reviews: __, ...kinds } = content;
  return [
    ...Object.entries(words).map(([key, text]) => ({ where: `content/words/${key}`, text })),
    ...Object.entries(kinds).flatMap(([kind, records]) =>
      records.flatMap((record: unknown, i: number) => seenIn(record, `content/${kind}/${idIn(record, i)}`, false)),
    ),
  ];
};

/** One a line, `where<TAB>text`; a line break or tab inside a text becomes a blank. */
export const wordsText = (words: readonly ListedWord[]): string =>
  words.map(({ where, text }) => `${where}\t${text.replace(/\s+/g, ' ').trim()}\n`).join('');
