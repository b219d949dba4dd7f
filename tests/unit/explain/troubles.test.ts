/** Counts of troubles: of whom, how many, with which interval; never of one person. */
import { describe, expect, it } from 'vitest';
import { emptyCase } from '../../../src/cases';
import { troubleCounts } from '../../../src/explain/trouble-counts';
import { type CaseId, type InjuryId, idOf, READERS } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingNamed } from '../../tools/explained';

const troubleNamed = (id: string) => {
  const found = content.troubles.find((t) => t.id === id);
  if (found === undefined) throw new Error(`no trouble ${id}`);
  return found;
};
const countsOf = (trouble: string, injury: string) =>
  troubleCounts(content, troubleNamed(trouble), { injury: idOf<InjuryId>(injury) });
const recordsOf = (trouble: string, injury: string) =>
  countsOf(trouble, injury).map(({ from }) => ('rate' in from ? from.rate : from.study));

describe('what was counted', () => {
  it('comes from study arms and from rates, better read and larger groups first', () => {
    const found = countsOf('nonunion', 'mt5-metaphyseal');
    const ids = recordsOf('nonunion', 'mt5-metaphyseal');
    expect(ids).toEqual(expect.arrayContaining(['kadiyala-2024-no-surgery', 'athletes-28-nonunion-inside']));
    const weak = found.findIndex(({ mark }) => mark !== 'seen');
    expect(found.slice(weak).every(({ mark }) => mark !== 'seen')).toBe(true);
    const sizes = found.slice(0, weak).map(({ of }) => of ?? 0);
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
  });

  it('leaves out people who were picked because it had gone wrong before', () => {
    expect(content.studies.some((s) => s.id === 'hunt-anderson' && s.time?.since === 'second treatment')).toBe(true);
    expect(recordsOf('refracture', 'mt5-metaphyseal')).not.toContain('hunt-anderson');
    expect(recordsOf('refracture', 'mt5-metaphyseal')).toContain('ekstrand-2013-surgery');
  });

  it('has the interval of the print where there is one, and none where a percentage has no count', () => {
    const [pooled] = countsOf('nonunion', 'mt5-proximal-shaft').filter(({ percent }) => percent === 33);
    expect(pooled?.interval).toEqual({ low: 20, high: 47, by: 'print' });
    const all = troubleCounts(content, troubleNamed('death-of-bone'), null);
    expect(all.find(({ percent }) => percent === 38.9)?.interval).toBeNull();
  });
});

