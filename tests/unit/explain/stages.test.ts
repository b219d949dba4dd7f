/** What may be done in a stage: kilograms from the mass that the case states, the clinic's own beside and not in what is usual. */
import { describe, expect, it } from 'vitest';
import type { Said } from '../../../src/cases';
import { withStageNotes } from '../../../src/cases';
import { rerun } from '../../../src/explain';
import { awaitsBands } from '../../../src/explain/awaits';
import { contextOf } from '../../../src/explain/context';
import type { MessageOf } from '../../../src/explain/messages';
import { shareLoadsFor } from '../../../src/explain/stage-loads';
import { type InjuryId, idOf, type OptionId, type RegionId, type StageId } from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { findingsFor, plainText, wordFinding } from '../../../src/wording';
import {
  caseOf,
  content,
  demoOnDefaultFoot,
  explained,
  findingNamed,
  findingsOf,
  foot,
  REPORTED,
  type Stated,
} from '../../tools/explained';

const PARTLY = idOf<StageId>('load-partly');
const zone2 = (option: string, massKg?: number) =>
  caseOf(
    ['bone', 'metatarsal5'],
    ['place', { by: 'region', region: idOf<RegionId>('mt5-zone-2') }],
    ['injury', idOf<InjuryId>('mt5-metaphyseal')],
    ['treatment', { option: idOf<OptionId>(option) }],
    ...(massKg === undefined ? [] : ([['massKg', massKg]] as const)),
  );
const today = (explanation: ReturnType<typeof explained>, id: string) =>
  (findingNamed(explanation, `back.${id}`)?.message as MessageOf<'stageToday'> | undefined)?.args;

describe('the weight on the foot', () => {
  it('is a share of body weight, and kilograms once the mass is stated', () => {
    expect(today(explained(zone2('screw', 80)), 'stage.2.today')).toMatchObject({
      stage: PARTLY,
      own: false,
      share: { unit: 'share', lowHigh: [0.2, 0.5] },
      kilograms: { unit: 'kg', lowHigh: [16, 40] },
    });
    expect(today(explained(zone2('screw')), 'stage.2.today')?.kilograms).toBeNull();
  });

  it('is none without weight bearing, and no figure where pain decides', () => {
    expect(today(explained(zone2('cast-nwb', 80)), 'stage.1.today')?.share?.lowHigh).toEqual([0, 0]);
    expect(today(explained(zone2('boot', 80)), 'stage.1.today')?.share).toBeNull();
  });

  it('tells the overshoot of low orders for this mass, and not without one or with the whole weight', () => {
    const told = findingsOf(explained(zone2('screw', 80)), 'back').filter((f) => f.message.id === 'stageOvershoot');
    expect(told.map((f) => [f.id, f.message.args])).toEqual([
      [
        'back.stage.2.practice.low-targets-double.kilograms',
        expect.objectContaining({ told: { value: 16, unit: 'kg' }, reached: { value: 32, unit: 'kg' } }),
      ],
    ]);
    expect(findingsOf(explained(zone2('screw')), 'back').some((f) => f.message.id === 'stageOvershoot')).toBe(false);
  });

  it('as the clinic sets it stands beside the usual one, without its sources', () => {
    const file = withStageNotes(zone2('screw', 80), PARTLY, { sharePercent: { low: 10, high: 30 } });
    const explanation = explained(file);
    expect(today(explanation, 'stage.2.today')).toMatchObject({ own: false, share: { lowHigh: [0.2, 0.5] } });
    const own = findingNamed(explanation, 'back.stage.2.ownToday');
    expect(own?.message.args).toMatchObject({ own: true, kilograms: { lowHigh: [8, 24] } });
    expect(own?.basis.sources).toEqual([]);
    for (const reader of ['patient', 'broadcast', 'study'] as const)
      expect(own && plainText(wordFinding(content, explanation, own, reader))).toMatch(/^The clinic’s own: /);
  });
});

