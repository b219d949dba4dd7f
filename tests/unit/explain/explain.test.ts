import { describe, expect, it } from 'vitest';
import { emptyCase } from '../../../src/cases';
import { type BandsAsked, CONFIDENCES, EXPLANATION_VERSION } from '../../../src/explain';
import {
  type ActivityId,
  type CaseId,
  type InjuryId,
  idOf,
  type MechanismId,
  type OptionId,
  QUESTION_IDS,
  type RegionId,
} from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding } from '../../../src/wording';
import {
  caseOf,
  content,
  DEMOS,
  demoOnDefaultFoot,
  explained,
  findingNamed,
  findingsOf,
  REPORTED,
} from '../../tools/explained';

const zone = (n: 1 | 2 | 3) => ({ by: 'region', region: idOf<RegionId>(`mt5-zone-${n}`) }) as const;
const injury = (id: string) => idOf<InjuryId>(id);
const day = (text: string) => text as IsoDate;

describe.each(DEMOS)('demo %s', (name) => {
  const explanation = explained(demoOnDefaultFoot(name));

  it('answers the five questions, each with one sentence', () => {
    expect(explanation.version).toBe(EXPLANATION_VERSION);
    expect(explanation.questions.map((q) => q.id)).toEqual(QUESTION_IDS);
    for (const { findings } of explanation.questions)
      expect(findings.filter((f) => f.depth === 'sentence')).toHaveLength(1);
  });

  it('names each finding once and gives each a confidence out of five', () => {
    const all = explanation.questions.flatMap((q) => q.findings);
    expect(new Set(all.map((f) => f.id)).size).toBe(all.length);
    for (const f of all) expect(CONFIDENCES).toContain(f.confidence.level);
  });

  it('survives JSON unchanged', () => {
    expect(JSON.parse(JSON.stringify(explanation))).toEqual(explanation);
  });

  it('is the same when it is made again', () => {
    expect(explained(demoOnDefaultFoot(name))).toEqual(explanation);
  });

  it('says that it is a demo, and that nothing is a what-if', () => {
    expect(explanation.demo).toBe(true);
    expect(explanation.questions.flatMap((q) => q.findings).filter((f) => f.whatIf)).toEqual([]);
  });
});

describe('nothing stated', () => {
  const explanation = explained(emptyCase(idOf<CaseId>('empty')));

  it('marks no bone, no break and no side', () => {
    expect(explanation.bone).toBeNull();
    expect(explanation.breakAt).toBeNull();
    expect(explanation.side).toEqual({ state: 'notStated' });
    expect(explanation.stations).toBeNull();
    expect(explanation.feeding).toBeNull();
    expect(explanation.given).toBe('none');
  });

  it('says of every question that it is not known', () => {
    for (const { findings } of explanation.questions)
      expect(findings.find((f) => f.depth === 'sentence')?.confidence.level).toBe('unknown');
  });
});

