/** Whom what is told: a patient keeps every answer and every danger sign, and is spared what only who tells or learns can use. */
import { describe, expect, it, test } from 'vitest';
import { explanationText } from '../../../src/cli/explanation-text';
import type { TextAddress } from '../../../src/explain/messages';
import { type InjuryId, idOf, type OptionId, QUESTION_IDS, type READERS, type RegionId } from '../../../src/ids';
import { cautionsFor, findingsFor, plainText, wordFinding } from '../../../src/wording';
import { CONFIRMED, caseOf, content, explained, findingNamed, REPORTED, type Stated } from '../../tools/explained';

const treated = (option: OptionId): Stated => ['treatment', { option, on: '2026-03-02' as never }, CONFIRMED];
const EVERY = content.injuries.flatMap(({ id, options, region }) =>
  options.map((option) => [id, option, region] as const),
);
const told = (of: ReturnType<typeof explained>, reader: (typeof READERS)[number]) =>
  QUESTION_IDS.flatMap((question) => findingsFor(of, question, reader));
const kindsOf = (of: ReturnType<typeof explained>): ReadonlySet<TextAddress['kind']> =>
  new Set(told(of, 'patient').flatMap(({ message }) => (message.id === 'contentText' ? [message.args.at.kind] : [])));

describe.each(EVERY)('%s, confirmed, with %s', (injury, option, region) => {
  const explanation = explained(
    caseOf(['injury', injury, CONFIRMED], ['place', { by: 'region', region }, CONFIRMED], treated(option)),
  );
  const patient = told(explanation, 'patient');
  const ids = new Set(patient.map(({ message }) => message.id));

  it('keeps from a patient single studies, single clinics, borders in millimetres and sizes of factors', () => {
    for (const id of ['trialArms', 'stageSheet', 'zoneBorder', 'factorEffect', 'neighbours'] as const)
      expect(ids.has(id), id).toBe(false);
    expect(kindsOf(explanation).has('tellApart')).toBe(false);
    // Kept from one reader, not from all.
    expect(told(explanation, 'study').some(({ message }) => message.id === 'neighbours')).toBe(true);
  });

  it('answers the five questions, the weight of today, the next check, each step, what opens it and what sends back', () => {
    for (const question of QUESTION_IDS)
      expect(findingsFor(explanation, question, 'patient').some(({ depth }) => depth === 'sentence')).toBe(true);
    const claims = patient.filter(({ depth }) => depth === 'claim').map(({ message }) => message.id);
    expect(claims).toEqual(expect.arrayContaining(['stageToday', 'nextCheck']));
    const steps = patient.filter(({ message }) => message.id === 'stageUsual').length;
    expect(steps).toBeGreaterThan(4);
    const kinds = kindsOf(explanation);
    for (const kind of ['stageOpens', 'stageSendsBack', 'stageAids', 'daily'] as const)
      expect(kinds.has(kind), kind).toBe(true);
  });

  it('orders nothing of a treatment that is another’s', () => {
    const options = patient.flatMap(({ message }) =>
      message.id === 'contentText' && (message.args.at.kind === 'option' || message.args.at.kind === 'optionBurden')
        ? [message.args.at.option]
        : [],
    );
    expect(new Set(options)).toEqual(new Set([option]));
  });

  it('tells one count of each trouble at most', () => {
    const counts = patient.flatMap(({ message }) => (message.id === 'troubleCount' ? [message.args.trouble] : []));
    expect(new Set(counts).size).toBe(counts.length);
  });

  it('tells no share of a handful whose treatment is not known', () => {
    const own = content.options.find(({ id }) => id === option);
    for (const { message } of patient)
      if (message.id === 'troubleCount' && message.args.option !== option && message.args.options === null)
        expect(message.args.of, `${message.args.group}, ${own?.term}`).toBeGreaterThanOrEqual(20);
  });

  it('tells no count of people who are known to have been treated otherwise', () => {
    for (const { message } of patient)
      if (message.id === 'troubleCount' && message.args.options !== null)
        expect(message.args.options, message.args.group).toContain(option);
  });

  it('says in the text every danger sign, and no exercise of a step that is not open', () => {
    const text = explanationText(content, explanation, 'patient');
    for (const { kind, what } of cautionsFor(content, explanation, 'patient'))
      if (kind !== 'do not say') expect(text).toContain(what.patient);
    expect(text).not.toContain('Make small hops');
    const open = content.stages.find(({ id }) =>
      patient.some(({ message }) => message.id === 'nextCheck' && message.args.stage === id),
    );
    expect(text).toContain(open?.today.exercises[0]?.what.patient);
  });

  it('says no line twice in the text, and does not grow back', () => {
    const lines = explanationText(content, explanation, 'patient')
      .split('\n')
      .filter((line) => line.startsWith('- '));
    expect(new Set(lines).size).toBe(lines.length);
    // A bound on growth: the longest of them now, with little to spare. Before it was cut the shortest had 3900 words.
    expect(lines.join(' ').split(/\s+/).length).toBeLessThan(2300);
  });
});

