/**
 * Whether the usual weeks of the steps are this person's. They were written for one treatment, for adults, and for bones that heal as
 * hoped after the first break: where one of these is not so, a week told as usual would be read as one's own, and the clinic has to
 * set another. Weeks that the clinic of the case set itself always stand.
 */
import { mayGrow, type Situation } from './situation';
import { stagesOf } from './stage-computes';
import type { WeeksElsewhere } from './stage-messages';

/** Why the usual weeks are not this person's, what weighs most first; null where nothing speaks against them. */
export const weeksElsewhere = (s: Situation): WeeksElsewhere | null => {
  const { option, brokenAgain, healsBadly } = s.known;
  if (brokenAgain !== null) return { why: 'broken again' };
  if (healsBadly !== null) return { why: 'heals badly' };
  if (mayGrow(s)) return { why: 'grows' };
  if (s.injuryRecord === null) return null;
  const [first] = stagesOf(s.injuryRecord, option?.value ?? null);
  // Steps that are the same for every treatment, or are of the treatment in force.
  if (first === undefined || first.option === null || first.option === option?.value) return null;
  return { why: option === null ? 'treatment not stated' : 'not usual', option: first.option };
};
