/**
 * content/anatomy/angles.yaml: for every measure of foot films what it is called, how it is drawn, what is usual in people, and how
 * well people agree who draw it. Every figure stands beside its source and how that was read.
 */
import * as v from 'valibot';
import { howRead } from '../how-read';
import { ANGLE_IDS } from './angle';

const figure = v.pipe(v.number('expected a number'), v.finite('expected a finite number'));
const text = v.pipe(v.string(), v.minLength(2));

const source = { source: text, how: howRead };

const norm = v.pipe(
  v.strictObject({
    /** Mean and standard deviation of a group, or a range of what is usual (one end may be open). */
    mean: v.optional(figure),
    sd: v.optional(v.pipe(figure, v.minValue(0))),
    low: v.optional(figure),
    high: v.optional(figure),
    of: text,
    ...source,
    note: v.optional(text),
  }),
  v.check(
    ({ mean, low, high }) => (mean === undefined) !== (low === undefined && high === undefined),
    'expected a mean or a range',
  ),
  v.check(({ mean, sd }) => sd === undefined || mean !== undefined, 'a standard deviation needs its mean'),
);
export type Norm = v.InferOutput<typeof norm>;

const measure = v.strictObject({
  id: v.picklist(ANGLE_IDS),
  name: text,
  trade: v.pipe(v.array(text), v.minLength(1)),
  /** What it tells, in words for everybody. */
  plain: text,
  /** How it is drawn, in words of the trade. */
  definition: text,
  view: v.picklist(['lateral', 'dorsoplantar', 'rear']),
  unit: v.picklist(['deg', 'mm', 'share']),
  /** The one to hold a foot against comes first; none where none was found. */
  norms: v.array(norm),
  /** How well readers of films agree on it; none where nothing was found. */
  repeatable: v.array(v.strictObject({ text, ...source })),
});
export type Measure = v.InferOutput<typeof measure>;

export const anglesSchema = v.pipe(
  v.array(measure),
  v.check(
    (all) => ANGLE_IDS.every((id, i) => all[i]?.id === id),
    'expected every measure once, in the order of ANGLE_IDS',
  ),
);

type Verdict = 'inside' | 'inside two sd' | 'outside' | 'no spread known' | 'no norm known';

/** Where a value lies against a norm: in its range, or within one or two standard deviations of its mean. */
export const verdictOn = (value: number, norm: Norm | undefined): Verdict => {
  if (!norm) return 'no norm known';
  const { mean, sd, low, high } = norm;
  if (mean !== undefined) {
    if (sd === undefined) return 'no spread known';
    const off = Math.abs(value - mean);
    return off <= sd ? 'inside' : off <= 2 * sd ? 'inside two sd' : 'outside';
  }
  return value >= (low ?? Number.NEGATIVE_INFINITY) && value <= (high ?? Number.POSITIVE_INFINITY)
    ? 'inside'
    : 'outside';
};
