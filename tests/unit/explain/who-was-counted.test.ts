/** Weeks are told of the people they were counted in: their class, their zone, their treatment; where sources disagree, that first. */
import { describe, expect, it } from 'vitest';
import type { Explanation } from '../../../src/explain';
import { type InjuryId, idOf, type Level, type OptionId, READERS, type Reader } from '../../../src/ids';
import { coverageOf, forecastFor } from '../../../src/recovery';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding, wordQuestion } from '../../../src/wording';
import { caseOf, content, explained, findingNamed, findingsOf, type Stated } from '../../tools/explained';

const hurt = (id: string): Stated => ['injury', idOf<InjuryId>(id)];
const treated = (id: string): Stated => ['treatment', { option: idOf<OptionId>(id) }];
const gap = (value: number): Stated => ['measure', { what: 'diastasis', value }];
const leadOf = (explanation: Explanation, reader: Reader): string =>
  plainText(wordQuestion(content, explanation, 'back', reader).sentence);
const backOf = (explanation: Explanation) => explanation.questions.find(({ id }) => id === 'back')?.findings ?? [];

const UNNAMED = content.options.filter(({ named }) => !named).map(({ id }) => id);

describe('the joints of the midfoot, counted stage by stage', () => {
  it.each(READERS)(
    'are told stage by stage to %s where the stage is not known, and never treatment by treatment',
    (reader) => {
      const lead = leadOf(explained(caseOf(hurt('lisfranc'))), reader);
      expect(lead).toMatch(
        /^(It depends on how wide the gap in the joint is|Depends on how far the joint has come apart)\./,
      );
      expect(lead).toContain(`Stage I, no gap: about 4 weeks ${reader === 'study' ? '(mean)' : 'on average'}.`);
      expect(lead).toContain(
        `Stage II, gap of 1 to 5 mm: about 9.1 weeks ${reader === 'study' ? '(mean)' : 'on average'}.`,
      );
      expect(lead).toContain(
        reader === 'study' ? 'Stage III, gap of 5 mm or more: none found.' : 'For stage III none were counted.',
      );
      expect(lead).not.toMatch(/11\.6|19\.6|22/);
    },
  );

  it.each([
    [0, 'Stage I, no gap: about 4 weeks on average.', /9\.1|Stage II/],
    [3, 'Stage II, gap of 1 to 5 mm: about 9.1 weeks on average.', /about 4 weeks|Stage I,|Stage III/],
    [6, 'Stage III, gap of 5 mm or more: none found.', /\d weeks/],
  ])('with a gap of %d mm only those of that stage are told', (mm, told, not) => {
    for (const option of [null, 'cast-nwb']) {
      const file = caseOf(hurt('lisfranc'), gap(mm), ...(option === null ? [] : [treated(option)]));
      const lead = leadOf(explained(file), 'patient');
      expect(lead).toContain(told);
      expect(lead).not.toMatch(not);
    }
  });

  it('never has people of two stages, or of a stage and of none, in one sentence of weeks', () => {
    const classOf = (study: string) => content.studies.find(({ id }) => id === study)?.classes?.join() ?? null;
    for (const stated of [[], [gap(3)], [treated('cast-nwb')], [treated('joint-fixation'), gap(6)]] as const)
      for (const { message } of backOf(explained(caseOf(hurt('lisfranc'), ...stated)))) {
        const groups =
          message.id === 'backClasses'
            ? message.args.classes.map(({ ranges }) => ranges.flatMap(({ arms }) => arms))
            : message.id === 'backDepends' || message.id === 'backClassNotStated'
              ? [message.args.ranges.flatMap(({ arms }) => arms)]
              : message.id === 'backRange'
                ? [message.args.arms]
                : [];
        for (const arms of groups) expect(new Set(arms.map(({ study }) => classOf(study))).size).toBeLessThan(2);
      }
  });

  it('says of the operated that their stage is not known, apart from the others', () => {
    const said = backOf(explained(caseOf(hurt('lisfranc')))).find(({ message }) => message.id === 'backClassNotStated');
    expect(said?.depth).toBe('claim');
    expect(leadOf(explained(caseOf(hurt('lisfranc'), treated('joint-fixation'), gap(6))), 'patient')).toBe(
      'In groups of other people (people of unknown level) it took 11.6 to 19.6 weeks on average until sport began again. How far their joints had come apart is not known.',
    );
  });

  it('shows no trial of another stage among the options once the stage is known', () => {
    const trials = (...stated: Stated[]) =>
      explained(caseOf(hurt('lisfranc'), ...stated))
        .questions.flatMap(({ findings }) => findings)
        .flatMap(({ message }) => (message.id === 'trialArms' ? [message.args.trial] : []));
    expect(trials()).toEqual(expect.arrayContaining(['robertson-2019-stage-1', 'robertson-2019-stage-2']));
    expect(trials(gap(3))).not.toContain('robertson-2019-stage-1');
    expect(trials(gap(3))).toEqual(expect.arrayContaining(['robertson-2019-stage-2', 'robertson-2019-open']));
  });
});

