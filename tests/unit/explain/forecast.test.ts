/** The odds of question 5 in a case: which are told, what follow-ups do to them, what was kept and named before. */
import { describe, expect, it } from 'vitest';
import { type CaseFile, factsOf, withForecast } from '../../../src/cases';
import { explain, NO_WHAT_IF, rerun } from '../../../src/explain';
import { effectSays } from '../../../src/explain/factor-findings';
import { followUpSays } from '../../../src/explain/follow-up-says';
import { keptOf } from '../../../src/explain/kept-forecast';
import type { MessageOf } from '../../../src/explain/messages';
import { ENDPOINTS, type FactorId, type InjuryId, idOf, type OptionId } from '../../../src/ids';
import { chanceBy, weekOf } from '../../../src/recovery';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding } from '../../../src/wording';
import { CONFIRMED, caseOf, findingNamed, findingsOf, foot, REPORTED, type Stated } from '../../tools/explained';
import { content, explained, twoOnly } from '../../tools/one-level';

const explainedTwo = (file: CaseFile) => explain(twoOnly, factsOf(file), NO_WHAT_IF, foot);

const day = (text: string) => text as IsoDate;
const START = day('2026-01-05');
/** So many weeks after the start. */
const WEEK_6 = day('2026-02-16');
const screwed = (level: 'professional' | 'recreational', ...more: readonly Stated[]): CaseFile =>
  caseOf(
    ['injury', idOf<InjuryId>('mt5-metaphyseal')],
    ['treatment', { option: idOf<OptionId>('screw'), on: START }],
    ['level', level, REPORTED],
    ...more,
  );
const played = (file: CaseFile) => {
  const found = explained(file).forecasts.find(({ endpoint }) => endpoint === 'match play');
  if (found === undefined) throw new Error('no forecast of match play');
  return found;
};
const told = (file: CaseFile, id: string, reader: 'patient' | 'broadcast' | 'study' = 'patient'): string => {
  const explanation = explained(file);
  const finding = findingNamed(explanation, `back.${id}`);
  if (finding === undefined) throw new Error(`no back.${id}`);
  return plainText(wordFinding(content, explanation, finding, reader));
};

it('given up and played after all: it came, and every sentence says so', () => {
  const file = screwed(
    'professional',
    ['outcome', { endpoint: 'match play', result: 'given up', on: WEEK_6 }],
    ['outcome', { endpoint: 'match play', result: 'reached', on: day('2026-04-06') }],
    ['timetable', { weeks: 12, endpoint: 'match play' }, REPORTED],
  );
  expect(told(file, 'timetable.1')).toContain('it came in week 13, later than that');
  expect(played(file).reachedWeek).toBe(13);
});

it('weeks since a second treatment say so beside those since the first', () => {
  const explanation = explainedTwo(screwed('professional'));
  const second = findingNamed(explanation, 'options.trial.hunt-anderson');
  if (second === undefined) throw new Error('no such trial');
  for (const reader of ['patient', 'broadcast', 'study'] as const)
    expect(plainText(wordFinding(content, explanation, second, reader))).toContain(
      'from the second treatment until sport',
    );
});

it('weeks of a step are weeks since the start, and no odds are told until something happens', () => {
  const file = screwed('recreational');
  const explanation = explainedTwo(file);
  const texts = findingsOf(explanation, 'back').map((finding) =>
    plainText(wordFinding(content, explanation, finding, 'patient')),
  );
  expect(texts.join(' ')).toMatch(/own shoes: usually weeks 6 to 8 /);
  expect(texts.join(' ')).not.toMatch(/usually \d/);
  expect(texts.join(' ')).toMatch(
    /How likely you are to be back by a given week, nobody can say: (too few studies|no study)[^.]+\. Weeks told here are rough\./,
  );
});

