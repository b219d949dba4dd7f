/** The calendar file that is written: octet by octet as the standard asks, and read back by the library. */
import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { type CalendarEvent, calendarText, escaped, folded, LINE_OCTETS } from '../../../src/telling/calendar-text';
import type { IsoDate } from '../../../src/units';
import { dateOfDay } from '../../../src/units/days';

const bytes = (text: string): number => new TextEncoder().encode(text).length;
const day = (text: string) => text as IsoDate;
const STAMP = '2026-11-29T22:16:00.000Z';

const EVENT: CalendarEvent = {
  uid: 'a@underfoot.invalid',
  from: day('2026-12-28'),
  until: day('2027-01-11'),
  summary: 'Foot: walk on it, step by step; with care',
  description: 'First line\nSecond: 50 % of the weight, no more\\less – äöü, and on and on until the line is long',
};

test('a calendar of one event, as text', () => {
  expect(calendarText([EVENT], STAMP).split('\r\n')).toEqual([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Underfoot//Stages and reviews//EN',
    'CALSCALE:GREGORIAN',
    'BEGIN:VEVENT',
    'UID:a@underfoot.invalid',
    'DTSTAMP:20261129T221600Z',
    'DTSTART;VALUE=DATE:20261228',
    'DTEND;VALUE=DATE:20270111',
    'SUMMARY:Foot: walk on it\\, step by step\\; with care',
    // 75 octets: the dash takes three.
    'DESCRIPTION:First line\\nSecond: 50 % of the weight\\, no more\\\\less – äö',
    ' ü\\, and on and on until the line is long',
    'TRANSP:TRANSPARENT',
    'CLASS:PRIVATE',
    'END:VEVENT',
    'END:VCALENDAR',
    '',
  ]);
});

describe('folding', () => {
  test('no line is longer than 75 octets, every letter stays whole, and unfolding gives the line back', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (text) => {
        const line = `X:${escaped(text)}`;
        const pieces = folded(line).split('\r\n');
        for (const piece of pieces) expect(bytes(piece)).toBeLessThanOrEqual(LINE_OCTETS);
        for (const piece of pieces.slice(1)) expect(piece.startsWith(' ')).toBe(true);
        expect(pieces.map((piece, i) => (i === 0 ? piece : piece.slice(1))).join('')).toBe(line);
        // Each piece is sound text of its own: a letter cut in two would come back as another one.
        for (const piece of pieces) expect(new TextDecoder().decode(new TextEncoder().encode(piece))).toBe(piece);
      }),
    );
  });

  test.each([
    ['one octet a letter', 'x', 75, 74],
    ['two octets', 'ä', 37, 37],
    ['three octets', '…', 25, 24],
    ['four octets', '\u{1F3C3}', 18, 18],
  ])('%s: as many as fit', (_, letter, first, next) => {
    const [a = '', b = ''] = folded(letter.repeat(200)).split('\r\n');
    expect([...a].length).toBe(first);
    expect([...b].length).toBe(next + 1);
  });
});

test('what is written is what the library reads back, whatever the texts', () => {
  const text = fc.string({ unit: 'grapheme', maxLength: 200 });
  // Lone halves of a letter and control signs are no text of a calendar.
  const kept = (t: string) => t.replace(/\r\n?/g, '\n').replace(/(?!\n)[\p{Cc}\p{Cs}]/gu, '');
  fc.assert(
    fc.property(
      text,
      text,
      fc.integer({ min: 0, max: 40_000 }),
      fc.integer({ min: 1, max: 400 }),
      (summary, description, from, length) => {
        const event = { ...EVENT, summary, description, from: dateOfDay(from), until: dateOfDay(from + length) };
        const read = new ICAL.Event(
          new ICAL.Component(ICAL.parse(calendarText([event], STAMP))).getFirstSubcomponent('vevent') as ICAL.Component,
        );
        expect(read.summary ?? '').toBe(kept(summary));
        expect(read.description ?? '').toBe(kept(description));
        expect(read.startDate.toString()).toBe(event.from);
        expect(read.endDate.toString()).toBe(event.until);
        expect(read.startDate.isDate).toBe(true);
        expect(read.duration.toSeconds()).toBe(length * 86_400);
      },
    ),
  );
});

test('a moment in another form is refused', () => {
  for (const stamp of ['', '2026-11-29', '2026-11-29T22:16:00+01:00'])
    expect(() => calendarText([], stamp)).toThrow(RangeError);
});
