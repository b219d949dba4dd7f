/** Stages and reviews of a case for a calendar. Only once a start is known; what has no day stays out and in the list of weeks. */
import { fnv1a64 } from '../content/hash';
import type { Explanation } from '../explain/types';
import { addWeeks } from '../recovery/calendar';
import { type CalendarEvent, calendarText } from './calendar-text';
import type { Plan, PlanEntry } from './plan';

/**
 * From the case, its start and the stage: a file written again replaces what was there, and two cases that both have the name of a
 * new case do not replace each other unless they began on the same day. Mixed, so that no name of a case stands in a calendar.
 */
const uidOf = ({ caseId, start }: Pick<Explanation, 'caseId' | 'start'>, key: string): string => {
  const parts = [caseId, start?.date ?? '', key].join('|');
  return `${fnv1a64(parts)}${fnv1a64(`${parts}|`)}@underfoot.invalid`;
};

const eventOf = (explanation: Explanation, cautions: readonly string[], entry: PlanEntry): readonly CalendarEvent[] => {
  const { from, until, key, short, lines } = entry;
  if (from === null) return [];
  const next = addWeeks(from, 1 / 7);
  return [
    {
      uid: uidOf(explanation, key),
      from,
      until: until === null || until <= from ? next : until,
      summary: short,
      description: [...lines, ...cautions].join('\n'),
    },
  ];
};

/** Null while no start is known or no stage has a week. `stamp`: the moment of writing, as `Date.toISOString` gives it. */
export const planCalendar = (explanation: Explanation, { entries, cautions }: Plan, stamp: string): string | null => {
  const events = entries.flatMap((entry) => eventOf(explanation, cautions, entry));
  return events.length === 0 ? null : calendarText(events, stamp);
};
