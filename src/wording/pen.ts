/** What every sentence about a finding is written with. */
import type { Content, Tellings } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { Reader } from '../ids';
import type { Quantity } from '../units';
import { beginsAt } from './begins';
import { PARTS, SENTENCES, type SentenceKey } from './en/messages';
import { capitalRuns, fillRuns, joined, listRuns, type Value } from './fill';
import { formatQuantity } from './quantities';
import type { Run } from './types';

export interface Pen {
  readonly content: Content;
  readonly explanation: Explanation;
  readonly reader: Reader;
  readonly number: (text: string) => Run;
  readonly whatIf: boolean;
}

/** Enough to tell what is told of no one bone. */
type Speaks = Pick<Pen, 'reader'> & Partial<Pick<Pen, 'explanation'>>;

export const sentence = (pen: Speaks, key: SentenceKey, values: Readonly<Record<string, Value>> = {}): readonly Run[] =>
  capitalRuns(clause(pen, key, values));

/** A sentence without its capital and its end, to stand behind a hedge or a condition. */
export const clause = (pen: Speaks, key: SentenceKey, values: Readonly<Record<string, Value>>): readonly Run[] =>
  fillRuns((SENTENCES[key] as Tellings)[pen.reader], {
    end: beginsAt(pen.explanation?.bone ?? null, pen.reader),
    ...values,
  });

export const after = (runs: readonly Run[], end: string): readonly Run[] => joined([...runs, { text: end }]);

export const list = (items: readonly Value[]): readonly Run[] => listRuns(items, PARTS.and, PARTS.nothing);

export const quantity = (pen: Pen, value: Quantity): Run => pen.number(formatQuantity(value));
