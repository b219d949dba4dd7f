/** Stages and reviews to take along, from the real content and invented cases. */
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { type CaseFile, withStageNotes } from '../../../src/cases';
import { readCalendar } from '../../../src/cases/fixtures/read-calendar';
import type { Explanation } from '../../../src/explain';
import { type CaseId, type InjuryId, idOf, READERS, type Reader, type StageId } from '../../../src/ids';
import { addWeeks } from '../../../src/recovery';
import { type Plan, planCalendar, planOf, weekListText } from '../../../src/telling';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingNamed } from '../../tools/explained';
import { readingOf } from '../../tools/reading-grade';

const STAMP = '2026-11-29T22:16:00.000Z';
const START = '2026-10-05' as IsoDate;
const stated = (on?: IsoDate) =>
  caseOf(
    ['bone', 'metatarsal5'],
    ['place', { by: 'region', region: idOf('mt5-zone-2') }],
    ['injury', idOf<InjuryId>('mt5-metaphyseal')],
    ['treatment', { option: idOf('cast-nwb'), ...(on === undefined ? {} : { on }) }],
  );
const dated = explained(stated(START));
const undated = explained(stated());
const plan = planOf(content, dated, 'patient');

const eventsOf = (text: string | null) =>
  new ICAL.Component(ICAL.parse(text ?? '')).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
const calendar = (explanation: Explanation, given: Plan = planOf(content, explanation, 'patient')) =>
  planCalendar(explanation, given, STAMP);

describe('the plan', () => {
  test('has every stage of the treatment with its weeks, and a review where one or more of them end', () => {
    expect(plan.entries.map(({ kind, when, name }) => `${kind}: ${when}: ${name}`)).toEqual([
      'stage: Week 0 to 6: let it settle',
      'review: Week 6: a usual time to look at the foot again',
      'stage: Week 6 to 8: put more weight on it',
      'review: Week 8: a usual time to look at the foot again',
      'stage: Week 8 to 10: own shoes',
      'stage: Week 8 to 12: get strong and steady',
      'review: Week 10: a usual time to look at the foot again',
      'review: Week 12: a usual time to look at the foot again',
      'stage: Week 13 to 15: run again',
      'stage: Week 13 to 22: the moves of your sport',
      'review: Week 15: a usual time to look at the foot again',
      'review: Week 22: a usual time to look at the foot again',
      'stage: No usual week known: back to all you did',
    ]);
  });

  test('says at a review what opens the next stage', () => {
    const review = plan.entries.find(({ key }) => key === 'review 10');
    const record = content.stages.find(({ id }) => id === 'load-fully');
    for (const { what } of record?.opensNext ?? []) expect(review?.lines.join('\n')).toContain(what.patient);
    expect(record?.opensNext.length).toBeGreaterThan(0);
  });

  test.each(READERS)('has the same weeks and days for %s', (reader) => {
    const facts = ({ entries }: Plan) =>
      entries.map(({ key, fromWeek, toWeek, from, until }) => [key, fromWeek, toWeek, from, until]);
    expect(facts(planOf(content, dated, reader))).toEqual(facts(plan));
  });

  test('is easy to read', () => {
    const text = plan.entries
      .flatMap(({ lines }) => lines)
      .concat(plan.cautions)
      .join(' ')
      .replaceAll('- ', '');
    expect(readingOf(text).words).toBeGreaterThan(100);
    expect(readingOf(text).grade).toBeLessThanOrEqual(8);
  });
});

describe('weeks that the clinic set itself', () => {
  const PROTECT = idOf<StageId>('protect');
  const set = (file: CaseFile) => withStageNotes(file, PROTECT, { weeks: { from: 0, to: 4 }, note: 'zzqx' });
  const own = explained(set(stated(START)));

  test('go before the usual ones in the plan, say whose they are, and move the review', () => {
    const { entries } = planOf(content, own, 'patient');
    const protect = entries.find(({ key }) => key === 'stage protect');
    expect(protect).toMatchObject({ fromWeek: 0, toWeek: 4, from: START, until: addWeeks(START, 4) });
    expect(protect?.lines.at(-1)).toBe('Where the weeks come from: the clinic’s own.');
    const reviews = entries.filter(({ kind }) => kind === 'review').map(({ fromWeek }) => fromWeek);
    expect(reviews).toContain(4);
    expect(reviews).not.toContain(6);
    expect(entries.find(({ key }) => key === 'review 4')?.lines.at(-1)).toContain('as the clinic set it');
    // The other stages keep theirs, with their source.
    expect(entries.find(({ key }) => key === 'stage load-partly')).toMatchObject({ fromWeek: 6, toWeek: 8 });
  });

  test('stand in the calendar file on their days, and replace the event of the usual weeks', () => {
    const named = (explanation: Explanation) =>
      eventsOf(calendar(explanation)).filter(({ summary }) => summary.includes('let it settle'));
    const [mine] = named(own);
    const [usual] = named(dated);
    expect(mine?.endDate.toString()).toBe(addWeeks(START, 4));
    expect(mine?.uid).toBe(usual?.uid);
    expect(calendar(own)).not.toContain('zzqx');
  });

  test('are told beside the usual ones, and not in their place', () => {
    const finding = findingNamed(own, 'back.stage.1');
    const text = (reader: Reader) =>
      finding === undefined ? '' : plainText(wordFinding(content, own, finding, reader));
    for (const reader of READERS) expect(text(reader)).toMatch(/0 to 6.*The clinic’s own weeks: .*0 to 4/);
  });

  test('without a start they have weeks and no days', () => {
    const { entries } = planOf(content, explained(set(stated())), 'patient');
    expect(entries.find(({ key }) => key === 'stage protect')).toMatchObject({ toWeek: 4, from: null, until: null });
  });
});

