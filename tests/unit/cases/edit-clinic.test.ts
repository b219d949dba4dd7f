/** The clinic's own protocol, kept forecasts and fixtures: what each edit keeps, and that blank leaves nothing behind. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  answerOf,
  type CaseFile,
  checkCaseFile,
  emptyCase,
  type Fixture,
  type KeptForecast,
  readCase,
  stageNotesOf,
  withAnswer,
  withFixtures,
  withForecast,
  withMet,
  withoutForecast,
  withStage,
  withStageNotes,
  withStruck,
  writeCase,
} from '../../../src/cases';
import { type CriterionId, type ExerciseId, idOf, type StageId, type TopicId } from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { anyForecast } from './any-care';
import { anyCase } from './any-case';
import { anyDate } from './any-parts';

const empty = emptyCase(idOf('a-case'));
const RUN = idOf<StageId>('run');
const TOWEL = idOf<ExerciseId>('towel');
const UNITED = idOf<CriterionId>('bone-united');
const HOPS = idOf<CriterionId>('hop-tests');
const DAY = '2026-11-02' as IsoDate;
const DRIVING = idOf<TopicId>('driving');

const anyStage = fc.constantFrom('run', 'protect', 'constructor-like').map((id) => idOf<StageId>(id));
const anyExercise = fc.constantFrom('towel', 'step-up').map((id) => idOf<ExerciseId>(id));
const anyTopic = fc.constantFrom('driving', 'sleep').map((id) => idOf<TopicId>(id));
const anyFlag = fc.boolean();
const anySaid = fc.constantFrom(null, '', '  ', 'after the boot', ' with a blank ');
const anyPair = <A extends string, B extends string>(a: A, b: B) =>
  fc.constantFrom(null, { [a]: 1, [b]: 3 } as Record<A | B, number>);

/** One edit of each kind, with arbitrary arguments. */
const anyEdit: fc.Arbitrary<(file: CaseFile) => CaseFile> = fc.oneof(
  fc.option(anyStage).map((stage) => (file: CaseFile) => withStage(file, stage)),
  fc.tuple(anyStage, anyExercise, anyFlag).map(
    ([stage, exercise, is]) =>
      (file: CaseFile) =>
        withStruck(file, stage, exercise, is),
  ),
  fc.tuple(anyStage, fc.constantFrom(UNITED, HOPS), fc.option(anyDate)).map(
    ([stage, criterion, on]) =>
      (file: CaseFile) =>
        withMet(file, stage, criterion, on as IsoDate | null),
  ),
  fc.tuple(anyStage, anyPair('from', 'to'), anyPair('low', 'high')).map(
    ([stage, weeks, sharePercent]) =>
      (file: CaseFile) =>
        withStageNotes(file, stage, { weeks, sharePercent }),
  ),
  fc.tuple(anyTopic, anySaid).map(
    ([topic, said]) =>
      (file: CaseFile) =>
        withAnswer(file, topic, said),
  ),
  fc
    .array(anyDate, { maxLength: 5 })
    .map((days) => (file: CaseFile) => withFixtures(file, days.map((on, i) => ({ on, name: `f${i}` })) as Fixture[])),
  anyForecast.map((forecast) => (file: CaseFile) => withForecast(file, forecast)),
  fc.nat(3).map((index) => (file: CaseFile) => withoutForecast(file, index)),
);

test('any edits of any case leave a valid one that a file keeps, and touch neither the claims nor the case before', () => {
  fc.assert(
    fc.property(anyCase(['side']), fc.array(anyEdit, { maxLength: 12 }), (before, edits) => {
      const copy = structuredClone(before);
      const after = edits.reduce((file, edit) => edit(file), before);
      expect(before).toEqual(copy);
      expect(checkCaseFile(after)).toEqual([]);
      expect(after.claims).toBe(before.claims);
      expect(readCase(writeCase(after))).toEqual({ ok: true, file: after });
    }),
  );
});

test('what says nothing is not kept: taken back, each edit leaves the case as it was before it', () => {
  const edits: readonly (readonly [(file: CaseFile) => CaseFile, (file: CaseFile) => CaseFile])[] = [
    [(file) => withStage(file, RUN), (file) => withStage(file, null)],
    [(file) => withStruck(file, RUN, TOWEL, true), (file) => withStruck(file, RUN, TOWEL, false)],
    [(file) => withMet(file, RUN, UNITED, DAY), (file) => withMet(file, RUN, UNITED, null)],
    [
      (file) => withStageNotes(file, RUN, { weeks: { from: 2, to: 6 } }),
      (file) => withStageNotes(file, RUN, { weeks: null }),
    ],
    [(file) => withAnswer(file, DRIVING, 'not yet'), (file) => withAnswer(file, DRIVING, ' \n')],
  ];
  for (const [make, takeBack] of edits) {
    const made = make(empty);
    expect(made.clinic).toBeDefined();
    expect(takeBack(made)).toStrictEqual(empty);
    // Beside another entry of the clinic the taking back leaves just that one.
    const other = withAnswer(empty, idOf<TopicId>('stairs'), 'one at a time');
    expect(takeBack(make(other))).toStrictEqual(other);
  }
});

describe('the notes of a stage', () => {
  test('one part at a time, the others stay', () => {
    const file = withMet(withMet(withStruck(empty, RUN, TOWEL, true), RUN, UNITED, DAY), RUN, HOPS, DAY);
    expect(stageNotesOf(file, RUN)).toEqual({
      struck: ['towel'],
      met: [
        { criterion: UNITED, on: DAY },
        { criterion: HOPS, on: DAY },
      ],
      weeks: null,
      sharePercent: null,
      note: null,
    });
    // Ticked again later, it keeps the day on which it was met.
    expect(withMet(file, RUN, UNITED, '2026-12-24' as IsoDate)).toEqual(file);
  });

  test('of a stage or topic that only every object answers to, there are none', () => {
    expect(stageNotesOf(empty, idOf<StageId>('toString'))).toEqual(stageNotesOf(empty, RUN));
    expect(answerOf(withAnswer(empty, DRIVING, 'x'), idOf<TopicId>('valueOf'))).toBe(null);
  });
});

describe('forecasts', () => {
  const [one, two] = fc.sample(anyForecast, { numRuns: 2, seed: 3 }) as [KeptForecast, KeptForecast];

  test('stand in the order in which they were given, each once', () => {
    const file = withForecast(withForecast(withForecast(empty, one), two), structuredClone(one));
    expect(file.forecasts).toEqual([one, two]);
  });

  test('one is dropped by its place; a place where none stands drops none', () => {
    const file = withForecast(withForecast(empty, one), two);
    expect(withoutForecast(file, 0).forecasts).toEqual([two]);
    for (const none of [-1, 2, 0.5, Number.NaN]) expect(withoutForecast(file, none).forecasts).toEqual([one, two]);
  });
});

test('fixtures stand in order of day, those of one day as they came', () => {
  const on = (day: string, name: string) => ({ on: day, name }) as Fixture;
  const given = [on('2027-01-09', 'c'), on('2026-12-31', 'a'), on('2027-01-09', 'b')];
  expect(withFixtures(empty, given).fixtures.map(({ name }) => name)).toEqual(['a', 'c', 'b']);
  expect(given.map(({ name }) => name)).toEqual(['c', 'a', 'b']);
});
