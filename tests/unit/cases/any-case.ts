/** Arbitrary valid cases for property tests: any subject, any allowed status, replacing earlier claims of the same subject. */
import fc from 'fast-check';
import {
  type CaseFile,
  type Claim,
  FOLLOW_UP_FINDINGS,
  OUTCOME_RESULTS,
  SOURCE_KINDS,
  STATUS_LIMITS,
  SUBJECTS,
  type Subject,
} from '../../../src/cases';
import { MEASURE_BOUNDS, subjectValues, WHOLE_MEASURES } from '../../../src/cases/schema';
import { AGE_BANDS, BONE_IDS, ENDPOINTS, FILM_MEASURES, LEVELS } from '../../../src/ids';
import { anyClinic, anyFixture, anyForecast } from './any-care';
import { anyDate as date, anyId as id } from './any-parts';

const upTo = (max: number) => fc.double({ min: 0, max, noNaN: true }).map((n) => n + 0);
const maybe = <T>(key: string, value: fc.Arbitrary<T>) =>
  fc.option(value, { nil: undefined }).map((v) => (v === undefined ? {} : { [key]: v }));
const merged = (...parts: fc.Arbitrary<object>[]) => fc.tuple(...parts).map((list) => Object.assign({}, ...list));

/** One arbitrary a subject: a missing one does not compile. */
export const anyValue: Readonly<Record<Subject, fc.Arbitrary<unknown>>> = {
  side: fc.constantFrom(...subjectValues.side.options),
  bone: fc.constantFrom(...BONE_IDS),
  place: fc.oneof(
    fc.record({ by: fc.constant('region'), region: id }),
    fc.record({ by: fc.constant('distance'), mm: upTo(120) }),
  ),
  injury: id,
  direction: fc.constantFrom(...subjectValues.direction.options),
  measure: fc.constantFrom(...FILM_MEASURES).chain((what) => {
    const [low, high] = MEASURE_BOUNDS[what];
    const value = WHOLE_MEASURES.has(what)
      ? fc.integer({ min: low, max: high })
      : fc.double({ min: low, max: high, noNaN: true });
    return value.map((number) => ({ what, value: number + 0 }));
  }),
  displacement: fc.oneof(
    fc.constant({ displaced: false }),
    fc.constant({ displaced: false, mm: 0 }),
    // Apart by nothing is refused.
    merged(fc.constant({ displaced: true }), maybe('mm', fc.double({ min: 0.1, max: 30, noNaN: true }))),
  ),
  onset: fc.constantFrom(...subjectValues.onset.options),
  mechanism: id,
  injuryDate: date,
  treatment: merged(fc.record({ option: id }), maybe('on', date)),
  followUp: fc.record({ finding: fc.constantFrom(...FOLLOW_UP_FINDINGS), on: date }),
  timetable: fc.record(
    { weeks: fc.double({ min: 0.1, max: 260, noNaN: true }), endpoint: fc.constantFrom(...ENDPOINTS) },
    { requiredKeys: ['weeks'] },
  ),
  outcome: fc.record({
    endpoint: fc.constantFrom(...ENDPOINTS),
    result: fc.constantFrom(...OUTCOME_RESULTS),
    on: date,
  }),
  ageBand: fc.constantFrom(...AGE_BANDS),
  massKg: fc.integer({ min: 20, max: 250 }),
  heightCm: fc.integer({ min: 80, max: 230 }),
  footShape: fc.constantFrom(...subjectValues.footShape.options),
  activity: id,
  level: fc.constantFrom(...LEVELS),
  riskFactor: id,
};

const anyClaimOf = (subject: Subject) =>
  fc.constantFrom(...SOURCE_KINDS).chain((kind) =>
    merged(
      fc.record({
        subject: fc.constant(subject),
        value: anyValue[subject],
        status: fc.constantFrom(...STATUS_LIMITS[kind]),
        source: merged(fc.record({ kind: fc.constant(kind) }), maybe('on', date)),
      }),
      maybe('note', fc.string({ minLength: 1, maxLength: 30 })),
    ),
  );

const anyClaims = (few: readonly Subject[]): fc.Arbitrary<Claim[]> =>
  fc.array(fc.tuple(fc.constantFrom(...few).chain(anyClaimOf), fc.option(fc.nat())), { maxLength: 12 }).map((drawn) => {
    const claims: Claim[] = [];
    for (const [parts, pick] of drawn) {
      const earlier = claims.filter((claim) => claim.subject === parts.subject);
      const target = pick === null ? undefined : earlier[pick % Math.max(1, earlier.length)];
      const supersedes = target === undefined ? {} : { supersedes: target.id };
      claims.push({ id: `c${claims.length + 1}`, ...parts, ...supersedes } as Claim);
    }
    return claims;
  });

/** `few`: only these subjects, so that claims meet. */
export const anyCase = (few: readonly Subject[] = SUBJECTS): fc.Arbitrary<CaseFile> =>
  fc
    .record({
      claims: anyClaims(few),
      forecasts: fc.array(anyForecast, { maxLength: 3 }),
      clinic: fc.option(anyClinic, { nil: undefined }),
      fixtures: fc.array(anyFixture, { maxLength: 4 }),
    })
    .map(
      ({ clinic, ...rest }): CaseFile => ({
        format: 'underfoot-case',
        version: 3,
        id: 'any-case' as CaseFile['id'],
        ...rest,
        ...(clinic === undefined ? {} : { clinic }),
      }),
    );