describe('the odds of a case', () => {
  it('are the sentence of question 5 where they can be given of what this level asks for first', () => {
    const explanation = explained(screwed('professional'));
    expect(findingNamed(explanation, 'back.headline')).toMatchObject({
      depth: 'sentence',
      message: { id: 'forecastOdds', args: { endpoint: 'match play' } },
    });
    expect(findingsOf(explanation, 'back').filter(({ depth }) => depth === 'sentence')).toHaveLength(1);
  });

  it('stand under the range where people ask for another point first', () => {
    const alike = content.studies.map((study) =>
      study.time?.endpoint === 'match play' ? { ...study, alsoLevels: ['recreational'] as const } : study,
    );
    const mixed = {
      ...content,
      studies: alike.map((study) => ({ ...study, alsoLevels: [...(study.alsoLevels ?? [])] })),
    };
    const explanation = explain(mixed, factsOf(screwed('recreational')), NO_WHAT_IF, foot);
    expect(findingNamed(explanation, 'back.headline')?.message).toMatchObject({
      id: 'backRange',
      args: { endpoint: 'sport' },
    });
    expect(findingNamed(explanation, 'back.forecast.match-play')?.depth).toBe('claim');
    expect(findingNamed(explanation, 'back.forecastNot.sport')?.message).toMatchObject({ args: { why: 'tooFew' } });
  });

  it('are of the own level alone: three studies of professionals say nothing to others', () => {
    expect(played(screwed('recreational')).outcome).toMatchObject({ kind: 'sideBySide', why: 'levels' });
  });

  it('are not given before the treatment is known', () => {
    expect(explained(caseOf(['injury', idOf<InjuryId>('mt5-metaphyseal')])).forecasts).toEqual([]);
  });

  it('say weeks and people of the forecast itself, never more of 100 than ever get there', () => {
    const { steps } = played(screwed('professional'));
    const [start] = steps;
    if (start === undefined) throw new Error('no start');
    expect(start.weeks.half).toBeCloseTo(weekOf(start.forecast, 0.5) ?? Number.NaN, 9);
    expect(start.backBy[12]).toBe(Math.round(100 * chanceBy(start.forecast, 12)));
    expect(start.everBack).toBeLessThan(1);
    expect(start.fives.filter((week) => week !== null)).toHaveLength(
      Array.from({ length: 20 }, (_, i) => (i + 0.5) / 20).filter((share) => share < start.everBack).length,
    );
    expect(told(screwed('professional'), 'headline')).toMatch(
      /^Think of 100 people .*By week \d+ about 50 of them play matches again\./,
    );
  });

  it('say the same weeks to every reader', () => {
    // Kept to a tenth of a week, as in every table, and told as the week in which it falls.
    const half = Math.ceil(Math.round(10 * (played(screwed('professional')).steps[0]?.weeks.half ?? Number.NaN)) / 10);
    for (const reader of ['patient', 'broadcast'] as const)
      expect(told(screwed('professional'), 'headline', reader)).toContain(`week ${half}`);
  });

  it('every basis runs again to the stored message', () => {
    const file = screwed(
      'professional',
      ['followUp', { finding: 'line visible', on: WEEK_6 }],
      ['timetable', { weeks: 6, endpoint: 'match play' }, REPORTED],
      ['riskFactor', idOf<FactorId>('smoking'), REPORTED],
      ['followUp', { finding: 'two cortices bridged', on: day('2026-03-30') }],
    );
    const findings = JSON.parse(JSON.stringify(findingsOf(explained(file), 'back'))) as ReturnType<typeof findingsOf>;
    const ours = findings.filter(({ message }) => /^(forecast|timetable|factor|review|borrowed)/.test(message.id));
    expect(new Set(ours.map(({ message }) => message.id)).size).toBeGreaterThan(5);
    for (const { id, basis, message } of ours) expect([id, rerun(basis, content, foot)]).toEqual([id, message]);
  });
});

