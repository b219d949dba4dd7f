/**
 * Whether the usual weeks of the steps are this person's. They were written for one treatment, for adults, and for bones that heal as
 * hoped after the first break: where one of these is not so, a week told as usual would be read as one's own, and the clinic has to
 * set another. Weeks that the clinic of the case set itself always stand.
 */
import { isSecond } from './second-treatment';
import { mayGrow, type Situation } from './situation';
import { stagesOf } from './stage-computes';
import type { WeeksElsewhere } from './stage-messages';
import { usualOptions } from './usual-options';

/** Why the usual weeks are not this person's, what weighs most first; null where nothing speaks against them. */
export const weeksElsewhere = (s: Situation): WeeksElsewhere | null => {
  const { option, brokenAgain, healsBadly } = s.known;
  if (brokenAgain !== null) return { why: 'broken again' };
  if (healsBadly !== null) return { why: 'heals badly' };
  if (isSecond(s)) return { why: 'second treatment' };
  if (mayGrow(s)) return { why: 'grows' };
  if (s.injuryRecord === null) return null;
  const [first] = stagesOf(s.injuryRecord, option?.value ?? null);
  if (first === undefined || first.option === null) return null;
  if (option === null) return { why: 'treatment not stated', option: first.option };
  // Steps that are of the treatment in force, where that is usual for the class too.
  return first.option === option.value && usualOptions(s).options.includes(option.value)
    ? null
    : { why: 'not usual', option: first.option };
};
