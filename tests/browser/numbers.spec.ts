/** Pictures of numbers say what the words and tables beside them say, keep their letters readable on narrow pages, and print. */
import type { Locator, Page } from '@playwright/test';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { readContent } from '../../src/cli/read-content';
import { expect, LONG_RUN, test } from './fixtures';
import { framesLater, open, withoutBands, withoutPicture } from './walk';

/** What is looked at in the browser's own figures: the size of its letters on the screen, CSS px. */
const letterPx = (drawing: Locator): Promise<number> =>
  drawing.evaluate((svg) => {
    const text = svg.querySelector('text');
    if (text === null || !(svg instanceof SVGSVGElement)) return Number.NaN;
    return Number.parseFloat(getComputedStyle(text).fontSize) * (svg.getScreenCTM()?.a ?? Number.NaN);
  });

const studies = readContent().studies;

const openStudies = async (page: Page, appUrl: string) => {
  await withoutPicture(page);
  await withoutBands(page);
  await open(page, appUrl, '#demo=demo-handball&question=options');
  await page.getByRole('button', { name: 'Side by side, with the studies' }).click();
  return page.locator('table.studies tbody tr:not(.trial-row)');
};

test('people are squares where at least twenty were counted, as many and as many solid as the table says', async ({
  page,
  appUrl,
}) => {
  const rows = await openStudies(page, appUrl);
  const read = await rows.evaluateAll((all) =>
    all.map((row) => {
      const cell = row.querySelectorAll('td')[2];
      const drawn = [...(cell?.querySelectorAll('.people-squares path') ?? [])];
      return {
        said:
          cell?.textContent
            ?.match(/(\d+) of (\d+)/)
            ?.slice(1)
            .map(Number) ?? null,
        squares: drawn.map((path) => (path.getAttribute('d') ?? '').split('M').length - 1),
      };
    }),
  );
  const counted = read.flatMap(({ said, squares }) => (said === null ? [] : [{ said, squares }]));
  expect(counted.length).toBeGreaterThan(8);
  for (const { said, squares } of counted) {
    const [count = 0, of = 0] = said;
    expect(squares).toEqual(of < 20 ? [] : [of, count]);
  }
  expect(counted.some(({ said }) => (said[1] ?? 0) < 20)).toBe(true);
  expect(read.filter(({ said }) => said === null).every(({ squares }) => squares.length === 0)).toBe(true);
  // Looney 2020, as printed: no nonunion among 41.
  expect(studies.find(({ id }) => id === 'looney-2020')?.event).toMatchObject({ count: 0, of: 41 });
  expect(counted).toContainEqual({ said: [0, 41], squares: [41, 0] });
});

test('what studies compare is drawn where the table says, and a line across 0 is told as no clear difference', async ({
  page,
  appUrl,
}) => {
  await openStudies(page, appUrl);
  const table = await page.locator('table.compared tbody tr').evaluateAll((rows) =>
    rows.map((row) => {
      const text = row.querySelector('td:last-child')?.textContent?.replaceAll('−', '-') ?? '';
      return {
        figures:
          text
            .match(/[+-]?\d+/g)
            ?.slice(0, 3)
            .map(Number) ?? [],
        apart: text.includes('Apart.'),
      };
    }),
  );
  const drawn = await page.locator('svg.comparisons').evaluate((svg) => {
    const at = (text: string): number =>
      Number([...svg.querySelectorAll('text')].find((each) => each.textContent === text)?.getAttribute('x'));
    const [zero, twenty] = [at('0'), at('+20')];
    const inHundred = (x: number): number => Math.round((20 * (x - zero)) / (twenty - zero));
    const rings = [...svg.querySelectorAll('circle')].map((ring) => inHundred(Number(ring.getAttribute('cx'))));
    const lines = [...svg.querySelectorAll('.range-people')].map((line) => {
      const [, from = '', to = ''] = line.getAttribute('d')?.match(/^M([\d.]+) [\d.]+H([\d.]+)$/) ?? [];
      return [inHundred(Number(from)), inHundred(Number(to))];
    });
    return rings.map((ring, i) => [ring, ...(lines[i] ?? [])]);
  });
  expect(drawn).toEqual(table.map(({ figures }) => figures));
  expect(table.length).toBeGreaterThan(2);
  for (const { figures, apart } of table) {
    const [, low = 0, high = 0] = figures;
    expect(apart).toBe(low > 0 || high < 0);
  }
  // Mologne 2005: 8 of 18 failed in a cast and 1 of 19 with a screw, 39 more of 100; both agree in significance with its print.
  expect(table[0]).toMatchObject({ apart: true });
  expect(table[0]?.figures[0]).toBe(Math.round(100 * (8 / 18 - 1 / 19)));
});

