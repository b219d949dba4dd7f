/** Cases that do not fit together, and cases that get worse: the explanation says so and draws nothing against a confirmed claim. */
import { describe, expect, it } from 'vitest';
import { newClaim, withClaim } from '../../../src/cases';
import type { CaseFile } from '../../../src/cases/schema';
import {
  DIRECTIONS,
  FILM_MEASURES,
  type FilmMeasure,
  type InjuryId,
  idOf,
  ONSETS,
  type OptionId,
  READERS,
  type Reader,
  type RegionId,
} from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { findingsFor, plainText, wordFinding, wordQuestion } from '../../../src/wording';
import {
  CONFIRMED,
  caseOf,
  content,
  demoCase,
  explained,
  findingNamed,
  findingsOf,
  REPORTED,
  type Stated,
} from '../../tools/explained';

const day = (text: string) => text as IsoDate;
const told = (file: CaseFile, id: string, reader: Reader = 'broadcast'): string => {
  const explanation = explained(file);
  const finding = findingNamed(explanation, id);
  return finding === undefined ? '' : plainText(wordFinding(content, explanation, finding, reader));
};

describe('a rumour against a scan', () => {
  const scanned = caseOf(['side', 'left', CONFIRMED], ['injury', idOf<InjuryId>('mt5-metaphyseal'), CONFIRMED]);
  const both = withClaim(scanned, newClaim(scanned, 'side', 'right', REPORTED));

  it('draws the confirmed side and still tells the disagreement', () => {
    expect(explained(both).side).toEqual({ state: 'stated', side: 'left', status: 'confirmed' });
    expect(findingNamed(explained(both), 'where.side')?.message.id).toBe('contradiction');
    expect(findingNamed(explained(both), 'where.sideDefault')).toBeUndefined();
  });

  it('draws no side when neither claim is confirmed', () => {
    const reported = caseOf(['side', 'left', REPORTED]);
    const disputed = withClaim(reported, newClaim(reported, 'side', 'right', REPORTED));
    expect(explained(disputed).side).toEqual({ state: 'contradiction' });
  });
});

describe('a bone that breaks again', () => {
  const before = demoCase('handball-zone-2');
  const again = (said: typeof CONFIRMED): CaseFile =>
    withClaim(before, newClaim(before, 'followUp', { finding: 'broken again', on: day('2026-11-05') }, said));

  it('heads the last question and ends the weeks counted before', () => {
    const explanation = explained(again(CONFIRMED));
    const sentences = findingsOf(explanation, 'back').filter((f) => f.depth === 'sentence');
    expect(sentences.map((f) => f.id)).toEqual(['back.brokenAgain']);
    expect(explanation.start).toBeNull();
    expect(findingNamed(explanation, 'back.dates')).toBeUndefined();
    expect(told(again(CONFIRMED), 'back.brokenAgain')).toMatch(/^The bone broke again on 5 November 2026/);
    for (const said of [CONFIRMED, REPORTED])
      expect(told(again(said), 'back.brokenAgain', 'patient'), said.status).toMatch(/have it seen today\.$/);
  });

  it('is hedged while it is only reported', () => {
    expect(told(again(REPORTED), 'back.brokenAgain')).toMatch(
      /^It is reported by the media, but not confirmed, that the bone broke again/,
    );
  });

  it('counts anew from a treatment that came after it', () => {
    const file = again(CONFIRMED);
    const option = explained(file).option;
    if (option === null) throw new Error('the demo case has a treatment');
    const treated = withClaim(file, newClaim(file, 'treatment', { option, on: day('2026-11-09') }, CONFIRMED));
    expect(explained(treated).start).toEqual({ date: '2026-11-09', from: 'treatment' });
    expect(findingNamed(explained(treated), 'back.brokenAgain')).toBeUndefined();
  });
});

describe('a bone and a class that cannot go together', () => {
  const file = caseOf(['bone', 'metatarsal2', CONFIRMED], ['injury', idOf<InjuryId>('mt5-metaphyseal'), CONFIRMED]);

  it('names no bone as hurt and says what does not fit', () => {
    const explanation = explained(file);
    expect(explanation.bone).toBeNull();
    expect(explanation.breakAt).toBeNull();
    expect(told(file, 'where.headline')).toBe(
      'What is stated does not fit together: one says the second metatarsal, another the fifth metatarsal.',
    );
  });
});

