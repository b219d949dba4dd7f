/**
 * Weeks and dates. A week is seven days; dates are days of the Gregorian calendar without time or zone, so everything is
 * counted in UTC. Stages carry weeks since the start; dates appear only when the start date is known.
 */
import type { IsoDate } from '../units';
import { dateOfDay, dayNumber } from '../units/days';
import type { CalendarStage } from './types';

const DAYS_A_WEEK = 7;

/** Part weeks are rounded to whole days. Throws RangeError for what is no date or leaves the years 0 to 9999. */
export const addWeeks = (date: IsoDate, weeks: number): IsoDate =>
  dateOfDay(dayNumber(date) + Math.round(weeks * DAYS_A_WEEK));

/** Weeks from a to b, in sevenths; negative when b is earlier. */
export const weeksBetween = (a: IsoDate, b: IsoDate): number => (dayNumber(b) - dayNumber(a)) / DAYS_A_WEEK;

export interface StageWeeks {
  readonly weeksFrom: number | null;
  readonly weeksTo: number | null;
}

/** A stage without weeks stays without weeks: criteria open it, not the calendar. */
export const calendarOf = (stages: readonly StageWeeks[], startDate: IsoDate | null): CalendarStage[] =>
  stages.map(({ weeksFrom, weeksTo }, stageIndex) => ({
    stageIndex,
    fromWeek: weeksFrom,
    toWeek: weeksTo,
    fromDate: startDate !== null && weeksFrom !== null ? addWeeks(startDate, weeksFrom) : null,
    toDate: startDate !== null && weeksTo !== null ? addWeeks(startDate, weeksTo) : null,
  }));
