/** The foot itself: its shape, how it is held, its measures, what can be taken for a fracture, and the files to take along. */
import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import * as v from 'valibot';
import { assembleFoot, DEFAULT_FOOT, decodeGlb } from '../../src/anatomy';
import { radiographicAngles } from '../../src/anatomy/angles';
import { anglesSchema } from '../../src/anatomy/angles/schema';
import { readShape } from '../../src/cli/read-shape';
import { expect, LONG_RUN, test } from './fixtures';

const FINE_MODEL = new URL('../../public/models/foot-right-fine.glb', import.meta.url);

const READY = '.stage[data-ready="true"]';
const frames = async (page: Page): Promise<number> => Number(await page.locator('.stage').getAttribute('data-frames'));
const openFoot = async (page: Page, url: string, reader = 'patient'): Promise<void> => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(`${url}#question=where&reader=${reader}`);
  await page.waitForSelector(READY);
  await page.getByText('The foot itself: shape, pose, measures').click();
  await expect(page.getByRole('heading', { name: 'The shape of the foot' })).toBeVisible();
};
const picture = (page: Page) => page.locator('.stage-picture').screenshot();

test('a slider moves the picture as a what-if, by keyboard, and one button takes it back', async ({ page, appUrl }) => {
  // Two feet are built and measured, beside a picture that a browser without a graphics card draws with the same processor.
  test.slow();
  await openFoot(page, appUrl);
  const current = page.locator('.measures[data-state="current"]');
  await expect(current).toBeAttached({ timeout: 45_000 });
  const before = await picture(page);
  const slider = page.getByRole('slider', { name: 'Arch' });
  await slider.focus();
  await page.keyboard.press('End');
  await expect(slider).toHaveAttribute('aria-valuetext', 'high');
  await expect(page.locator('.what-if-banner')).toBeVisible();
  await expect.poll(async () => Buffer.compare(before, await picture(page)) === 0, { timeout: 20_000 }).toBe(false);
  // The measure follows: a high arch has a steeper heel bone.
  const pitch = page.getByRole('button', { name: /tilt of the heel bone/ });
  await expect(current).toBeAttached({ timeout: 60_000 });
  await expect(pitch).toContainText(/2[6-9]|3\d/);
  await page.getByRole('button', { name: 'Back to the foot of the case' }).click();
  await expect(page.locator('.what-if-banner')).toBeHidden();
  await expect(pitch).toContainText(/2[0-5] degrees/, { timeout: 60_000 });
});

test(
  'a measure is drawn with its value, its usual values and their sources, a limit as a limit',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await openFoot(page, appUrl);
    const lines = page.locator('.stage-picture svg text', { hasText: /^-?\d+°$/ });
    await expect(lines).toHaveCount(0);
    const button = page.getByRole('button', { name: /bend along the inner arch/ });
    await button.click();
    await expect(button).toHaveAttribute('aria-pressed', 'true');
    await page.waitForSelector(READY);
    await expect(lines).toHaveCount(1);
    const measures = page.locator('.measures');
    await expect(measures).toContainText('-4 degrees to 4 degrees');
    await expect(measures).toContainText('(seen in its abstract)');
    // Words of the trade are for those who study it.
    await expect(measures).not.toContainText('How well readers agree:');
    await expect(measures).not.toContainText('talus');
    await button.click();
    await expect(lines).toHaveCount(0);
    // A limit is told as a limit and never as a usual value.
    await page.getByRole('button', { name: /outward set of the big toe/ }).click();
    await expect(measures).toContainText('below 15 degrees: adults.');
    await expect(measures).toContainText('15.7 degrees on average: women.');
  },
);

test(
  'a foot of another length is fitted again, but not under the hand that holds the slider',
  LONG_RUN,
  async ({ page, appUrl }) => {
    // A foot is built and measured beside a picture drawn by the same processor: alone 1 to 3 minutes on a busy machine of two cores.
    test.setTimeout(300_000);
    await openFoot(page, appUrl);
    /** World mm of a pixel, by the scale bar. */
    const scaleMm = (): Promise<number> =>
      page.locator('.stage-scale').evaluate((bar) => {
        const px = Number(bar.querySelector('svg')?.getAttribute('width')) - 2;
        return Number.parseFloat(bar.textContent ?? '') / px;
      });
    // A press of the key, so that the whole foot is what the picture shows.
    const near = await scaleMm();
    await page.locator('.stage-picture').press('1');
    await expect.poll(scaleMm).toBeGreaterThan(1.5 * near);
    const usual = await scaleMm();
    const slider = page.getByRole('slider', { name: 'Length of the foot' });
    await slider.scrollIntoViewIfNeeded();
    const box = await slider.boundingBox();
    if (box === null) throw new Error('no slider');
    const before = await frames(page);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width - 2, box.y + box.height / 2, { steps: 5 });
    await expect.poll(() => frames(page), { timeout: 30_000 }).toBeGreaterThan(before);
    await page.waitForTimeout(2500);
    expect(await scaleMm()).toBeCloseTo(usual, 3);
    await page.mouse.up();
    await expect.poll(async () => (await scaleMm()) / usual, { timeout: 90_000 }).toBeGreaterThan(1.15);
  },
);