test('the rule of weeks has a ring for each average of a study, where its week is', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#demo=demo-handball&question=back');
  const rule = page.locator('.weeks svg');
  // Mologne 2005 (screw, sport 8.0 weeks) and Porter 2005 (7.5 weeks), the two of the first row.
  const scale = await rule.evaluate((svg) => {
    const weeks = [...svg.querySelectorAll('text')].filter((text) => /^\d+$/.test(text.textContent ?? ''));
    const at = (week: string): number =>
      Number(weeks.find((text) => text.textContent === week)?.getAttribute('x') ?? Number.NaN);
    const rings = [...svg.querySelectorAll('.range-ring')].map((ring) => ({
      x: Number(ring.getAttribute('cx')),
      y: Number(ring.getAttribute('cy')),
    }));
    const top = Math.min(...rings.map(({ y }) => y));
    return rings.filter(({ y }) => y === top).map(({ x }) => (8 * (x - at('0'))) / (at('8') - at('0')));
  });
  expect(scale.toSorted((a, b) => a - b).map((week) => Math.round(10 * week) / 10)).toEqual([7.5, 8]);
  await page.getByText('The weeks and their studies').click();
  await expect(page.locator('li:visible').filter({ hasText: 'Porter' }).first()).toBeVisible();
});

const SIZES = [
  [1440, 900],
  [1024, 768],
  [390, 844],
  [320, 640],
] as const;
for (const [question, drawing] of [
  ['back', '.weeks svg'],
  ['how', '.strip'],
] as const) {
  test(
    `letters in the drawing of "${question}" can be read at every width`,
    question === 'back' ? {} : LONG_RUN,
    async ({ page, appUrl }) => {
      await withoutPicture(page);
      await withoutBands(page);
      await page.setViewportSize({ width: 320, height: 640 });
      await open(page, appUrl, `#demo=demo-handball&question=${question}`);
      if (question === 'how') await page.getByText('Forces and stress along the bone').click();
      const drawn = page.locator(drawing).first();
      for (const [width, height] of SIZES.toReversed()) {
        await page.setViewportSize({ width, height });
        await framesLater(page);
        // look.md, section 4: captions and legends at least 13 px.
        await expect.poll(() => letterPx(drawn), { message: `${width} x ${height}` }).toBeGreaterThanOrEqual(12.9);
      }
    },
  );
}

test('what is printed of a question is its words and its numbers, black on white', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#demo=demo-handball&question=back');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.weeks svg')).toBeVisible();
  await expect(page.locator('.rule')).toBeHidden();
  await expect(page.locator('.note .fold:not([open])').first()).toBeHidden();
  await open(page, appUrl, '#demo=demo-handball&question=where');
  await expect(page.locator('.note .hatch').first()).toBeHidden();
  await open(page, appUrl, '#demo=demo-handball&question=back');
  const inks = await page
    .locator('.weeks svg')
    .evaluate((svg) => [...svg.querySelectorAll('path, circle')].map((each) => getComputedStyle(each).stroke));
  expect(new Set(inks)).toEqual(new Set(['rgb(0, 0, 0)']));
});

test('the studies are printed to their last row, their squares with them', LONG_RUN, async ({ page, appUrl }) => {
  const rows = await openStudies(page, appUrl);
  // Words for those who cannot see an underline are not printed.
  const last = await rows.last().evaluate((row) => {
    const copy = row.cloneNode(true) as Element;
    for (const unseen of copy.querySelectorAll('.unseen')) unseen.remove();
    return copy.textContent ?? '';
  });
  expect(last).not.toBe('');
  const bytes = await page.pdf({ format: 'A4', printBackground: false });
  const pdf = await getDocument({ data: new Uint8Array(bytes), isEvalSupported: false }).promise;
  const pages = await Promise.all(
    Array.from({ length: pdf.numPages }, async (_, i) => {
      const { items } = await (await pdf.getPage(i + 1)).getTextContent();
      return items.map((item) => ('str' in item ? item.str : '')).join('');
    }),
  );
  const bare = (text: string): string => text.replace(/\s+/g, '');
  expect(bare(pages.join(''))).toContain(bare(last));
  expect(pages.every((text) => text.trim() !== '')).toBe(true);
});
