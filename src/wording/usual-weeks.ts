/** A step of the way back with its weeks: usual ones, the clinic's own, or why none is told as this person's. */
import type { MessageOf } from '../explain/messages';
import type { Quantity } from '../units';
import { PARTS } from './en/messages';
import { STAGE_PARTS } from './en/stage-messages';
import { fill, fillRuns, type Value } from './fill';
import { namesFor } from './names';
import { type Pen, sentence } from './pen';
import { formatDate, formatWeeks } from './quantities';
import type { Run } from './types';

type Args = MessageOf<'stageUsual'>['args'];

/** Weeks since the start, not how long it lasts. */
const rangeOf = (pen: Pen, weeks: Quantity): Run => {
  const [from, to] = weeks.lowHigh ?? [weeks.value, weeks.value];
  return pen.number(fill(from === to ? PARTS.week : PARTS.weeksFromTo, { value: from, low: from, high: to }));
};

const usual = (pen: Pen, { weeks, openEnded, dates }: Pick<Args, 'weeks' | 'openEnded' | 'dates'>): Value => {
  if (weeks === null) return PARTS.whenOpen;
  if (openEnded) return fillRuns(PARTS.whenFrom, { week: pen.number(String(weeks.lowHigh?.[0] ?? weeks.value)) });
  const range = rangeOf(pen, weeks);
  if (dates === null) return fillRuns(PARTS.whenWeeks, { weeks: range });
  const days =
    dates.to === null
      ? fill(PARTS.datesFrom, { from: formatDate(dates.from) })
      : fill(PARTS.dates, { from: formatDate(dates.from), to: formatDate(dates.to) });
  return fillRuns(PARTS.whenWeeksDates, { weeks: range, dates: days });
};

/** Whose the weeks are, for those who tell or learn; a patient reads none, for it would be read as one's own. */
const elsewhereRuns = (pen: Pen, { elsewhere, number }: Args): Value | null => {
  if (elsewhere === null) return null;
  // A patient reads it once, with the first step.
  if (pen.reader === 'patient') return STAGE_PARTS[number === 1 ? 'clinicSets.patient' : 'clinicSets.signs'];
  const clinic = STAGE_PARTS[`clinicSets.${pen.reader}`];
  if (elsewhere.weeks === null) return clinic;
  const whose =
    'option' in elsewhere
      ? fill(STAGE_PARTS['whose.option'], { option: namesFor(pen.content, pen.reader).option(elsewhere.option) })
      : STAGE_PARTS[`whose.${elsewhere.why}`];
  return fillRuns(STAGE_PARTS.clinicAndUsual, {
    clinic,
    whose,
    weeks: usual(pen, { ...elsewhere, dates: null }),
  });
};

export const usualWeeksRuns = (pen: Pen, args: Args): readonly Run[] => {
  const { stage, number, of, own } = args;
  const set =
    own === null
      ? ''
      : fillRuns(own.dates === null ? PARTS.whenOwn : PARTS.whenOwnDates, {
          // The clinic's own number has no source, and so no mark.
          weeks: formatWeeks(own.weeks),
          from: own.dates === null ? '' : formatDate(own.dates.from),
          to: own.dates === null ? '' : formatDate(own.dates.to),
        });
  return sentence(pen, 'stageUsual', {
    number,
    of,
    stage: namesFor(pen.content, pen.reader).stage(stage),
    when: elsewhereRuns(pen, args) ?? usual(pen, args),
    after: args.after === null ? '' : fill(STAGE_PARTS.onceDone, { number: args.after }),
    own: set,
  });
};
