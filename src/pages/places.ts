/** Where a person can be in the app. An address carries these keys and content ids, never anything about a case. */
import { QUESTION_IDS, type QuestionId, READERS, type Reader } from '../ids';

export const PAGES = ['explain', 'new', 'known', 'say', 'hand', 'ask', 'show'] as const;
export type Page = (typeof PAGES)[number];

export const DEMOS = ['demo-handball', 'demo-dancer', 'demo-hill-runner'] as const;
export type Demo = (typeof DEMOS)[number];

export interface Address {
  readonly page: Page;
  readonly question: QuestionId;
  readonly reader: Reader;
  readonly demo: Demo | null;
}

export const START: Address = { page: 'explain', question: 'where', reader: 'patient', demo: null };

const listed = <T extends string>(value: string | null, list: readonly T[]): T | null =>
  list.find((item) => item === value) ?? null;

/** Reads `#view=hand&question=why`. Keys and values that are not listed are left out, not kept. */
export const readAddress = (hash: string, before: Address = START): Address => {
  const query = new URLSearchParams(hash.replace(/^#\/?/, ''));
  return {
    page: listed(query.get('view'), PAGES) ?? 'explain',
    question: listed(query.get('question'), QUESTION_IDS) ?? before.question,
    reader: listed(query.get('reader'), READERS) ?? before.reader,
    demo: listed(query.get('demo'), DEMOS),
  };
};

export const writeAddress = (address: Address): string => {
  const query = new URLSearchParams();
  if (address.page !== 'explain') query.set('view', address.page);
  query.set('question', address.question);
  if (address.reader !== 'patient') query.set('reader', address.reader);
  if (address.demo !== null) query.set('demo', address.demo);
  return `#${query.toString()}`;
};
