/** Which code a case gets: by class and displacement, what the list offers, what is disputed, what broke anew. */
import { describe, expect, test } from 'vitest';
import { contentFiles } from '../../../src/cli/read-content';
import { compileContent } from '../../../src/content';
import { type InjuryId, idOf, type OptionId } from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding } from '../../../src/wording';
import {
  CONFIRMED,
  caseOf,
  content,
  explained,
  findingNamed,
  findingsOf,
  REPORTED,
  type Stated,
} from '../../tools/explained';

const LISFRANC: Stated = ['injury', idOf<InjuryId>('lisfranc')];
const SHAFT: Stated = ['injury', idOf<InjuryId>('mt5-spiral-shaft')];
const gap = (value: number): Stated => ['measure', { what: 'diastasis', value }];
const arch = (value: number): Stated => ['measure', { what: 'arch loss', value }];
const displaced = (is: boolean): Stated => ['displacement', { displaced: is }];
const coded = (...stated: readonly Stated[]) => {
  const explanation = explained(caseOf(['side', 'right'], ...stated));
  const found = findingsOf(explanation, 'where').filter(({ message }) => message.id === 'code');
  return found.map((finding) => {
    if (finding.message.id !== 'code') throw new Error('no code');
    const { texts, assumed } = finding.message.args;
    return { text: texts.join(' '), assumed, said: plainText(wordFinding(content, explanation, finding, 'study')) };
  });
};
const texts = (...stated: readonly Stated[]) => coded(...stated).map(({ text }) => text);

describe('a joint that came apart', () => {
  test('stage I, or not displaced: a sprain and nothing else', () => {
    expect(texts(LISFRANC, gap(0.5), arch(0))).toEqual(['S93.621A']);
    expect(texts(LISFRANC, displaced(false))).toEqual(['S93.621A']);
  });

  test('displaced, or a gap: the two that the list offers, and that it is one of two', () => {
    for (const stated of [displaced(true), gap(3), gap(7)]) {
      const codes = coded(LISFRANC, stated, arch(0));
      expect(codes.map(({ text }) => text)).toEqual(['S93.321A', 'S93.324A']);
      for (const { assumed, said } of codes) {
        expect(assumed).toContain('ofTwo');
        expect(said).toContain('one of the two');
      }
    }
  });

  test('neither stated, or displacement disputed: all of them, and that nothing chose', () => {
    for (const stated of [[LISFRANC], [LISFRANC, displaced(true), displaced(false)]] as const) {
      const codes = coded(...stated);
      expect(codes).toHaveLength(3);
      for (const { assumed } of codes) expect(assumed).toContain('open');
    }
  });

  test('a class that rests on what nobody stated is told with the code', () => {
    expect(coded(LISFRANC, gap(0.5))[0]?.assumed).toContain('classAssumed');
    expect(coded(LISFRANC, gap(0.5), arch(0))[0]?.assumed).not.toContain('classAssumed');
  });

  test('where a bone broke too its fracture is named, and not assembled', () => {
    const explanation = explained(caseOf(LISFRANC));
    const beside = findingNamed(explanation, 'where.codesBeside');
    if (beside === undefined) throw new Error('nothing beside');
    expect(plainText(wordFinding(content, explanation, beside, 'study'))).toMatch(/S92\.32-.*S92\.24-.*Not assembled/);
    expect(findingNamed(explained(caseOf(SHAFT)), 'where.codesBeside')).toBeUndefined();
  });

  test('a choice names only codes and classes of its injury', () => {
    const file = 'content/injuries/lisfranc.yaml';
    const files = contentFiles();
    const text = (files.get(file) ?? '').replace(
      'codes: [s93-62], classes: [stage-1]',
      'codes: [s92-35], classes: [no]',
    );
    const result = compileContent(files.set(file, text));
    expect(result.ok ? [] : result.problems.map(({ expected, got }) => `${expected}, got ${got}`)).toEqual([
      'one of its classes, got no',
      'one of its codes, got s92-35',
    ]);
  });
});

