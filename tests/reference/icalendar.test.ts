/** Repeat rules held against the examples of the standard: the days that it lists are the days that we read. */
import type { IsoDate } from '../../src/units';
import { against } from '../tools/against';
import { calendarWith, daysIn } from '../tools/calendar-text';

const RFC = { source: 'RFC 5545 (2009)', how: 'read' } as const;

/** `1997-09 2,4 1997-10 2` as the standard writes it, to days. */
const listed = (text: string): string =>
  [...text.matchAll(/(\d{4}-\d\d) ([\d,-]+)/g)]
    .flatMap(([, month, days = '']) =>
      days.split(',').flatMap((part) => {
        const [first = 0, last = first] = part.split('-').map(Number);
        return Array.from({ length: last - first + 1 }, (_, i) => `${month}-${String(first + i).padStart(2, '0')}`);
      }),
    )
    .join(' ');

interface Example {
  readonly name: string;
  readonly page: number;
  readonly start: string;
  readonly rule: string;
  readonly days: string;
  readonly more?: readonly string[];
}

const EXAMPLES: readonly Example[] = [
  { name: 'daily, 10', page: 123, start: '19970902', rule: 'FREQ=DAILY;COUNT=10', days: '1997-09 2-11' },
  {
    name: 'every other day',
    page: 124,
    start: '19970902',
    rule: 'FREQ=DAILY;INTERVAL=2',
    days: '1997-09 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30 1997-10 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30',
  },
  {
    name: 'every 10 days, 5',
    page: 124,
    start: '19970902',
    rule: 'FREQ=DAILY;INTERVAL=10;COUNT=5',
    days: '1997-09 2,12,22 1997-10 2,12',
  },
  {
    name: 'every day in January, as a yearly rule',
    page: 124,
    start: '19980101',
    rule: 'FREQ=YEARLY;UNTIL=20000131T140000Z;BYMONTH=1;BYDAY=SU,MO,TU,WE,TH,FR,SA',
    days: '1998-01 1-31',
  },
  {
    name: 'every day in January, as a daily rule',
    page: 124,
    start: '19980101',
    rule: 'FREQ=DAILY;UNTIL=20000131T140000Z;BYMONTH=1',
    days: '1998-01 1-31 1999-01 1-29',
  },
  {
    name: 'weekly, 10',
    page: 124,
    start: '19970902',
    rule: 'FREQ=WEEKLY;COUNT=10',
    days: '1997-09 2,9,16,23,30 1997-10 7,14,21,28 1997-11 4',
  },
  {
    name: 'weekly until a moment in UTC',
    page: 125,
    start: '19970902',
    rule: 'FREQ=WEEKLY;UNTIL=19971224T000000Z',
    days: '1997-09 2,9,16,23,30 1997-10 7,14,21,28 1997-11 4,11,18,25 1997-12 2,9,16,23',
  },
  {
    name: 'every other week',
    page: 125,
    start: '19970902',
    rule: 'FREQ=WEEKLY;INTERVAL=2;WKST=SU',
    days: '1997-09 2,16,30 1997-10 14,28 1997-11 11,25 1997-12 9,23 1998-01 6,20 1998-02 3,17',
  },
  {
    name: 'Tuesday and Thursday for five weeks',
    page: 125,
    start: '19970902',
    rule: 'FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH',
    days: '1997-09 2,4,9,11,16,18,23,25,30 1997-10 2',
  },
  {
    name: 'every other week, three days, until',
    page: 125,
    start: '19970901',
    rule: 'FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR',
    days: '1997-09 1,3,5,15,17,19,29 1997-10 1,3,13,15,17,27,29,31 1997-11 10,12,14,24,26,28 1997-12 8,10,12,22',
  },
  {
    name: 'every other week, two days, 8',
    page: 126,
    start: '19970902',
    rule: 'FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH',
    days: '1997-09 2,4,16,18,30 1997-10 2,14,16',
  },
  {
    name: 'first Friday, 10',
    page: 126,
    start: '19970905',
    rule: 'FREQ=MONTHLY;COUNT=10;BYDAY=1FR',
    days: '1997-09 5 1997-10 3 1997-11 7 1997-12 5 1998-01 2 1998-02 6 1998-03 6 1998-04 3 1998-05 1 1998-06 5',
  },
  {
    name: 'first and last Sunday, every other month',
    page: 126,
    start: '19970907',
    rule: 'FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU',
    days: '1997-09 7,28 1997-11 2,30 1998-01 4,25 1998-03 1,29 1998-05 3,31',
  },
  {
    name: 'second-to-last Monday, 6',
    page: 126,
    start: '19970922',
    rule: 'FREQ=MONTHLY;COUNT=6;BYDAY=-2MO',
    days: '1997-09 22 1997-10 20 1997-11 17 1997-12 22 1998-01 19 1998-02 16',
  },
  {
    name: 'third-to-the-last day',
    page: 127,
    start: '19970928',
    rule: 'FREQ=MONTHLY;BYMONTHDAY=-3',
    days: '1997-09 28 1997-10 29 1997-11 28 1997-12 29 1998-01 29 1998-02 26',
  },
  {
    name: 'first and last day, 10',
    page: 127,
    start: '19970930',
    rule: 'FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1',
    days: '1997-09 30 1997-10 1,31 1997-11 1,30 1997-12 1,31 1998-01 1,31 1998-02 1',
  },
  {
    name: 'every 18 months',
    page: 127,
    start: '19970910',
    rule: 'FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15',
    days: '1997-09 10-15 1999-03 10-13',
  },
  {
    name: 'every Tuesday, every other month',
    page: 127,
    start: '19970902',
    rule: 'FREQ=MONTHLY;INTERVAL=2;BYDAY=TU',
    days: '1997-09 2,9,16,23,30 1997-11 4,11,18,25 1998-01 6,13,20,27 1998-03 3,10,17,24,31',
  },
  {
    name: 'June and July',
    page: 128,
    start: '19970610',
    rule: 'FREQ=YEARLY;COUNT=10;BYMONTH=6,7',
    days: '1997-06 10 1997-07 10 1998-06 10 1998-07 10 1999-06 10 1999-07 10 2000-06 10 2000-07 10 2001-06 10 2001-07 10',
  },
  {
    name: 'three months, every other year',
    page: 128,
    start: '19970310',
    rule: 'FREQ=YEARLY;INTERVAL=2;COUNT=10;BYMONTH=1,2,3',
    days: '1997-03 10 1999-01 10 1999-02 10 1999-03 10 2001-01 10 2001-02 10 2001-03 10 2003-01 10 2003-02 10 2003-03 10',
  },
  {
    name: 'days 1, 100 and 200, every third year',
    page: 128,
    start: '19970101',
    rule: 'FREQ=YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200',
    days: '1997-01 1 1997-04 10 1997-07 19 2000-01 1 2000-04 9 2000-07 18 2003-01 1 2003-04 10 2003-07 19 2006-01 1',
  },
  {
    name: '20th Monday of the year',
    page: 128,
    start: '19970519',
    rule: 'FREQ=YEARLY;BYDAY=20MO',
    days: '1997-05 19 1998-05 18 1999-05 17',
  },
  {
    name: 'Monday of week 20',
    page: 129,
    start: '19970512',
    rule: 'FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO',
    days: '1997-05 12 1998-05 11 1999-05 17',
  },
  {
    name: 'every Thursday in March',
    page: 129,
    start: '19970313',
    rule: 'FREQ=YEARLY;BYMONTH=3;BYDAY=TH',
    days: '1997-03 13,20,27 1998-03 5,12,19,26 1999-03 4,11,18,25',
  },
  {
    name: 'Friday the 13th, its first day taken out',
    page: 129,
    start: '19970902',
    rule: 'FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13',
    more: ['EXDATE;TZID=America/New_York:19970902T090000'],
    days: '1998-02 13 1998-03 13 1998-11 13 1999-08 13 2000-10 13',
  },
  {
    name: 'Saturday after the first Sunday',
    page: 130,
    start: '19970913',
    rule: 'FREQ=MONTHLY;BYDAY=SA;BYMONTHDAY=7,8,9,10,11,12,13',
    days: '1997-09 13 1997-10 11 1997-11 8 1997-12 13 1998-01 10 1998-02 7 1998-03 7 1998-04 11 1998-05 9 1998-06 13',
  },
  {
    name: 'Tuesday after a Monday in November, every 4 years',
    page: 130,
    start: '19961105',
    rule: 'FREQ=YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8',
    days: '1996-11 5 2000-11 7 2004-11 2',
  },
  {
    name: 'third of Tuesday, Wednesday, Thursday',
    page: 130,
    start: '19970904',
    rule: 'FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3',
    days: '1997-09 4 1997-10 7 1997-11 6',
  },
  {
    name: 'second-to-last working day',
    page: 130,
    start: '19970929',
    rule: 'FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2',
    days: '1997-09 29 1997-10 30 1997-11 27 1997-12 30 1998-01 29 1998-02 26 1998-03 30',
  },
  {
    name: 'weeks that begin on Monday',
    page: 131,
    start: '19970805',
    rule: 'FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO',
    days: '1997-08 5,10,19,24',
  },
  {
    name: 'weeks that begin on Sunday',
    page: 131,
    start: '19970805',
    rule: 'FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU',
    days: '1997-08 5,17,19,31',
  },
  {
    name: '30 February is left out',
    page: 132,
    start: '20070115',
    rule: 'FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5',
    days: '2007-01 15,30 2007-02 15 2007-03 15,30',
  },
];

for (const { name, page, start, rule, days, more = [] } of EXAMPLES)
  against({ ...RFC, where: `3.8.5.3, page ${page}` }, `repeats: ${name}`, () => {
    const expected = listed(days);
    const lines = [`DTSTART;TZID=America/New_York:${start}T090000`, ...more, `RRULE:${rule}`];
    const got = daysIn(calendarWith(lines), { from: '1996-01-01' as IsoDate, to: '2007-12-31' as IsoDate });
    // Where the standard writes "forever" it lists the first days; where it ends the rule, all of them.
    const ended = /COUNT|UNTIL/.test(rule) && !name.startsWith('every day in January');
    return { expected, got: (ended ? got : got.slice(0, expected.split(' ').length)).join(' ') };
  });
