/** A sentence that the draws agree on against the told run says so: the numbers and the picture are that run's. */
import type { Agreed } from '../explain/load-messages';
import type { SentenceKey } from './en/messages';
import { joined, type Value } from './fill';
import { type Pen, sentence } from './pen';
import type { Run } from './types';

export const withOddRun = (
  pen: Pen,
  { contrary }: Agreed,
  key: SentenceKey,
  values: Readonly<Record<string, Value>>,
): readonly Run[] => {
  const told = sentence(pen, key, values);
  return contrary === true ? joined([...told, { text: ' ' }, ...sentence(pen, 'oddRun')]) : told;
};
