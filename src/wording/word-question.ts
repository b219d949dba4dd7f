/** One question in one reader's words: title, the one sentence, what the case says, and the depth on request. */
import type { Content } from '../content/schema';
import type { Explanation, Finding } from '../explain/types';
import type { QuestionId, Reader } from '../ids';
import type { Sentence } from './types';
import { wordFinding } from './word-finding';

export interface QuestionWords {
  readonly title: string;
  readonly sentence: Sentence;
  readonly claims: readonly Sentence[];
  readonly more: readonly Sentence[];
}

export const questionTitle = (content: Content, id: QuestionId): string => content.words[`question.${id}`] ?? id;

/** Findings meant for this reader, in their order. */
export const findingsFor = (explanation: Explanation, question: QuestionId, reader: Reader): readonly Finding[] =>
  (explanation.questions.find((each) => each.id === question)?.findings ?? []).filter(
    (finding) => finding.readers?.includes(reader) ?? true,
  );

export const wordQuestion = (
  content: Content,
  explanation: Explanation,
  question: QuestionId,
  reader: Reader,
): QuestionWords => {
  const findings = findingsFor(explanation, question, reader);
  const worded = (depth: Finding['depth']): readonly Sentence[] =>
    findings
      .filter((finding) => finding.depth === depth)
      .map((finding) => wordFinding(content, explanation, finding, reader));
  const [sentence, ...others] = worded('sentence');
  if (sentence === undefined) throw new Error(`wording: question ${question} has no sentence`);
  return {
    title: questionTitle(content, question),
    sentence,
    claims: worded('claim'),
    more: [...others, ...worded('more')],
  };
};
