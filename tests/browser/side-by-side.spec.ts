/** Two feet side by side: by keyboard, with their captions and sides, under one hand, told in words, at every width. */
import type { Locator, Page } from '@playwright/test';
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';

const open = async (page: Page, appUrl: string): Promise<void> => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(`${appUrl}#question=where&reader=patient`);
  await expect(page.locator('.page[data-explained="true"]')).toBeAttached({ timeout: 45_000 });
  await page.getByText('The foot itself: shape, pose, measures').focus();
  await page.keyboard.press('Enter');
};
const dialogOf = (page: Page): Locator => page.getByRole('dialog', { name: 'Two feet side by side' });
const opener = (page: Page): Locator =>
  page.getByRole('region', { name: 'The shape of the foot' }).getByRole('button', { name: 'Side by side' });
const platesOf = (page: Page): Locator => dialogOf(page).locator('.pair-plate');

const bothReady = async (page: Page): Promise<void> => {
  for (const index of [0, 1])
    await expect(platesOf(page).nth(index)).toHaveAttribute('data-ready', 'true', { timeout: 90_000 });
};
const figures = async (page: Page, name: string): Promise<readonly number[]> =>
  Promise.all([0, 1].map(async (index) => Number(await platesOf(page).nth(index).getAttribute(name))));
const azimuths = (page: Page) => figures(page, 'data-azimuth');

/** How far a picture is turned from where it was, degrees, whichever way round is shorter. */
const turned = async (page: Page, from: readonly number[]): Promise<readonly number[]> =>
  (await azimuths(page)).map((now, index) => ((((now - (from[index] ?? 0) + 180) % 360) + 360) % 360) - 180);

test('the case and the what-if stand side by side, turn together, and Escape leads back', async ({ page, appUrl }) => {
  // Feet are built and measured beside three pictures that a browser without a graphics card draws with the same processor.
  test.setTimeout(240_000);
  await open(page, appUrl);
  await page.getByRole('slider', { name: 'Arch' }).focus();
  await page.keyboard.press('End');
  await expect(page.locator('.what-if-banner').getByRole('button', { name: 'Side by side' })).toBeVisible();
  await opener(page).focus();
  await page.keyboard.press('Enter');
  await expect(dialogOf(page)).toBeVisible();
  await bothReady(page);

  const captions = platesOf(page).locator('figcaption');
  await expect(captions.nth(0)).toHaveText('The foot of the case. Right foot. Arch: usual.');
  await expect(captions.nth(1)).toHaveText('What if The foot as tried. Right foot. Arch: high.');
  await expect(platesOf(page).locator('.pair-letter')).toHaveText(['R', 'R']);
  const [firstScale, secondScale] = await figures(page, 'data-mm-per-px');
  expect(firstScale).toBeGreaterThan(0);
  expect(secondScale).toBe(firstScale);

  // A hand on the one turns the other, whichever it is on.
  for (const index of [0, 1]) {
    const before = await azimuths(page);
    expect(before[0]).toBe(before[1]);
    await platesOf(page).nth(index).locator('.stage-picture').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => turned(page, before).then(([by = 0]) => Math.abs(by))).toBeGreaterThan(5);
    await bothReady(page);
    const [first, second] = await turned(page, before);
    expect(second).toBe(first);
  }
  await page.keyboard.press('Home');
  await expect(dialogOf(page).locator('.pair-view')).toHaveText(['inner side', 'inner side']);

  // What differs is told of both, and the pictures point to it.
  const words = dialogOf(page).locator('.pair-words');
  await expect(words).toContainText(/\d+ of 30 figures differ\..* instead of /, { timeout: 120_000 });
  for (const index of [0, 1])
    await expect(platesOf(page).nth(index).locator('.stage-picture')).toHaveAttribute(
      'aria-describedby',
      (await words.getAttribute('id')) ?? 'none',
    );
  const row = dialogOf(page).getByRole('row', { name: /tilt of the heel bone/ });
  const [first, second, by] = (await row.getByRole('cell').allTextContents()).map(Number.parseFloat);
  expect((second ?? 0) - (first ?? 0)).toBe(by);
  await row.getByRole('button').focus();
  await page.keyboard.press('Enter');
  await expect(platesOf(page).locator('svg text', { hasText: /°$/ })).toHaveText([`${first}°`, `${second}°`]);
  await bothReady(page);
  expect(await violations(page)).toEqual([]);

  await page.keyboard.press('Escape');
  await expect(dialogOf(page)).toBeHidden();
  await expect(opener(page)).toBeFocused();
  await expect(page.getByRole('slider', { name: 'Arch' })).toHaveAttribute('aria-valuetext', 'high');
});