describe('a joint said to be in line with a gap measured', () => {
  const explanation = explained(caseOf(LISFRANC, displaced(false), gap(3), arch(0)));

  test('the clash is told to each reader, and nothing of it as sure', () => {
    const clash = findingNamed(explanation, 'where.gapAgainstWord');
    if (clash === undefined) throw new Error('no clash');
    expect(clash.confidence.level).toBe('uncertain');
    for (const reader of ['patient', 'broadcast', 'study'] as const)
      expect(plainText(wordFinding(content, explanation, clash, reader))).toContain('3 mm');
  });

  test('the code goes by the gap, and says so', () => {
    const codes = coded(LISFRANC, displaced(false), gap(3), arch(0));
    expect(codes.map(({ text }) => text)).toEqual(['S93.321A', 'S93.324A']);
    for (const { assumed } of codes) expect(assumed).toContain('gapFirst');
  });

  test('from 1 mm on, not below, and of no broken bone', () => {
    const clash = (...stated: readonly Stated[]) => findingNamed(explained(caseOf(...stated)), 'where.gapAgainstWord');
    expect(clash(LISFRANC, displaced(false), gap(1))).toBeDefined();
    expect(clash(LISFRANC, displaced(false), gap(0.9))).toBeUndefined();
    expect(clash(LISFRANC, displaced(true), gap(3))).toBeUndefined();
    expect(clash(LISFRANC, displaced(true), gap(0.9))).toBeDefined();
    expect(clash(SHAFT, displaced(false), gap(3))).toBeUndefined();
  });
});

test('broken again: nothing is assembled, and that a new break is coded anew', () => {
  const again: Stated = ['followUp', { finding: 'broken again', on: '2026-05-02' as never }];
  expect(texts(SHAFT, again)).toEqual([]);
  const explanation = explained(caseOf(SHAFT, again));
  const found = findingNamed(explanation, 'where.code');
  if (found === undefined) throw new Error('nothing said');
  expect(plainText(wordFinding(content, explanation, found, 'study'))).toMatch(/2 May 2026.*coded anew/);
});

describe('broken again, only reported', () => {
  const again: Stated = ['followUp', { finding: 'broken again', on: '2026-08-02' as IsoDate }, REPORTED];
  const late: Stated = ['followUp', { finding: 'delayed union', on: '2026-05-02' as IsoDate }];
  const beside = (...stated: readonly Stated[]): string => {
    const explanation = explained(caseOf(['side', 'right'], SHAFT, displaced(false), ...stated));
    const found = findingNamed(explanation, 'where.codeIfAgain');
    return found === undefined ? '' : plainText(wordFinding(content, explanation, found, 'study'));
  };

  test('the code of what is confirmed stays, and beside it stands what the report would change', () => {
    expect(texts(SHAFT, displaced(false), late, again)).toEqual(['S92.354G']);
    expect(texts(SHAFT, displaced(false), again)).toEqual(texts(SHAFT, displaced(false)));
    for (const stated of [[again], [late, again]] as const)
      expect(beside(...stated)).toMatch(
        /^Reported, not confirmed: broken again on 2 August 2026\. If that is right, .*coded anew/,
      );
  });

  test('confirmed, it stands alone; never reported, nothing is said of it', () => {
    const sure: Stated = ['followUp', { finding: 'broken again', on: '2026-08-02' as IsoDate }];
    expect(texts(SHAFT, displaced(false), late, sure)).toEqual([]);
    expect(beside(late, sure)).toBe('');
    expect(beside(late)).toBe('');
  });
});