describe('follow-ups', () => {
  it('say nothing of union by walking, and nothing of work by a film', () => {
    expect(followUpSays('walking without pain', 'union')).toBeNull();
    expect(followUpSays('line visible', 'work')).toBeNull();
    expect(followUpSays('united', 'union')).toBe('there');
    for (const endpoint of ENDPOINTS) expect(followUpSays('broken again', endpoint)).toBe('problem');
  });

  it('not there yet at week 6: later weeks, more odds of trouble, told with before and after', () => {
    const file = screwed('professional', ['followUp', { finding: 'line visible', on: WEEK_6 }]);
    const { steps } = played(file);
    expect(steps.map(({ after }) => after?.week ?? null)).toEqual([null, 6]);
    const [before, after] = steps;
    if (before === undefined || after === undefined) throw new Error('no step');
    expect(after.people.trouble).toBeGreaterThan(before.people.trouble);
    expect(after.weeks.half ?? 0).toBeGreaterThan(before.weeks.half ?? 0);
    expect(after.backBy[6]).toBe(0);
    const args = findingNamed(explained(file), 'back.forecastMoved.match-play.1')
      ?.message as MessageOf<'forecastMoved'>;
    expect(args.args.before.people).toEqual(before.people);
    expect(args.args.after.people).toEqual(after.people);
    expect(told(file, 'forecastMoved.match-play.1')).toContain(
      `The odds of trouble go from ${before.people.trouble} to ${after.people.trouble} of 100`,
    );
  });

  it('the odds of trouble that are told never fall from one follow-up to the next, for two years', () => {
    const findings = ['tender', 'line visible', 'not tender', 'two cortices bridged', 'walking without pain'] as const;
    const file = screwed(
      'professional',
      ...Array.from({ length: 24 }, (_, i): Stated => {
        const on = new Date(Date.parse(START) + (i + 1) * 30 * 86_400_000).toISOString().slice(0, 10);
        return ['followUp', { finding: findings[i % findings.length] ?? 'tender', on: day(on) }];
      }),
    );
    const { steps } = played(file);
    expect(steps).toHaveLength(25);
    steps.slice(1).forEach(({ people }, i) => {
      expect(people.trouble).toBeGreaterThanOrEqual(steps[i]?.people.trouble ?? 101);
      expect(people.notBack).toBeGreaterThanOrEqual(steps[i]?.people.notBack ?? 101);
    });
    expect(steps.at(-1)?.people.trouble).toBeGreaterThan(steps[0]?.people.trouble ?? 100);
  });

  it('sentence, squares, table and the review say the same people', () => {
    const file = screwed('professional', ['followUp', { finding: 'tender', on: WEEK_6 }]);
    const [start, later] = played(file).steps;
    if (start === undefined || later === undefined) throw new Error('no step');
    const { trouble, notBack } = start.people;
    const sentence = told(screwed('professional'), 'headline');
    expect(sentence).toContain(`About ${trouble} have trouble`);
    expect(sentence).toMatch(new RegExp(`do not get there are about ${notBack}\\.$`));
    expect(told(file, 'review.notThere')).toContain(`of 100, now ${later.people.trouble}.`);
    expect(Math.max(...start.backBy)).toBeLessThanOrEqual(100 - notBack);
  });

  it('by hand, Bayes: each branch times its share not back at week 6, over their sum', () => {
    const file = screwed('professional', ['followUp', { finding: 'tender', on: WEEK_6 }]);
    const [start, later] = played(file).steps;
    if (start === undefined || later === undefined) throw new Error('no step');
    // The share not back of a log-normal by a series of the normal tail, not by the library of the code.
    const tail = (z: number): number => {
      let [term, sum] = [z, z];
      for (let k = 1; k < 200; k++) {
        term *= (-z * z) / (2 * k);
        sum += term / (2 * k + 1);
      }
      return 0.5 - sum / Math.sqrt(2 * Math.PI);
    };
    const weights = start.forecast.branches.map(({ chance, time }) =>
      time === null ? chance : chance * tail((Math.log(6) - time.mu) / time.sigma),
    );
    const total = weights.reduce((a, b) => a + b, 0);
    later.forecast.branches.forEach(({ chance }, i) => {
      expect(chance).toBeCloseTo((weights[i] ?? Number.NaN) / total, 9);
    });
  });

  it('good signs at week 6 move the weeks and leave the odds of trouble alone', () => {
    for (const finding of ['united', 'two cortices bridged', 'training', 'not tender'] as const) {
      const [before, after] = played(screwed('professional', ['followUp', { finding, on: WEEK_6 }])).steps;
      expect(after?.people).toEqual(before?.people);
      expect(after?.weeks.half ?? 0).toBeGreaterThan(before?.weeks.half ?? 0);
      expect(after?.backBy[6]).toBe(0);
    }
    const told6 = told(
      screwed('professional', ['followUp', { finding: 'united', on: WEEK_6 }]),
      'forecastMoved.match-play.1',
    );
    expect(told6).toMatch(/speaks for healing/);
    expect(told6).not.toMatch(/odds of trouble with healing go/);
  });

  it('an ending ends the forecast: reached or given up, nothing is asked of a next review', () => {
    for (const result of ['reached', 'given up'] as const) {
      const file = screwed('professional', ['outcome', { endpoint: 'match play', result, on: day('2026-03-16') }]);
      const explanation = explained(file);
      expect(played(file).reachedWeek).toBe(10);
      expect(findingsOf(explanation, 'back').some(({ message }) => message.id === 'reviewMove')).toBe(false);
      expect(findingsOf(explanation, 'back').some(({ message }) => message.id === 'claimStated')).toBe(true);
      expect(findingsOf(explanation, 'back').some(({ message }) => message.id === 'forecastReached')).toBe(
        result === 'reached',
      );
    }
  });

  it('gives none for a second treatment: the studies are of first ones', () => {
    const again = caseOf(
      ['injury', idOf<InjuryId>('mt5-metaphyseal')],
      ['treatment', { option: idOf<OptionId>('screw'), on: START }],
      ['followUp', { finding: 'broken again', on: WEEK_6 }],
      ['treatment', { option: idOf<OptionId>('screw'), on: day('2026-02-23') }],
    );
    expect(explained(again).forecasts).toEqual([]);
    expect(told(again, 'forecastSecond')).toMatch(/treated for the first time/);
  });

  it.each([
    ['a boot for ten days before the screw is the wait for it', 'boot', '2025-12-26', false],
    ['a boot for two months before it is a treatment', 'boot', '2025-11-01', true],
    ['a screw ten days before another is one too', 'screw', '2025-12-26', true],
  ] as const)('%s', (_, option, from, second) => {
    const file = caseOf(
      ['injury', idOf<InjuryId>('mt5-metaphyseal')],
      ['treatment', { option: idOf<OptionId>(option), on: day(from) }],
      ['treatment', { option: idOf<OptionId>('screw'), on: START }],
    );
    const found = findingsOf(explained(file), 'back');
    expect(found.some(({ message }) => message.id === 'forecastSecond')).toBe(second);
    const leads = found.filter(({ depth }) => depth === 'sentence').map(({ message }) => message.id);
    expect(leads.includes('backRange')).toBe(!second);
    expect(leads.includes('forecastSecond')).toBe(second);
  });

  it('a break anew closes the quick way', () => {
    const file = screwed('professional', ['followUp', { finding: 'broken again', on: WEEK_6 }]);
    const last = played(file).steps.at(-1);
    expect(last?.forecast.branches[0].chance).toBe(0);
    expect(told(file, 'forecastMoved.match-play.1')).toMatch(/broken again/);
  });

  it('a follow-up before the start changes nothing', () => {
    const file = screwed('professional', ['followUp', { finding: 'tender', on: day('2026-01-01') }]);
    expect(played(file).steps).toHaveLength(1);
  });
});

