/**
 * What is read first carries no figure that nobody read: first sentences, what stands in sight under them, titles, script lines; over
 * the demos and over every injury with every option that it has.
 */
import { describe, expect, it } from 'vitest';
import { QUESTION_IDS, READERS } from '../../../src/ids';
import { scriptOf } from '../../../src/telling';
import { plainText, questionTitle, wordQuestion } from '../../../src/wording';
import type { Run } from '../../../src/wording/types';
import { caseOf, content, DEMOS, demoOnDefaultFoot, explained } from '../../tools/explained';

const CASES = [
  ...DEMOS.map((name) => [name, explained(demoOnDefaultFoot(name))] as const),
  ...content.injuries.flatMap(({ id, options }) =>
    options.map((option) => [`${id} ${option}`, explained(caseOf(['injury', id], ['treatment', { option }]))] as const),
  ),
];

/** A figure is a number with a mark below it. */
const weakFigures = (runs: readonly Run[]): readonly string[] =>
  runs.flatMap(({ text, mark }) => (/\d/.test(text) && (mark === 'weak' || mark === 'from memory') ? [text] : []));

const ZONE = /\bzones? \d( (and|to) \d)?|\btypes? [IVX]+/g;
/** A time or a count that is written out is a figure too. */
const SPELT =
  /\b(two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty)( or \w+| to \w+)? (days?|weeks?|months?|years?|of|in|times)\b/i;
const NAMED = /\(([^()]*\d{4})\)/g;

/** Figures of a text of the content that are neither read nor right before the name of a study that was. */
const unread = (text: string): boolean => {
  const parts = text.replaceAll(ZONE, '').split(NAMED);
  const isRead = (name: string | undefined): boolean =>
    content.studies.some(({ source, mark }) => {
      const record = content.sources.find(({ id }) => id === source);
      return mark === 'seen' && name === `${record?.author?.[0]?.family} ${record?.issued?.['date-parts'][0]?.[0]}`;
    });
  // Texts and names take turns: a text with a figure needs a name after it, of a study that was read.
  return parts.some((part, i) => i % 2 === 0 && (/\d/.test(part) || SPELT.test(part)) && !isRead(parts[i + 1]));
};

it('weak figures are found: in runs by their mark, in texts by what stands after them', () => {
  expect(
    weakFigures([
      { text: '12 weeks', mark: 'weak' },
      { text: 'some', mark: 'weak' },
      { text: '3', mark: 'seen' },
    ]),
  ).toEqual(['12 weeks']);
  expect(unread('Delayed more often here: 5 of 18.')).toBe(true);
  expect(unread('Delayed more often here: 5 of 18 (Mologne 2005).')).toBe(false);
  expect(unread('Delayed more often here: 5 of 18 (Nobody 2005).')).toBe(true);
  expect(unread('More often than in zone 1.')).toBe(false);
  expect(unread('Getting better often takes two years.')).toBe(true);
  expect(unread('Some are back in three to four months.')).toBe(true);
});

describe.each(CASES)('%s', (_, explanation) => {
  it.each(READERS)('no first sentence has a weak figure, for %s', (reader) => {
    for (const question of QUESTION_IDS) {
      const { sentence } = wordQuestion(content, explanation, question, reader);
      expect(weakFigures(sentence.runs), question).toEqual([]);
      const finding = explanation.questions.flatMap((q) => q.findings).find(({ id }) => id === sentence.finding);
      const weak = finding?.basis.sources.some(({ mark }) => mark === 'weak' || mark === 'from memory') ?? false;
      if (weak && finding?.message.id === 'contentText') expect(unread(plainText(sentence)), question).toBe(false);
    }
  });

  it('no script line has a weak figure', () => {
    for (const { text, mark } of scriptOf(content, explanation, { seconds: 180, wordsPerMinute: 150 }).lines)
      if (mark === 'weak' || mark === 'from memory') {
        expect(text).not.toMatch(/\d/);
        expect(text).not.toMatch(SPELT);
      }
  });
});

it('titles hold no figure at all', () => {
  for (const question of QUESTION_IDS) expect(questionTitle(content, question)).not.toMatch(/\d/);
  const titles = Object.entries(content.words).filter(([key]) => /(\.title|\.column|^stations|^legend)/.test(key));
  expect(titles.length).toBeGreaterThan(30);
  for (const [key, text] of titles) expect(text.replaceAll(/\{\w+\}/g, ''), key).not.toMatch(/\d+(\.\d+)? ?%/);
});
