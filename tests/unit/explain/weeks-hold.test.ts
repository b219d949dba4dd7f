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
  QUESTION_IDS,
  READERS,
  type StageId,
} from '../../../src/ids';
import { scriptOf } from '../../../src/telling';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding, wordQuestion } from '../../../src/wording';
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

describe('a treatment that is usual for the injury and not for its class', () => {
  const LISFRANC: Stated = ['injury', idOf<InjuryId>('lisfranc'), CONFIRMED];
  const gap = (value: number): Stated => ['measure', { what: 'diastasis', value }, CONFIRMED];

  it('has no weeks of its own and no weight as usual: stage II and III are set and held (Nunley and Vertullo 2002, abstract)', () => {
    for (const value of [1, 3, 5, 6]) {
      const told = steps(patientText(LISFRANC, gap(value), treated('cast-nwb')));
      expect(told[0], `${value} mm`).toContain('your clinic sets the weeks of all steps');
      const held = steps(patientText(LISFRANC, gap(value), treated('joint-fixation')));
      expect(held[0], `${value} mm`).toMatch(/usually weeks 0 to/);
    }
    expect(steps(patientText(LISFRANC, gap(0), treated('cast-nwb')))[0]).toMatch(/usually weeks 0 to/);
    expect(patientText(LISFRANC, gap(3), treated('cast-nwb'))).toMatch(
      /For this kind something else is usual: an operation that sets the joint and holds it or an operation/,
    );
    expect(patientText(LISFRANC, gap(3), treated('joint-fixation'))).not.toMatch(/something else is usual/);
  });

  it('is held against no steps: another’s week of running makes nobody’s weeks early', () => {
    for (const option of ['boot', 'wrap', 'screw'])
      expect(patientText(LISFRANC, treated(option))).not.toMatch(/In your plan|Their usual time/);
  });
});

describe('a second treatment', () => {
  const after = (finding: FollowUpFinding): string =>
    patientText(
      ZONE_2,
      ['treatment', { option: idOf<OptionId>('boot'), on: '2026-03-02' as IsoDate }, CONFIRMED],
      found(finding),
      ['treatment', { option: idOf<OptionId>('screw'), on: '2026-06-01' as IsoDate }, CONFIRMED],
    );

  it.each(['nonunion', 'delayed union', 'broken again'] as const)('after %s has no weeks of a first one', (finding) => {
    const text = after(finding);
    for (const step of steps(text)) expect(step).not.toMatch(WEEKS);
    expect(about(text)).not.toMatch(/on average|half were there|Until work|In your plan/);
    expect(text).not.toMatch(/usually about week/);
  });
});

it('no weeks of a stage, a treatment or a level stand where the joint does not heal', () => {
  const text = patientText(['injury', idOf<InjuryId>('lisfranc'), CONFIRMED], treated('cast-nwb'), found('nonunion'));
  expect(about(text)).not.toMatch(/Stage I|weeks on average/);
});

describe('a follow-up that found what belongs to a later step', () => {
  const early = (finding: FollowUpFinding): string =>
    patientText(['injury', idOf<InjuryId>('mt5-proximal-shaft'), CONFIRMED], treated('cast-nwb'), [
      'followUp',
      { finding, on: '2026-03-30' as IsoDate },
      CONFIRMED,
    ]);

  it('leaves the step open, and orders nothing of the first one', () => {
    for (const finding of ['training', 'walking without pain', 'united'] as const) {
      const text = early(finding);
      expect(text, finding).toContain('Ask which step you are on, and when the next check is.');
      expect(text, finding).not.toContain('Put no weight on the foot until your clinic says so.');
    }
    // Week 4 of 8, and nothing beyond the first step.
    expect(early('tender')).toContain('Put no weight on the foot until your clinic says so.');
  });
});

describe('two treatments, one after the other', () => {
  const on = (option: string, date: string): Stated => [
    'treatment',
    { option: idOf<OptionId>(option), on: date as IsoDate },
    CONFIRMED,
  ];
  const pairs = content.injuries.flatMap(({ id, options }) =>
    options.flatMap((first) => options.map((then) => [id, first, then] as const)),
  );

  it.each(pairs)(
    '%s, %s and then %s: every question has a first sentence for every reader, and no week is told as own',
    (id, first, then) => {
      for (const date of ['2026-03-09', '2026-04-20']) {
        const explanation = explained(caseOf(['injury', id, CONFIRMED], on(first, '2026-03-02'), on(then, date)));
        for (const reader of READERS)
          for (const question of QUESTION_IDS)
            expect(
              plainText(wordQuestion(content, explanation, question, reader).sentence),
              `${question}, ${reader}`,
            ).not.toBe('');
        const lead = plainText(wordQuestion(content, explanation, 'back', 'patient').sentence);
        if (/one treatment from start to end|treated for the first time/.test(lead))
          for (const step of steps(explanationText(content, explanation, 'patient'))) expect(step).not.toMatch(WEEKS);
      }
    },
  );

  it('a planned change is no second treatment, and no first step begins with it', () => {
    const changed = patientText(ZONE_2, on('cast-nwb', '2026-03-02'), on('boot', '2026-04-13'));
    expect(about(changed)).not.toMatch(/first is “let it settle”|treated for the first time/);
    expect(changed).toContain('Yours was changed, so their weeks are not told here.');
    const anew = patientText(ZONE_2, on('boot', '2026-03-02'), found('nonunion'), on('screw', '2026-06-01'));
    expect(anew).toContain('treated for the first time');
  });
});

it('no order of the first step stands against a confirmed follow-up, whatever is known of the treatment', () => {
  for (const stated of [[], [treated('boot')], [['treatment', { option: idOf<OptionId>('boot') }, REPORTED] as Stated]])
    for (const finding of ['united', 'walking without pain', 'training'] as const)
      expect(patientText(NAVICULAR, ...stated, found(finding)), finding).not.toMatch(/Put no weight on the foot/);
});

it('values of a measure that all make one stage dispute none', () => {
  const gaps = (...mm: readonly number[]): readonly string[] =>
    explained(
      caseOf(
        ['injury', idOf<InjuryId>('lisfranc'), CONFIRMED],
        ...mm.map((value): Stated => ['measure', { what: 'diastasis', value }, REPORTED]),
      ),
    ).questions.flatMap(({ findings }) => findings.map(({ message }) => message.id));
  expect(gaps(1, 3)).not.toContain('classDisputed');
  expect(gaps(0, 3)).toContain('classDisputed');
});

it('a script tells no weeks of first healing after it said that they do not hold', () => {
  for (const finding of ['nonunion', 'broken again'] as const)
    for (const option of ['screw', 'cast-nwb', 'boot']) {
      const { lines } = scriptOf(content, explained(caseOf(ZONE_2, treated(option), found(finding))), { seconds: 180 });
      const said = lines.map(({ text }) => text).join(' ');
      expect(said).toMatch(/no longer hold|do not hold/);
      expect(said, `${option}, ${finding}`).not.toMatch(/until sport began again|until the first match/);
    }
});