const NAVICULAR = idOf<InjuryId>('navicular-stress');
const MIDDLE: Stated = ['place', { by: 'region', region: idOf<RegionId>('navicular-middle-third') }, CONFIRMED];

test('while the class is only reported, what it can be taken for and how it is found stay a patient’s to read', () => {
  const kinds = kindsOf(explained(caseOf(['injury', NAVICULAR, REPORTED], MIDDLE)));
  expect(kinds.has('tellApart')).toBe(true);
  expect(kinds.has('injuryNotSeen')).toBe(true);
});

describe('where on the way back a patient is', () => {
  const option = idOf<OptionId>('cast-nwb');
  const at = (...more: Stated[]) =>
    explained(caseOf(['injury', NAVICULAR, CONFIRMED], MIDDLE, treated(option), ...more));
  const said = (of: ReturnType<typeof explained>, id: string): string => {
    const finding = findingNamed(of, id);
    return finding === undefined ? '' : plainText(wordFinding(content, of, finding, 'patient'));
  };
  const followUp = (on: string, finding: 'not tender' | 'broken again' = 'not tender'): Stated => [
    'followUp',
    { finding, on: on as never },
    CONFIRMED,
  ];

  it('is taken to be the first step, with what the next check decides and when it usually is', () => {
    const explanation = at();
    expect(said(explanation, 'back.weightToday')).toBe('Put no weight on the foot until your clinic says so.');
    expect(said(explanation, 'back.nextCheck')).toMatch(
      /first is “let it settle”.*decides if you go on to “put more weight on it”.*week 6 \(13 April 2026\)/,
    );
  });

  it('is still that at a follow-up on the last usual day of it, and not known the day after', () => {
    expect(said(at(followUp('2026-04-13')), 'back.weightToday')).toBe(
      'Put no weight on the foot until your clinic says so.',
    );
    const later = at(followUp('2026-04-14'));
    expect(said(later, 'back.weightToday')).toMatch(/weight that your clinic allowed last, and no more/);
    expect(said(later, 'back.nextCheck')).toMatch(/^Ask which step you are on/);
  });

  it('after a break anew no weight is told as allowed before, and no check of the old way back', () => {
    const again = at(followUp('2026-04-20', 'broken again'));
    expect(said(again, 'back.weightToday')).toMatch(/^Put no weight on the foot/);
    expect(findingNamed(again, 'back.nextCheck')).toBeUndefined();
  });
});

test('weeks told class by class that are sooner than running usually begins are no leave to run', () => {
  const explanation = explained(
    caseOf(['injury', idOf<InjuryId>('lisfranc'), CONFIRMED], treated(idOf<OptionId>('cast-nwb'))),
  );
  const finding = findingNamed(explanation, 'back.classSooner');
  expect(finding === undefined ? '' : plainText(wordFinding(content, explanation, finding, 'patient'))).toMatch(
    /^Their usual time was 4 to 9\.1 weeks\. In your plan running usually starts in week 12, and sport/,
  );
});

it('a wound is looked at before a late check, and nobody without one is told so', () => {
  const check = (injury: string, option: string): string => {
    const explanation = explained(
      caseOf(['injury', idOf<InjuryId>(injury), CONFIRMED], treated(idOf<OptionId>(option))),
    );
    const finding = findingNamed(explanation, 'back.nextCheck');
    return finding === undefined ? '' : plainText(wordFinding(content, explanation, finding, 'patient'));
  };
  // The first step after fixation of the heel usually ends in week 8, after a screw in zone 2 in week 2.
  expect(check('calcaneus-intra-articular', 'heel-fixation')).toMatch(/week 8 .*The wound is looked at before that\.$/);
  expect(check('mt5-metaphyseal', 'screw')).toMatch(/week 2 /);
  expect(check('mt5-metaphyseal', 'screw')).not.toMatch(/wound/);
  expect(check('calcaneus-intra-articular', 'heel-unloaded')).not.toMatch(/wound/);
});
