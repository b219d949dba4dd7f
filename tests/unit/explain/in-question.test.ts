/** A case without a treatment: nothing is told as allowed, every usual treatment's dangers are told, and each line says whose it is. */
import { describe, expect, it } from 'vitest';
import { criteriaIn, isOfOptions, optionsInQuestion } from '../../../src/explain/in-question';
import { type InjuryId, idOf, type OptionId, type RegionId } from '../../../src/ids';
import { cautionsFor, plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingsOf } from '../../tools/explained';

const [boot, screw, cast] = ['boot', 'screw', 'cast-nwb'].map((id) => idOf<OptionId>(id)) as [
  OptionId,
  OptionId,
  OptionId,
];

const zone2 = (option: OptionId | null, side: 'left' | 'right' | null = null) =>
  explained(
    caseOf(
      ['bone', 'metatarsal5'],
      ['place', { by: 'region', region: idOf<RegionId>('mt5-zone-2') }],
      ['injury', idOf<InjuryId>('mt5-metaphyseal')],
      ...(option === null ? [] : ([['treatment', { option }]] as const)),
      ...(side === null ? [] : ([['side', side]] as const)),
    ),
  );
const told = (explanation: ReturnType<typeof zone2>): readonly string[] =>
  findingsOf(explanation, 'back').map((f) => plainText(wordFinding(content, explanation, f, 'patient')));
const dangers = (explanation: ReturnType<typeof zone2>): readonly string[] =>
  cautionsFor(content, explanation, 'patient')
    .filter(({ kind }) => kind === 'treatment danger')
    .map(({ id }) => id);

describe('in question are', () => {
  const record = content.injuries.find(({ id }) => id === 'mt5-metaphyseal');

  it('the treatment in force, or all that are usual, or none without an injury', () => {
    expect(optionsInQuestion(screw, record)).toEqual([screw]);
    expect(optionsInQuestion(null, record)).toEqual(record?.options);
    expect(optionsInQuestion(null, undefined)).toEqual([]);
  });

  it('what names no treatment always, what names some only with one of them', () => {
    expect(isOfOptions([], [])).toBe(true);
    expect(isOfOptions([screw], [])).toBe(false);
    expect(isOfOptions([screw], [boot, screw])).toBe(true);
    expect(isOfOptions([screw], [boot])).toBe(false);
  });

  it('a dry wound only after an operation', () => {
    const first = content.stages.find(({ id }) => id === 'protect');
    expect(first && criteriaIn(first, [boot], 'break')).toEqual([0]);
    expect(first && criteriaIn(first, [screw], 'break')).toEqual([0, 1]);
  });
});

it('a joint that came apart is asked whether it stands in line, a broken bone whether it mends', () => {
  const partly = content.stages.find(({ id }) => id === 'load-partly');
  const ids = (kind: 'break' | 'joint') =>
    partly && criteriaIn(partly, [boot], kind).map((index) => partly.opensNext[index]?.id);
  expect(ids('break')).toEqual(['spot-hurts-less', 'first-callus']);
  expect(ids('joint')).toEqual(['spot-hurts-less', 'joint-in-line']);
});

describe('without a treatment', () => {
  const untold = zone2(null);

  it('no weight is allowed as if the clinic had said so', () => {
    const lines = told(untold);
    expect(lines).toContain('Put no weight on the foot until your clinic has said how much.');
    expect(lines.filter((line) => /^Put \d/.test(line))).toEqual([]);
    expect(lines.some((line) => line.startsWith('Put weight on the foot as pain allows'))).toBe(false);
  });

  it('the dangers of each usual one are told, of which one alone has fewer', () => {
    const all = dangers(untold);
    for (const option of [boot, screw, cast]) expect(all).toEqual(expect.arrayContaining([...dangers(zone2(option))]));
    expect(dangers(zone2(boot))).not.toContain('cast-skin');
    expect(all).toContain('cast-skin');
    expect(all).toContain('clot-leg');
  });

  it('what a clinic wrote says for which treatment; with one it does not', () => {
    const sheets = (explanation: ReturnType<typeof zone2>) =>
      findingsOf(explanation, 'back')
        .filter((f) => f.message.id === 'stageSheet')
        .map((f) => plainText(wordFinding(content, explanation, f, 'patient')));
    expect(sheets(untold).length).toBeGreaterThan(sheets(zone2(screw)).length);
    for (const line of sheets(untold)) expect(line).toMatch(/, for (a|an) .+: /);
    for (const line of sheets(zone2(screw))) expect(line).not.toContain(', for an operation with a screw');
  });
});

it('what is true of the right foot alone is told of a right foot, and while nobody said which it is', () => {
  const pedal = (side: 'left' | 'right' | null) =>
    told(zone2(boot, side)).some((line) => line.startsWith('With a boot or cast on the right foot'));
  expect([pedal('right'), pedal(null), pedal('left')]).toEqual([true, true, false]);
});

describe('with a treatment that is not usual for the injury', () => {
  const AS_PAIN = 'Put weight on the foot as pain allows';
  const NONE_YET = 'Put no weight on the foot until your clinic has said how much.';
  const NONE = 'Put no weight on the foot until your clinic says so.';
  const linesOf = (injury: InjuryId, option: OptionId) =>
    told(explained(caseOf(['injury', injury], ['treatment', { option }])));

  it('no weight as pain allows is told: what holds for a break that gets a boot could harm here', () => {
    const loading = content.options.filter(({ id }) =>
      content.stages.some(({ today }) => today.weights.some((w) => w.share === null && w.options.includes(id))),
    );
    const pairs = content.injuries.flatMap(({ id, options }) =>
      loading.filter((option) => !options.includes(option.id)).map((option) => [id, option.id] as const),
    );
    expect(pairs.length).toBeGreaterThan(10);
    for (const [injury, option] of pairs) {
      const lines = linesOf(injury, option);
      expect(lines, `${injury} ${option}`).toContain(NONE_YET);
      expect(
        lines.filter((line) => line.startsWith(AS_PAIN)),
        `${injury} ${option}`,
      ).toEqual([]);
    }
  });

  it('that no weight is allowed is told all the same, and a usual boot as ever', () => {
    expect(linesOf(idOf<InjuryId>('calcaneus-intra-articular'), cast)).toContain(NONE);
    const usual = linesOf(idOf<InjuryId>('mt5-tuberosity'), boot);
    expect(usual.some((line) => line.startsWith(AS_PAIN))).toBe(true);
  });
});
