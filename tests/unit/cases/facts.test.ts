import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CaseFile,
  type Claim,
  currentClaims,
  factsOf,
  MANY,
  readCase,
  SINGLE_SUBJECTS,
  SOURCE_KINDS,
  STATUS_LIMITS,
  STATUSES,
  SUBJECTS,
  type Subject,
  writeCase,
} from '../../../src/cases';
import { anyCase, anyValue } from './any-case';

const caseOf = (claims: readonly Claim[]): CaseFile => ({
  format: 'underfoot-case',
  version: 3,
  id: 'a-case' as CaseFile['id'],
  claims: [...claims],
  forecasts: [],
  fixtures: [],
});

/** Two different values a subject, the same on each run. */
const valuesOf = (subject: Subject): readonly [unknown, unknown] => {
  const [first, ...others] = fc.sample(anyValue[subject], { numRuns: 40, seed: 7 });
  const other = others.find((value) => JSON.stringify(value) !== JSON.stringify(first));
  if (other === undefined) throw new Error(`no two values of ${subject}`);
  return [first, other];
};

const made = (id: string, subject: Subject, value: unknown, status: string, more: object = {}): Claim => {
  const kind = SOURCE_KINDS.find((source) => STATUS_LIMITS[source].includes(status as never));
  return { id, subject, value, status, source: { kind }, ...more } as Claim;
};

const SUBJECT_AND_STATUS = SUBJECTS.flatMap((subject) => STATUSES.map((status) => ({ subject, status })));
const listOf = (file: CaseFile, subject: Subject): readonly Claim[] => {
  const { treatments, followUps, measures, outcomes, riskFactors, timetables } = factsOf(file);
  const lists = {
    treatment: treatments,
    followUp: followUps,
    outcome: outcomes,
    measure: measures,
    riskFactor: riskFactors,
    timetable: timetables,
  };
  return lists[subject as 'treatment'];
};

describe('every subject x status', () => {
  test.each(SUBJECT_AND_STATUS)('$subject $status', ({ subject, status }) => {
    const [value] = valuesOf(subject);
    const claim = made('c1', subject, value, status);
    const file = caseOf([claim]);
    expect(readCase(writeCase(file)).ok).toBe(true);
    const facts = factsOf(file);

    if (MANY.has(subject)) {
      expect(listOf(file, subject)).toEqual(status === 'ruledOut' ? [] : [claim]);
      expect(facts.ruledOut).toEqual(status === 'ruledOut' ? [claim] : []);
    } else {
      const fact = facts[subject as 'side'];
      expect(fact).toEqual(
        status === 'ruledOut'
          ? { state: 'notStated', ruledOut: [claim] }
          : { state: 'stated', value, status, claims: ['c1'], ruledOut: [] },
      );
    }
    for (const other of SINGLE_SUBJECTS)
      if (other !== subject) expect(facts[other]).toEqual({ state: 'notStated', ruledOut: [] });
  });
});

describe('every subject: two claims', () => {
  test.each(SINGLE_SUBJECTS)('%s: values that differ stay a contradiction, however strong one is', (subject) => {
    const [a, b] = valuesOf(subject);
    const file = caseOf([made('c1', subject, a, 'reported'), made('c2', subject, b, 'confirmed')]);
    expect(factsOf(file)[subject]).toEqual({
      state: 'contradiction',
      values: [
        { value: b, status: 'confirmed', claims: ['c2'] },
        { value: a, status: 'reported', claims: ['c1'] },
      ],
      ruledOut: [],
    });
  });

  test.each(SINGLE_SUBJECTS)('%s: the same value twice is one fact with the stronger status', (subject) => {
    const [a] = valuesOf(subject);
    const file = caseOf([made('c1', subject, a, 'reported'), made('c2', subject, structuredClone(a), 'confirmed')]);
    expect(factsOf(file)[subject]).toEqual({
      state: 'stated',
      value: a,
      status: 'confirmed',
      claims: ['c1', 'c2'],
      ruledOut: [],
    });
  });

  test.each(SINGLE_SUBJECTS)('%s: said by one and ruled out by another is a contradiction, not a fact', (subject) => {
    const [a] = valuesOf(subject);
    const denial = made('c2', subject, a, 'ruledOut');
    expect(factsOf(caseOf([made('c1', subject, a, 'reported'), denial]))[subject]).toEqual({
      state: 'contradiction',
      values: [{ value: a, status: 'reported', claims: ['c1'] }],
      ruledOut: [denial],
    });
  });

  test.each(SINGLE_SUBJECTS)('%s: ruling out another value leaves the fact', (subject) => {
    const [a, b] = valuesOf(subject);
    const fact = factsOf(caseOf([made('c1', subject, a, 'reported'), made('c2', subject, b, 'ruledOut')]))[subject];
    expect([fact.state, fact.ruledOut.length]).toEqual(['stated', 1]);
  });

  test.each(SINGLE_SUBJECTS)('%s: a claim that replaces another speaks alone, whatever its status', (subject) => {
    const [a, b] = valuesOf(subject);
    const replacing = (status: string) =>
      factsOf(caseOf([made('c1', subject, a, 'confirmed'), made('c2', subject, b, status, { supersedes: 'c1' })]));
    expect(replacing('reported')[subject]).toMatchObject({ state: 'stated', value: b, status: 'reported' });
    expect(replacing('ruledOut')[subject]).toMatchObject({ state: 'notStated', ruledOut: [{ id: 'c2' }] });
  });
});

