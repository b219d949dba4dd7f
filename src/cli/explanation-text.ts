/** An explanation as plain text for a terminal: the five questions in one reader's words, and what must be said with them. */
import type { Content } from '../content';
import type { Explanation } from '../explain';
import { QUESTION_IDS, type Reader } from '../ids';
import { cautionsFor, plainText, type Sentence, statusWord, wordQuestion } from '../wording';

const line = (sentence: Sentence): string => {
  const stamp = sentence.stamp === null ? '' : ` [${statusWord(sentence.stamp)}]`;
  return `- ${plainText(sentence)}${stamp}`;
};

export const explanationText = (content: Content, explanation: Explanation, reader: Reader): string => {
  const parts = QUESTION_IDS.map((id) => {
    const { title, sentence, claims, more } = wordQuestion(content, explanation, id, reader);
    return [title, '', plainText(sentence), '', ...[...claims, ...more].map(line), ''].join('\n');
  });
  const cautions = cautionsFor(content, explanation, reader)
    .filter((caution) => caution.kind !== 'do not say')
    .map((caution) => `- ${caution.what[reader]}`);
  return `${[...parts, ...cautions].join('\n')}\n`;
};
