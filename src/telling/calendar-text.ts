/**
 * Writes an iCalendar file (RFC 5545) of all-day events: lines end in CRLF and are folded at 75 octets between letters, texts are
 * escaped, the end of an event is the first day after it. Nothing is read from a clock: the moment of writing is given.
 */
import type { IsoDate } from '../units';

export interface CalendarEvent {
  /** Of nobody and no machine; the same for the same event, so that a later file replaces it. */
  readonly uid: string;
  readonly from: IsoDate;
  /** The first day after it. */
  readonly until: IsoDate;
  readonly summary: string;
  readonly description: string;
}

export const LINE_OCTETS = 75;

const octets = (letter: string): number => {
  const point = letter.codePointAt(0) ?? 0;
  return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
};

/** One content line in pieces of at most 75 octets, each after the first with the blank that says that it goes on. */
export const folded = (line: string): string => {
  let out = '';
  let used = 0;
  for (const letter of line) {
    const size = octets(letter);
    if (used + size > LINE_OCTETS) {
      out += '\r\n ';
      used = 1;
    }
    out += letter;
    used += size;
  }
  return out;
};

/** Line breaks are told as \n; other control signs have no place in a text. */
export const escaped = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(/(?!\n)[\p{Cc}\p{Cs}]/gu, '')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n');

const compact = (date: IsoDate): string => date.replaceAll('-', '');

const STAMP = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/;

/** `stamp`: the moment of writing in UTC, as `Date.toISOString` gives it. Throws RangeError for another form. */
export const calendarText = (events: readonly CalendarEvent[], stamp: string): string => {
  if (!STAMP.test(stamp)) throw new RangeError(`calendarText: a moment in UTC, got ${stamp}`);
  const written = `${stamp.slice(0, 19).replace(/[-:]/g, '')}Z`;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Underfoot//Stages and reviews//EN',
    'CALSCALE:GREGORIAN',
    ...events.flatMap(({ uid, from, until, summary, description }) => [
      'BEGIN:VEVENT',
      `UID:${escaped(uid)}`,
      `DTSTAMP:${written}`,
      `DTSTART;VALUE=DATE:${compact(from)}`,
      `DTEND;VALUE=DATE:${compact(until)}`,
      `SUMMARY:${escaped(summary)}`,
      `DESCRIPTION:${escaped(description)}`,
      // It takes none of the day, and is nobody else's to see.
      'TRANSP:TRANSPARENT',
      'CLASS:PRIVATE',
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
};
