/** What every sentence about a finding is written with. */
import type { Content, Tellings } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { Reader } from '../ids';
import type { Quantity } from '../units';
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

export const sentence = (
  pen: Pick<Pen, 'reader'>,
  key: SentenceKey,
  values: Readonly<Record<string, Value>> = {},
): readonly Run[] => capitalRuns(fillRuns((SENTENCES[key] as Tellings)[pen.reader], values));

/** A sentence without its capital and its end, to stand behind a hedge or a condition. */
export const clause = (
  pen: Pick<Pen, 'reader'>,
  key: SentenceKey,
  values: Readonly<Record<string, Value>>,
): readonly Run[] => fillRuns((SENTENCES[key] as Tellings)[pen.reader], values);

export const after = (runs: readonly Run[], end: string): readonly Run[] => joined([...runs, { text: end }]);

export const list = (items: readonly Value[]): readonly Run[] => listRuns(items, PARTS.and, PARTS.nothing);

export const quantity = (pen: Pen, value: Quantity): Run => pen.number(formatQuantity(value));
