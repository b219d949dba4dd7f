/** Ten questions at a time: a seeded mix of the five kinds, none twice. Same content, foot and seed: same questions. */
import type { Zone } from '../anatomy/types';
import type { Content } from '../content/schema';
import { seededRandom } from '../units';
import { graphOf } from './graph';
import { MAKERS } from './make';
import { shuffled } from './random';
import { QUIZ_KINDS, type QuizItem } from './types';

export const QUIZ_COUNT = 10;
/** Draws of one kind before it is held to be used up. */
const TRIES = 40;

export interface QuizOptions {
  readonly count?: number;
  readonly seed: number;
}

/** From zones already found. Fewer than `count` only when the content can't make more. */
export const questionsFrom = (
  content: Pick<Content, 'bones' | 'joints' | 'regions'>,
  zones: readonly Zone[],
  { count = QUIZ_COUNT, seed }: QuizOptions,
): QuizItem[] => {
  const random = seededRandom(seed);
  const material = { content, graph: graphOf(content), zones };
  const items = new Map<string, QuizItem>();
  let kinds = shuffled(random, QUIZ_KINDS);
  for (let turn = 0; items.size < count && kinds.length > 0; turn += 1) {
    const kind = kinds[turn % kinds.length];
    if (kind === undefined) break;
    const before = items.size;
    for (let i = 0; i < TRIES && items.size === before; i += 1) {
      const item = MAKERS[kind](material, random);
      if (item !== null) items.set(item.id, items.get(item.id) ?? item);
    }
    if (items.size === before) kinds = kinds.filter((k) => k !== kind);
  }
  return shuffled(random, [...items.values()]);
};
