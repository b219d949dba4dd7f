/** The dates that matter: a calendar file and a typed list, their chances, errors with their line, and the stages to take along. */
import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import ICAL from 'ical.js';
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';
import { open, withoutPicture } from './walk';

/** Screw on 14 September 2026 or thereabouts: the invented handball case. Levels are not mixed, so that one study is asked by itself. */
const BACK = '#demo=demo-handball&question=back';

const dates = (page: Page): Locator => page.locator('.dates');

const openDates = async (page: Page, appUrl: string): Promise<void> => {
  await withoutPicture(page);
  await open(page, appUrl, BACK);
  const fold = page.getByText('The dates that matter');
  if (!(await fold.isVisible())) await page.getByText('Tell me more', { exact: true }).click();
  await fold.click();
  await expect(dates(page)).toBeVisible();
};

const event = (day: string, name: string, ...more: string[]) =>
  ['BEGIN:VEVENT', `DTSTART;VALUE=DATE:${day}`, `SUMMARY:${name}`, ...more, 'END:VEVENT'].join('\r\n');
const calendar = (...events: string[]) =>
  ['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:-//test//EN', ...events, 'END:VCALENDAR', ''].join('\r\n');

const chooseCalendar = (page: Page, text: string): Promise<void> =>
  dates(page)
    .locator('input[type="file"]')
    .setInputFiles({ name: 'season.ics', mimeType: 'text/calendar', buffer: Buffer.from(text) });

const rows = (page: Page): Locator => dates(page).locator('tbody tr');

test('a calendar file gives dates with weeks and chances, and a typed list adds to them', async ({ page, appUrl }) => {
  await openDates(page, appUrl);
  await chooseCalendar(
    page,
    calendar(
      event('20261205', 'Cup\\, first leg'),
      event('20270306', 'League', 'RRULE:FREQ=WEEKLY;COUNT=3'),
      event('20261212', 'Friendly', 'STATUS:CANCELLED'),
      event('20200101', 'Long ago'),
    ),
  );
  await expect(rows(page)).toHaveCount(4);
  await expect(dates(page)).toContainText('Dates added: 4. Left out: 1 called off, 1 before the start or today.');
  const first = rows(page).first();
  await expect(first).toContainText('Cup, first leg');
  await expect(first).toContainText(/Week \d+, 5 December 2026/);
  // Nothing is pooled, and no study speaks until it is chosen.
  await dates(page).getByLabel('Back means').selectOption('match play');
  await expect(dates(page)).toContainText('Fewer than three comparable studies');
  await expect(first).not.toContainText('%');
  await dates(page).getByLabel('Chances by one study').selectOption('jhk-2021-screw');
  await expect(first).toContainText(/About \d of 10 \(\d+ %\)/);
  await expect(dates(page)).toContainText(/Of 4 dates, \d(\.\d)? are missed on average\./);

  await dates(page).getByLabel('Or type them, one a line').fill('week 30 last game\n2027-05-01 party');
  await dates(page).getByRole('button', { name: 'Add these dates' }).click();
  await expect(rows(page)).toHaveCount(6);
  await expect(dates(page).getByLabel('Or type them, one a line')).toHaveValue('');
  // Later days have no less of a chance.
  const percents = (await rows(page).allTextContents()).map((text) => Number(/\((\d+) %\)/.exec(text)?.[1]));
  expect([...percents].sort((a, b) => a - b)).toEqual(percents);
  expect(Math.max(...percents)).toBeLessThan(100);
});

test('a date is removed by keyboard, and the focus goes on to the next', LONG_RUN, async ({ page, appUrl }) => {
  await openDates(page, appUrl);
  await chooseCalendar(page, calendar(event('20261205', 'first'), event('20261212', 'second')));
  await expect(rows(page)).toHaveCount(2);
  await dates(page).getByRole('button', { name: 'Remove: first' }).focus();
  await page.keyboard.press('Enter');
  await expect(rows(page)).toHaveCount(1);
  await expect(dates(page).getByRole('button', { name: 'Remove: second' })).toBeFocused();
});