describe('a joint, its gap and what is said of it', () => {
  const joint = (mm: number, displaced: boolean, ...more: readonly Stated[]) =>
    explained(
      caseOf(
        ['injury', idOf<InjuryId>('lisfranc')],
        ['measure', { what: 'diastasis', value: mm }],
        ['displacement', { displaced, mm: displaced ? 3 : undefined }],
        ...more,
      ),
    );
  const classesIn = (explanation: ReturnType<typeof explained>) =>
    findingsOf(explanation, 'where').filter(({ message }) => message.id === 'computedClass');
  const GAPS = [0, 0.5, 0.99, 1, 3, 5, 8];

  it.each(GAPS.flatMap((mm) => [true, false].map((displaced) => [mm, displaced] as const)))(
    'with %s mm, displaced %s: the clash is told and no class with it, or the class alone',
    (mm, displaced) => {
      const explanation = joint(mm, displaced);
      const collides = mm >= 1 !== displaced;
      expect(findingNamed(explanation, 'where.gapAgainstWord') !== undefined).toBe(collides);
      expect(classesIn(explanation).length > 0).toBe(!collides);
      const weeks = findingsOf(explanation, 'back').filter(({ message }) => message.id === 'backClasses');
      expect(weeks.length > 0).toBe(!collides);
      expect(findingNamed(explanation, 'back.headline')?.message.id === 'backClash').toBe(collides);
    },
  );

  it('to the patient names neither a stage nor its weeks while it stands, treated or not', () => {
    const treated: Stated = ['treatment', { option: idOf<OptionId>('cast-nwb'), on: day('2026-03-02') }];
    for (const explanation of [joint(0, true), joint(0, true, treated)]) {
      const lines = (['where', 'back'] as const).flatMap((question) =>
        findingsFor(explanation, question, 'patient').map((f) =>
          plainText(wordFinding(content, explanation, f, 'patient')),
        ),
      );
      expect(lines.join('\n')).toMatch(/does not fit together/);
      expect(lines.join('\n')).not.toMatch(/stage I\b|about 4 weeks/i);
    }
  });

  it('two claims of one gap that differ are told as one disagreement with both values', () => {
    const explanation = explained(
      caseOf(
        ['injury', idOf<InjuryId>('lisfranc')],
        ['measure', { what: 'diastasis', value: 0 }],
        ['measure', { what: 'diastasis', value: 6 }, REPORTED],
        ['measure', { what: 'arch loss', value: 2 }],
      ),
    );
    const clash = findingNamed(explanation, 'where.measuresDisagree.diastasis');
    if (clash === undefined) throw new Error('no disagreement');
    expect(plainText(wordFinding(content, explanation, clash, 'patient'))).toMatch(
      /disagree.*0 mm \(confirmed\).*6 mm \(reported\)/,
    );
    const told = findingsOf(explanation, 'where').filter(({ message }) => message.id === 'claimStated');
    expect(told.filter(({ id }) => id.startsWith('where.measure.'))).toHaveLength(1);
  });
});

