/**
 * A forecast as it was given once, kept so that it can be held against what happened: plain numbers, never worked out again.
 * The studies it came from are named, and may since have gone from the content.
 */
import * as v from 'valibot';
import { ENDPOINTS, type StudyId } from '../ids';
import { id, injuryId, optionId } from '../ids/schema';
import { isoDate } from '../units/schema';
import { bounded, listOf } from './bounded';

/** How it can go, in the order of the list of a forecast. */
export const BRANCHES = ['uneventful', 'problem', 'notReturned'] as const;
/** How far the chances of a forecast may add up to something else than one: what rounding leaves. */
export const CHANCES_WITHIN = 1e-6;
export const MOST_FORECASTS = 50;

/** Log-normal: the logarithm of the weeks is normal. Ten is over four centuries. */
const timeFit = v.strictObject({
  mu: bounded(-10, 10, 'the middle of a time is -10 to 10, as the logarithm of weeks'),
  sigma: v.pipe(
    bounded(0, 10, 'the spread of a time is above 0 and at most 10'),
    v.gtValue(0, 'the spread of a time is above 0 and at most 10'),
  ),
});

const branchNamed = (name: (typeof BRANCHES)[number]) =>
  v.pipe(
    v.strictObject({
      name: v.picklist(BRANCHES),
      chance: bounded(0, 1, 'a chance is 0 to 1'),
      /** Null: not back within what is known. */
      time: v.nullable(timeFit),
    }),
    v.check((branch) => branch.name === name, `expected the branches in the order ${BRANCHES.join(', ')}`),
    v.check(
      (branch) => branch.name !== 'notReturned' || branch.time === null,
      'those who do not return have no time of return',
    ),
  );

export const keptForecast = v.strictObject({
  endpoint: v.picklist(ENDPOINTS),
  option: optionId,
  injury: injuryId,
  /** The day it was given; null where no day is known. */
  madeOn: v.nullable(isoDate),
  /** The day from which its weeks count. */
  start: v.nullable(isoDate),
  /** The week up to which it was known that the person is not there yet. */
  atWeek: bounded(0, 2000, 'a week is 0 to 2000'),
  branches: v.pipe(
    v.strictTuple([branchNamed('uneventful'), branchNamed('problem'), branchNamed('notReturned')]),
    v.check(
      (branches) => Math.abs(branches.reduce((sum, { chance }) => sum + chance, 0) - 1) <= CHANCES_WITHIN,
      'expected three chances that add up to 1',
    ),
    v.readonly(),
  ),
  studies: listOf(id<StudyId>(), 60, 'a forecast names at most 60 studies'),
});
export type KeptForecast = Readonly<v.InferOutput<typeof keptForecast>>;