describe('weeks that somebody named', () => {
  const named = (weeks: number, endpoint?: 'match play' | 'work') =>
    screwed('professional', ['timetable', endpoint === undefined ? { weeks } : { weeks, endpoint }, REPORTED]);

  it('are not judged before it is said to what they count: the tool asks', () => {
    expect(findingNamed(explained(named(6)), 'back.timetable.1')?.message.id).toBe('timetableAsks');
    expect(told(named(6), 'timetable.1', 'broadcast')).toMatch(/was not said.*Until that is known/);
  });

  it('are not judged where no odds can be given', () => {
    expect(findingNamed(explained(named(6, 'work')), 'back.timetable.1')?.message.id).toBe('timetableNoOdds');
  });

  it('are held against the odds, and called shorter than for nine in ten only when they are', () => {
    const { forecast } = played(named(1.5, 'match play')).steps[0] ?? {};
    if (forecast === undefined) throw new Error('no forecast');
    expect(1 - chanceBy(forecast, 1.5)).toBeGreaterThan(0.9);
    expect(told(named(1.5, 'match play'), 'timetable.1', 'broadcast')).toContain('shorter than for nine in ten');
    expect(told(named(8, 'match play'), 'timetable.1', 'broadcast')).not.toContain('nine in ten');
    expect(told(named(8, 'match play'), 'timetable.1', 'broadcast')).toMatch(/^It is reported/);
    const back = played(named(8, 'match play')).steps[0]?.backBy[8] ?? Number.NaN;
    expect(told(named(8, 'match play'), 'timetable.1')).toContain(`about ${100 - back} took longer`);
  });
});

