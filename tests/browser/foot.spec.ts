/** The foot itself: its shape, how it is held, its measures, what can be taken for a fracture, and the files to take along. */
import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';

const READY = '.stage[data-ready="true"]';
const frames = async (page: Page): Promise<number> => Number(await page.locator('.stage').getAttribute('data-frames'));
const openFoot = async (page: Page, url: string): Promise<void> => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(`${url}#question=where`);
  await page.waitForSelector(READY);
  await page.getByText('The foot itself: shape, pose, measures').click();
  await expect(page.getByRole('heading', { name: 'The shape of the foot' })).toBeVisible();
};
const picture = (page: Page) => page.locator('.stage-picture').screenshot();

test('a slider moves the picture as a what-if, by keyboard, and one button takes it back', async ({ page, appUrl }) => {
  await openFoot(page, appUrl);
  const before = await picture(page);
  const slider = page.getByRole('slider', { name: 'Arch' });
  await slider.focus();
  await page.keyboard.press('End');
  await expect(slider).toHaveAttribute('aria-valuetext', 'high');
  await expect(page.locator('.what-if-banner')).toBeVisible();
  await expect.poll(async () => Buffer.compare(before, await picture(page)) === 0, { timeout: 20_000 }).toBe(false);
  // The measure follows: a high arch has a steeper heel bone.
  const pitch = page.getByRole('button', { name: /tilt of the heel bone/ });
  await expect(pitch).toContainText(/2[6-9]|3\d/, { timeout: 20_000 });
  await page.getByRole('button', { name: 'Back to the foot of the case' }).click();
  await expect(page.locator('.what-if-banner')).toBeHidden();
  await expect(pitch).toContainText(/2[0-5] degrees/, { timeout: 20_000 });
});

test('a measure is drawn with its value, its usual values and their sources', async ({ page, appUrl }) => {
  await openFoot(page, appUrl);
  const lines = page.locator('.stage-picture svg text', { hasText: /^-?\d+°$/ });
  await expect(lines).toHaveCount(0);
  const button = page.getByRole('button', { name: /bend between talus and first metatarsal/ });
  await button.click();
  await expect(button).toHaveAttribute('aria-pressed', 'true');
  await page.waitForSelector(READY);
  await expect(lines).toHaveCount(1);
  await expect(page.locator('.measures')).toContainText('-4 degrees to 4 degrees');
  await expect(page.locator('.measures')).toContainText('How well readers agree:');
  await button.click();
  await expect(lines).toHaveCount(0);
});

test('a limit is told as a limit and never as a usual value', async ({ page, appUrl }) => {
  await openFoot(page, appUrl);
  await page.getByRole('button', { name: /outward set of the first toe/ }).click();
  await expect(page.locator('.measures')).toContainText('below 15 degrees: adults.');
  await expect(page.locator('.measures')).toContainText('15.7 degrees: women.');
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

test('held in another way the picture moves and the page says what the words are about', async ({ page, appUrl }) => {
  await openFoot(page, appUrl);
  const before = await frames(page);
  const still = await picture(page);
  await page.getByRole('radio', { name: 'Heel raised' }).check();
  await expect(page.getByText('Only the picture moves. The words are about the standing foot.')).toBeVisible();
  await expect.poll(() => frames(page), { timeout: 20_000 }).toBeGreaterThan(before);
  await expect.poll(async () => Buffer.compare(still, await picture(page)) === 0, { timeout: 20_000 }).toBe(false);
});

/** Corners of the triangles of a binary STL, 9 numbers each. */
const trianglesOf = (bytes: Buffer): Float32Array[] =>
  Array.from({ length: bytes.readUInt32LE(80) }, (_, i) => {
    const at = 84 + 50 * i + 12;
    return Float32Array.from({ length: 9 }, (_, k) => bytes.readFloatLE(at + 4 * k));
  });

test('the file for printing is closed and of true size', async ({ page, appUrl }) => {
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
