/** Arbitrary valid cases for property tests: any subject, any allowed status, replacing earlier claims of the same subject. */
import fc from 'fast-check';
import {
  type CaseFile,
  type Claim,
  FOLLOW_UP_FINDINGS,
  SOURCE_KINDS,
  STATUS_LIMITS,
  SUBJECTS,
  type Subject,
} from '../../../src/cases';
import { subjectValues } from '../../../src/cases/schema';
import { AGE_BANDS, BONE_IDS, LEVELS } from '../../../src/ids';

const id = fc.stringMatching(/^[a-z][A-Za-z0-9]{0,8}(-[A-Za-z0-9]{1,8}){0,2}$/);
const date = fc
  .date({ min: new Date('1990-01-01T00:00:00Z'), max: new Date('2040-12-31T00:00:00Z'), noInvalidDate: true })
  .map((d) => d.toISOString().slice(0, 10));
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
  displacement: merged(fc.record({ displaced: fc.boolean() }), maybe('mm', upTo(30))),
  onset: fc.constantFrom(...subjectValues.onset.options),
  mechanism: id,
  injuryDate: date,
  treatment: merged(fc.record({ option: id }), maybe('on', date)),
  followUp: fc.record({ finding: fc.constantFrom(...FOLLOW_UP_FINDINGS), on: date }),
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

/** `few`: only these subjects, so that claims meet. */
export const anyCase = (few: readonly Subject[] = SUBJECTS): fc.Arbitrary<CaseFile> =>
  fc
    .array(fc.tuple(fc.constantFrom(...few).chain(anyClaimOf), fc.option(fc.nat())), { maxLength: 12 })
    .map((drawn): CaseFile => {
      const claims: Claim[] = [];
      for (const [parts, pick] of drawn) {
        const earlier = claims.filter((claim) => claim.subject === parts.subject);
        const target = pick === null ? undefined : earlier[pick % Math.max(1, earlier.length)];
        const supersedes = target === undefined ? {} : { supersedes: target.id };
        claims.push({ id: `c${claims.length + 1}`, ...parts, ...supersedes } as Claim);
      }
      return { format: 'underfoot-case', version: 1, id: 'any-case' as CaseFile['id'], claims };
    });