describe('people of unknown level nobody printed', () => {
  it('are the rows that say so', () => {
    for (const { id, population, levelAssumed } of content.studies)
      expect(levelAssumed ?? false, id).toBe(/level not stated/.test(population));
  });

  it.each(READERS)('are told as that, and not as competitors or people who play for fun, for %s', (reader) => {
    const joints = leadOf(explained(caseOf(hurt('lisfranc'))), reader);
    expect(joints).toContain('people of unknown level');
    expect(joints).not.toMatch(/competitors/);
    const screw = leadOf(explained(caseOf(hurt('mt5-metaphyseal'), treated('screw'))), reader);
    expect(screw).toMatch(/8 in people of unknown level, .* competitors/);
  });
});

describe('where the level of sport is not stated', () => {
  const whose =
    /ordinary adults|people who play for fun|people of unknown level|compet|professional|dancers|people in sport|[Cc]ounted: |\(adults|\(people|fractures?, /;
  const cases = content.injuries.flatMap(({ id, options }) =>
    [null, ...options].map((option) => [id, option] as const),
  );

  it.each(READERS)('every lead with weeks says whose they are, for %s', (reader) => {
    for (const [id, option] of cases) {
      const lead = leadOf(explained(caseOf(hurt(id), ...(option === null ? [] : [treated(option)]))), reader);
      if (/\d weeks/.test(lead)) expect(lead, `${id} ${option}`).toMatch(whose);
    }
  });

  const dancer = (...more: Stated[]) =>
    explained(
      caseOf(
        hurt('mt5-spiral-shaft'),
        ['treatment', { option: idOf<OptionId>('wrap'), on: '2026-03-02' as IsoDate }],
        ...more,
      ),
    );

  it('no day is counted from weeks of people who train for it; at their level it is, with whose they are', () => {
    expect(findingNamed(dancer(), 'back.dates')).toBeUndefined();
    const own = dancer(['level', 'professional']);
    const dates = findingNamed(own, 'back.dates');
    if (dates === undefined) throw new Error('no dates');
    for (const reader of READERS)
      expect(plainText(wordFinding(content, own, dates, reader))).toContain('professionals');
  });
});

it('a stated treatment without weeks of its own is not led by the weeks of others where these can mislead', () => {
  const cast = (id: string) => leadOf(explained(caseOf(hurt(id), treated('cast-nwb'))), 'patient');
  expect(cast('lisfranc')).toBe('It depends on how wide the gap in the joint is. Ask which stage yours is.');
  expect(cast('navicular-stress')).toBe(
    'For your treatment no study we could use gives a time until sport or work. Ask the person treating you.',
  );
});

describe('where studies disagree on which treatment is quicker', () => {
  it.each(READERS)('%s hears so, with both sides, before any weeks', (reader) => {
    const lead = leadOf(explained(caseOf(hurt('navicular-stress'))), reader);
    expect(lead).toMatch(/^Studies disagree[.:]/);
    expect(lead.indexOf('back sooner with an operation')).toBeGreaterThan(0);
    expect(lead.indexOf('back later with one')).toBeGreaterThan(0);
    expect(lead).not.toMatch(/depends on the treatment/i);
    const zone2 = leadOf(explained(caseOf(hurt('mt5-metaphyseal'))), reader);
    expect(zone2).toMatch(/^Studies disagree[.:]/);
    // Whoever found it is named to those who tell and learn alone.
    expect(zone2.includes('Mologne')).toBe(reader !== 'patient');
    expect(zone2.search(/\d weeks/)).toBeGreaterThan(zone2.indexOf('Sport was much later in a cast'));
  });

  it('an injury without such a contradiction does not say so', () => {
    expect(leadOf(explained(caseOf(hurt('mt5-tuberosity'))), 'patient')).toMatch(/^It depends on the treatment\./);
  });
});

describe('treatments that nobody named', () => {
  it('hold every arm whose people had an unknown or mixed treatment', () => {
    const unknown = content.studies.filter(({ population }) =>
      /(treatment|operation|surgery,?) (kind )?not stated|kinds? (of \w+ )?(not stated|mixed)|% in a boot|% operated/i.test(
        population,
      ),
    );
    expect(unknown.length).toBeGreaterThan(12);
    const filed = unknown.filter(({ option }) => !UNNAMED.includes(option)).map(({ id }) => id);
    // Of rest after a stress fracture the kind of shoe, or the treatment of a row that is weak, is not stated: never in a range.
    expect(filed).toEqual(['miller-2018-any-site']);
  });

  it('are no usual treatment of any injury, in no range and no forecast of one', () => {
    for (const { id, options } of content.injuries) {
      expect(options.filter((option) => UNNAMED.includes(option))).toEqual([]);
      for (const { message } of backOf(explained(caseOf(hurt(id))))) {
        if (message.id !== 'backDepends' && message.id !== 'backClassNotStated') continue;
        expect(message.args.ranges.filter(({ option }) => UNNAMED.includes(option))).toEqual([]);
      }
      for (const option of options)
        for (const { message } of backOf(explained(caseOf(hurt(id), treated(option)))))
          if (message.id === 'backRange') expect(message.args.option).toBe(option);
    }
  });

  it('still compare people with and without an operation', () => {
    const said = explained(caseOf(hurt('mt5-metaphyseal')))
      .questions.flatMap(({ findings }) => findings)
      .find(({ message }) => message.id === 'trialArms' && message.args.trial === 'low-2004');
    if (said === undefined) throw new Error('no such trial');
    const text = plainText(wordFinding(content, explained(caseOf(hurt('mt5-metaphyseal'))), said, 'study'));
    expect(text).toMatch(/operated, kind of operation not stated or mixed/);
    expect(text).toMatch(/no operation, kind of treatment not stated or mixed/);
  });
});

describe('people of mixed zones', () => {
  const mixed = new Set<string>(
    content.studies.filter(({ injuries, asOne }) => injuries.length > 1 && asOne !== true).map(({ id }) => id),
  );
  it('are in no range and no forecast of one zone, and are shown behind', () => {
    expect(mixed.has('functional-2017-sport')).toBe(true);
    // Zones 2 and 3 of athletes are one injury to their authors, and are told of each.
    expect(mixed.has('jhk-2021-screw')).toBe(false);
    for (const { id, options } of content.injuries.filter(({ bone }) => bone === 'metatarsal5'))
      for (const option of [null, ...options]) {
        const explanation = explained(caseOf(hurt(id), ...(option === null ? [] : [treated(option)])));
        for (const { message } of backOf(explanation)) {
          const arms =
            message.id === 'backRange'
              ? message.args.arms
              : message.id === 'backDepends'
                ? message.args.ranges.flatMap((range) => range.arms)
                : [];
          expect(arms.filter(({ study }) => mixed.has(study))).toEqual([]);
        }
      }
    for (const { injury, option, endpoint } of coverageOf(content.studies)) {
      const outcome = forecastFor(content.studies, { injury, option, endpoint });
      const arms = outcome.kind === 'none' ? [] : outcome.arms;
      expect(arms.filter(({ id }) => mixed.has(id))).toEqual([]);
    }
    const trials = explained(caseOf(hurt('mt5-metaphyseal'))).questions.flatMap(({ findings }) => findings);
    expect(trials.some(({ message }) => message.id === 'trialArms' && message.args.trial === 'functional-2017')).toBe(
      true,
    );
  });

  it('zone 2 in a boot is not told weeks until sport that zone 1 shares', () => {
    expect(leadOf(explained(caseOf(hurt('mt5-metaphyseal'), treated('boot'))), 'patient')).not.toContain('7.6');
  });
});

describe('one treatment alone with weeks', () => {
  it.each(['calcaneus-intra-articular', 'mt5-spiral-shaft'])('%s does not depend on it', (id) => {
    const explanation = explained(caseOf(hurt(id)));
    const several = (content.injuries.find((each) => each.id === id)?.options.length ?? 0) > 1;
    for (const reader of READERS) {
      const lead = leadOf(explanation, reader);
      expect(lead).toMatch(/^(Only for one treatment were weeks counted|In one group|Weeks of one group)/);
      expect(lead.includes('For other treatments none were found.')).toBe(several);
    }
  });
});

it('weeks of dancers whose treatment nobody wrote are no weeks of a usual treatment, and what was counted of them still is told', () => {
  const explanation = explained(caseOf(hurt('mt2-base-stress')));
  expect(leadOf(explanation, 'patient')).toMatch(/^No study we could use gives a time/);
  const told = explanation.questions.flatMap(({ findings }) => findings.map(({ id }) => id));
  expect(told).toContain('back.trouble.refracture.omalley-1996-mt2-rest');
});

it('the leads of untreated cases keep to fifteen words a sentence', () => {
  for (const { id } of content.injuries)
    for (const sentence of leadOf(explained(caseOf(hurt(id))), 'patient').split(/(?<=[.?!]) (?=[A-Z])/))
      expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(15);
});

describe('where one study alone speaks', () => {
  const leads = content.injuries.flatMap(({ id, options }) =>
    options.map((option) => [id, option, explained(caseOf(['injury', id], ['treatment', { option }]))] as const),
  );
  const ranges = leads.flatMap(([id, option, explanation]) =>
    findingsOf(explanation, 'back').flatMap((finding) =>
      finding.message.id === 'backRange' ? [{ id, option, explanation, finding, arms: finding.message.args.arms }] : [],
    ),
  );

  it('patients and listeners hear whose weeks they are, and of groups only where there are several', () => {
    expect(ranges.some(({ arms }) => arms.length === 1)).toBe(true);
    expect(ranges.some(({ arms }) => arms.length > 1)).toBe(true);
    for (const { id, option, explanation, finding, arms } of ranges)
      for (const reader of ['patient', 'broadcast'] as const) {
        const text = plainText(wordFinding(content, explanation, finding, reader));
        const row = content.studies.find((study) => study.id === arms[0]?.study);
        const alone = arms.length === 1;
        const who = reader === 'patient' ? ` Counted: ${row?.plain}.` : `people (${row?.plain})`;
        expect(text.includes(who), `${id}, ${option}: ${text}`).toBe(alone);
        expect(/one group of other people/i.test(text)).toBe(alone && row?.design !== 'pooled');
      }
  });

  it('dancers with a tired break, whose kind of treatment nobody wrote, lead nothing and are counted from the diagnosis', () => {
    const explanation = explained(
      caseOf(['injury', idOf<InjuryId>('mt2-base-stress')], ['treatment', { option: idOf<OptionId>('load-rest') }]),
    );
    for (const reader of ['patient', 'study'] as const) {
      expect(leadOf(explanation, reader)).not.toContain('6.2');
      const told = findingsOf(explanation, 'options')
        .map((finding) => plainText(wordFinding(content, explanation, finding, reader)))
        .filter((text) => text.includes('6.2'));
      expect(told.length, reader).toBeGreaterThan(0);
      for (const text of told) expect(text).toMatch(/from the diagnosis|after diagnosis/);
    }
  });

  it('and where no treatment is stated, a treatment that one study speaks for has its people beside it', () => {
    for (const reader of ['patient', 'broadcast'] as const)
      expect(leadOf(explained(caseOf(hurt('mt5-spiral-shaft'))), reader)).toMatch(
        /about 19 weeks on average until performing again\. Counted: dancers, /,
      );
  });

  it('gives days only from people of the level of the case', () => {
    const dates = (level?: Level) =>
      findingNamed(
        explained(
          caseOf(
            ['injury', idOf<InjuryId>('mt5-spiral-shaft')],
            ['treatment', { option: idOf<OptionId>('wrap'), on: '2026-10-25' as never }],
            ...(level === undefined ? [] : ([['level', level]] as const)),
          ),
        ),
        'back.dates',
      );
    expect(dates('professional')).toBeDefined();
    for (const level of ['everyday', 'recreational', 'competitive'] as const)
      expect(dates(level), level).toBeUndefined();
  });
});