describe('how', () => {
  const runner = caseOf(
    ['injury', injury('mt5-proximal-shaft')],
    ['mechanism', idOf<MechanismId>('repeated-load'), REPORTED],
    ['massKg', 66],
  );
  const against = (file = runner, bands: BandsAsked = 'ratio') =>
    findingNamed(explained(file, {}, { bands }), 'how.pullAgainstBreaks');
  /** The same load, said of a class whose breaks lie where the frame's plateau does not reach. */
  const elsewhere = caseOf(
    ['injury', injury('mt5-metaphyseal')],
    ['mechanism', idOf<MechanismId>('repeated-load'), REPORTED],
    ['massKg', 66],
  );

  it('compares the plateau of the model with where these breaks are found: another class turns the finding', () => {
    const sentence = (file: typeof runner): string => {
      const finding = against(file);
      if (finding === undefined) throw new Error('no comparison of the plateau');
      return plainText(wordFinding(content, explained(file), finding, 'patient'));
    };
    expect(against()?.message).toMatchObject({ id: 'pullAgrees', args: { occursRegion: 'mt5-zone-3' } });
    expect(against(elsewhere)?.message).toMatchObject({ id: 'pullSilent', args: { occursRegion: 'mt5-zone-2' } });
    // Where the theory has no place at all no draw is needed; where it has one, one run says nothing.
    expect(against(elsewhere, 'none')?.message).toMatchObject({ id: 'pullSilent', args: { beyond: null } });
    expect(against(runner, 'none')?.message).toMatchObject({ id: 'pullPending', args: { occursRegion: 'mt5-zone-3' } });
    expect(sentence(runner)).toMatch(/where (such breaks|breaks of this kind) are found/);
    // Their part is all hatched: neither agreement nor disagreement.
    expect(sentence(elsewhere)).toContain('has nothing to say');
  });

  it('takes a speed only in a task of which a source says what it does', () => {
    const pull = (activity: string) => {
      const file = caseOf(
        ['injury', injury('mt5-proximal-shaft')],
        ['mechanism', idOf<MechanismId>('repeated-load'), REPORTED],
        ['activity', idOf<ActivityId>(activity), REPORTED],
      );
      const finding = findingNamed(explained(file, { speed: 3.9 }), 'how.loadPull');
      if (finding === undefined) throw new Error('no run');
      return [(finding.basis.inputs as { speed: unknown }).speed, finding.whatIf];
    };
    expect(pull('running')).toEqual([3.9, true]);
    expect(pull('walking')).toEqual([null, false]);
  });

  it('says what a beam leaves out exactly when the two do not agree', () => {
    expect(findingNamed(explained(elsewhere), 'how.beamLeavesOut')).toBeDefined();
    expect(findingNamed(explained(runner, {}, { bands: 'ratio' }), 'how.beamLeavesOut')).toBeUndefined();
  });

  it('says which mass it took and whether anybody stated it', () => {
    expect(findingNamed(explained(runner), 'how.loadPull')?.message.args).toMatchObject({
      mass: { value: 66, unit: 'kg' },
      massAssumed: false,
    });
    const unstated = explained(
      caseOf(['injury', injury('mt5-proximal-shaft')], ['mechanism', idOf<MechanismId>('repeated-load')]),
    );
    expect(findingNamed(unstated, 'how.loadPull')?.message.args).toMatchObject({ massAssumed: true });
  });

  it('says that bands are still to come until they are asked for, and then what the runs agree on', () => {
    expect(findingNamed(explained(runner), 'how.loadPending')).toBeDefined();
    const banded = explained(runner, {}, { bands: 'all' });
    expect(findingNamed(banded, 'how.loadPending')).toBeUndefined();
    // Ten kilograms more on a body of 66: every force grows nearly in proportion.
    const mass = findingNamed(banded, 'how.contributor.bodyMass')?.message;
    expect(mass).toMatchObject({ id: 'contributor', args: { raises: true, agreed: { enough: true } } });
    const ratio = mass?.id === 'contributor' ? mass.args.ratio.value : Number.NaN;
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1 + (1.5 * 10) / 66);
    // Thousands of frames: seconds on a busy machine.
  }, 120_000);

  it('shows no stress where no model of ours applies, and says so', () => {
    const dancer = explained(
      caseOf(['injury', injury('mt5-spiral-shaft')], ['mechanism', idOf<MechanismId>('roll-over-pointed-foot')]),
    );
    expect(dancer.stations).toBeNull();
    expect(findingNamed(dancer, 'how.model')?.message).toMatchObject({
      id: 'modelMissing',
      args: { model: 'not modelled' },
    });
  });

  it('tells the usual ways when nobody stated one, without the stamp of a claim', () => {
    const headline = findingNamed(explained(caseOf(['injury', injury('mt5-metaphyseal')])), 'how.headline');
    expect(headline?.message.id).toBe('mechanismUsual');
  });
});

describe('why', () => {
  it('has no flow figure anywhere, only the four states', () => {
    const explanation = explained(caseOf(['place', zone(2)]));
    const leaves = findingNamed(explanation, 'why.breakLeaves')?.message;
    if (leaves?.id !== 'breakLeaves') throw new Error('no such finding');
    for (const part of leaves.args.parts) {
      expect(['asBefore', 'mainCut', 'borderOnly', 'none']).toContain(part.state);
      expect(Object.values(part).filter((value) => typeof value === 'number')).toEqual([]);
    }
  });
});

