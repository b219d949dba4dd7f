/** A median is told as the time of half of those counted and never as an average; a mean as an average; where both stand, that. */
import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../../src/explain/figures';
import { type InjuryId, idOf, type OptionId, READERS, type Reader } from '../../../src/ids';
import { plainText, wordFinding, wordQuestion } from '../../../src/wording';
import { plainTimeRuns, timeRuns } from '../../../src/wording/arms';
import { centredWeeks, centreOf, firstCentre, mixedNote, weeksOfArms } from '../../../src/wording/centres';
import { caseOf, content, explained, findingsOf, type Stated } from '../../tools/explained';

const hurt = (id: string): Stated => ['injury', idOf<InjuryId>(id)];
const treated = (id: string): Stated => ['treatment', { option: idOf<OptionId>(id) }];
const rangesOf = (stated: readonly Stated[], reader: Reader) => {
  const explanation = explained(caseOf(...stated));
  return findingsOf(explanation, 'back').flatMap((finding) =>
    finding.message.id === 'backRange'
      ? [{ arms: finding.message.args.arms, text: plainText(wordFinding(content, explanation, finding, reader)) }]
      : [],
  );
};
const arm = (id: string) => {
  const row = content.studies.find((each) => each.id === id);
  if (row === undefined) throw new Error(`no study ${id}`);
  return figuresOf(row);
};
const [MEDIAN, MEAN] = [arm('mologne-2005-screw-sport'), arm('larson-2002-uneventful')];

describe('ranges of studies', () => {
  it.each(['patient', 'broadcast'] as const)(
    'say average to %s where every study printed a mean, and only there',
    (reader) => {
      const told = [
        ...rangesOf([hurt('mt5-metaphyseal'), treated('screw')], reader),
        ...rangesOf([hurt('mt5-metaphyseal'), treated('cast-nwb')], reader),
        ...rangesOf([hurt('mt5-tuberosity'), treated('boot')], reader),
        ...rangesOf([hurt('mt5-proximal-shaft'), treated('cast-nwb')], reader),
      ];
      expect(new Set(told.map(({ arms }) => centreOf(arms)))).toEqual(new Set(['mean', 'median', 'mixed']));
      for (const { arms, text } of told) {
        expect(/ on average/.test(text), text).toBe(centreOf(arms) === 'mean');
        expect(/half (took|of)/.test(text), text).toBe(centreOf(arms) === 'median');
        const mixed = centreOf(arms) === 'mixed';
        expect(/weeks,? by study\b/.test(text), text).toBe(mixed);
        const byLevel = /study, until [^.]*: \d/.test(text);
        expect(/These are averages, or when half were there\./.test(text), text).toBe(mixed && !byLevel);
        expect(text).not.toMatch(/\bmedian|\bmean\b/);
      }
    },
  );

  it('say the word itself to study readers', () => {
    for (const { arms, text } of rangesOf([hurt('mt5-metaphyseal'), treated('screw')], 'study'))
      expect(text).toContain(
        { mean: 'study means ', median: 'study medians ', mixed: 'study means and medians ' }[centreOf(arms)],
      );
  });
});

it('stands beside the weeks of one arm, in a row and where dates begin', () => {
  expect(plainText({ runs: plainTimeRuns(MEDIAN) })).toBe('half took about 8 weeks or less until sport began again');
  expect(plainText({ runs: plainTimeRuns(MEAN) })).toBe('it took about 9 weeks on average until sport began again');
  expect(plainText({ runs: timeRuns(MEDIAN, 'broadcast') })).toBe('half in 8 weeks or less until sport began again');
  expect(plainText({ runs: timeRuns(MEDIAN, 'study') })).toBe('8 weeks until sport began again (median)');
  expect(weeksOfArms('patient', [MEDIAN], { value: 8, unit: 'week' })).toBe('half in about 8 weeks or less.');
  expect(weeksOfArms('patient', [MEAN], { value: 9, unit: 'week' })).toBe('about 9 weeks on average.');
  expect(weeksOfArms('patient', [MEDIAN, MEAN], { value: 8.5, unit: 'week', lowHigh: [8, 9] })).toBe(
    '8 to 9 weeks by study. These are averages, or when half were there.',
  );
  expect(firstCentre('patient', [MEDIAN])).toBe('the earliest time by which half were there');
  expect(firstCentre('patient', [MEAN])).toBe('the earliest average');
  expect(mixedNote('study', [MEDIAN, MEAN])).toBe('');
  for (const reader of READERS)
    expect(plainText({ runs: centredWeeks(reader, 'median', { text: '8 weeks' }) })).not.toContain('average');
});

it('is told treatment by treatment and class by class', () => {
  const joint = plainText(wordQuestion(content, explained(caseOf(hurt('lisfranc'))), 'back', 'patient').sentence);
  expect(joint).toContain('Stage I, no gap: about 4 weeks on average.');
  const spiral = plainText(
    wordQuestion(content, explained(caseOf(hurt('mt5-spiral-shaft'))), 'back', 'patient').sentence,
  );
  expect(spiral).toContain('about 19 weeks on average until');
});

it('of a forecast that missed, both', () => {
  const explanation = explained(caseOf(hurt('mt5-metaphyseal'), treated('screw')));
  const missed = findingsOf(explanation, 'back').filter(({ message }) => message.id === 'forecastMissed');
  expect(missed.length).toBeGreaterThan(0);
  for (const finding of missed) {
    const told = plainText(wordFinding(content, explanation, finding, 'broadcast'));
    expect(told).toMatch(
      /said 7\.8 weeks \(2 to 16\) on average\. In truth it was 14\.6 weeks \(5 to 34\) on average until/,
    );
  }
});
