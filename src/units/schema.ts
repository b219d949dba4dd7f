/** Schemas of dates and bounded text, shared by content and case files. */
import * as v from 'valibot';
import type { IsoDate } from '.';

export const text = (max: number) =>
  v.pipe(
    v.string('expected text'),
    v.minLength(1, 'expected text, not nothing'),
    v.maxLength(max, `at most ${max} characters`),
  );

const isRealDate = (s: string): boolean => {
  const d = new Date(`${s}T00:00:00Z`);
  return !Number.isNaN(d.getTime()) && d.toISOString().slice(0, 10) === s;
};

export const isoDate = v.pipe(
  v.string('expected a date'),
  v.regex(/^\d{4}-\d{2}-\d{2}$/, 'expected a date as YYYY-MM-DD'),
  v.check(isRealDate, 'no such day in the calendar'),
  v.transform((s) => s as IsoDate),
);