/** Lines of the chosen measure and the picture they lie in, px of the screen. */
const linesOnScreen = (page: Page): Promise<{ lines: DOMRect[]; picture: DOMRect }> =>
  page.evaluate(() => {
    const box = (each: Element | null) => each?.getBoundingClientRect().toJSON() as DOMRect;
    const lines = [...document.querySelectorAll('.stage-overlay path[stroke-width="2.2"]')].map(box);
    return { lines, picture: box(document.querySelector('.stage-picture')) };
  });

test('on a phone a chosen measure is brought into view, whichever it is', LONG_RUN, async ({ page, appUrl }) => {
  test.setTimeout(180_000);
  await page.setViewportSize({ width: 390, height: 844 });
  await openFoot(page, appUrl);
  await expect(page.locator('.measures[data-state="current"]')).toBeAttached({ timeout: 60_000 });
  for (const name of [/^tilt of the heel bone/, /^outward set of the big toe/, /^heel under the leg/]) {
    const button = page.getByRole('button', { name });
    // Where somebody reads who chooses from the list: the picture is not in sight.
    await button.scrollIntoViewIfNeeded();
    await button.click();
    await expect(button).toHaveAttribute('aria-pressed', 'true');
    await expect(page.locator('.stage-overlay path[stroke-width="2.2"]')).toHaveCount(2);
    await page.waitForSelector(READY);
    await expect
      .poll(
        async () => {
          const { lines, picture } = await linesOnScreen(page);
          const [top, bottom] = [Math.max(48, picture.top), Math.min(844, picture.bottom)];
          return lines.every(
            (line) =>
              line.left >= picture.left && line.right <= picture.right && line.top >= top && line.bottom <= bottom,
          );
        },
        { message: name.source },
      )
      .toBe(true);
  }
});

test('those who study see how a measure is drawn and how well readers agree', LONG_RUN, async ({ page, appUrl }) => {
  await openFoot(page, appUrl, 'study');
  await page.getByRole('button', { name: /lateral talus-first metatarsal angle/ }).click();
  const measures = page.locator('.measures');
  await expect(measures).toContainText('Tilt of the axis of the talus less that of the first metatarsal');
  await expect(measures).toContainText('How well readers agree:');
});

test(
  'what is shown is what the fine surface of the shipped foot measures, in the list and in the picture',
  LONG_RUN,
  async ({ page, appUrl }) => {
    const model = decodeGlb(new Uint8Array(await readFile(FINE_MODEL)));
    const foot = assembleFoot(readShape(), DEFAULT_FOOT, 'standing', { ...model, level: 'fine' });
    const measures = v.parse(anglesSchema, readShape().angles);
    await openFoot(page, appUrl);
    await expect(page.locator('.measures[data-state="current"]')).toBeAttached({ timeout: 45_000 });
    for (const { id, value, unit } of radiographicAngles(foot)) {
      const name = measures.find((measure) => measure.id === id)?.name ?? id;
      const figure = unit === 'deg' ? Math.round(value) : unit === 'share' ? Math.round(100 * value) : value.toFixed(1);
      const button = page.locator('.measure', { has: page.getByText(name, { exact: true }) });
      await expect(button.locator('.number'), id).toHaveText(
        new RegExp(`^${String(figure).replace(/^-0$/, '0')} (degrees|mm|%)$`),
      );
    }
    const button = page.getByRole('button', { name: /^tilt of the heel bone/ });
    await button.click();
    const inList = (await button.locator('.number').textContent())?.replace(' degrees', '°');
    await expect(page.locator('.stage-picture svg text', { hasText: /^-?\d+°$/ })).toHaveText(String(inList));
  },
);

