/** Whether the treatment in force is the first of this break: studies counted first ones, and usual weeks are of them. */
import type { FollowUpFinding, OptionId } from '../ids';
import { weeksBetween } from '../recovery';
import type { IsoDate } from '../units';
import type { Situation } from './situation';

/** A boot or cast worn no longer than so before an operation was the wait for it (common practice), not a treatment that failed. */
const WAIT_WEEKS = 3;

const operativeIn =
  ({ context }: Situation) =>
  (option: OptionId): boolean =>
    context.content.options.some(({ id, kind }) => id === option && kind === 'operative');

/**
 * The studies are of people with one treatment from the start: after a break anew, or a treatment before the one in force, they do not
 * speak. A planned change (a boot after a cast) is no second treatment, but its weeks are counted by nobody either.
 */
export const isSecond = (s: Situation): boolean => {
  const { facts, known } = s;
  const { start } = known;
  if (start === null || start.from !== 'treatment') return false;
  const operative = operativeIn(s);
  const operated = known.option !== null && operative(known.option.value);
  const waited = (option: OptionId, on: IsoDate): boolean =>
    operated && !operative(option) && weeksBetween(on, start.value) <= WAIT_WEEKS;
  return (
    facts.treatments.some(
      ({ value }) => value.on !== undefined && value.on < start.value && !waited(value.option, value.on),
    ) || facts.followUps.some(({ value }) => value.finding === 'broken again' && value.on <= start.value)
  );
};

const FAILED: ReadonlySet<FollowUpFinding> = new Set<FollowUpFinding>(['delayed union', 'nonunion', 'broken again']);

/** One that began anew: after a bone that did not heal or broke again, or an operation after what was no mere wait for it; else a change. */
export const isAnew = (s: Situation): boolean => {
  const { facts, known } = s;
  const { start, option } = known;
  if (start === null || !isSecond(s)) return false;
  const failed = facts.followUps.some(({ value }) => FAILED.has(value.finding) && value.on <= start.value);
  return failed || (option !== null && operativeIn(s)(option.value));
};