describe('a later visit', () => {
  type Found = Extract<Stated, readonly ['followUp', ...unknown[]]>[1]['finding'];
  const found = (finding: Found, said = CONFIRMED, on = '2026-05-02'): Stated => [
    'followUp',
    { finding, on: on as IsoDate },
    said,
  ];
  const later = (...stated: readonly Stated[]) => coded(SHAFT, displaced(false), ...stated);

  test.each(['united', 'two cortices bridged'] as const)('%s, confirmed: usual healing alone', (finding) => {
    const [code] = later(found(finding));
    expect(code?.text).toBe('S92.354D');
    expect(code?.said).toContain('later visit, usual healing');
    expect(code?.said).not.toContain('G:');
  });

  test.each([
    ['delayed union', 'G'],
    ['nonunion', 'K'],
    ['malunion', 'P'],
  ] as const)('%s has a character of its own, as far as it is said', (finding, letter) => {
    expect(later(found(finding))[0]).toMatchObject({ text: `S92.354${letter}`, assumed: [] });
    const reported = later(found(finding, REPORTED))[0];
    expect(reported?.text).toBe(`S92.354${letter}`);
    expect(reported?.said).toContain('only reported');
  });

  test.each(['tender', 'not tender', 'line visible', 'walking without pain', 'training'] as const)(
    '%s says nothing of union: all three stand, with what tells them apart and who decides',
    (finding) => {
      const [code] = later(found(finding));
      expect(code?.text).toBe('S92.354D S92.354G S92.354K');
      expect(code?.said).toMatch(
        /S92\.354D, S92\.354G or S92\.354K .*nothing is stated\. D: .* G: .* K: .*whoever codes/,
      );
    },
  );

  test('healing that is only reported is no usual healing', () => {
    expect(later(found('united', REPORTED))[0]?.text).toBe('S92.354D S92.354G S92.354K');
  });

  test('the latest holds; of two confirmed of one day none does', () => {
    expect(later(found('nonunion'), found('united', CONFIRMED, '2026-08-01'))[0]?.text).toBe('S92.354D');
    const [code] = later(found('united'), found('nonunion'));
    expect(code?.text).toBe('S92.354D S92.354G S92.354K');
    expect(code?.said).toContain('Follow-ups differ');
  });

  test.each([
    ['united', 'nonunion', 'D', 'S92.354K (later visit, nonunion)'],
    ['delayed union', 'united', 'G', 'S92.354D (later visit, usual healing)'],
  ] as const)(
    '%s confirmed and %s reported: the code of what is confirmed, and what the report would make of it',
    (sure, told, letter, otherwise) => {
      const [code] = later(found(sure), found(told, REPORTED, '2026-08-01'));
      expect(code?.text).toBe(`S92.354${letter}`);
      expect(code?.said).toContain(`A report, not confirmed, says otherwise; if it is right: ${otherwise}.`);
      // What was only reported before it was confirmed otherwise says nothing any more, nor does a report that agrees.
      expect(later(found(told, REPORTED), found(sure, CONFIRMED, '2026-08-01'))[0]?.said).not.toContain(
        'if it is right',
      );
      expect(later(found(sure), found(sure, REPORTED, '2026-08-01'))[0]).toMatchObject({
        text: `S92.354${letter}`,
        assumed: [],
      });
    },
  );

  test('what was not there yet in an earlier follow-up denies nothing that a later one found', () => {
    const notYet = found('united', { ...CONFIRMED, status: 'ruledOut' } as never, '2026-05-02');
    expect(later(notYet, found('united', CONFIRMED, '2026-08-01'))[0]?.text).toBe('S92.354D');
    const notLater = found('united', { ...CONFIRMED, status: 'ruledOut' } as never, '2026-08-01');
    expect(later(found('united'), notLater)[0]?.text).toBe('S92.354D S92.354G S92.354K');
  });

  test('of a stress fracture as of a break; of a joint the list knows the later visit alone', () => {
    const stress: Stated = ['injury', idOf<InjuryId>('mt5-proximal-shaft')];
    expect(texts(stress, found('tender'))[0]).toBe('M84.374D M84.374G M84.374K');
    const [joint] = coded(LISFRANC, displaced(false), found('tender'));
    expect(joint?.text).toBe('S93.621D');
    expect(joint?.said).not.toContain('heals');
  });
});

