/**
 * The clinic's own protocol for one person, and the dates that person asks about. Never mixed with what has a source: what stands
 * here is said to be the clinic's own. Its free text is "no names here" like a note: never told unless asked for.
 */
import * as v from 'valibot';
import type { CriterionId, ExerciseId, StageId, TopicId } from '../ids';
import { id } from '../ids/schema';
import { isoDate, text } from '../units/schema';
import { bounded, listOf, setOf, tableOf } from './bounded';
import { cleanName, FIXTURE_NAME_LENGTH } from './fixtures/clean-name';

export const CLINIC_TEXT_LENGTH = 300;
export const MOST_FIXTURES = 60;
const MOST_ENTRIES = 40;

/** From low to high, ends included. */
const ordered = <T extends object>(low: keyof T, high: keyof T) =>
  v.check((pair: T) => Number(pair[low]) <= Number(pair[high]), 'the lower one comes first');
const week = bounded(0, 520, 'a week is 0 to 520');
const percent = bounded(0, 100, 'a share of body weight is 0 to 100 percent');

export const stageNotes = v.strictObject({
  /** Exercises of the stage that are not for this person. */
  struck: setOf(id<ExerciseId>(), MOST_ENTRIES, `at most ${MOST_ENTRIES} exercises are struck`),
  /** Criteria that are met, and the day on which somebody said so; null where that was not noted. */
  met: v.pipe(
    listOf(
      v.strictObject({ criterion: id<CriterionId>(), on: v.nullable(isoDate) }),
      MOST_ENTRIES,
      `at most ${MOST_ENTRIES} criteria are met`,
    ),
    v.check(
      (list) => new Set(list.map(({ criterion }) => criterion)).size === list.length,
      'a criterion stands twice in this list',
    ),
  ),
  weeks: v.nullable(v.pipe(v.strictObject({ from: week, to: week }), ordered('from', 'to'))),
  sharePercent: v.nullable(v.pipe(v.strictObject({ low: percent, high: percent }), ordered('low', 'high'))),
  /** "No names here". */
  note: v.nullable(text(CLINIC_TEXT_LENGTH)),
});
export type StageNotes = Readonly<v.InferOutput<typeof stageNotes>>;

export const clinic = v.strictObject({
  /** Where the person is now: chosen by the clinician, never computed. */
  stage: v.nullable(id<StageId>()),
  stages: tableOf<StageId, typeof stageNotes>(stageNotes, MOST_ENTRIES, `at most ${MOST_ENTRIES} stages have notes`),
  /** Answers to questions of daily life, by topic. "No names here". */
  answers: tableOf<TopicId, ReturnType<typeof text>>(
    text(CLINIC_TEXT_LENGTH),
    MOST_ENTRIES,
    `at most ${MOST_ENTRIES} answers`,
  ),
});
export type Clinic = Readonly<v.InferOutput<typeof clinic>>;

/**
 * A day that the person asks about, typed or read from a calendar. The name is "no names here". Whoever wrote the file, it is cleaned
 * as a name from a calendar is: what cannot be seen must not turn the text beside it around.
 */
export const fixture = v.strictObject({
  on: isoDate,
  name: v.pipe(text(FIXTURE_NAME_LENGTH), v.transform(cleanName), v.minLength(1, 'expected a name that can be seen')),
});
export type Fixture = Readonly<v.InferOutput<typeof fixture>>;
export const fixtures = listOf(fixture, MOST_FIXTURES, `a case has at most ${MOST_FIXTURES} fixtures`);
