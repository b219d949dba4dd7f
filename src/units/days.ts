/** Days of the Gregorian calendar as whole numbers, so that they can be counted. No time, no zone: 0 is 1 January 1970. */
import type { IsoDate } from '.';

const DAY_MS = 86_400_000;

/** Throws RangeError for what is no date. */
export const dayNumber = (date: IsoDate): number => {
  const ms = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(ms)) throw new RangeError(`not a date: ${date}`);
  return ms / DAY_MS;
};

/** Throws RangeError for days outside the years 0 to 9999. */
export const dateOfDay = (day: number): IsoDate => {
  const iso = new Date(day * DAY_MS).toISOString();
  if (iso.length !== 24) throw new RangeError('outside the years 0 to 9999');
  return iso.slice(0, 10) as IsoDate;
};

export const isLeapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** Month from 1. */
export const daysInMonth = (year: number, month: number): number =>
  month === 2 && isLeapYear(year) ? 29 : (MONTHS[month - 1] ?? 0);

/** 1 January of a year. */
export const firstDayOf = (year: number): number => {
  const before = year - 1;
  return 365 * (year - 1970) + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) - 477;
};

/** The day of these figures, null where the calendar has none: 30 February, month 13. Month and day count from 1. */
export const dayOf = (year: number, month: number, day: number): number | null => {
  if (!(day >= 1 && day <= daysInMonth(year, month))) return null;
  let first = firstDayOf(year);
  for (let m = 1; m < month; m++) first += daysInMonth(year, m);
  return first + day - 1;
};