describe('delayed union and nonunion', () => {
  const on = (date: string) => date as IsoDate;
  const treated: Stated = ['treatment', { option: idOf<OptionId>('boot'), on: on('2026-01-10') }];
  const case_ = (...stated: readonly Stated[]) => explained(caseOf(SHAFT, ['side', 'right'], treated, ...stated));
  const nonunion: Stated = ['followUp', { finding: 'nonunion', on: on('2026-07-10') }];

  test('lead question 5, and no day is counted from the weeks of others', () => {
    const back = findingsOf(case_(nonunion), 'back');
    expect(back.filter(({ depth }) => depth === 'sentence').map(({ message }) => message.id)).toEqual(['healsSlowly']);
    expect(back.some(({ message }) => message.id === 'backDates')).toBe(false);
  });

  test('lead though a report says otherwise later: only what is confirmed takes them back', () => {
    const report: Stated = ['followUp', { finding: 'united', on: on('2026-09-10') }, REPORTED];
    const leads = (...stated: readonly Stated[]) =>
      findingsOf(case_(...stated), 'back').flatMap(({ depth, message }) => (depth === 'sentence' ? [message.id] : []));
    expect(leads(nonunion, report)).toEqual(['healsSlowly']);
    const confirmed: Stated = ['followUp', { finding: 'united', on: on('2026-09-10') }];
    expect(leads(nonunion, report, confirmed)).not.toContain('healsSlowly');
    // Two of one day: the worse stands.
    const sameDay: Stated = ['followUp', { finding: 'united', on: on('2026-07-10') }];
    expect(leads(nonunion, sameDay)).toEqual(['healsSlowly']);
  });

  test('are told as reported where nobody confirmed them, and no longer after a later union', () => {
    const [lead] = findingsOf(case_([...nonunion.slice(0, 2), REPORTED] as unknown as Stated), 'back');
    expect(lead?.confidence.level).toBe('reported');
    const united: Stated = ['followUp', { finding: 'united', on: on('2026-09-10') }];
    expect(findingNamed(case_(nonunion, united), 'back.healsSlowly')).toBeUndefined();
  });
});

describe('somebody who still grows', () => {
  const named = (...stated: readonly Stated[]) => findingNamed(explained(caseOf(...stated)), 'where.codeOfGrowing');
  const HEEL: Stated = ['injury', idOf<InjuryId>('calcaneus-intra-articular')];

  test.each([
    [SHAFT, 'under 12', /S99\.10- \(Unspecified physeal fracture of metatarsal\), S99\.11- to S99\.14- .*S99\.19-/],
    [HEEL, '12-17', /S99\.00- .*calcaneus.*whoever reads the film and codes/],
  ] as const)(
    'is told in study words that breaks through a growth plate have codes of their own',
    (what, age, told) => {
      const explanation = explained(caseOf(what, ['ageBand', age]));
      const found = findingNamed(explanation, 'where.codeOfGrowing');
      expect(found?.readers).toEqual(['study']);
      expect(found?.basis.sources).toContainEqual({ source: 'icd10cm-2026', mark: 'seen' });
      if (found === undefined) throw new Error('not told');
      expect(plainText(wordFinding(content, explanation, found, 'study'))).toMatch(told);
    },
  );

  test('also where one of two ages is so young; not of adults, of no age, or of a joint', () => {
    expect(named(SHAFT, ['ageBand', '12-17', REPORTED], ['ageBand', '18-34', REPORTED])).toBeDefined();
    expect(named(SHAFT, ['ageBand', '18-34'])).toBeUndefined();
    expect(named(SHAFT)).toBeUndefined();
    expect(named(LISFRANC, ['ageBand', '12-17'])).toBeUndefined();
  });
});

test('claims that differ are told as disputed, and not as not stated', () => {
  const [code] = coded(SHAFT, ['side', 'left', REPORTED], displaced(true), displaced(false));
  expect(code?.text).toBe('S92.353A');
  expect(code?.assumed).toEqual(['sideDisputed', 'displacementDisputed', 'closed']);
  expect(code?.said).toMatch(/side is disputed.*displacement is disputed/);
  expect(code?.said).not.toMatch(/side not stated has|displacement not stated is/);
});

