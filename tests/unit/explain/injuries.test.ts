/** Every injury done fully, explained and worded for each reader: nothing throws, nobody is told what they have, joints are not broken. */
import { describe, expect, it } from 'vitest';
import {
  type BoneId,
  DIRECTIONS,
  type InjuryId,
  idOf,
  type MechanismId,
  ONSETS,
  type OptionId,
  QUESTION_IDS,
  READERS,
  type RegionId,
} from '../../../src/ids';
import { cautionsFor, describePicture, findingsFor, plainText, wordFinding, wordQuestion } from '../../../src/wording';
import { CONFIRMED, caseOf, content, explained, findingNamed, REPORTED, type Stated } from '../../tools/explained';

const injury = (id: string) => idOf<InjuryId>(id);
const region = (id: string) => ({ by: 'region', region: idOf<RegionId>(id) }) as const;
const treated = (option: string, on = '2026-03-02' as never): Stated => [
  'treatment',
  { option: idOf<OptionId>(option), on },
];
const saidOf = (explanation: ReturnType<typeof explained>, id: string, reader: (typeof READERS)[number]): string => {
  const finding = findingNamed(explanation, id);
  if (finding === undefined) throw new Error(`no finding ${id}`);
  return plainText(wordFinding(content, explanation, finding, reader));
};

const CASES = content.injuries.flatMap(({ id, options }) => [
  [id, 'not treated', caseOf(['injury', id])] as const,
  ...options.map((option) => [id, option, caseOf(['injury', id, REPORTED], treated(option))] as const),
]);