test(
  'one foot and the other turn as mirror images, one above the other on a phone',
  LONG_RUN,
  async ({ page, appUrl }) => {
    test.setTimeout(240_000);
    await page.setViewportSize({ width: 390, height: 844 });
    await open(page, appUrl);
    await opener(page).focus();
    await page.keyboard.press('Enter');
    await expect(dialogOf(page)).toBeVisible();
    // Nothing was tried: there is no before and after to choose.
    await expect(dialogOf(page).getByRole('radio', { name: 'The case and the what-if' })).toHaveCount(0);
    await dialogOf(page).getByRole('radio', { name: 'Usual arch and high arch' }).focus();
    await page.keyboard.press('ArrowLeft');
    await expect(dialogOf(page).getByRole('radio', { name: 'With the other foot' })).toBeChecked();
    await bothReady(page);
    await expect(platesOf(page).locator('.pair-letter')).toHaveText(['R', 'L']);
    const captions = platesOf(page).locator('figcaption');
    await expect(captions.nth(0)).toHaveText('The foot of the case. Right foot.');
    await expect(captions.nth(1)).toHaveText('The other foot, drawn as the mirror image. Left foot.');
    await expect(dialogOf(page).locator('.pair-words')).toContainText('every measure is the same');

    const before = await azimuths(page);
    expect(before[1]).toBe(-(before[0] ?? 0));
    await platesOf(page).nth(1).locator('.stage-picture').focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => turned(page, before).then(([by = 0]) => Math.abs(by))).toBeGreaterThan(5);
    await bothReady(page);
    const [first = 0, second] = await turned(page, before);
    expect(second).toBeCloseTo(-first, 5);

    const boxes = await Promise.all([0, 1].map((index) => platesOf(page).nth(index).boundingBox()));
    expect(boxes[1]?.x).toBe(boxes[0]?.x);
    expect(boxes[1]?.y).toBeGreaterThan((boxes[0]?.y ?? 0) + (boxes[0]?.height ?? 0));
    const sideways = () =>
      dialogOf(page).evaluate((dialog) => [
        dialog.scrollWidth - dialog.clientWidth,
        document.documentElement.scrollWidth - innerWidth,
      ]);
    expect(await sideways()).toEqual([0, 0]);
    expect(await violations(page)).toEqual([]);
    await page.setViewportSize({ width: 320, height: 640 });
    expect(await sideways()).toEqual([0, 0]);
    await dialogOf(page).getByRole('button', { name: 'Close', exact: true }).press('Enter');
    await expect(dialogOf(page)).toBeHidden();
  },
);

test(
  'where nothing can be drawn, captions, words and figures still tell the two apart',
  LONG_RUN,
  async ({ page, appUrl }) => {
    test.setTimeout(240_000);
    await page.addInitScript(() => {
      const give = HTMLCanvasElement.prototype.getContext;
      HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return kind.startsWith('webgl') ? null : (give as (...all: unknown[]) => unknown).call(this, kind, ...rest);
      } as typeof give;
    });
    await open(page, appUrl);
    await opener(page).press('Enter');
    const captions = platesOf(page).locator('figcaption');
    await expect(captions.nth(0)).toHaveText('Usual arch. A right foot.', { timeout: 90_000 });
    await expect(captions.nth(1)).toHaveText('High arch. A right foot.');
    await expect(platesOf(page).getByText('This device cannot draw the feet.')).toHaveCount(2);
    await expect(dialogOf(page).getByRole('row', { name: /tilt of the heel bone/ })).toContainText(/degrees more/, {
      timeout: 120_000,
    });
    expect(await violations(page)).toEqual([]);
  },
);
