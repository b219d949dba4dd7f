/** The finder over the shipped content, as the tests of a search ask it. */
import { readContent } from '../../../../src/cli/read-content';
import { finderOf, type Matched } from '../../../../src/explain/find';

export const content = readContent();
export const find = finderOf(content);

export const search = (words: string) => find({ words, bone: null, parts: [], lying: [] });
export const idsFor = (words: string): string[] => search(words).candidates.map(({ ref }) => ref.id);
export const candidateFor = (words: string, id: string) =>
  search(words).candidates.find(({ ref }) => (ref.id as string) === id);

/** What each reason met, as it was typed. */
export const saidIn = (reasons: readonly Matched[]): string[] =>
  reasons.flatMap((reason) => ('said' in reason ? [reason.said.toLowerCase()] : []));
