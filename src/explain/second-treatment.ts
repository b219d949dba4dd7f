/** Whether the treatment in force is the first of this break: studies counted first ones, and usual weeks are of them. */
import type { OptionId } from '../ids';
import { weeksBetween } from '../recovery';
import type { IsoDate } from '../units';
import type { Situation } from './situation';

/** A boot or cast worn no longer than so before an operation was the wait for it (common practice), not a treatment that failed. */
const WAIT_WEEKS = 3;

/** The studies are of first treatments: after a break anew, or a treatment before the one in force, they do not speak. */
export const isSecond = ({ context, facts, known }: Situation): boolean => {
  const { start } = known;
  if (start === null || start.from !== 'treatment') return false;
  const operative = (option: OptionId): boolean =>
    context.content.options.some(({ id, kind }) => id === option && kind === 'operative');
  const operated = known.option !== null && operative(known.option.value);
  const waited = (option: OptionId, on: IsoDate): boolean =>
    operated && !operative(option) && weeksBetween(on, start.value) <= WAIT_WEEKS;
  return (
    facts.treatments.some(
      ({ value }) => value.on !== undefined && value.on < start.value && !waited(value.option, value.on),
    ) || facts.followUps.some(({ value }) => value.finding === 'broken again' && value.on <= start.value)
  );
};