describe('weight without a confirmed treatment that still holds', () => {
  const options = content.options.map(({ id }) => id);
  const day = (text: string) => text as IsoDate;
  const INFERRED: Said = { status: 'inferred', source: { kind: 'generalKnowledge' } };
  const PATIENT = /as pain allows|share that your clinic|Put \d|Usual is/;
  const toPatient = (explanation: ReturnType<typeof explained>): readonly string[] =>
    findingsFor(explanation, 'back', 'patient').flatMap((found) =>
      /^back\.stage\.\d+\.(today|practice|load)/.test(found.id)
        ? [plainText(wordFinding(content, explanation, found, 'patient'))]
        : [],
    );
  const cases = content.injuries.flatMap(({ id }) =>
    options.flatMap((option): readonly (readonly [string, string, string, Stated[]])[] => [
      [id, option, 'reported', [['treatment', { option }, REPORTED]]],
      [id, option, 'inferred', [['treatment', { option }, INFERRED]]],
      [
        id,
        option,
        'confirmed, then broken again',
        [
          ['treatment', { option, on: day('2026-03-02') }],
          ['followUp', { finding: 'broken again', on: day('2026-05-02') }],
        ],
      ],
      [
        id,
        option,
        'inferred, with no weight reported before',
        [
          ['treatment', { option: idOf<OptionId>('cast-nwb'), on: day('2026-03-01') }, REPORTED],
          ['treatment', { option, on: day('2026-03-02') }, INFERRED],
        ],
      ],
    ]),
  );
  it('is neither as pain allows nor a share, for any injury and treatment', () => {
    for (const [injury, option, how, stated] of cases) {
      const lines = toPatient(explained(caseOf(['injury', idOf<InjuryId>(injury)], ['massKg', 80], ...stated)));
      expect(lines.length, `${injury}, ${option}, ${how}`).toBeGreaterThan(1);
      for (const line of lines) {
        expect(line, `${injury}, ${option}, ${how}`).not.toMatch(PATIENT);
        expect(line, `${injury}, ${option}, ${how}`).not.toMatch(/(?<!\d)(20|50) ?%|expect about/);
      }
    }
  }, 240_000);

  const ofTwo = (...stated: readonly Stated[]) =>
    explained(caseOf(['injury', idOf<InjuryId>('mt5-metaphyseal')], ['massKg', 80], ...stated));
  const on = (option: string, date: string) => ({ option: idOf<OptionId>(option), on: day(date) });

  it('a confirmed treatment without weight goes before a later report, and the day goes with it', () => {
    const explanation = ofTwo(
      ['treatment', on('cast-nwb', '2026-10-20')],
      ['treatment', on('boot', '2026-10-25'), REPORTED],
    );
    expect([explanation.option, explanation.start?.date]).toEqual(['cast-nwb', '2026-10-20']);
    expect(today(explanation, 'stage.1.today')?.share?.lowHigh).toEqual([0, 0]);
    const [lead] = findingsOf(explanation, 'options');
    expect(lead).toMatchObject({ depth: 'sentence', message: { args: { of: { value: { option: 'cast-nwb' } } } } });
  });

  it('a confirmed treatment with weight waits where a later report allows less', () => {
    const explanation = ofTwo(
      ['treatment', on('boot', '2026-10-20')],
      ['treatment', on('screw', '2026-10-25'), REPORTED],
    );
    expect(today(explanation, 'stage.1.today')).toMatchObject({ treated: false, share: null });
    expect(toPatient(explanation).join(' ')).not.toMatch(/as pain allows/);
  });

  it('a later confirmed treatment, and one reported after a break anew, are in force', () => {
    const later = ofTwo(['treatment', on('cast-nwb', '2026-10-20')], ['treatment', on('boot', '2026-11-20')]);
    expect(later.option).toBe('boot');
    expect(toPatient(later)[0]).toMatch(/as pain allows/);
    const anew = ofTwo(
      ['treatment', on('boot', '2026-09-01')],
      ['followUp', { finding: 'broken again', on: day('2026-10-01') }],
      ['treatment', on('screw', '2026-10-05'), REPORTED],
    );
    expect(anew.option).toBe('screw');
    expect(anew.start?.date).toBe('2026-10-05');
  });
});