describe.each(CASES)('%s, %s', (id, _option, file) => {
  const explanation = explained(file);
  it.each(READERS)('is told whole to %s, and nobody is told what they have', (reader) => {
    for (const question of QUESTION_IDS) {
      expect(plainText(wordQuestion(content, explanation, question, reader).sentence)).not.toBe('');
      expect(describePicture(content, explanation, question, reader).short).not.toBe('');
      for (const finding of findingsFor(explanation, question, reader)) {
        const text = plainText(wordFinding(content, explanation, finding, reader));
        expect(text, finding.id).toMatch(/^[A-Z0-9[“"].*[.!?)]$/s);
        expect(text, finding.id).not.toMatch(/[{}]|undefined|NaN|\bnull\b|\[object|\.\.|,,| {2}/);
        expect(text, finding.id).not.toMatch(/(?<!do )\byou have\b/i);
      }
    }
    for (const { what } of cautionsFor(content, explanation, reader))
      expect(what[reader]).not.toMatch(/(?<!do )\byou have\b/i);
  });

  it('stands where it lives, with what it can be taken for and how to tell', () => {
    const record = content.injuries.find((i) => i.id === id);
    expect(explanation.part?.region).toBe(record?.region);
    expect(record?.tellApart.length).toBeGreaterThanOrEqual(2);
    expect(record?.findBy.length).toBeGreaterThanOrEqual(5);
    for (const i of record?.tellApart.keys() ?? [])
      expect(saidOf(explanation, `where.tellApart.${i + 1}`, 'patient')).toMatch(/^Can be taken for /);
  });
});

describe('a joint that came apart', () => {
  const explanation = explained(
    caseOf(['injury', injury('lisfranc')], ['displacement', { displaced: true, mm: 3 }], treated('joint-fixation')),
  );
  it('draws no line of a break, and says that a joint is hurt', () => {
    expect(explanation.breakAt).toBeNull();
    expect(explanation.part).toMatchObject({ region: 'mt2-base', status: 'confirmed' });
    expect(saidOf(explanation, 'where.headline', 'patient')).toBe(
      'The joint is hurt at the ankle end of the second long bone.',
    );
    expect(saidOf(explanation, 'where.headline', 'study')).toBe(
      'Confirmed: the joint is injured at the base of the second metatarsal.',
    );
    for (const { findings } of explanation.questions)
      for (const { shows } of findings)
        expect(shows.some(({ kind }) => kind === 'break' || kind === 'screw')).toBe(false);
  });

  it.each(['patient', 'broadcast'] as const)('never says to %s that a bone is broken', (reader) => {
    for (const question of ['where', 'how', 'why'] as const)
      for (const finding of findingsFor(explanation, question, reader)) {
        const at = finding.message.id === 'contentText' ? finding.message.args.at.kind : null;
        // What it can be taken for may be a break, and a chip may come off with the ligament.
        if (at === 'tellApart' || at === 'injury') continue;
        expect(plainText(wordFinding(content, explanation, finding, reader)), finding.id).not.toMatch(
          /\bbroken?\b|\bbreak\b/i,
        );
      }
    expect(saidOf(explanation, 'where.displacement', reader)).toMatch(/bones of the joint have moved apart by 3 mm/);
  });

  it('has no stress, no pull of a bone and no load of a stage: the frame says nothing of ligaments', () => {
    expect(explanation.loads).toBeNull();
    const ids = explanation.questions.flatMap(({ findings }) => findings.map(({ id }) => String(id)));
    expect(ids.filter((id) => /support\.|\.load\.|noLoad|loadPending/.test(id))).toEqual([]);
    expect(saidOf(explanation, 'how.model', 'patient')).toMatch(/no stress is drawn/);
  });

  it('is found on any bone that takes part in it', () => {
    const inner = explained(caseOf(['bone', 'cuneiformMedial'], ['injury', injury('lisfranc')]));
    expect([inner.bone, inner.injury, inner.breakAt]).toEqual(['cuneiformMedial', 'lisfranc', null]);
    const third = explained(caseOf(['bone', 'metatarsal3'], ['injury', injury('lisfranc')]));
    expect(third.part?.region).toBe('mt3-base');
    const both = explained(
      caseOf(['bone', 'cuneiformMedial'], ['injury', injury('lisfranc')], ['place', region('mt2-base')]),
    );
    expect([both.bone, both.part?.region]).toEqual(['metatarsal2', 'mt2-base']);
  });
});

describe('a class of several bones', () => {
  it.each([
    ['metatarsal2', 'mt2-shaft'],
    ['metatarsal3', 'mt3-shaft'],
    ['metatarsal4', 'mt4-shaft'],
  ] as const)('lives in the shaft of %s, and is coded as a stress fracture of the foot alone', (bone: BoneId, home) => {
    const explanation = explained(
      caseOf(
        ['bone', bone],
        ['injury', injury('metatarsal-shaft-stress')],
        ['mechanism', idOf<MechanismId>('repeated-load')],
      ),
    );
    expect([explanation.bone, explanation.breakAt?.region, explanation.injury]).toEqual([
      bone,
      home,
      'metatarsal-shaft-stress',
    ]);
    const codes = explanation.questions
      .flatMap(({ findings }) => findings)
      .flatMap(({ message }) => (message.id === 'code' ? message.args.texts : []));
    expect(codes.map((text) => text.slice(0, 6))).toEqual(['M84.37']);
    expect(findingNamed(explanation, 'where.placeAgainstClass')).toBeUndefined();
    // Where the published breaks of the second are compared, the same part of this bone stands for them.
    expect(findingNamed(explanation, 'how.pullAgainstBreaks')?.message.args).toMatchObject({ occursRegion: home });
  });

  it('does not live on a bone that is none of its own', () => {
    const clash = explained(caseOf(['bone', 'metatarsal1'], ['injury', injury('metatarsal-shaft-stress')]));
    expect(findingNamed(clash, 'where.headline')?.message.id).toBe('boneClash');
  });
});

describe('a class from the place', () => {
  it('follows where the way of breaking is its own', () => {
    const base = (way: string) =>
      explained(caseOf(['place', region('mt2-base')], ['mechanism', idOf<MechanismId>(way)])).injury;
    expect(base('repeated-load')).toBe('mt2-base-stress');
    expect(base('forefoot-twist')).toBe('lisfranc');
  });

  it('does not follow where a bone breaks in other ways too, and that is said', () => {
    const explanation = explained(caseOf(['place', region('mt3-shaft')]));
    expect(explanation.injury).toBeNull();
    expect(saidOf(explanation, 'where.classOpen', 'patient')).toMatch(/does not settle it/);
    const blow = explained(caseOf(['place', region('mt3-shaft')], ['mechanism', idOf<MechanismId>('direct-blow')]));
    expect(blow.injury).toBeNull();
  });

  describe.each(content.injuries.map((record) => [record.id, record] as const))('%s', (id, record) => {
    const { mechanisms, fits, bone } = record;
    const [way] = mechanisms;
    const at = (...more: readonly Stated[]): readonly Stated[] => [
      ['bone', bone],
      ['place', region(record.region)],
      ...(way === undefined ? [] : ([['mechanism', way]] as const)),
      ...more,
    ];
    const ways = content.mechanisms.map((each) => each.id).filter((each) => !mechanisms.includes(each));
    const elsewhere = content.injuries.filter((i) => i.region === record.region && i.id !== id);
    const wrong: readonly Stated[] = [
      ...ONSETS.filter((each) => !fits.onsets.includes(each)).map((each): Stated => ['onset', each]),
      ...DIRECTIONS.filter((each) => fits.directions?.includes(each) === false).map(
        (each): Stated => ['direction', each],
      ),
    ];

    it('follows from its place and way of breaking with each onset and direction that fit it', () => {
      expect(explained(caseOf(...at())).injury).toBe(id);
      for (const onset of fits.onsets) expect(explained(caseOf(...at(['onset', onset]))).injury, onset).toBe(id);
      for (const direction of fits.directions ?? [])
        expect(explained(caseOf(...at(['direction', direction]))).injury, direction).toBe(id);
    });

    it('does not follow against a stated onset or direction, confirmed or reported, nor where claims differ', () => {
      expect(wrong.length).toBeGreaterThan(0);
      for (const [subject, value] of wrong)
        for (const said of [CONFIRMED, REPORTED]) {
          const explanation = explained(caseOf(...at([subject, value, said] as Stated)));
          expect(explanation.injury, String(value)).toBeNull();
          expect(saidOf(explanation, 'where.classOpen', 'patient')).toMatch(/does not settle it|More than one kind/);
        }
      const [first] = fits.onsets;
      const other = ONSETS.find((each) => !fits.onsets.includes(each));
      if (first === undefined || other === undefined) throw new Error('every onset fits');
      expect(explained(caseOf(...at(['onset', first], ['onset', other, REPORTED]))).injury).toBeNull();
    });

    it('does not follow against a stated way of breaking', () => {
      for (const mechanism of ways) {
        const found = explained(caseOf(['bone', bone], ['place', region(record.region)], ['mechanism', mechanism]));
        const others = elsewhere.filter((i) => i.mechanisms.includes(mechanism));
        expect(found.injury, mechanism).toBe(others.length === 1 ? others[0]?.id : null);
      }
    });
  });

  it('draws no line where it may be a joint, unless the line is stated', () => {
    expect(explained(caseOf(['place', region('mt2-base')])).breakAt).toBeNull();
    expect(explained(caseOf(['place', region('mt2-base')], ['direction', 'transverse'])).breakAt?.region).toBe(
      'mt2-base',
    );
  });
});

describe('headlines of the new injuries', () => {
  it.each([
    ['metatarsal-shaft-stress', 'The shaft of the second long bone is broken.'],
    ['mt2-base-stress', 'The ankle end of the second long bone is broken.'],
    ['navicular-stress', 'The middle third of the inner midfoot bone is broken.'],
    ['calcaneus-intra-articular', 'The middle of the heel bone is broken.'],
  ])('%s', (id, told) => {
    expect(saidOf(explained(caseOf(['injury', injury(id)])), 'where.headline', 'patient')).toBe(told);
  });

  it('a crack is called a crack', () => {
    const explanation = explained(
      caseOf(['injury', injury('navicular-stress'), REPORTED], ['direction', 'incomplete']),
    );
    expect(saidOf(explanation, 'where.headline', 'broadcast')).toMatch(/is cracked/);
  });
});

describe('when to look again', () => {
  it('is told where a source says it', () => {
    const explanation = explained(caseOf(['injury', injury('navicular-stress')]));
    expect(saidOf(explanation, 'back.notSeen.2.again', 'patient')).toBe(
      'Was the first film clear, and it still hurts? It is looked at again after 2 to 3 weeks.',
    );
  });
});

describe('what belongs to one injury stays with it', () => {
  const told = (id: string, option: string): string => {
    const explanation = explained(caseOf(['injury', injury(id)], treated(option)));
    return READERS.flatMap((reader) => [
      ...QUESTION_IDS.flatMap((question) =>
        findingsFor(explanation, question, reader).map((f) => plainText(wordFinding(content, explanation, f, reader))),
      ),
      ...cautionsFor(content, explanation, reader).map(({ what }) => what[reader]),
    ]).join('\n');
  };
  it.each([
    ['metatarsal-shaft-stress', 'boot'],
    ['mt2-base-stress', 'cast-nwb'],
    ['lisfranc', 'joint-fixation'],
    ['navicular-stress', 'cross-screws'],
    ['calcaneus-intra-articular', 'heel-fixation'],
  ])('%s speaks of no zone and no outer edge', (id, option) => {
    const text = told(id, option);
    expect(text).not.toMatch(/\b(in|of) zones? [123]\b(?! breaks of the fifth)/);
    expect(text).not.toMatch(/outer edge of (your|the) foot gets sore/);
    expect(text).not.toMatch(/sural/i);
  });
  it('the wound of the heel is told after its operation alone', () => {
    expect(told('calcaneus-intra-articular', 'heel-fixation')).toMatch(/24\.9 %/);
    expect(told('calcaneus-intra-articular', 'heel-unloaded')).not.toMatch(/Call your surgeon today if the heel wound/);
  });
});
