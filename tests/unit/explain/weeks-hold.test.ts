/** Usual weeks are told as this person's only where treatment, age and healing are those that they were written for. */
import { describe, expect, it } from 'vitest';
import { type Said, withStageNotes } from '../../../src/cases';
import { explanationText } from '../../../src/cli/explanation-text';
import {
  type AgeBand,
  type FollowUpFinding,
  type InjuryId,
  idOf,
  type OptionId,
  READERS,
  type StageId,
} from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding } from '../../../src/wording';
import { CONFIRMED, caseOf, content, explained, findingNamed, REPORTED, type Stated } from '../../tools/explained';

const ZONE_2: Stated = ['injury', idOf<InjuryId>('mt5-metaphyseal'), CONFIRMED];
const NAVICULAR: Stated = ['injury', idOf<InjuryId>('navicular-stress'), CONFIRMED];
const treated = (option: string): Stated => [
  'treatment',
  { option: idOf<OptionId>(option), on: '2026-03-02' as IsoDate },
  CONFIRMED,
];
const found = (finding: FollowUpFinding): Stated => ['followUp', { finding, on: '2026-05-04' as IsoDate }, CONFIRMED];
const WEEKS = /\bweeks? \d|\d weeks?\b/;

const patientText = (...stated: readonly Stated[]): string =>
  explanationText(content, explained(caseOf(...stated)), 'patient');
const steps = (text: string): readonly string[] => text.split('\n').filter((line) => /^- Step \d/.test(line));
const about = (text: string): string => text.slice(text.lastIndexOf('When is it back?\n'));

describe('weeks of the steps', () => {
  it('are told with their days where the treatment is usual, the person grown and the bone on its way', () => {
    const told = steps(patientText(ZONE_2, treated('screw')));
    expect(told[0]).toMatch(/usually weeks 0 to 2 \(2 March 2026/);
  });

  it.each<[string, readonly Stated[]]>([
    ['a bone that broke again', [ZONE_2, treated('screw'), found('broken again')]],
    ['a bone that does not heal', [ZONE_2, treated('screw'), found('nonunion')]],
    ['a bone that heals late', [ZONE_2, treated('screw'), found('delayed union')]],
    ['somebody who grows', [ZONE_2, treated('screw'), ['ageBand', '12-17']]],
    ['a treatment that is not usual', [NAVICULAR, treated('boot')]],
    ['a treatment that nobody stated', [NAVICULAR]],
  ])('are none of %s: the clinic sets them', (_, stated) => {
    const text = patientText(...stated);
    const told = steps(text);
    expect(told.length).toBeGreaterThan(4);
    for (const step of told) expect(step).not.toMatch(WEEKS);
    expect(told[0]).toContain('your clinic sets the weeks of all steps');
    expect(text).not.toMatch(/Clinics usually look again about week/);
    // Whoever treats or learns reads them, with whose they are.
    const study = explained(caseOf(...stated));
    const first = findingNamed(study, 'back.stage.1');
    if (first === undefined) throw new Error('no steps');
    const words = wordFinding(content, study, first, 'study')
      .runs.map((run) => run.text)
      .join('');
    expect(words).toMatch(/treating clinician sets them \((in adults|after a first break|where bone heals|with [a-z])/);
  });

  it('that the clinic set itself stand all the same', () => {
    const file = withStageNotes(caseOf(ZONE_2, treated('screw'), ['ageBand', 'under 12']), idOf<StageId>('protect'), {
      weeks: { from: 0, to: 5 },
    });
    const stage = explained(file);
    expect(steps(explanationText(content, stage, 'patient'))[0]).toMatch(/own weeks: 0 to 5/);
  });
});

describe('somebody whose foot grows', () => {
  const GROWING: readonly AgeBand[] = ['under 12', '12-17'];

  it.each(GROWING)('%s, hears as patient no weeks, odds or counts of adults', (age) => {
    for (const option of ['boot', 'screw', 'cast-nwb']) {
      const text = patientText(ZONE_2, treated(option), ['ageBand', age]);
      expect(about(text)).not.toMatch(/on average|Of 100|until sport|Counted:/);
      expect(text).toContain('No study here counted how long a growing foot takes.');
      expect(text).not.toMatch(/as pain allows, if your clinic/);
    }
    // Of grown people the same case has both.
    expect(patientText(ZONE_2, treated('boot'), ['ageBand', '18-34'])).toMatch(/on average|half/);
  });

  it('has no odds for anybody', () => {
    expect(explained(caseOf(ZONE_2, treated('screw'), ['ageBand', 'under 12'])).forecasts).toEqual([]);
    expect(explained(caseOf(ZONE_2, treated('screw'), ['ageBand', '18-34'])).forecasts.length).toBeGreaterThan(0);
  });
});

describe('a treatment that the content does not list for the injury', () => {
  it('is named as such beside the treatment, for every reader, and only then', () => {
    for (const reader of READERS) {
      const odd = explained(caseOf(NAVICULAR, treated('boot')));
      const finding = findingNamed(odd, 'options.notUsual');
      expect(finding?.depth).toBe('claim');
      expect(explanationText(content, odd, reader)).toMatch(/none of the treatments|Not among the options listed/);
      const usual = explained(caseOf(NAVICULAR, treated('cast-nwb')));
      expect(findingNamed(usual, 'options.notUsual')).toBeUndefined();
    }
  });
});

describe.each(READERS)('what follows of a treatment or an injury that is only reported, for %s', (reader) => {
  const said = (injury: InjuryId, option: string, status: Said): readonly string[] => {
    const of = explained(
      caseOf(['injury', injury, status], ['treatment', { option: idOf<OptionId>(option) }, CONFIRMED]),
    );
    return of.questions
      .flatMap(({ findings }) => findings)
      .filter(({ message: { id } }) => id === 'optionNotUsual' || id === 'backNoRange')
      .map((finding) => plainText(wordFinding(content, of, finding, reader)));
  };

  it.each([
    ['navicular-stress', 'boot'],
    ['navicular-stress', 'cast-nwb'],
    ['lisfranc', 'cast-nwb'],
  ])('%s with %s: it is told with an if, and without one once both are confirmed', (injury, option) => {
    const reported = said(idOf<InjuryId>(injury), option, REPORTED);
    expect(reported.length).toBeGreaterThan(0);
    for (const text of reported)
      expect(text).toMatch(/^(If the reports? (is|are) right|Given the reported facts): [a-z]/);
    for (const text of said(idOf<InjuryId>(injury), option, CONFIRMED)) expect(text).not.toMatch(/^(If|Given) /);
  });
});

it('single studies of first healing do not stand side by side once it went otherwise', () => {
  const kinds = (...more: readonly Stated[]) =>
    explained(caseOf(ZONE_2, treated('screw'), ...more)).forecasts.map(({ outcome }) => outcome.kind);
  expect(kinds()).toContain('sideBySide');
  for (const finding of ['nonunion', 'delayed union', 'broken again'] as const)
    expect(kinds(found(finding)), finding).not.toContain('sideBySide');
});

it('steps without weeks of their own are not said to begin together', () => {
  const check = (...more: readonly Stated[]): string =>
    patientText(['injury', idOf<InjuryId>('mt5-tuberosity'), CONFIRMED], treated('boot'), ...more);
  expect(check()).toContain('begin together');
  expect(check(['ageBand', '12-17'])).not.toContain('begin together');
});