describe('what a class rests on', () => {
  const classed = (...stated: readonly Stated[]) =>
    findingsOf(explained(caseOf(LISFRANC, ...stated)), 'where').flatMap(({ message }) =>
      message.id === 'computedClass' ? [message.args] : [],
    );

  test('an assumption confirms nothing: the class is inferred', () => {
    expect(classed(['measure', { what: 'diastasis', value: 3 }, CONFIRMED])[0]?.claim.status).toBe('inferred');
    expect(classed(gap(3), arch(0))[0]?.claim.status).toBe('confirmed');
  });

  test('a gap just under a border is not rounded across it, and is told as given', () => {
    const explanation = explained(caseOf(LISFRANC, gap(4.96), arch(0)));
    expect(classed(gap(4.96), arch(0))).toMatchObject([{ index: 1, onBorder: false }]);
    const told = findingsOf(explanation, 'where').map((f) =>
      plainText(wordFinding(content, explanation, f, 'patient')),
    );
    expect(told.some((text) => text.includes('4.96 mm'))).toBe(true);
  });
});

describe('a code is as sure as the least sure of what it rests on', () => {
  const FOUND: Stated = ['followUp', { finding: 'united', on: '2026-05-02' as IsoDate }, REPORTED];
  const codeOf = (...stated: readonly Stated[]) => {
    const explanation = explained(caseOf(...stated));
    const finding = findingNamed(explanation, 'where.code');
    if (finding?.message.id !== 'code') throw new Error('no code');
    const sentence = wordFinding(content, explanation, finding, 'study');
    return { finding, args: finding.message.args, said: plainText(sentence), stamp: sentence.stamp };
  };
  const told = ([subject, value]: Stated): Stated => [subject, value, REPORTED] as unknown as Stated;
  const ALL: readonly Stated[] = [SHAFT, ['side', 'right'], displaced(false)];

  test('all of it only reported: hedge, stamp, confidence and all claims behind it', () => {
    const { finding, said, stamp } = codeOf(...ALL.map((each) => told(each)), FOUND);
    expect(said).toMatch(/^If the reports are right: ICD-10-CM S92\.354D, S92\.354G or S92\.354K /);
    expect(said).toContain('Not confirmed: the class, displacement, the side and the follow-ups.');
    expect(stamp).toBe('reported');
    expect(finding.confidence).toEqual({ level: 'reported', reason: { by: 'claim', status: 'reported' } });
    expect(finding.basis.claims).toHaveLength(4);
  });

  test('all of it confirmed: neither', () => {
    const { said, stamp, args } = codeOf(...ALL);
    expect(said).toMatch(/^ICD-10-CM S92\.354A /);
    expect(said).not.toContain('onfirm');
    expect(stamp).toBe('confirmed');
    expect(args).toMatchObject({ notConfirmed: [], unlessConfirmed: null });
  });

  test.each([
    [0, 'class', 'the class'],
    [1, 'side', 'the side'],
    [2, 'displacement', 'displacement'],
  ] as const)('one claim that is only reported is enough, and which it is is said: %s', (at, part, words) => {
    const { said, stamp, args } = codeOf(...ALL.map((each, i) => (i === at ? told(each) : each)));
    expect(args.notConfirmed).toEqual([part]);
    expect(stamp).toBe('reported');
    expect(said).toMatch(/^If the reports are right: /);
    expect(said).toContain(`Not confirmed: ${words}.`);
  });

  test('not displaced that is only reported turns no character silently: what the list gives without it stands beside', () => {
    const { said } = codeOf(SHAFT, ['side', 'right'], told(displaced(false)));
    expect(said).toMatch(/^If the reports are right: ICD-10-CM S92\.354A .*nobody confirms .*gives S92\.351A\./);
    expect(codeOf(SHAFT, ['side', 'right'], told(displaced(true))).args.unlessConfirmed).toBeNull();
  });

  test('a class that follows from the place is inferred, and its code no surer', () => {
    const zone: Stated = ['place', { by: 'region', region: 'mt5-zone-1' as never }];
    const { said, stamp } = codeOf(['bone', 'metatarsal5' as never], zone, ['side', 'right'], displaced(false));
    expect(stamp).toBe('inferred');
    expect(said).toMatch(/^If what is inferred here is right: /);
  });

  test('displacement does not count where the code says nothing of it', () => {
    const stress: Stated = ['injury', idOf<InjuryId>('mt2-base-stress')];
    expect(codeOf(stress, ['side', 'right'], told(displaced(false))).stamp).toBe('confirmed');
  });

  test('what was measured counts where the class decides', () => {
    const { args } = codeOf(LISFRANC, ['side', 'right'], told(gap(3)), arch(0));
    expect(args.notConfirmed).toEqual(['measures']);
    expect(args.claim.status).toBe('reported');
  });

  test('a later visit is as sure as the surest follow-up that tells of one', () => {
    const tender: Stated = ['followUp', { finding: 'tender', on: '2026-05-02' as IsoDate }];
    expect(codeOf(...ALL, tender).stamp).toBe('confirmed');
    expect(codeOf(...ALL, told(tender)).args.notConfirmed).toEqual(['followUps']);
  });

  test('a what-if rests on no report, and has no stamp', () => {
    const place = { by: 'region', region: 'mt5-zone-1' as never } as const;
    const explanation = explained(caseOf(told(displaced(false))), { place });
    const finding = findingNamed(explanation, 'where.code');
    if (finding === undefined) throw new Error('no code');
    const sentence = wordFinding(content, explanation, finding, 'study');
    expect(sentence).toMatchObject({ whatIf: true, stamp: null });
    expect(plainText(sentence)).not.toMatch(/reports are right|inferred here|nobody confirms/);
  });

  test.each(['alsoNumbered', 'codeOfGrowing'])('what else follows of a class rests on its claim: %s', (id) => {
    const file = caseOf(told(SHAFT), ['ageBand', '12-17']);
    const finding = findingNamed(explained(file), `where.${id}`);
    const claim = file.claims.find(({ subject }) => subject === 'injury');
    expect(finding?.basis.claims).toContain(claim?.id);
    expect(['reported', 'uncertain']).toContain(finding?.confidence.level);
  });

  test('a report takes back nothing that is confirmed, neither a gap nor the word that the joint is in line', () => {
    const codesOf = (...stated: readonly Stated[]) =>
      coded(LISFRANC, ...stated, arch(0)).map(({ text, assumed }) => ({
        text,
        gapFirst: assumed.includes('gapFirst'),
      }));
    expect(codesOf(displaced(false), told(gap(3)))).toEqual([{ text: 'S93.621A', gapFirst: false }]);
    expect(codesOf(told(displaced(true)), gap(0.5))).toEqual([{ text: 'S93.621A', gapFirst: false }]);
    expect(codesOf(told(displaced(false)), gap(3)).map(({ text }) => text)).toEqual(['S93.321A', 'S93.324A']);
    const { stamp, args } = codeOf(LISFRANC, ['side', 'right'], displaced(false), told(gap(3)), arch(0));
    expect({ stamp, notConfirmed: args.notConfirmed }).toEqual({ stamp: 'confirmed', notConfirmed: [] });
  });

  test('a malunion that is only reported has its letter told with the others', () => {
    const malunion: Stated = ['followUp', { finding: 'malunion', on: '2026-05-02' as IsoDate }, REPORTED];
    expect(codeOf(...ALL, malunion).said).toMatch(
      /S92\.354P .*only reported\. D: .*G: .*K: .*P: it has united out of place/,
    );
    expect(codeOf(...ALL, FOUND).said).not.toContain('P:');
  });
});