describe('a disputed gap of the joint', () => {
  const gap = (value: number, said = CONFIRMED): Stated => ['measure', { what: 'diastasis', value }, said];
  const joint = (...stated: readonly Stated[]) => explained(caseOf(['injury', idOf<InjuryId>('lisfranc')], ...stated));
  const lead = (explanation: ReturnType<typeof explained>, reader: (typeof READERS)[number]) =>
    plainText(wordQuestion(content, explanation, 'back', reader).sentence);

  it.each(READERS)('leads question 5 with both values, what each would be and what settles it, for %s', (reader) => {
    const explanation = joint(gap(1), gap(6, REPORTED));
    const said = lead(explanation, reader);
    expect(said).toMatch(
      /1 mm \(confirmed.*stage II, .*6 mm \(reported.*stage III, .*standing|1 mm .*6 mm .*while you stand/i,
    );
    expect(said).not.toMatch(/weeks? (on average|until)|\d+(\.\d)? weeks/);
    const { claims } = wordQuestion(content, explanation, 'back', reader);
    expect(claims.map(plainText).join('\n')).toMatch(/Stage I, no gap: about 4 weeks/);
  });

  it('leads so with a treatment too, and not where both claims say the same or none is of the gap', () => {
    const treated: Stated = ['treatment', { option: idOf<OptionId>('joint-fixation'), on: day('2026-03-02') }];
    const ids = (explanation: ReturnType<typeof explained>) =>
      findingsOf(explanation, 'back').flatMap(({ depth, message }) => (depth === 'sentence' ? [message.id] : []));
    expect(ids(joint(treated, gap(1), gap(6)))).toEqual(['classDisputed']);
    expect(ids(joint(gap(3), gap(3, REPORTED)))).toEqual(['backClasses']);
    expect(ids(joint())).toEqual(['backClasses']);
  });

  it('is no dispute of a bone whose studies count no classes', () => {
    const shaft = explained(caseOf(['injury', idOf<InjuryId>('mt5-spiral-shaft')], gap(1), gap(6)));
    expect(findingNamed(shaft, 'back.classDisputed')).toBeUndefined();
  });
});

describe('a stated class against what is stated beside it', () => {
  it.each(content.injuries.map((record) => [record.id, record] as const))(
    '%s: each onset and direction that it does not have is told as a disagreement, and no other',
    (id, { fits }) => {
      for (const value of ONSETS) {
        const explanation = explained(caseOf(['injury', id], ['onset', value]));
        const clash = findingNamed(explanation, 'where.onsetAgainstClass');
        expect(clash?.message.id === 'contradiction', value).toBe(!fits.onsets.includes(value));
      }
      for (const value of DIRECTIONS) {
        const explanation = explained(caseOf(['injury', id], ['direction', value, REPORTED]));
        const clash = findingNamed(explanation, 'where.directionAgainstClass');
        expect(clash?.message.id === 'contradiction', value).toBe(fits.directions?.includes(value) === false);
        if (clash !== undefined) expect(clash.confidence.level).toBe('uncertain');
      }
    },
  );
});

describe('pieces that stand apart, of a class whose break is a line', () => {
  const stress = content.injuries.filter(({ fits }) => fits.apartBelowMm !== undefined);
  const apart = (mm: number): readonly Stated[] => [
    ['displacement', { displaced: true, mm }],
    ['measure', { what: 'gap', value: mm }, REPORTED],
  ];
  const clashes = (...stated: readonly Stated[]) =>
    findingsOf(explained(caseOf(...stated)), 'where').filter(({ message }) => message.id === 'apartAgainstClass');

  it('are the stress fractures', () => {
    expect(stress.map(({ id }) => id).sort()).toEqual([
      'metatarsal-shaft-stress',
      'mt2-base-stress',
      'mt5-proximal-shaft',
      'navicular-stress',
    ]);
  });

  it.each(stress.map((record) => [record.id] as const))('%s: 8 mm is told as a clash, each claim once', (id) => {
    for (const stated of apart(8)) {
      const explanation = explained(caseOf(['injury', id], stated));
      const [clash, ...others] = findingsOf(explanation, 'where').filter((f) => f.message.id === 'apartAgainstClass');
      if (clash === undefined) throw new Error('no clash');
      expect(others).toEqual([]);
      expect(clash.basis.sources).toContainEqual({ source: null, mark: 'common practice' });
      expect(clash.confidence.level).toBe('uncertain');
      for (const reader of READERS) {
        const said = plainText(wordFinding(content, explanation, clash, reader));
        expect(said).toContain('8 mm');
        expect(said).toMatch(/fit/);
      }
    }
  });

  it('not under the limit, not of a crack that gave way at last, not of a fresh break', () => {
    for (const { id } of stress) for (const stated of apart(2.9)) expect(clashes(['injury', id], stated)).toEqual([]);
    const shaft = idOf<InjuryId>('metatarsal-shaft-stress');
    for (const stated of apart(8)) {
      expect(clashes(['injury', shaft], ['onset', 'acute on gradual'], stated)).toEqual([]);
      expect(clashes(['injury', idOf<InjuryId>('mt5-spiral-shaft')], stated)).toEqual([]);
    }
  });

  it('no such class is inferred from the place beside it', () => {
    const zone3: Stated = ['place', { by: 'region', region: idOf<RegionId>('mt5-zone-3') }];
    expect(explained(caseOf(zone3)).injury).toBe('mt5-proximal-shaft');
    for (const stated of apart(8)) expect(explained(caseOf(zone3, stated)).injury).toBeNull();
  });
});

describe('a measure of another injury', () => {
  const value = (what: FilmMeasure) => (what === 'fragments' ? 3 : 9);
  const asks = ({ classification }: (typeof content.injuries)[number], what: FilmMeasure) =>
    classification.some(({ rules = [] }) => rules.some((rule) => rule.by === 'measure' && rule.what === what));
  it.each(content.injuries.map((record) => [record.id, record] as const))(
    '%s: is said to be of the other, and never told as its own; its own measures are',
    (id, record) => {
      for (const what of FILM_MEASURES) {
        const explanation = explained(caseOf(['injury', id], ['measure', { what, value: value(what) }]));
        const lines = READERS.flatMap((reader) =>
          findingsFor(explanation, 'where', reader).flatMap((f) =>
            f.message.id === 'measureOfOther' ? [plainText(wordFinding(content, explanation, f, reader))] : [],
          ),
        );
        const own = findingsOf(explanation, 'where').filter(({ message }) => message.id === 'claimStated');
        const ofOther = ['Boehler angle', 'diastasis', 'arch loss', 'line depth'].includes(what) && !asks(record, what);
        expect(lines, what).toHaveLength(ofOther ? READERS.length : 0);
        expect(
          own.some((f) => f.id.startsWith('where.measure.')),
          what,
        ).toBe(!ofOther);
        for (const line of lines) expect(line).toMatch(/left out/i);
      }
    },
  );

  it('goes by the bone where no class is known', () => {
    const of = (bone: 'metatarsal5' | 'calcaneus') =>
      findingNamed(
        explained(caseOf(['bone', bone], ['measure', { what: 'Boehler angle', value: 12 }])),
        'where.measureOfOther.1',
      );
    expect(of('metatarsal5')).toBeDefined();
    expect(of('calcaneus')).toBeUndefined();
  });
});
