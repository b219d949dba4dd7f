import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Claim, factsOf } from '../../../src/cases';
import type { CaseFile } from '../../../src/cases/schema';
import { readContent } from '../../../src/cli/read-content';
import type { ClassRule, Injury } from '../../../src/content/schema';
import { classesOf, type Measured, measuredIn } from '../../../src/explain/classes';
import type { RegionId } from '../../../src/ids';

const content = readContent();

const said = { patient: 'a', broadcast: 'b', study: 'c' };
const scheme = (...rules: ClassRule[][]): Pick<Injury, 'classification'> => ({
  classification: rules.map((list, i) => ({
    id: `c${i}`,
    scheme: 'a scheme',
    term: `class ${i}`,
    criteria: said,
    rules: list,
    evidence: { source: null, mark: 'common practice' },
  })),
});

const NOTHING: Measured = { region: null, displaced: null, incomplete: null, measures: [], disputed: [] };
const confirmed = { status: 'confirmed', claims: [] } as const;
const gap = (value: number): Measured => ({ ...NOTHING, measures: [{ what: 'diastasis', value, tag: confirmed }] });

const STAGES = scheme(
  [{ by: 'measure', what: 'diastasis', below: 1 }],
  [{ by: 'measure', what: 'diastasis', from: 1, below: 5 }],
  [{ by: 'measure', what: 'diastasis', from: 5 }],
);
const indexes = (injury: Pick<Injury, 'classification'>, m: Measured) => classesOf(injury, m).map((c) => c.index);

const caseWith = (claims: readonly object[]): CaseFile =>
  ({
    format: 'underfoot-case',
    version: 3,
    id: 'c',
    claims: claims.map((claim, i) => ({ id: `c${i + 1}`, source: { kind: 'imaging' }, status: 'confirmed', ...claim })),
    forecasts: [],
    fixtures: [],
  }) as unknown as CaseFile;

describe('classes that geometry decides', () => {
  test('a measure on a border belongs to the class that begins there, and says so', () => {
    expect(classesOf(STAGES, gap(1))).toMatchObject([{ index: 1, onBorder: true }]);
    expect(classesOf(STAGES, gap(5))).toMatchObject([{ index: 2, onBorder: true }]);
    expect(classesOf(STAGES, gap(4.99))).toMatchObject([{ index: 1, onBorder: false }]);
    expect(classesOf(STAGES, gap(0))).toMatchObject([{ index: 0, onBorder: false }]);
  });

  test('whatever the measure, exactly one class of a whole scheme holds', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (mm) => {
        expect(indexes(STAGES, gap(mm))).toHaveLength(1);
      }),
    );
  });

  test('what is not stated decides nothing; all rules of a class must hold', () => {
    expect(indexes(STAGES, NOTHING)).toEqual([]);
    const both = scheme([
      { by: 'displaced', displaced: true },
      { by: 'measure', what: 'joint step', from: 2 },
    ]);
    const displaced: Measured = { ...NOTHING, displaced: { value: true, tag: confirmed } };
    expect(indexes(both, displaced)).toEqual([]);
    expect(indexes(both, { ...displaced, measures: [{ what: 'joint step', value: 3, tag: confirmed }] })).toEqual([0]);
    expect(indexes(both, { ...displaced, measures: [{ what: 'joint step', value: 1, tag: confirmed }] })).toEqual([]);
  });

  test('a class is no surer than the least sure of what it goes by, and names those claims', () => {
    const facts = factsOf(
      caseWith([
        { subject: 'measure', value: { what: 'diastasis', value: 3 }, status: 'reported', source: { kind: 'team' } },
      ]),
    );
    const [only] = classesOf(STAGES, measuredIn(facts, null));
    expect(only).toMatchObject({ index: 1, claim: { status: 'reported', claims: ['c1'] } });
  });

  test('claims of one measure that differ decide nothing; equal ones count once, as surely as the weaker', () => {
    const two = (value: number) =>
      factsOf(
        caseWith([
          { subject: 'measure', value: { what: 'diastasis', value: 3 } },
          { subject: 'measure', value: { what: 'diastasis', value }, status: 'reported', source: { kind: 'person' } },
        ]),
      );
    expect(classesOf(STAGES, measuredIn(two(4), null))).toEqual([]);
    expect(classesOf(STAGES, measuredIn(two(3), null))).toMatchObject([
      { index: 1, claim: { status: 'reported', claims: ['c1', 'c2'] } },
    ]);
  });

  test('a measure that is ruled out decides nothing', () => {
    const facts = factsOf(
      caseWith([{ subject: 'measure', value: { what: 'diastasis', value: 3 }, status: 'ruledOut' } as Partial<Claim>]),
    );
    expect(classesOf(STAGES, measuredIn(facts, null))).toEqual([]);
  });

  test('how far the ends have moved is a measure too', () => {
    const facts = factsOf(caseWith([{ subject: 'displacement', value: { displaced: true, mm: 3 } }]));
    const rule = scheme([{ by: 'measure', what: 'displacement', from: 3 }]);
    expect(classesOf(rule, measuredIn(facts, null))).toMatchObject([{ onBorder: true }]);
  });
});

/** Every way in which the content's own rules can be answered: each part of the bone, displaced or not, each border and beside it, or not stated. */
const answersTo = (injury: Injury): Measured[] => {
  const rules = injury.classification.flatMap((c) => c.rules ?? []);
  const regions = content.regions.filter((r) => r.kind === 'zone').map((r) => r.id);
  const whats = [...new Set(rules.flatMap((r) => (r.by === 'measure' ? [r.what] : [])))];
  const edges = (what: string) =>
    rules.flatMap((r) =>
      r.by === 'measure' && r.what === what
        ? [r.from, r.below].flatMap((e) => (e === undefined ? [] : [e - 0.5, e, e + 0.5]))
        : [],
    );
  let answers: Measured[] = regions.flatMap((value: RegionId) =>
    [true, false].map(
      (displaced): Measured => ({
        region: { value, tag: confirmed },
        displaced: { value: displaced, tag: confirmed },
        incomplete: null,
        measures: [],
        disputed: [],
      }),
    ),
  );
  for (const what of whats)
    answers = answers.flatMap((a) => [
      a,
      ...edges(what).map((value) => ({ ...a, measures: [...a.measures, { what, value, tag: confirmed }] })),
    ]);
  return answers;
};

describe('the classifications of the content', () => {
  test.each(content.injuries.map((i) => [i.id, i] as const))(
    '%s: no two classes of one scheme hold at once',
    (_, injury) => {
      for (const measured of answersTo(injury)) {
        const schemes = classesOf(injury, measured).map(({ index }) => injury.classification[index]?.scheme);
        expect(new Set(schemes).size).toBe(schemes.length);
      }
    },
  );
});