describe('the list of weeks', () => {
  test('tells no day, no case and no sign of one', () => {
    const text = weekListText(plan);
    expect(text).not.toMatch(/\d{4}|test|January|October|@/);
    expect(text).toBe(weekListText(planOf(content, undated, 'patient')));
    expect(text).toContain('Week 6 to 8: put more weight on it');
    expect(text).toContain(plan.cautions[0] ?? '?');
  });
});

describe('the calendar', () => {
  test('has what has a day: all-day events, each from its first day to the day after its last', () => {
    const events = eventsOf(calendar(dated));
    const known = plan.entries.filter(({ from }) => from !== null);
    expect(events.map(({ summary }) => summary)).toEqual(known.map(({ short }) => short));
    events.forEach(({ startDate, endDate }, i) => {
      const entry = known[i];
      expect(startDate.toString()).toBe(addWeeks(START, entry?.fromWeek ?? Number.NaN));
      const end =
        entry?.toWeek == null
          ? addWeeks(START, (entry?.fromWeek ?? Number.NaN) + 1 / 7)
          : addWeeks(START, entry.toWeek);
      expect(endDate.toString()).toBe(end);
    });
    expect(events.length).toBe(12);
  });

  test('warns on every event, and names no case', () => {
    const text = calendar(dated) ?? '';
    for (const { description } of eventsOf(text))
      for (const caution of plan.cautions) expect(description).toContain(caution);
    expect(plan.cautions[0]).toMatch(/not a treatment plan/);
    expect(text).not.toContain('test');
  });

  test('there is none before a start is known', () => {
    expect(calendar(undated)).toBeNull();
  });

  test('the same case gives the same file; another case, start or stage another event', () => {
    const uids = (explanation: Explanation) => eventsOf(calendar(explanation)).map(({ uid }) => uid);
    expect(calendar(dated)).toBe(calendar(dated));
    const later = explained(stated(addWeeks(START, 1)));
    const other = { ...dated, caseId: idOf<CaseId>('other') };
    const all = [...uids(dated), ...uids(later), ...uids(other)];
    expect(new Set(all).size).toBe(all.length);
    const study = planCalendar(dated, planOf(content, dated, 'study'), STAMP);
    expect(eventsOf(study).map(({ uid }) => uid)).toEqual(uids(dated));
  });

  test('every line is at most 75 octets and ends in CRLF', () => {
    for (const reader of READERS) {
      const text = planCalendar(dated, planOf(content, dated, reader), STAMP) ?? '';
      expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      for (const line of text.split('\r\n')) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    }
  });

  test('our own reader takes it', () => {
    const bytes = new TextEncoder().encode(calendar(dated) ?? '');
    const read = readCalendar(bytes, { from: START, to: addWeeks(START, 104), zone: 'UTC', unnamed: '-' });
    expect(read).toMatchObject({ ok: true, leftOut: { cancelled: 0, before: 0, after: 0, more: 0 } });
    expect(read.ok && read.fixtures.length).toBe(12);
  });

  test('over the end of a year and a leap day the days are seven times the weeks away', () => {
    const start = '2027-12-20' as IsoDate;
    const events = eventsOf(calendar(explained(stated(start))));
    expect(events.map(({ startDate }) => startDate.toString()).slice(0, 4)).toEqual([
      '2027-12-20',
      '2028-01-31',
      '2028-01-31',
      '2028-02-14',
    ]);
    expect(events.at(-1)?.startDate.toString()).toBe('2028-05-22');
  });
});