const LEAVING: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['closing the fold', (page) => page.getByText('The foot itself: shape, pose, measures').click()],
  ['asking another question', (page) => page.getByRole('link', { name: /How did it happen/ }).click()],
  ['opening another page', (page) => page.getByRole('link', { name: 'Say it' }).click()],
];
for (const [how, leave] of LEAVING) {
  test(`${how} leaves no pose, no extra bone and no lines in the picture`, LONG_RUN, async ({ page, appUrl }) => {
    await openFoot(page, appUrl);
    const texts = page.locator('.stage-picture svg text');
    await page.getByRole('button', { name: /tilt of the heel bone/ }).click();
    await expect(texts.filter({ hasText: /^-?\d+°$/ })).toHaveCount(1, { timeout: 45_000 });
    await page.getByRole('radio', { name: 'Heel raised' }).check();
    // Such films are taken standing: no value of another pose beside their norms.
    await expect(page.getByText('Such films are taken standing.')).toBeVisible();
    await page.getByRole('button', { name: 'an extra bone behind the ankle' }).click();
    const caption = page.locator('.stage figcaption');
    await expect(caption).toContainText('Heel raised.', { timeout: 45_000 });
    const inWords = page.locator('#picture-words');
    await expect(inWords).toContainText('Heel raised. Also drawn, and not a break: an extra bone behind the ankle.');
    await expect(texts.filter({ hasText: 'An extra bone behind the ankle' })).toHaveCount(1);
    await expect(texts.filter({ hasText: /^-?\d+°$/ })).toHaveCount(0);
    await leave(page);
    await expect(caption).not.toContainText('Heel raised.');
    await expect(inWords).not.toContainText('Also drawn');
    await expect(texts.filter({ hasText: 'An extra bone behind the ankle' })).toHaveCount(0);
    await expect(texts.filter({ hasText: /^-?\d+°$/ })).toHaveCount(0);
  });
}

test('a still is of the standing foot, whatever was tried a moment before', LONG_RUN, async ({ page, appUrl }) => {
  const still = async (): Promise<Buffer> => {
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download a still' }).click();
    return readFile(await (await coming).path());
  };
  await openFoot(page, appUrl);
  await page.getByRole('link', { name: 'Say it' }).click();
  const plain = await still();
  await page.getByRole('link', { name: 'Explain' }).click();
  await page.getByText('The foot itself: shape, pose, measures').click();
  await page.getByRole('radio', { name: 'Heel raised' }).check();
  await expect(page.locator('.stage figcaption')).toContainText('Heel raised.', { timeout: 45_000 });
  await page.getByRole('link', { name: 'Say it' }).click();
  expect(Buffer.compare(plain, await still())).toBe(0);
});

test('what can be taken for a fracture is drawn beside its bone, with how a fracture differs', async ({
  page,
  appUrl,
}) => {
  await openFoot(page, appUrl);
  const triangles = async () => Number(await page.locator('.stage').getAttribute('data-triangles'));
  const before = await triangles();
  await page.getByRole('button', { name: 'an extra bone behind the ankle' }).click();
  await expect(page.locator('.look-alikes')).toContainText('Its edges are smooth and round.');
  await expect.poll(triangles).toBeGreaterThan(before);
});

test(
  'held in another way the picture moves and the page says what the words are about',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await openFoot(page, appUrl);
    const before = await frames(page);
    const still = await picture(page);
    await page.getByRole('radio', { name: 'Heel raised' }).check();
    await expect(page.getByText('Only the picture moves. The words are about the standing foot.')).toBeVisible();
    await expect.poll(() => frames(page), { timeout: 20_000 }).toBeGreaterThan(before);
    await expect.poll(async () => Buffer.compare(still, await picture(page)) === 0, { timeout: 20_000 }).toBe(false);
  },
);

/** Corners of the triangles of a binary STL, 9 numbers each. */
const trianglesOf = (bytes: Buffer): Float32Array[] =>
  Array.from({ length: bytes.readUInt32LE(80) }, (_, i) => {
    const at = 84 + 50 * i + 12;
    return Float32Array.from({ length: 9 }, (_, k) => bytes.readFloatLE(at + 4 * k));
  });

test('the file for printing is closed and of true size', LONG_RUN, async ({ page, appUrl }) => {
  await openFoot(page, appUrl);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'For printing (STL, true size)' }).click();
  const download = await coming;
  expect(download.suggestedFilename()).toBe('foot-right.stl');
  const triangles = trianglesOf(await readFile(await download.path()));
  const edges = new Map<string, number>();
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const t of triangles) {
    const corner = (k: number): string => [...t.subarray(3 * k, 3 * k + 3)].join(' ');
    for (let k = 0; k < 3; k++) {
      const [a, b] = [corner(k), corner((k + 1) % 3)];
      edges.set(`${a}>${b}`, (edges.get(`${a}>${b}`) ?? 0) + 1);
      low = Math.min(low, t[3 * k + 2] ?? 0);
      high = Math.max(high, t[3 * k + 2] ?? 0);
    }
  }
  const open = [...edges].filter(([key, count]) => edges.get(key.split('>').reverse().join('>')) !== count);
  expect(open).toEqual([]);
  // Toes to heel of a foot of 250 mm without its skin, in mm.
  expect(high - low).toBeGreaterThan(200);
  expect(high - low).toBeLessThan(250);
});

test('nothing here fails the accessibility rules', async ({ page, appUrl }) => {
  await openFoot(page, appUrl);
  await page.getByRole('button', { name: /tilt of the heel bone/ }).click();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations).toEqual([]);
});
