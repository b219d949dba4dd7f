/** The frame of this foot held against what was measured or found by others: computed on the spot, hits and misses alike. */
import type { Foot } from '../anatomy/types';
import type { Content } from '../content/schema';
import { type ActivityId, idOf } from '../ids';
import { type CheckAnswer, checkAnswers, type ExpectedOf } from '../mechanics/foot/checks';
import { CHECK_CASES, type CheckCase } from '../mechanics/foot/checks-trial';
import type { LoadCase } from '../mechanics/foot/load-case';
import type { Context } from './context';
import { activityIn, bandedCase, frameBandsOf, loadedFor, toldValues } from './loads';
import type { OnFoot } from './place';

const AS_TOLD = { speed: null, tiltDeg: null } as const;

const kept = new WeakMap<Foot, WeakMap<Content, readonly CheckAnswer[]>>();

/** In the order in which the computations stand. About a second; kept with the foot. */
export const loadChecksOn = (context: Context, { foot: parameters }: OnFoot): readonly CheckAnswer[] => {
  const { content } = context;
  const foot = context.footFor(parameters);
  const known = kept.get(foot) ?? new WeakMap<Content, readonly CheckAnswer[]>();
  kept.set(foot, known);
  const before = known.get(content);
  if (before !== undefined) return before;
  const cases = Object.fromEntries(
    CHECK_CASES.map((id): [CheckCase, LoadCase] => {
      const banded = bandedCase(activityIn(content, idOf<ActivityId>(id)), AS_TOLD);
      return [id, { ...banded, figures: toldValues(banded.figures) }];
    }),
  ) as Record<CheckCase, LoadCase>;
  const expected = Object.fromEntries(content.loadChecks.map((check) => [check.id, check.expected])) as ExpectedOf;
  const answers = checkAnswers(loadedFor(context, foot), toldValues(frameBandsOf(content)), cases, expected);
  known.set(content, answers);
  return answers;
};
