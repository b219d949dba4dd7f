/** Figures of adults are never told of somebody who still grows without saying so: on the note, the handout and in the script. */
import { describe, expect, it, test } from 'vitest';
import { AGE_BANDS, type AgeBand, type InjuryId, idOf, type OptionId, READERS, type RegionId } from '../../../src/ids';
import { handoutOf } from '../../../src/telling';
import { cautionsFor, plainText, wordQuestion } from '../../../src/wording';
import { caseOf, content, explained, type Stated } from '../../tools/explained';

const GROWING: readonly AgeBand[] = ['under 12', '12-17'];
const explanationAt = (age?: AgeBand) =>
  explained(
    caseOf(['bone', 'metatarsal5'], ['side', 'right'], ...(age === undefined ? [] : ([['ageBand', age]] as const))),
  );

describe.each(AGE_BANDS)('%s', (age) => {
  const explanation = explanationAt(age);
  it.each(READERS)('is told of growing to %s only where that is so', (reader) => {
    const told = cautionsFor(content, explanation, reader, 'back').filter(({ ages }) => ages.length > 0);
    expect(told.length > 0).toBe(GROWING.includes(age));
  });
});

test('with no age stated no limit of an age is told, and the red flags of every age', () => {
  const told = (age?: AgeBand) =>
    cautionsFor(content, explanationAt(age), 'patient').flatMap(({ ages, kind }) => (ages.length > 0 ? [kind] : []));
  expect(new Set(told())).toEqual(new Set(['red flag']));
  expect(told('under 12')).toEqual(expect.arrayContaining(['red flag', 'limit']));
  expect(told('18-34')).toEqual([]);
});

test('a child’s handout says it first of all that limits it', () => {
  const [child, adult] = [explanationAt('under 12'), explanationAt('18-34')];
  expect(handoutOf(content, child).disclaimers[0]).toMatch(/adults.*still growing/);
  expect(handoutOf(content, adult).disclaimers.join(' ')).not.toMatch(/still growing/);
});

describe('what is of adults only', () => {
  const at = (age: AgeBand) =>
    explained(
      caseOf(
        ['bone', 'metatarsal5'],
        ['place', { by: 'region', region: idOf<RegionId>('mt5-zone-2') }],
        ['injury', idOf<InjuryId>('mt5-metaphyseal')],
        ['treatment', { option: idOf<OptionId>('boot') }],
        ['ageBand', age],
      ),
    );
  const ids = (age: AgeBand): string =>
    at(age)
      .questions.flatMap(({ findings }) => findings.map(({ id, message }) => `${id} ${JSON.stringify(message)}`))
      .join('\n');

  it.each(['daily.driving', '"smoking"', '"returnNorm"'])('%s: told of an adult and not of a child', (told) => {
    expect(ids('18-34')).toContain(told);
    expect(ids('under 12')).not.toContain(told);
  });
});

describe('weeks of adults', () => {
  const zone2 = (...more: readonly Stated[]) =>
    explained(caseOf(['injury', idOf<InjuryId>('mt5-metaphyseal')], ...more));
  const lead = (of: ReturnType<typeof zone2>, reader: (typeof READERS)[number]) =>
    plainText(wordQuestion(content, of, 'back', reader).sentence);
  const BOOT: Stated = ['treatment', { option: idOf<OptionId>('boot') }];

  it.each(READERS)('open with whose they are where a child is told of them, for %s', (reader) => {
    for (const age of GROWING)
      for (const stated of [[], [BOOT]])
        expect(lead(zone2(['ageBand', age], ...stated), reader)).toMatch(/^[^.]*adults/);
    expect(lead(zone2(['ageBand', '18-34'], BOOT), reader)).not.toMatch(/growing|growth/);
  });
});
