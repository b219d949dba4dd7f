/** Several counts of the own treatment are told from the lowest to the highest, and never by the kindest of them alone. */
import { describe, expect, it } from 'vitest';
import { rerun } from '../../../src/explain';
import { ownCounts } from '../../../src/explain/own-counts';
import { type InjuryId, idOf, type OptionId } from '../../../src/ids';
import { findingsFor, plainText, wordFinding } from '../../../src/wording';
import { CONFIRMED, caseOf, content, explained, foot, REPORTED, type Stated } from '../../tools/explained';
import { sentencesOf, wordsOf } from '../../tools/reading-grade';

const treated = (injury: string, option: string, ...more: readonly Stated[]) =>
  explained(
    caseOf(
      ['injury', idOf<InjuryId>(injury), CONFIRMED],
      ['treatment', { option: idOf<OptionId>(option) }, CONFIRMED],
      ...more,
    ),
  );
const patientOf = (of: ReturnType<typeof treated>) =>
  (['why', 'back'] as const).flatMap((question) => findingsFor(of, question, 'patient'));
const linesOf = (of: ReturnType<typeof treated>, trouble: string): readonly string[] =>
  patientOf(of)
    .filter(({ message: { id, args } }) =>
      id === 'troubleCount' || id === 'troubleRange' ? args.trouble === trouble : false,
    )
    .map((finding) => plainText(wordFinding(content, of, finding, 'patient')));

const EVERY = content.injuries.flatMap(({ id, options }) => options.map((option) => [id, option] as const));

it('the heel, operated: wear and a later fusion are told from the lowest to the highest count', () => {
  const heel = treated('calcaneus-intra-articular', 'heel-fixation');
  const [wear, ...more] = linesOf(heel, 'arthritis');
  expect(more).toEqual([]);
  expect(wear).toMatch(
    /^Between 39 and 77 of 100 got a worn joint\. .*2 groups were counted\. In one were 18 people\./,
  );
  expect(wear).toMatch(/Lowest \(over two years\): older people.*Highest \(over 91 months on average\): /);
  expect(linesOf(heel, 'later-fusion').join('\n')).toMatch(/^Between 3 and 18 of 100 had the joint made stiff later\./);
});

it('a joint of the midfoot, fixed: not by the largest group alone', () => {
  expect(linesOf(treated('lisfranc', 'joint-fixation'), 'arthritis').join('\n')).toMatch(
    /^Between 8 and 50 of 100 got a worn joint\. .*5 groups were counted\. In each were 16 to 32 people\./,
  );
});

it('one count of the own treatment is told as it was counted', () => {
  expect(linesOf(treated('calcaneus-intra-articular', 'heel-fixation'), 'nonunion').join('\n')).toMatch(
    /^Of 100 such breaks, about 4 did not heal\..*How many they were is not told/,
  );
});

it('nothing of it where the treatment is only reported, nor for somebody who still grows', () => {
  const ids = (...more: readonly Stated[]) =>
    new Set(patientOf(treated('lisfranc', 'joint-fixation', ...more)).map(({ message }) => message.id));
  expect(ids()).toContain('troubleRange');
  expect(ids(['ageBand', '12-17'])).not.toContain('troubleRange');
  const reported = explained(
    caseOf(
      ['injury', idOf<InjuryId>('lisfranc'), CONFIRMED],
      ['treatment', { option: idOf<OptionId>('joint-fixation') }, REPORTED],
    ),
  );
  expect(patientOf(reported).some(({ message }) => message.id === 'troubleRange')).toBe(false);
});

describe.each(EVERY)('%s with %s', (injury, option) => {
  const of = treated(injury, option);
  const told = patientOf(of);

  it('whatever was counted of the own treatment lies within what a patient is told of it', () => {
    for (const trouble of content.troubles) {
      const [one] = told.filter(({ message: { id, args } }) => id === 'troubleRange' && args.trouble === trouble.id);
      const percents = ownCounts(content, trouble, injury, option).map(({ percent }) => percent);
      const apart = new Set(percents.map(Math.round)).size > 1;
      expect(one !== undefined, trouble.id).toBe(apart);
      if (one === undefined || one.message.id !== 'troubleRange') continue;
      expect(linesOf(of, trouble.id)).toHaveLength(1);
      const text = plainText(wordFinding(content, of, one, 'patient'));
      const [, low, high] = text.match(/^Between ([\d.]+) and ([\d.]+) of 100 /) ?? [];
      expect(Number(low)).toBe(Math.round(Math.min(...percents)));
      expect(Number(high)).toBe(Math.round(Math.max(...percents)));
      expect(one.basis.sources.map(({ source }) => source)).toEqual(
        expect.arrayContaining(ownCounts(content, trouble, injury, option).map(({ source }) => source)),
      );
      expect(rerun(one.basis, content, foot)).toEqual(one.message);
      for (const sentence of sentencesOf(text.replace(/ Lowest.*$/, '')))
        expect(wordsOf(sentence).length, sentence).toBeLessThan(16);
    }
  });

  it('whoever learns is told each count by itself, and no range in place of them', () => {
    const learns = (['why', 'back'] as const).flatMap((question) => findingsFor(of, question, 'study'));
    expect(learns.some(({ message }) => message.id === 'troubleRange')).toBe(false);
    for (const trouble of content.troubles) {
      const counts = ownCounts(content, trouble, injury, option);
      const each = learns.filter(({ message: { id, args } }) => id === 'troubleCount' && args.trouble === trouble.id);
      expect(each.length).toBeGreaterThanOrEqual(counts.length);
    }
  });
});
