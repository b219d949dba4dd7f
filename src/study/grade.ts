/**
 * Grading. One right choice: all or nothing. `order`: the share of pairs that stand in the right order, and only for a
 * complete list. `meets`: right choices less wrong ones, over the number of right ones, never below 0. Full = 1 = exact.
 */
import { fill } from '../wording';
import { QUIZ_PHRASES } from './phrases';
import type { Grade, QuizAnswer, QuizItem } from './types';

const sameSet = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id) => b.includes(id));

/** Pairs (of all pairs) whose two members come in the same order in both lists. */
const pairsInOrder = (answer: readonly string[], correct: readonly string[]): { hits: number; of: number } => {
  let hits = 0;
  let of = 0;
  correct.forEach((first, i) => {
    for (const second of correct.slice(i + 1)) {
      of += 1;
      if (answer.indexOf(first) < answer.indexOf(second)) hits += 1;
    }
  });
  return { hits, of };
};

const textOf = (item: QuizItem, id: string): string => item.choices.find((choice) => choice.id === id)?.text ?? id;
const answerText = (item: QuizItem): string => item.correct.map((id) => textOf(item, id)).join(', ');

export const grade = (item: QuizItem, answer: QuizAnswer): Grade => {
  const given = [...new Set(answer)];
  const hits = given.filter((id) => item.correct.includes(id));
  const wrong = given.filter((id) => !item.correct.includes(id));
  const missed = item.correct.filter((id) => !given.includes(id));
  const none = fill(QUIZ_PHRASES['feedback.none'], { answer: answerText(item) });
  const result = (score: number, part: string): Grade => ({
    score,
    full: score === 1,
    hits,
    wrong,
    missed,
    feedback: score === 1 ? QUIZ_PHRASES['feedback.full'] : score > 0 ? part : none,
    why: item.why,
  });

  if (item.kind === 'order') {
    if (!sameSet(given, item.correct)) return result(0, none);
    const pairs = pairsInOrder(given, item.correct);
    return result(pairs.hits / pairs.of, fill(QUIZ_PHRASES['feedback.partOrder'], pairs));
  }
  if (item.kind === 'meets') {
    const of = item.correct.length;
    const counts = { hits: hits.length, of, extra: wrong.length };
    const part = wrong.length === 0 ? QUIZ_PHRASES['feedback.part'] : QUIZ_PHRASES['feedback.partExtra'];
    return result(Math.max(0, hits.length - wrong.length) / of, fill(part, counts));
  }
  return result(sameSet(given, item.correct) ? 1 : 0, none);
};