describe('weeks that somebody named and that have passed', () => {
  const SIX = ['timetable', { weeks: 6, endpoint: 'match play' }, REPORTED] as const;
  const sixNamed = (...more: readonly Stated[]) => screwed('professional', SIX, ...more);
  const messageOf = (file: CaseFile) => findingNamed(explained(file), 'back.timetable.1')?.message;

  it('are overrun, not judged as a chance from the start', () => {
    const file = sixNamed(['followUp', { finding: 'tender', on: day('2026-03-02') }]);
    expect(messageOf(file)).toMatchObject({ id: 'timetableOverrun', args: { week: { value: 8 } } });
    expect(told(file, 'timetable.1', 'broadcast')).toMatch(/That time is over.*at week 8/);
    expect(told(file, 'timetable.1', 'broadcast')).not.toMatch(/of 100/);
  });

  it('are overrun at the end of the week that was named, and not before', () => {
    expect(messageOf(sixNamed(['followUp', { finding: 'tender', on: WEEK_6 }]))?.id).toBe('timetableOverrun');
    const before = sixNamed(['followUp', { finding: 'tender', on: day('2026-02-02') }]);
    expect(messageOf(before)).toMatchObject({ id: 'timetableJudged', args: { notThereAt: { value: 4 } } });
  });

  it('not passed yet, they are held against people who were not there either', () => {
    const file = sixNamed(['followUp', { finding: 'tender', on: day('2026-02-02') }]);
    const back = played(file).steps.at(-1)?.backBy[6] ?? Number.NaN;
    expect(told(file, 'timetable.1')).toContain(
      `Of 100 people who were not there at week 4 about ${100 - back} took longer`,
    );
    // Fewer of those are left who can still make it than at the start.
    expect(back).toBeLessThan(played(sixNamed()).steps[0]?.backBy[6] ?? Number.NaN);
  });

  it.each([
    ['reached', '2026-02-09', 'kept', 5],
    ['reached', '2026-02-16', 'kept', 6],
    ['reached', '2026-02-23', 'late', 7],
    ['given up', '2026-02-09', 'given up', 5],
  ] as const)('%s on %s it is told how it ended: %s', (result, on, ended, week) => {
    const file = sixNamed(['outcome', { endpoint: 'match play', result, on: day(on) }]);
    expect(messageOf(file)).toMatchObject({ id: 'timetableEnded', args: { result: ended, week: { value: week } } });
  });

  it('are overrun where no odds can be given too, and by nothing that says nothing of that point', () => {
    // Pain at the spot says nothing of work.
    const work = screwed(
      'professional',
      ['timetable', { weeks: 4, endpoint: 'work' }, REPORTED],
      ['followUp', { finding: 'tender', on: WEEK_6 }],
    );
    expect(messageOf(work)?.id).toBe('timetableNoOdds');
    const union = screwed(
      'professional',
      ['timetable', { weeks: 4, endpoint: 'union' }, REPORTED],
      ['followUp', { finding: 'line visible', on: WEEK_6 }],
    );
    expect(messageOf(union)?.id).toBe('timetableOverrun');
  });

  it('rest on the follow-up and on the day from which weeks count', () => {
    const finding = findingNamed(
      explained(sixNamed(['followUp', { finding: 'tender', on: day('2026-03-02') }])),
      'back.timetable.1',
    );
    expect(finding?.basis.claims.length).toBe(3);
    expect(rerun(JSON.parse(JSON.stringify(finding?.basis)), content, foot)).toEqual(finding?.message);
  });
});

