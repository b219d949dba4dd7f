/** The handed page: one page on both papers for every demo case, its text whole, the draft mark on, a tick before print. */
import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { DEMOS } from '../../src/pages/places';
import { expect, LONG_RUN, test } from './fixtures';
import { framesLater, open, withoutPicture } from './walk';

/** Points (1/72 inch): ISO 216 A4 is 210 x 297 mm, US Letter 8.5 x 11 inches. */
const PAPERS = [
  { label: 'A4', width: (210 / 25.4) * 72, height: (297 / 25.4) * 72 },
  { label: 'US Letter', width: 612, height: 792 },
];

const readPdf = async (bytes: Uint8Array) => {
  const document = await getDocument({ data: new Uint8Array(bytes), isEvalSupported: false }).promise;
  const first = await document.getPage(1);
  const { items } = await first.getTextContent();
  const text = items
    .map((item) => ('str' in item ? item.str : ''))
    .join(' ')
    .replace(/\s+/g, ' ');
  const [, , width = 0, height = 0] = first.view;
  return { pages: document.numPages, text, width, height };
};

/**
 * European Commission, Guideline on the readability of the labelling and package leaflet of medicinal products for human use,
 * revision 1 (12 January 2009): 9 points "as measured in font Times New Roman", lines at least 3 mm apart. What is measured in a
 * type is the height of its small letters: of that one's at most 0.46 of its size (from memory: 916 of 2048 units).
 */
const LEAST_X_HEIGHT_MM = ((9 * 25.4) / 72) * 0.46;
const LEAST_LINE_MM = 3;

for (const demo of DEMOS) {
  test(
    `${demo} is one page on either paper, and nothing of it is cut`,
    demo === 'demo-handball' ? {} : LONG_RUN,
    async ({ page, appUrl }) => {
      test.setTimeout(120_000);
      await page.setViewportSize({ width: 1280, height: 900 });
      await open(page, appUrl, `#view=hand&demo=${demo}`);
      for (const paper of PAPERS) {
        await page.emulateMedia({ media: 'screen' });
        await page.getByRole('combobox', { name: 'Paper' }).selectOption({ label: paper.label });
        await expect(page.locator('.sheet canvas[data-drawn="true"]')).toBeVisible({ timeout: 40_000 });
        await page.emulateMedia({ media: 'print' });
        const cut = await page.locator('.sheet').evaluate((sheet) => {
          const frame = sheet.getBoundingClientRect();
          const parts = [...sheet.querySelectorAll('h1, h2, p, li, canvas')].map((part) =>
            part.getBoundingClientRect(),
          );
          return {
            below: Math.max(...parts.map((part) => part.bottom)) - frame.bottom,
            right: Math.max(...parts.map((part) => part.right)) - frame.right,
            figureMm: (sheet.querySelector('canvas')?.getBoundingClientRect().height ?? 0) / (96 / 25.4),
          };
        });
        expect(cut.below).toBeLessThanOrEqual(1);
        expect(cut.right).toBeLessThanOrEqual(1);
        expect(cut.figureMm).toBeGreaterThan(35);
        const letters = await page.locator('.sheet').evaluate((sheet) => {
          const mm = 25.4 / 96;
          return [...sheet.querySelectorAll('*')]
            .filter((each) =>
              [...each.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim() !== ''),
            )
            .map((each) => {
              const probe = document.createElement('span');
              probe.style.cssText = 'display: inline-block; width: 100ex';
              each.append(probe);
              const xHeight = probe.getBoundingClientRect().width / 100;
              probe.remove();
              return {
                text: each.textContent,
                xHeightMm: xHeight * mm,
                lineMm: Number.parseFloat(getComputedStyle(each).lineHeight) * mm,
              };
            });
        });
        expect(letters.length).toBeGreaterThan(20);
        expect(letters.filter((each) => each.xHeightMm < LEAST_X_HEIGHT_MM)).toEqual([]);
        expect(letters.filter((each) => each.lineMm < LEAST_LINE_MM)).toEqual([]);
        const sides = await page.locator('.sheet-side').textContent();
        const warnings = await page.locator('.sheet-warnings li').allTextContents();
        const pdf = await readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: false }));
        expect(pdf.pages).toBe(1);
        expect(Math.abs(pdf.width - paper.width)).toBeLessThan(1.5);
        expect(Math.abs(pdf.height - paper.height)).toBeLessThan(1.5);
        const bare = (text: string) => text.replace(/\s+/g, '');
        expect(bare(pdf.text)).toContain(bare(sides ?? 'no side'));
        expect(warnings.length).toBeGreaterThan(0);
        for (const warning of warnings) expect(bare(pdf.text)).toContain(bare(warning));
        expect(pdf.text).toMatch(/draft/i);
        expect(pdf.text).not.toContain('Print');
        for (let number = 1; number <= 5; number += 1) expect(pdf.text).toContain(`${number}.`);
      }
    },
  );
}

test('a draft is printed only after somebody says that they have read it', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=hand');
  const print = page.getByRole('button', { name: 'Print' });
  await expect(print).toBeDisabled();
  await page.getByLabel('I have read this page').check();
  await expect(print).toBeEnabled();
});

test('a band that comes late does not take the figure off the page', LONG_RUN, async ({ page, appUrl }) => {
  test.setTimeout(120_000);
  // Whatever asks a worker for bands waits until the figure stands: however quick the machine, the band comes late.
  await page.addInitScript(() => {
    const given = Worker.prototype.postMessage as (message: unknown) => void;
    const held: (() => void)[] = [];
    const late = { asked: 0, letGo: () => held.splice(0).map((send) => send()) };
    Object.assign(window, { late });
    Object.assign(Worker.prototype, {
      postMessage(this: Worker, message: { request?: { bands: string } }) {
        if ((message.request?.bands ?? 'none') === 'none') return given.call(this, message);
        late.asked += 1;
        held.push(() => given.call(this, message));
      },
    });
  });
  const asked = (): Promise<number> => page.evaluate(() => Reflect.get(window, 'late').asked);
  await open(page, appUrl, '#view=hand&demo=demo-handball');
  const canvas = page.locator('.sheet canvas');
  await expect(canvas).toHaveAttribute('data-drawn', 'true', { timeout: 40_000 });
  await expect(canvas).toBeVisible();
  await expect.poll(asked).toBe(1);
  const changes = await canvas.evaluateHandle((figure) => {
    const seen: string[] = [];
    new MutationObserver((all) => seen.push(...all.map(({ attributeName }) => attributeName ?? ''))).observe(figure, {
      attributes: true,
    });
    return seen;
  });
  await page.evaluate(() => Reflect.get(window, 'late').letGo());
  // Once the first band is part of what is shown, the rest is asked for: the figure has had its occasion to go.
  await expect.poll(asked, { timeout: 40_000 }).toBe(2);
  await framesLater(page);
  expect(await changes.jsonValue()).toEqual([]);
  await expect(canvas).toBeVisible();
  await expect(page.locator('.sheet-key')).toBeVisible();
});

test('a still is a PNG of 1920 x 1080 drawn off screen', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#view=say&question=why');
  await expect(page.locator('.stage[data-ready]')).toBeVisible();
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 40_000 }),
    page.getByRole('button', { name: 'Download a still' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('underfoot-why.png');
  const bytes = readFileSync(await download.path());
  // PNG: eight bytes of signature, then IHDR with width and height as big-endian numbers (W3C PNG, 5.2 and 11.2.1).
  expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([1920, 1080]);
});
