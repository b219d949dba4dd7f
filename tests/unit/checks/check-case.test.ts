import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boneAxis } from '../../../src/anatomy';
import { type CaseFile, readCase } from '../../../src/cases';
import { checkCase } from '../../../src/checks';
import { readContent } from '../../../src/cli/read-content';
import { modelFoot } from '../../tools/model-foot';

const content = readContent();
const foot = modelFoot();
const { lengthMm } = boneAxis(foot, 'metatarsal5');

const BONE = { subject: 'bone', value: 'metatarsal5' };
const CONFIRMED = { status: 'confirmed', source: { kind: 'imaging' } };

/** A case that the reader of case files takes, from subjects and values. */
const caseOf = (...claims: readonly object[]): CaseFile => {
  const text = JSON.stringify({
    format: 'underfoot-case',
    version: 3,
    id: 'a-case',
    claims: claims.map((claim, i) => ({ id: `c${i + 1}`, ...CONFIRMED, ...claim })),
    forecasts: [],
    fixtures: [],
  });
  const read = readCase(text);
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read.file;
};
const FORECAST = {
  endpoint: 'training',
  option: 'screw',
  injury: 'mt5-metaphyseal',
  madeOn: null,
  start: null,
  atWeek: 0,
  branches: [
    { name: 'uneventful', chance: 0.8, time: { mu: 2, sigma: 0.4 } },
    { name: 'problem', chance: 0.15, time: null },
    { name: 'notReturned', chance: 0.05, time: null },
  ],
  studies: ['a-study-that-has-gone'],
};
const besideOf = (more: object): readonly string[] => {
  const read = readCase(JSON.stringify({ ...caseOf(), ...more }));
  if (!read.ok) throw new Error(JSON.stringify(read));
  return checkCase(read.file, content, foot).map((problem) => {
    expect(problem.what + problem.remedy).not.toMatch(/[{}]/);
    return `${problem.code} ${problem.where}`;
  });
};
const codesOf = (...claims: readonly object[]) =>
  checkCase(caseOf(...claims), content, foot).map(({ code, where }) => `${code} ${where}`);

describe('a case that names what content and foot do not have', () => {
  test.each<[string, object, string]>([
    ['injury', { subject: 'injury', value: 'mt5-elbow' }, 'unknownInjury claims[1].value'],
    ['mechanism', { subject: 'mechanism', value: 'magic' }, 'unknownMechanism claims[1].value'],
    ['activity', { subject: 'activity', value: 'flying' }, 'unknownActivity claims[1].value'],
    ['risk factor', { subject: 'riskFactor', value: 'bad-luck' }, 'unknownFactor claims[1].value'],
    ['treatment', { subject: 'treatment', value: { option: 'glue' } }, 'unknownOption claims[1].value.option'],
    [
      'unnamed treatment',
      { subject: 'treatment', value: { option: 'operated' } },
      'unknownOption claims[1].value.option',
    ],
    [
      'region',
      { subject: 'place', value: { by: 'region', region: 'mt5-zone-9' } },
      'unknownRegion claims[1].value.region',
    ],
  ])('%s', (_, claim, code) => {
    expect(codesOf(BONE, claim)).toEqual([code]);
  });

  test('the remedy lists what there is', () => {
    const [problem] = checkCase(caseOf({ subject: 'injury', value: 'mt5-elbow' }), content, foot);
    expect(problem?.what).toContain('mt5-elbow');
    for (const injury of content.injuries) expect(problem?.remedy).toContain(injury.id);
  });

  test('a region of another bone', () => {
    const talus = { subject: 'bone', value: 'talus' };
    const zone = { subject: 'place', value: { by: 'region', region: 'mt5-zone-2' } };
    expect(codesOf(talus, zone)).toEqual(['regionOnOtherBone claims[1].value.region']);
    expect(codesOf(zone)).toEqual([]);
  });
});

describe('a break lies on its bone', () => {
  const at = (mm: number) => ({ subject: 'place', value: { by: 'distance', mm } });

  test('every distance up to the length is on it, every longer one is not', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 120, noNaN: true }), (mm) => {
        const want = mm <= lengthMm ? [] : ['breakOutsideBone claims[1].value.mm'];
        expect(codesOf(BONE, at(mm))).toEqual(want);
      }),
    );
  });

  test('the problem names both lengths and asks for the unit', () => {
    const [problem] = checkCase(caseOf(BONE, at(100)), content, foot);
    expect(problem?.what).toContain('100 mm');
    expect(problem?.what).toContain(`${Math.floor(lengthMm)} mm`);
    expect(problem?.remedy).toMatch(/unit/);
  });

  test('the bone may be known through the injury alone', () => {
    expect(codesOf({ subject: 'injury', value: 'mt5-metaphyseal' }, at(100))).toHaveLength(1);
  });

  test('without a bone, or with one that was ruled out, nothing is judged', () => {
    expect(codesOf(at(100))).toEqual([]);
    expect(codesOf({ ...BONE, status: 'ruledOut' }, at(100))).toEqual([]);
  });

  test('where claims name two bones, lying on one of them is enough', () => {
    const first = { subject: 'bone', value: 'phalanxDistal5' };
    expect(codesOf(BONE, first, at(60))).toEqual([]);
    expect(codesOf(first, at(60))).toHaveLength(1);
  });
});

describe('nobody is back before being hurt', () => {
  const hurt = { subject: 'injuryDate', value: '2026-09-14' };
  const ended = (on: string) => ({ subject: 'outcome', value: { endpoint: 'training', result: 'reached', on } });

  test('an outcome of the day before is refused, one of the same day is not', () => {
    expect(codesOf(hurt, ended('2026-09-13'))).toEqual(['endedBeforeInjury claims[1].value.on']);
    expect(codesOf(hurt, ended('2026-09-14'))).toEqual([]);
  });

  test('where the day of the injury is not stated, disputed, or the outcome ruled out, nothing is judged', () => {
    expect(codesOf(ended('2026-09-13'))).toEqual([]);
    expect(codesOf(hurt, { ...hurt, value: '2026-09-15' }, ended('2026-09-13'))).toEqual([]);
    expect(codesOf(hurt, { ...ended('2026-09-13'), status: 'ruledOut' })).toEqual([]);
  });
});

describe('what stands beside the claims', () => {
  const stage = content.stages[0]?.id ?? '';
  const notes = { struck: ['an-exercise-that-has-gone'], met: [], weeks: null, sharePercent: null, note: null };

  test('a kept forecast names an injury and a treatment of the content; its studies may have gone', () => {
    expect(besideOf({ forecasts: [FORECAST] })).toEqual([]);
    expect(besideOf({ forecasts: [FORECAST, { ...FORECAST, injury: 'mt5-elbow', option: 'glue' }] })).toEqual([
      'forecastUnknownInjury forecasts[1].injury',
      'forecastUnknownOption forecasts[1].option',
    ]);
  });

  test('the protocol names stages of the content', () => {
    expect(stage).not.toBe('');
    expect(besideOf({ clinic: { stage, stages: { [stage]: notes }, answers: {} } })).toEqual([]);
    expect(besideOf({ clinic: { stage: 'flying', stages: { [stage]: notes, soaring: notes }, answers: {} } })).toEqual([
      'unknownStage clinic.stage',
      'unknownStage clinic.stages.soaring',
    ]);
  });
});