describe('a forecast that was kept', () => {
  const explanation = explained(screwed('professional'));
  const given = explanation.forecasts.find(({ endpoint }) => endpoint === 'match play');
  const step = given?.steps[0];
  if (given === undefined || step === undefined) throw new Error('no forecast');
  const kept = keptOf(idOf<InjuryId>('mt5-metaphyseal'), given, step, START, START);
  const ended = (result: 'reached' | 'given up', on: string): CaseFile =>
    withForecast(
      screwed('professional', ['outcome', { endpoint: 'match play', result, on: day(on) }, CONFIRMED]),
      kept,
    );
  const score = (file: CaseFile) =>
    (findingNamed(explained(file), 'back.forecastScored.1')?.message as MessageOf<'forecastScored'> | undefined)?.args;

  it('is held against what happened: a hit at its half, late and early beyond its ninety and ten', () => {
    expect(score(ended('reached', '2026-03-09'))).toMatchObject({ place: 'inside', week: { value: 9 } });
    expect(score(ended('reached', '2026-01-08'))).toMatchObject({ place: 'early' });
    expect(score(ended('reached', '2026-12-28'))).toMatchObject({ place: 'late' });
  });

  it('has a better score the nearer it was', () => {
    const crps = (on: string) => score(ended('reached', on))?.crps.value ?? Number.NaN;
    expect(crps('2026-03-09')).toBeLessThan(crps('2026-08-31'));
    expect(crps('2026-08-31')).toBeLessThan(crps('2027-01-04'));
  });

  it('is not scored before anything is known, and never turns into a claim', () => {
    const file = withForecast(screwed('professional'), kept);
    expect(score(file)).toBeUndefined();
    expect(findingsOf(explained(file), 'back').map(({ id }) => id)).toEqual(
      findingsOf(explanation, 'back').map(({ id }) => id),
    );
  });
});

