/** A script of a foot that still grows says once whose figures it tells, before the first of them, and not where it tells none. */
import { describe, expect, it } from 'vitest';
import { AGE_BANDS, type InjuryId, idOf, type OptionId } from '../../../src/ids';
import { RATE, SCRIPT_SECONDS, scriptOf } from '../../../src/telling';
import { caseOf, content, explained, type Stated } from '../../tools/explained';

const GROWING: readonly string[] = ['under 12', '12-17'];
const OF_ADULTS = /These figures come from adults/g;
/** Read off the words alone: weeks or people of groups. When a film is taken again is no count. */
const tellsFigures = (text: string): boolean =>
  /\b\d[\d.]*( to \d[\d.]*)? weeks\b|[Oo]f 100 |Of \d+ (people|breaks)|\(counted|\b\d+ of \d+\b/.test(text) &&
  !/looked at again after/.test(text);

const EVERY = content.injuries.flatMap(({ id, options }) =>
  [null, ...options].map((option) => [id, option ?? 'no treatment'] as const),
);

describe.each(EVERY)('%s with %s', (injury, option) => {
  const treated: readonly Stated[] =
    option === 'no treatment' ? [] : [['treatment', { option: idOf<OptionId>(option) }]];
  const explanations = AGE_BANDS.map(
    (age) => [age, explained(caseOf(['injury', idOf<InjuryId>(injury)], ...treated, ['ageBand', age]))] as const,
  );

  it.each(SCRIPT_SECONDS)('in %i seconds', (seconds) => {
    for (const [age, explanation] of explanations)
      for (const wordsPerMinute of [RATE.slowest, RATE.usual, RATE.fastest]) {
        const { lines, totalSeconds } = scriptOf(content, explanation, { seconds, wordsPerMinute });
        expect(totalSeconds).toBeLessThanOrEqual(seconds);
        const said = lines.flatMap(({ text }, i) => [...text.matchAll(OF_ADULTS)].map(() => i));
        const first = lines.findIndex(({ text }) => tellsFigures(text));
        if (!GROWING.includes(age)) expect(said).toEqual([]);
        else if (first < 0) expect(said, lines[(said[0] ?? 0) + 1]?.text).toEqual([]);
        else {
          expect(said).toHaveLength(1);
          expect(said[0], lines[first]?.text).toBeLessThan(first);
        }
      }
  });
});

it('the sweep has scripts with figures and scripts without', () => {
  const has = (injury: string, option: string): boolean =>
    scriptOf(
      content,
      explained(
        caseOf(
          ['injury', idOf<InjuryId>(injury)],
          ['treatment', { option: idOf<OptionId>(option) }],
          ['ageBand', '12-17'],
        ),
      ),
      { seconds: 90 },
    ).lines.some(({ text }) => text.match(OF_ADULTS));
  expect(has('mt5-metaphyseal', 'screw')).toBe(true);
  expect(has('navicular-stress', 'cast-nwb')).toBe(false);
});