test('the order of the keys of a value does not make a contradiction', () => {
  const file = caseOf([
    made('c1', 'displacement', { displaced: true, mm: 2 }, 'reported'),
    made('c2', 'displacement', { mm: 2, displaced: true }, 'confirmed'),
  ]);
  expect(factsOf(file).displacement.state).toBe('stated');
});

test('a claim replaced by a claim that was replaced in turn stays away', () => {
  const file = caseOf([
    made('c1', 'side', 'left', 'reported'),
    made('c2', 'side', 'right', 'reported', { supersedes: 'c1' }),
    made('c3', 'side', 'left', 'confirmed', { supersedes: 'c2' }),
  ]);
  expect(currentClaims(file).map((claim) => claim.id)).toEqual(['c3']);
});

test('treatments stand in order of date, an undated one first', () => {
  const file = caseOf([
    made('c1', 'treatment', { option: 'screw-in-canal', on: '2026-09-18' }, 'confirmed'),
    made('c2', 'treatment', { option: 'boot', on: '2026-09-14' }, 'reported'),
    made('c10', 'treatment', { option: 'rest' }, 'reported'),
  ]);
  expect(factsOf(file).treatments.map((claim) => claim.id)).toEqual(['c10', 'c2', 'c1']);
});

test('outcomes stand in order of date; one that is ruled out or replaced is none', () => {
  const ended = (endpoint: string, result: string, on: string) => ({ endpoint, result, on });
  const file = caseOf([
    made('c1', 'outcome', ended('match play', 'given up', '2027-03-01'), 'reported'),
    made('c2', 'outcome', ended('union', 'reached', '2026-12-07'), 'confirmed'),
    made('c10', 'outcome', ended('training', 'reached', '2026-12-07'), 'reported'),
    made('c11', 'outcome', ended('sport', 'reached', '2026-11-01'), 'ruledOut'),
    made('c12', 'outcome', ended('work', 'reached', '2026-10-01'), 'reported'),
    made('c13', 'outcome', ended('work', 'reached', '2026-10-08'), 'reported', { supersedes: 'c12' }),
  ]);
  const facts = factsOf(file);
  expect(facts.outcomes.map((claim) => claim.id)).toEqual(['c13', 'c2', 'c10', 'c1']);
  expect(facts.ruledOut.map((claim) => claim.id)).toEqual(['c11']);
});

describe('properties', () => {
  const FEW: readonly Subject[] = ['side', 'place', 'massKg', 'treatment'];

  test('the order of claims in the file does not matter', () => {
    const shuffled = anyCase(FEW).chain((file) =>
      fc.tuple(
        fc.constant(file),
        fc.shuffledSubarray(file.claims, { minLength: file.claims.length, maxLength: file.claims.length }),
      ),
    );
    fc.assert(
      fc.property(shuffled, ([file, claims]) => {
        expect(factsOf({ ...file, claims })).toEqual(factsOf(file));
      }),
    );
  });

  test('a claim that was replaced changes nothing: leaving it out gives the same facts', () => {
    fc.assert(
      fc.property(anyCase(FEW), (file) => {
        const kept = currentClaims(file).map(({ supersedes: _, ...claim }) => claim as Claim);
        const facts = factsOf({ ...file, claims: kept });
        for (const subject of SINGLE_SUBJECTS) {
          const [a, b] = [facts[subject], factsOf(file)[subject]];
          const ids = ({ ruledOut, ...fact }: typeof a) => ({ ...fact, ruledOut: ruledOut.map((claim) => claim.id) });
          expect(ids(a)).toEqual(ids(b));
        }
      }),
    );
  });

  test('nothing becomes confirmed, or reported, unless a current claim says exactly that', () => {
    fc.assert(
      fc.property(anyCase(FEW), (file) => {
        const facts = factsOf(file);
        for (const subject of SINGLE_SUBJECTS) {
          const fact = facts[subject];
          const said = fact.state === 'stated' ? [fact] : fact.state === 'contradiction' ? fact.values : [];
          for (const { value, status, claims } of said) {
            const behind = currentClaims(file).filter((claim) => (claims as readonly string[]).includes(claim.id));
            expect(behind.length).toBe(claims.length);
            expect(behind.every((claim) => claim.subject === subject)).toBe(true);
            expect(behind.map((claim) => claim.status)).toContain(status);
            expect(behind.map((claim) => claim.status)).not.toContain('ruledOut');
            for (const claim of behind) expect(claim.value).toEqual(value);
            if (status === 'confirmed')
              expect(behind.some((claim) => ['examination', 'imaging', 'operation'].includes(claim.source.kind))).toBe(
                true,
              );
          }
        }
      }),
    );
  });

  test('no current claim is lost', () => {
    fc.assert(
      fc.property(anyCase(), (file) => {
        const facts = factsOf(file);
        const told = [
          facts.treatments,
          facts.followUps,
          facts.outcomes,
          facts.measures,
          facts.riskFactors,
          facts.timetables,
          facts.ruledOut,
        ]
          .flat()
          .map(({ id }) => id);
        for (const subject of SINGLE_SUBJECTS) {
          const fact = facts[subject];
          if (fact.state === 'stated') told.push(...fact.claims);
          if (fact.state === 'contradiction') told.push(...fact.values.flatMap((value) => value.claims));
          told.push(...fact.ruledOut.map(({ id }) => id));
        }
        expect(told.sort()).toEqual(
          currentClaims(file)
            .map(({ id }) => id)
            .sort(),
        );
      }),
    );
  });

  test('folding twice is folding once, and does not touch the file', () => {
    fc.assert(
      fc.property(anyCase(), (file) => {
        const before = structuredClone(file);
        expect(factsOf(file)).toEqual(factsOf(file));
        expect(file).toEqual(before);
      }),
    );
  });
});
