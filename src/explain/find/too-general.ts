/** Words that were all understood and are true of every injury, such as foot fracture: they make no list, and what to add is said. */
import type { Found, Sought } from './types';

export const isTooGeneral = (found: Found, { words, bone }: Pick<Sought, 'words' | 'bone'>): boolean =>
  words.trim() !== '' &&
  bone === null &&
  [found.candidates, found.unknown, found.unknownCodes, found.denied].every((list) => list.length === 0);
