/**
 * An explanation as plain text for a terminal: the five questions in one reader's words, and what must be said with them. Signs that
 * want help come before the answers, and how fast each wants it stands with it. A line that a later stage repeats is told once.
 */
import type { Content } from '../content';
import { type Caution, URGENCIES } from '../content/schema';
import type { Explanation } from '../explain';
import { QUESTION_IDS, type Reader } from '../ids';
import { inText } from '../telling';
import { cautionsFor, plainText, type Sentence, statusWord, wordQuestion } from '../wording';

/** A patient's sentence says itself that it is only reported; that it is confirmed, only the stamp says. */
const lineFor =
  (reader: Reader) =>
  (sentence: Sentence): string => {
    const { stamp } = sentence;
    const isSaid = stamp === null || (reader === 'patient' && stamp !== 'confirmed');
    return `- ${plainText(sentence)}${isSaid ? '' : ` [${statusWord(stamp)}]`}`;
  };

const signLines = (content: Content, cautions: readonly Caution[], reader: Reader): readonly string[] => {
  const { words } = content;
  const flags = cautions.filter(({ kind }) => kind === 'red flag').map(({ what }) => `- ${what[reader]}`);
  const dangers = cautions.filter(({ kind }) => kind === 'treatment danger');
  const byAct = URGENCIES.flatMap((act) =>
    dangers
      .filter((caution) => (caution.act ?? 'soon') === act)
      .map(({ what }) => `- ${words[`stages.act.${act}`]} ${what[reader]}`),
  );
  const lines = [...flags, ...byAct];
  return lines.length === 0 ? [] : [words['stages.dangers'] ?? '', '', ...lines, ''];
};

/** Where a first sentence opens with it, it is not said again. */
const opensWith =
  (said: string) =>
  (text: string): boolean =>
    text.startsWith(said);

/** First the answers as short as a page shows them unopened, then what the page opens for whoever asks for more. */
export const explanationText = (content: Content, explanation: Explanation, reader: Reader): string => {
  const { words } = content;
  const line = lineFor(reader);
  const carried = inText(explanation, reader);
  const isCarried = ({ finding }: Sentence): boolean => carried.has(finding);
  const questions = QUESTION_IDS.map((id) => wordQuestion(content, explanation, id, reader)).map((words) => ({
    ...words,
    claims: words.claims.filter(isCarried),
    more: words.more.filter(isCarried),
  }));
  const short = questions.flatMap(({ title, sentence, claims }) => [
    title,
    '',
    plainText(sentence),
    '',
    ...new Set(claims.map(line)),
    '',
  ]);
  const cautions = cautionsFor(content, explanation, reader).filter(({ kind }) => kind !== 'do not say');
  const limits = cautions
    .filter(({ kind, what }) => (kind === 'limit' || kind === 'disclaimer') && !short.some(opensWith(what[reader])))
    .map(({ what }) => `- ${what[reader]}`);
  const more = questions.flatMap(({ title, claims, more: lines }) => {
    const told = new Set(claims.map(line));
    const rest = [...new Set(lines.map(line))].filter((each) => !told.has(each));
    return rest.length === 0 ? [] : ['', `${title} ${words['note.more'] ?? ''}`, '', ...rest];
  });
  return `${[...signLines(content, cautions, reader), ...short, ...limits, ...more].join('\n')}\n`;
};