describe('with an injury', () => {
  const zone = (injury: string) => explained(caseOf(['injury', idOf<InjuryId>(injury)]));

  it('each question has its own: no healing with the spot, breaking again with the way back', () => {
    const explanation = zone('mt5-metaphyseal');
    expect(findingNamed(explanation, 'why.trouble.nonunion')?.basis.sources[0]?.source).toBe('bhandari-2012');
    expect(findingNamed(explanation, 'why.trouble.nonunion.kadiyala-2024-no-surgery')?.confidence.level).toBe(
      'established',
    );
    expect(findingNamed(explanation, 'why.trouble.nonunion.boot-news-boot')?.confidence.level).toBe('uncertain');
    expect(findingNamed(explanation, 'back.trouble.refracture.ekstrand-2013-surgery')).toBeDefined();
    expect(findingNamed(explanation, 'why.trouble.death-of-bone')).toBeUndefined();
  });

  it('what nobody counted is said', () => {
    const explanation = zone('mt5-tuberosity');
    const said = findingNamed(explanation, 'why.trouble.notCounted');
    expect(said?.message.args).toMatchObject({ troubles: ['delayed-union'] });
  });

  it('of the heel a later fusion is told with and without an operation, of the same trial', () => {
    const heel = countsOf('later-fusion', 'calcaneus-intra-articular').filter(({ of }) => of !== null);
    expect(heel.map(({ count, of }) => [count, of])).toEqual([
      [37, 218],
      [7, 206],
    ]);
    expect(findingNamed(zone('calcaneus-intra-articular'), 'why.trouble.notCounted')?.message.args).toMatchObject({
      troubles: ['delayed-union'],
    });
  });

  it('of the shafts of the middle metatarsals no study was found that counted, and that is said', () => {
    const said = findingNamed(zone('metatarsal-shaft-stress'), 'why.trouble.notCounted');
    expect(said?.message.args).toMatchObject({ troubles: ['delayed-union', 'nonunion'] });
  });

  it('a count that found nobody is a count, and is told with its interval', () => {
    const none = findingNamed(zone('mt5-tuberosity'), 'why.trouble.nonunion.tuberosity-vorlat-nonunion');
    expect(none?.message.args).toMatchObject({ count: 0, of: 32, interval: { low: 0, high: 10.7, by: 'Wilson' } });
  });

  it('of a joint that came apart wear is told of, with what was counted, and a later fusion; of its bones nothing', () => {
    const joint = zone('lisfranc');
    expect(findingNamed(joint, 'why.trouble.arthritis')).toBeDefined();
    expect(findingNamed(joint, 'why.trouble.arthritis.lisfranc-32-arthritis')?.message.args).toMatchObject({
      count: 13,
      of: 32,
    });
    expect(findingNamed(joint, 'why.trouble.later-fusion')).toBeDefined();
    expect(findingNamed(joint, 'why.trouble.notCounted')).toBeUndefined();
    expect(findingNamed(zone('mt5-metaphyseal'), 'why.trouble.arthritis')).toBeUndefined();
  });

  it('nothing is told where no class is known', () => {
    const findings = explained(emptyCase(idOf<CaseId>('empty'))).questions.flatMap((q) => q.findings);
    expect(findings.filter(({ id }) => id.includes('.trouble.') || id.includes('.sourcesDisagree.'))).toEqual([]);
  });
});

describe('in words', () => {
  const said = content.injuries.flatMap((injury) => {
    const explanation = explained(caseOf(['injury', injury.id]));
    const counts = explanation.questions.flatMap((q) => q.findings.filter((f) => f.message.id === 'troubleCount'));
    return counts.flatMap((finding) =>
      READERS.map((reader) => ({
        reader,
        id: finding.id,
        args: finding.message.args as { readonly of: number | null; readonly count: number | null },
        sentence: wordFinding(content, explanation, finding, reader),
      })),
    );
  });

  it('there are some of each', () => {
    expect(said.length).toBeGreaterThan(60);
  });

  it('no sentence gives one person a chance: it is of people in a study, and never of "you"', () => {
    for (const { reader, id, sentence } of said) {
      const text = plainText(sentence);
      expect(text, id).not.toMatch(/\b(you|your|yours|chance of|probability|risk of)\b/i);
      if (reader !== 'study')
        expect(text, id).toMatch(/^Of (100 such (people|breaks)|\d+ (people|breaks) in one study), /);
    }
  });

  it('breaks that were counted are called breaks: one person can have two', () => {
    const dancers = said.filter(({ id }) => id.endsWith('omalley-1996-mt2-rest'));
    expect(dancers.length).toBeGreaterThan(0);
    for (const { sentence } of dancers) {
      expect(plainText(sentence)).toContain('8 of 64 breaks');
      expect(plainText(sentence)).not.toMatch(/100 such people|64 people/);
    }
  });

  it('less than twenty people are told as they were counted, and not of a hundred', () => {
    const few = said.filter(({ reader, args }) => reader === 'patient' && args.count !== null && (args.of ?? 99) < 20);
    expect(few.length).toBeGreaterThan(3);
    for (const { args, sentence } of few) expect(plainText(sentence)).toMatch(new RegExp(`^Of ${args.of} people`));
  });

  it('every figure has its mark', () => {
    for (const { id, sentence } of said)
      expect(
        sentence.runs.some(({ mark }) => mark !== undefined),
        id,
      ).toBe(true);
  });

  it('the interval of a count is told to each reader', () => {
    const counted = said.filter(({ args }) => args.count !== null);
    for (const { reader, id, sentence } of counted)
      expect(plainText(sentence), id).toMatch(reader === 'study' ? /95 % interval/ : /may be anything from/);
  });
});
