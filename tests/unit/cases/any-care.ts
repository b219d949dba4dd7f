/** Arbitrary valid forecasts, protocols of a clinic and fixtures, for property tests. */
import fc from 'fast-check';
import { BRANCHES, type Clinic, type Fixture, type KeptForecast, type StageNotes } from '../../../src/cases';
import { cleanName } from '../../../src/cases/fixtures/clean-name';
import { ENDPOINTS } from '../../../src/ids';
import { anyDate, anyId } from './any-parts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((n) => n + 0);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });

/** Three chances that add up to one, apart from rounding. */
const anyChances = fc.tuple(between(0, 1), between(0, 1)).map(([notReturned, problem]): [number, number, number] => {
  const back = 1 - notReturned;
  return [back * (1 - problem), back * problem, notReturned];
});
const anyTime = maybe(fc.record({ mu: between(-10, 10), sigma: between(1e-9, 10) }));

export const anyForecast: fc.Arbitrary<KeptForecast> = fc
  .record({
    endpoint: fc.constantFrom(...ENDPOINTS),
    option: anyId,
    injury: anyId,
    madeOn: maybe(anyDate),
    start: maybe(anyDate),
    atWeek: between(0, 2000),
    chances: anyChances,
    times: fc.tuple(anyTime, anyTime),
    studies: fc.array(anyId, { maxLength: 5 }),
  })
  .map(({ chances, times, ...rest }) => {
    const branches = BRANCHES.map((name, i) => ({ name, chance: chances[i], time: times[i] ?? null }));
    return { ...rest, branches } as unknown as KeptForecast;
  });

const inOrder = <A extends string, B extends string>(a: A, b: B, max: number) =>
  fc.tuple(between(0, max), between(0, max)).map(([x, y]) => ({ [a]: Math.min(x, y), [b]: Math.max(x, y) }));
const anyText = fc.string({ minLength: 1, maxLength: 60 });

const anyStageNotes = fc.record({
  struck: fc.uniqueArray(anyId, { maxLength: 4 }),
  met: fc.uniqueArray(fc.record({ criterion: anyId, on: maybe(anyDate) }), {
    maxLength: 4,
    selector: ({ criterion }) => criterion,
  }),
  weeks: maybe(inOrder('from', 'to', 520)),
  sharePercent: maybe(inOrder('low', 'high', 100)),
  note: maybe(anyText),
}) as unknown as fc.Arbitrary<StageNotes>;

export const anyClinic: fc.Arbitrary<Clinic> = fc.record({
  stage: maybe(anyId),
  stages: fc.dictionary(anyId, anyStageNotes, { maxKeys: 4 }),
  answers: fc.dictionary(anyId, anyText, { maxKeys: 4 }),
}) as unknown as fc.Arbitrary<Clinic>;

/** Names as a case keeps them: what is read is cleaned first. */
const anyName = anyText.map(cleanName).filter((name) => name !== '');
export const anyFixture: fc.Arbitrary<Fixture> = fc.record({ on: anyDate, name: anyName }) as fc.Arbitrary<Fixture>;