describe('what stands in a stage', () => {
  const explanation = explained(demoOnDefaultFoot('handball-zone-2'));
  const back = findingsOf(explanation, 'back');

  it('has exercises, criteria, what sends back, and the sheets of this injury and treatment only', () => {
    for (let number = 1; number <= 7; number += 1) {
      const of = (part: string) => back.filter((f) => f.id.startsWith(`back.stage.${number}.${part}.`)).length;
      expect(of('exercise'), `exercises of ${number}`).toBeGreaterThanOrEqual(3);
      expect(of('exercise')).toBeLessThanOrEqual(5);
      expect(of('back'), `what sends back from ${number}`).toBeGreaterThan(0);
      expect(of('opens') > 0, `criteria of ${number}`).toBe(number < 7);
    }
    const sheets = back.flatMap((f) => (f.message.id === 'stageSheet' ? [f.message.args.sheet] : []));
    expect(sheets.length).toBeGreaterThan(5);
    for (const id of sheets) {
      const sheet = content.stageSheets.find((each) => each.id === id);
      expect(sheet?.options).toContain('screw');
      expect(sheet?.injuries).toContain('mt5-metaphyseal');
    }
  });

  it('leaves out what was published of another treatment', () => {
    const driving = back.filter((f) => f.id.startsWith('back.stage.1.daily.driving'));
    const sources = driving.flatMap((f) => f.basis.sources.map(({ source }) => source));
    expect(sources).toContain('braking-2010');
    expect(sources).not.toContain('shahid-2013');
  });

  it('counts the dangers of this treatment, and no clots found by scanning beside those noticed', () => {
    const dangers = back.filter((f) => f.id.startsWith('back.danger.'));
    const of = (caution: string) => dangers.filter((f) => f.id.startsWith(`back.danger.${caution}.`)).length;
    expect(of('clot-leg')).toBeGreaterThan(2);
    expect(of('wound-after-surgery')).toBeGreaterThan(0);
    expect(of('heel-wound')).toBe(0);
    for (const { id, message } of dangers)
      if (message.id === 'contentText')
        expect(
          plainText(wordFinding(content, explanation, { ...dangers[0], id, message } as never, 'patient')),
        ).not.toMatch(/scan/);
  });
});

describe('what that weight does to the bone', () => {
  const handball = demoOnDefaultFoot('handball-zone-2');

  it('waits for the draws, and has nothing to tell of no weight', () => {
    const plain = explained(handball);
    expect(awaitsBands(plain)).toBe(true);
    expect(findingNamed(plain, 'back.stage.2.loadPending')).toBeDefined();
    expect(findingNamed(plain, 'back.stage.1.noLoad')).toBeDefined();
    expect(findingNamed(plain, 'back.stage.1.loadPending')).toBeUndefined();
  });

  const banded = explained(handball, {}, { bands: 'all' });
  const load = (id: string) => {
    const message = findingNamed(banded, `back.stage.${id}`)?.message;
    if (message?.id !== 'stageLoad') throw new Error(`no load at ${id}`);
    return message.args;
  };

  it('is more with more weight, less in a boot than in a soft shoe, and silent on a sole at this ray', () => {
    const { low, high } = load('2.load.shoe');
    expect(low.ratio.value).toBeLessThan(high.ratio.value);
    expect(high.ratio.value).toBeLessThan(load('3.load.shoe').high.ratio.value);
    expect(load('3.load.boot').high.ratio.value).toBeLessThan(load('3.load.shoe').high.ratio.value);
    expect(load('2.load.stiffSole').speaks).toBe(false);
    expect(findingNamed(banded, 'back.stage.2.load.boot')?.confidence.level).toBe('uncertain');
  });

  it('runs every basis again to the stored message', () => {
    const stored: typeof banded = JSON.parse(JSON.stringify(banded));
    const added = findingsOf(stored, 'back').filter((f) => /^back\.(stage|danger)\./.test(f.id));
    expect(added.length).toBeGreaterThan(60);
    for (const { id, basis, message } of added) expect([id, rerun(basis, content, foot)]).toEqual([id, message]);
  }, 240_000);

  it('has no answer for a bone that the frame does not know', () => {
    const run = { foot: foot.parameters, bone: 'cuboid', massKg: 70, sMm: null, shares: [0.5] } as const;
    expect(shareLoadsFor(contextOf(content, foot), run)).toEqual([]);
  });
});

describe('people who put full weight on the foot at once', () => {
  const work = content.dailyLife.find(({ id }) => id === idOf('work'));
  const at = work?.says.findIndex(({ evidence }) => evidence.source === idOf('functional-2017')) ?? -1;

  it.each(['boot', 'cast-nwb', null])('are told of in no stage without the whole weight: %s', (option) => {
    const found = explained(
      option === null
        ? caseOf(
            ['bone', 'metatarsal5'],
            ['place', { by: 'region', region: idOf<RegionId>('mt5-zone-2') }],
            ['injury', idOf<InjuryId>('mt5-metaphyseal')],
          )
        : zone2(option),
    );
    const told = findingsOf(found, 'back').flatMap(({ id }) =>
      id.endsWith(`daily.work.${at + 1}`) ? [Number(/stage\.(\d)/.exec(id)?.[1])] : [],
    );
    expect(at).toBeGreaterThanOrEqual(0);
    expect(told.filter((stage) => stage < 3)).toEqual([]);
    if (option !== 'cast-nwb') expect(told.length).toBeGreaterThan(0);
  });
});
