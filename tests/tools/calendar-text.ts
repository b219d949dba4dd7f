/** iCalendar files for tests: lines with CRLF between them, as bytes. */
import { type CalendarOptions, readCalendar } from '../../src/cases/fixtures/read-calendar';
import type { FixturesRead } from '../../src/cases/fixtures/result';
import type { IsoDate } from '../../src/units';

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

export const HEAD = ['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:-//test//EN'] as const;

/** One event a list of lines, inside a calendar. */
export const calendarWith = (...events: readonly (readonly string[])[]): string =>
  [...HEAD, ...events.flatMap((lines) => ['BEGIN:VEVENT', ...lines, 'END:VEVENT']), 'END:VCALENDAR', ''].join('\r\n');

export const OPTIONS: CalendarOptions = {
  from: '2026-01-01' as IsoDate,
  to: '2027-12-31' as IsoDate,
  zone: 'UTC',
  unnamed: 'no name',
};

export const read = (text: string, options: Partial<CalendarOptions> = {}): FixturesRead =>
  readCalendar(bytesOf(text), { ...OPTIONS, ...options });

/** The days that were read; throws with what was wrong. */
export const daysIn = (text: string, options: Partial<CalendarOptions> = {}): readonly string[] => {
  const found = read(text, options);
  if (!found.ok) throw new Error(found.problems.map(({ line, what }) => `${line}: ${what}`).join('\n'));
  return found.fixtures.map(({ on }) => on);
};

/** `line code` of each problem; empty when there is none. */
export const problemsIn = (text: string, options: Partial<CalendarOptions> = {}): readonly string[] => {
  const found = read(text, options);
  return found.ok ? [] : found.problems.map(({ line, code }) => `${line} ${code}`);
};
