/** What tells the first few candidates apart, as content says it; where content says nothing of two, nothing is said. */
import type { Other } from '../../content/schema';
import type { Subject } from './phrases';
import type { Apart, CandidateRef } from './types';

const isSame = (ref: CandidateRef, from: Other): boolean =>
  (from.is === 'injury' && ref.is === 'injury' && from.injury === ref.id) ||
  (from.is === 'card' && ref.is === 'card' && from.card === ref.id);

const key = (one: CandidateRef, other: CandidateRef): string =>
  [`${one.is} ${one.id}`, `${other.is} ${other.id}`].sort().join(', ');

/** Each pair once, as the one that stands further up tells it. */
export const apartOf = (subjects: readonly Subject[], first: readonly CandidateRef[]): readonly Apart[] => {
  const told = new Set<string>();
  return first.flatMap((one) => {
    const subject = subjects.find(({ ref }) => ref.is === one.is && ref.id === one.id);
    return (subject?.tellApart ?? []).flatMap(({ from, how, evidence }): Apart[] => {
      const other = first.find((ref) => isSame(ref, from));
      if (other === undefined || told.has(key(one, other))) return [];
      told.add(key(one, other));
      return [{ one, from, how, evidence }];
    });
  });
};