describe('what goes along with slow healing', () => {
  it('an interval on one side of 1 says so, one across it does not', () => {
    expect(effectSays({ low: 1.19, high: 3.61 })).toBe('more');
    expect(effectSays({ low: 0.57, high: 0.83 })).toBe('less');
    expect(effectSays({ low: 0.99, high: 1.23 })).toBe('unclear');
  });

  it('shows contradictions as such, what the case names first, and leaves the odds alone', () => {
    const smoker = screwed('professional', ['riskFactor', idOf<FactorId>('smoking'), REPORTED]);
    const ids = findingsOf(explained(smoker), 'back')
      .map(({ id }) => id)
      .filter((id) => id.startsWith('back.factor.'));
    expect(ids[0]).toMatch(/^back\.factor\.smoking/);
    expect(ids).toContain('back.factor.anti-inflammatory-drugs.disagree');
    expect(played(smoker).steps[0]?.forecast).toEqual(played(screwed('professional')).steps[0]?.forecast);
  });

  it('by hand: 5 of 6 elite and 1 of 9 others failed: ratio (5/6)/(1/9) with its interval on the logarithm', () => {
    const [effect] = content.factors.find(({ id }) => id === 'high-level')?.effects ?? [];
    const ratio = 5 / 6 / (1 / 9);
    const half = 1.96 * Math.sqrt(1 / 5 - 1 / 6 + 1 - 1 / 9);
    expect(effect?.value).toBeCloseTo(ratio, 2);
    expect(effect?.low).toBeCloseTo(ratio / Math.exp(half), 2);
    expect(effect?.high).toBeCloseTo(ratio * Math.exp(half), 1);
  });

  it('tells weeks with and without a factor, and what speaks against one, under what the case says of it', () => {
    const explanation = explained(screwed('professional'));
    const ids = findingsOf(explanation, 'back').flatMap(({ id }) => (id.startsWith('back.factor.') ? [id] : []));
    // The level is professional: what was counted of the highest level comes first, and with what speaks against it.
    expect(ids.slice(0, 3)).toEqual([
      'back.factor.high-level.1',
      'back.factor.high-level.against.1',
      'back.factor.high-level.disagree',
    ]);
    expect(findingNamed(explanation, 'back.factor.high-level.1')?.basis.claims.length).toBe(1);
    expect(told(screwed('recreational'), 'factor.slow-before-surgery.waits.1', 'study')).toMatch(
      /mean 11\.2 weeks.* against 7\.6 weeks \(p < \.001\).*no interval printed/,
    );
    expect(told(screwed('recreational'), 'factor.slow-before-surgery.waits.1')).toMatch(/^Took longer: [^0-9]+$/);
    expect(told(screwed('recreational'), 'factor.broken-before.waits.1', 'study')).not.toMatch(/against/);
  });

  it('a factor of healing alone is no way in which a bone breaks', () => {
    const file = screwed('professional', ['riskFactor', idOf<FactorId>('broken-before'), REPORTED]);
    const how = findingsOf(explained(file), 'how').flatMap(({ message }) =>
      message.id === 'contentText' && message.args.at.kind === 'factor' ? [message.args.at.factor] : [],
    );
    expect(how).not.toContain('broken-before');
    expect(how.length).toBeGreaterThan(0);
  });
});

describe('a score that was made for another bone', () => {
  const BRIDGED = ['followUp', { finding: 'two cortices bridged', on: WEEK_6 }] as const;
  const scored = (file: CaseFile) =>
    findingsOf(explained(file), 'back').filter(({ message }) => message.id === 'borrowedScore');

  it('by hand: two sides of four grown over have 3 points each, the others 1 or 2: 8 to 10 of 4 to 12', () => {
    const [finding, ...more] = scored(screwed('professional', BRIDGED));
    expect(more).toEqual([]);
    expect(finding?.message.args).toMatchObject({ points: { lowHigh: [8, 10] }, ofPoints: [4, 12] });
  });

  it('is marked as borrowed, has its source, and is no surer than something uncertain', () => {
    const [finding] = scored(screwed('professional', BRIDGED));
    expect(finding?.confidence).toEqual({ level: 'uncertain', reason: { by: 'model', limit: 'borrowedScore' } });
    expect(finding?.basis.sources).toEqual([{ source: 'rust-scale-proceedings', mark: 'seen' }]);
    const words = (reader: 'patient' | 'study') =>
      told(screwed('professional', BRIDGED), 'borrowedScore.rust.1', reader);
    expect(words('study')).toMatch(/borrowed score.*8 to 10 of 4 to 12.*shaft of the tibia.*conditions no odds/i);
    expect(words('patient')).toMatch(/shin bones only.*changes no odds/);
    expect(words('patient')).not.toMatch(/\d/);
  });

  it('is told under the same condition as the follow-up: of a film that is only reported, if that is so', () => {
    const only = screwed('professional', [...BRIDGED, REPORTED] as Stated);
    expect(told(only, 'borrowedScore.rust.1')).toMatch(/^If/);
  });

  it('stands for no finding that counts no sides', () => {
    for (const finding of ['line visible', 'united', 'tender', 'training'] as const)
      expect(scored(screwed('professional', ['followUp', { finding, on: WEEK_6 }]))).toEqual([]);
  });

  it('changes no odds: with its record taken out of the content the forecast is the same', () => {
    const file = screwed('professional', BRIDGED);
    const without = explain({ ...content, filmScores: [] }, factsOf(file), NO_WHAT_IF, foot);
    expect(without.forecasts).toEqual(explained(file).forecasts);
    expect(findingsOf(without, 'back').some(({ message }) => message.id === 'borrowedScore')).toBe(false);
  });
});

