/** Every finding of an explanation in one reader's words, in the order of the questions. The tellings only choose among these. */
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { Reader } from '../ids';
import { findingsFor, plainText, wordFinding } from '../wording';
import type { Worded } from './worded';

/** `word`: as it stands in its question, or by itself where a telling arranges anew. */
export const wordedFindings = (
  content: Content,
  explanation: Explanation,
  reader: Reader,
  word: typeof wordFinding = wordFinding,
): readonly Worded[] =>
  explanation.questions.flatMap((question) =>
    findingsFor(explanation, question.id, reader).map((finding) => {
      const sentence = word(content, explanation, finding, reader);
      return { finding, question: question.id, sentence, text: plainText(sentence) };
    }),
  );
