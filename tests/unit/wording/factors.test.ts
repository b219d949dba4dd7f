/** What goes along with a break is told with the bones it was studied at: under another bone that is said, to every reader. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type InjuryId, idOf, READERS } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingsOf } from '../../tools/explained';

const ELSEWHERE = '(studied at another bone)';
/** Texts of one factor, in every reader's words, under one injury. */
const toldUnder = (injury: string, factor: string): readonly string[] => {
  const explanation = explained(caseOf(['injury', idOf<InjuryId>(injury)]));
  return (['how', 'back'] as const)
    .flatMap((question) => findingsOf(explanation, question))
    .filter(
      ({ message }) =>
        message.id === 'contentText' && 'factor' in message.args.at && String(message.args.at.factor) === factor,
    )
    .flatMap((finding) => READERS.map((reader) => plainText(wordFinding(content, explanation, finding, reader))));
};

describe('factors studied at one bone', () => {
  test.each(['metatarsal-shaft-stress', 'mt2-base-stress', 'navicular-stress'])(
    'a sudden rise in training, counted in the fifth metatarsal, is told as studied elsewhere under %s',
    (injury) => {
      const told = toldUnder(injury, 'sudden-training-change');
      expect(told.length).toBeGreaterThanOrEqual(READERS.length);
      for (const text of told) expect(text).toContain(ELSEWHERE);
    },
  );

  test('and without that word where it was studied', () => {
    const told = toldUnder('mt5-metaphyseal', 'sudden-training-change');
    expect(told.length).toBeGreaterThanOrEqual(READERS.length);
    for (const text of told) expect(text).not.toContain(ELSEWHERE);
  });

  test('weeks that are an arm of a study are the arm’s own, and written nowhere else', () => {
    const arm = content.studies.find(({ id }) => id === 'hunt-anderson');
    const weeks = explained(caseOf(['injury', idOf<InjuryId>('mt5-metaphyseal')]))
      .questions.flatMap(({ findings }) => findings)
      .flatMap(({ message, basis }) =>
        message.id === 'factorWaits' && basis.sources.some(({ source }) => source === arm?.source)
          ? [message.args]
          : [],
      );
    expect(weeks).toHaveLength(1);
    expect(weeks[0]).toMatchObject({
      weeks: { value: arm?.time?.centreWeeks },
      endpoint: arm?.time?.endpoint,
      n: arm?.n,
    });
    expect(readFileSync(new URL('../../../content/factors.yaml', import.meta.url), 'utf8')).not.toContain('12.3');
  });

  test('what was counted over many bones is of no other bone', () => {
    for (const text of toldUnder('navicular-stress', 'smoking')) expect(text).not.toContain(ELSEWHERE);
  });

  test('a factor whose sizes or words are of the fifth metatarsal says that it was studied there', () => {
    for (const { id, studiedAt, effects, what, besideForecastOf } of content.factors) {
      const ofFifth =
        effects.some(({ bones }) => bones === 'fifth metatarsal') ||
        besideForecastOf.length > 0 ||
        /fifth metatarsal|Jones/.test(what.study);
      expect([id, studiedAt?.join() ?? null]).toEqual([id, ofFifth ? 'metatarsal5' : (studiedAt?.join() ?? null)]);
    }
  });
});
