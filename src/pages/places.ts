/** Where a person can be in the app. An address carries these keys and content ids, never anything about a case. */
import { type CardId, idOf, QUESTION_IDS, type QuestionId, READERS, type Reader } from '../ids';

export const PAGES = [
  'start',
  'explain',
  'new',
  'known',
  'say',
  'hand',
  'ask',
  'show',
  'walk',
  'sources',
  'rule',
  'find',
] as const;
export type Page = (typeof PAGES)[number];

export const DEMOS = ['demo-handball', 'demo-dancer', 'demo-hill-runner', 'demo-rider', 'demo-long-jumper'] as const;
export type Demo = (typeof DEMOS)[number];

export interface Address {
  readonly page: Page;
  readonly question: QuestionId;
  readonly reader: Reader;
  readonly demo: Demo | null;
  /** An injury told in short, on the page where it was found. */
  readonly card: CardId | null;
}

export const START: Address = { page: 'explain', question: 'where', reader: 'patient', demo: null, card: null };

const listed = <T extends string>(value: string | null, list: readonly T[]): T | null =>
  list.find((item) => item === value) ?? null;

const queryOf = (hash: string) => new URLSearchParams(hash.replace(/^#\/?/, ''));

const KEYS: Readonly<Record<string, readonly string[]>> = {
  view: PAGES,
  question: QUESTION_IDS,
  reader: READERS,
  demo: DEMOS,
};
const MOST_SHOWN = 40;

/** Ids of content have this form; which there are, only the content knows. */
const CARD = /^[a-z][a-z0-9-]{0,59}$/;
const cardIn = (query: URLSearchParams): CardId | null => {
  const card = query.get('card');
  return card !== null && CARD.test(card) ? idOf<CardId>(card) : null;
};

/** What an address asks for and is not listed: said to the person who followed the link, in signs that can carry no message. */
export const strangersIn = (hash: string, search = '', cards: readonly string[] = []): readonly string[] => {
  const keys: typeof KEYS = { ...KEYS, card: cards };
  const shown = ([key, value]: readonly [string, string]): string =>
    (value === '' ? key : `${key}=${value}`).replace(/[^\w=.-]+/g, '…').slice(0, MOST_SHOWN);
  // Our own keys behind a question mark are never read: an address of ours has them behind a #.
  const misplaced = [...new URLSearchParams(search)].filter(([key]) => Object.hasOwn(keys, key));
  const unlisted = [...queryOf(hash)].filter(
    ([key, value]) => !(Object.hasOwn(keys, key) && keys[key]?.includes(value)),
  );
  return [...misplaced.map((each) => `?${shown(each)}`), ...unlisted.map(shown)];
};

/** A page or an example that is not there leads to the start, never to some other case. */
const pageOf = (query: URLSearchParams): Page => {
  const [view, demo] = [query.get('view'), query.get('demo')];
  if (demo !== null && listed(demo, DEMOS) === null) return 'start';
  if (view === null) return cardIn(query) === null ? 'explain' : 'find';
  return listed(view, PAGES) ?? 'start';
};

/** Reads `#view=hand&question=why`. Keys and values that are not listed are left out, not kept. */
export const readAddress = (hash: string, before: Address = START): Address => {
  const query = queryOf(hash);
  const page = pageOf(query);
  return {
    page,
    question: listed(query.get('question'), QUESTION_IDS) ?? before.question,
    reader: listed(query.get('reader'), READERS) ?? before.reader,
    demo: listed(query.get('demo'), DEMOS),
    card: page === 'find' ? cardIn(query) : null,
  };
};

export const writeAddress = (address: Address): string => {
  const query = new URLSearchParams();
  const card = address.page === 'find' ? address.card : null;
  if (card !== null) query.set('card', card);
  else if (address.page !== 'explain') query.set('view', address.page);
  query.set('question', address.question);
  if (address.reader !== 'patient') query.set('reader', address.reader);
  if (address.demo !== null) query.set('demo', address.demo);
  return `#${query.toString()}`;
};