describe('with the studies as they are: two of professionals and one of college players', () => {
  const shown = explainedTwo(screwed('professional'));
  const play = shown.forecasts.find(({ endpoint }) => endpoint === 'match play');

  it('levels are not mixed, so nothing is pooled, and that is said', () => {
    expect(shown.forecasts.every(({ outcome, steps }) => outcome.kind !== 'pooled' && steps.length === 0)).toBe(true);
    expect(play?.outcome).toMatchObject({ kind: 'sideBySide', why: 'levels' });
    const finding = findingNamed(shown, 'back.forecastNot.match-play');
    expect(finding === undefined ? '' : plainText(wordFinding(content, shown, finding, 'broadcast'))).toMatch(
      /^Of one level there are too few such studies, and levels are not mixed\./,
    );
  });

  it('each study stands by itself, with its level and its own weeks', () => {
    expect(play?.spreads.map(({ study, level }) => [study, level])).toEqual([
      ['watson-2020', 'competitive'],
      ['boa-2012', 'professional'],
      ['jhk-2021-screw', 'professional'],
    ]);
    // As the dossier derives them: 2.3-3.4-5.1, 7.7-13.3-23.0 and 7.0-9.0-11.7 weeks.
    const weeks = play?.spreads.map(({ ten, half, ninety }) => [ten, half, ninety].map((week) => week?.toFixed(1)));
    expect(weeks).toEqual([
      ['2.3', '3.4', '5.1'],
      ['7.7', '13.3', '23.0'],
      ['7.0', '9.0', '11.7'],
    ]);
  });

  it('by hand: not there at week 8, each study goes by those of its people who were not there either', () => {
    const later = explainedTwo(screwed('professional', ['followUp', { finding: 'tender', on: day('2026-03-02') }]));
    const [, boa] = later.forecasts.find(({ endpoint }) => endpoint === 'match play')?.spreads ?? [];
    // Mean 14.6, range 5 to 34 of 49 people: mu 2.590962, sigma 0.424404. At week 8 the deviate is -1.205247, normal table 0.11406
    // back; half of the rest are by 0.11406 + 0.88594 / 2 = 0.55703, deviate 0.14345: e^(2.590962 + 0.14345 * 0.424404) = 14.18.
    expect(boa?.half).toBeCloseTo(14.18, 2);
  });

  it('weeks that were named are held against each of them', () => {
    const named = (weeks: number) =>
      explainedTwo(screwed('professional', ['timetable', { weeks, endpoint: 'match play' }, REPORTED]));
    const words = (weeks: number): string => {
      const explanation = named(weeks);
      const finding = findingNamed(explanation, 'back.timetable.1');
      return finding === undefined ? '' : plainText(wordFinding(content, explanation, finding, 'broadcast'));
    };
    expect(findingNamed(named(6), 'back.timetable.1')?.message).toMatchObject({
      id: 'timetableByStudy',
      // By hand: deviates (ln 6 - mu) / sigma are 1.812, -1.883 and -2.036, so that 96.5, 3.0 and 2.1 of 100 were back by then.
      args: { studies: [{ longer: 3 }, { longer: 97 }, { longer: 98 }] },
    });
    expect(words(6)).toMatch(
      /study by study.*about 3 in a study of people who compete in sport, about 97 in a study of people whose job is sport/,
    );
    expect(words(6)).not.toContain('nine in ten');
    expect(words(1.5)).toContain('shorter than for nine in ten');
  });
});