describe('options', () => {
  it('puts the trial that draws lots and the cohort that differs into one finding', () => {
    const disagree = findingNamed(
      explained(caseOf(['injury', injury('mt5-metaphyseal')])),
      'options.disagree',
    )?.message;
    if (disagree?.id !== 'studiesDisagree') throw new Error('no such finding');
    expect(disagree.args.apart.map((c) => c.trial)).toContain('mologne-2005');
    expect(disagree.args.alike.map((c) => c.trial)).toContain('kadiyala-2024');
  });

  it('keeps the arms of one study in one finding', () => {
    const trials = findingsOf(explained(caseOf(['injury', injury('mt5-metaphyseal')])), 'options').flatMap((f) =>
      f.message.id === 'trialArms' ? [f.message.args] : [],
    );
    expect(new Set(trials.map((t) => t.trial)).size).toBe(trials.length);
    expect(trials.find((t) => t.trial === 'mologne-2005')?.arms.length).toBeGreaterThan(1);
  });
});

describe('a screw', () => {
  const shown = (file: ReturnType<typeof caseOf>): number =>
    findingsOf(explained(file), 'options').filter((f) => f.shows.some((each) => each.kind === 'screw')).length;
  const hurt = ['injury', injury('mt5-metaphyseal')] as const;

  it('is shown where a claim says that it was put in', () => {
    expect(shown(caseOf(hurt, ['treatment', { option: idOf<OptionId>('screw') }]))).toBe(1);
    expect(shown(caseOf(hurt, ['treatment', { option: idOf<OptionId>('screw') }, REPORTED]))).toBe(1);
  });

  it('is not shown as an option that nobody chose', () => {
    expect(shown(caseOf(hurt))).toBe(0);
    expect(shown(caseOf(hurt, ['treatment', { option: idOf<OptionId>('boot') }]))).toBe(0);
  });
});

describe('back', () => {
  const screw = idOf<OptionId>('screw');

  it('gives weeks without dates until a day is known', () => {
    const explanation = explained(caseOf(['injury', injury('mt5-metaphyseal')], ['treatment', { option: screw }]));
    expect(findingNamed(explanation, 'back.headline')?.message.id).toBe('backRange');
    expect(findingNamed(explanation, 'back.dates')).toBeUndefined();
    expect(findingNamed(explanation, 'back.stage.1')?.message.args).toMatchObject({ dates: null });
  });

  it('counts from the day of treatment before the day of injury', () => {
    const explanation = explained(
      caseOf(
        ['injury', injury('mt5-metaphyseal')],
        ['injuryDate', day('2026-09-14')],
        ['treatment', { option: screw, on: day('2026-09-18') }],
      ),
    );
    expect(explanation.start).toEqual({ date: '2026-09-18', from: 'treatment' });
    // Not every study printed its quickest and slowest: no span of days is made of the averages.
    expect(findingNamed(explanation, 'back.dates')).toBeUndefined();
  });

  it('counts from no day when two are claimed', () => {
    const explanation = explained(
      caseOf(
        ['injury', injury('mt5-metaphyseal')],
        ['injuryDate', day('2026-07-06')],
        ['injuryDate', day('2026-08-17'), REPORTED],
      ),
    );
    expect(explanation.start).toBeNull();
    expect(findingNamed(explanation, 'back.injuryDate')?.message.id).toBe('contradiction');
  });

  it('never makes a range of two endpoints or two treatments', () => {
    for (const name of DEMOS)
      for (const f of findingsOf(explained(demoOnDefaultFoot(name)), 'back')) {
        if (f.message.id !== 'backRange') continue;
        const { arms, option, endpoint } = f.message.args;
        for (const arm of arms) expect([arm.option, arm.time?.endpoint]).toEqual([option, endpoint]);
      }
  });

  it('compares treatments at one endpoint when none is stated', () => {
    const m = findingNamed(explained(caseOf(['injury', injury('mt5-metaphyseal')])), 'back.headline')?.message;
    if (m?.id !== 'backDepends') throw new Error('no such finding');
    expect(m.args.ranges.length).toBeGreaterThan(1);
    for (const r of m.args.ranges) for (const arm of r.arms) expect(arm.time?.endpoint).toBe(m.args.endpoint);
  });
});