const bad: readonly (readonly [string, string, RegExp])[] = [
  ['no calendar', 'hello', /Line 1: The file does not begin with BEGIN:VCALENDAR/],
  ['a day that is not there', calendar(event('20261205', 'good'), event('20260230', 'bad')), /Line 9: This is no day/],
  ['cut off', calendar(event('20261205', 'good')).replace('END:VCALENDAR', ''), /Line 7: The file stops here/],
  [
    'a rule without end',
    calendar(event('20261205', 'x', 'RRULE:FREQ=SECONDLY')),
    /Line 7: The date repeats more often/,
  ],
  ['too large', 'x'.repeat(2 * 1024 * 1024 + 1), /at most 2 MB/],
];
// Each way of being wrong is held in tests/unit/cases/fixtures: here that the page refuses the whole, from the first and from the last line.
for (const [name, text, message] of process.env.UNDERFOOT_LONG ? bad : bad.slice(0, 1)) {
  test(`a file that cannot be used is refused whole, with line and reason: ${name}`, async ({ page, appUrl }) => {
    await openDates(page, appUrl);
    await chooseCalendar(page, text);
    const alert = dates(page).getByRole('alert');
    await expect(alert).toContainText('Nothing was added');
    await expect(alert).toContainText(message);
    await expect(rows(page)).toHaveCount(0);
  });
}

test(
  'a typed list with a bad line adds nothing, keeps what was typed and says which line',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await openDates(page, appUrl);
    const list = dates(page).getByLabel('Or type them, one a line');
    await list.fill('2026-12-05 good\nnext week');
    await dates(page).getByRole('button', { name: 'Add these dates' }).click();
    await expect(dates(page).getByRole('alert')).toContainText('Line 2: The line does not begin with a date or a week');
    await expect(rows(page)).toHaveCount(0);
    await expect(list).toHaveValue('2026-12-05 good\nnext week');
  },
);

test(
  'stages are taken along in weeks without a date, and for a calendar when dates are asked for',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await openDates(page, appUrl);
    const save = async () => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        dates(page).getByRole('button', { name: 'Save the file' }).click(),
      ]);
      return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
    };
    await expect(dates(page).getByLabel('In weeks, as a list (no dates)')).toBeChecked();
    const weeks = await save();
    expect(weeks.name).toBe('underfoot-stages.txt');
    expect(weeks.text).toMatch(/Week \d+ to \d+: /);
    expect(weeks.text).not.toMatch(/\b20\d\d\b/);

    await dates(page).getByLabel('With real dates, for a calendar').check();
    const file = await save();
    expect(file.name).toBe('underfoot-stages.ics');
    const events = new ICAL.Component(ICAL.parse(file.text))
      .getAllSubcomponents('vevent')
      .map((e) => new ICAL.Event(e));
    expect(events.length).toBeGreaterThan(4);
    for (const each of events) {
      expect(each.startDate.isDate).toBe(true);
      expect(each.startDate.compare(each.endDate)).toBe(-1);
      expect(each.description).toContain('not a treatment plan');
    }
    expect(file.text).not.toContain('handball');
  },
);

for (const [width, height] of [
  [1440, 900],
  [390, 844],
] as const)
  test(
    `with dates and with errors there is no violation and no sideways scroll at ${width}`,
    width === 390 ? {} : LONG_RUN,
    async ({ page, appUrl }) => {
      await page.setViewportSize({ width, height });
      await openDates(page, appUrl);
      await chooseCalendar(page, calendar(event('20261205', 'first'), event('20261212', `${'long'.repeat(14)}`)));
      await expect(rows(page)).toHaveCount(2);
      await dates(page).getByLabel('Or type them, one a line').fill('soon');
      await dates(page).getByRole('button', { name: 'Add these dates' }).click();
      await expect(dates(page).getByRole('alert')).toContainText('Line 1');
      expect(await violations(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    },
  );
