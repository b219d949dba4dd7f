/** In forced colours (Windows: high contrast) what is chosen is told apart from what is not: by its ground, on a screenshot. */
import type { Locator, Page } from '@playwright/test';
import { readPng } from '../tools/picture-difference';
import { expect, LONG_RUN, test } from './fixtures';
import { chipOf, open } from './walk';

/** The colour that most of a part of the screen has; `rows`: only of its first rows. */
const ground = async (part: Locator, rows = Number.POSITIVE_INFINITY): Promise<string> => {
  const { width, height, data } = readPng(await part.screenshot());
  const counts = new Map<string, number>();
  for (let i = 0; i < width * Math.min(height, rows); i += 1) {
    const colour = [...data.subarray(4 * i, 4 * i + 3)].join(' ');
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0] ?? 'none';
};
const differ = async (chosen: Locator, other: Locator, rows?: number): Promise<void> => {
  const page: Page = chosen.page();
  await page.mouse.move(0, 0);
  await expect.poll(async () => (await ground(chosen, rows)) !== (await ground(other, rows))).toBe(true);
};

test('in forced colours what is chosen looks otherwise than what is not', LONG_RUN, async ({ page, appUrl }) => {
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 1440, height: 900 });
  await open(page, appUrl, '#question=how');
  await expect(page.locator('.stage[data-ready="true"]')).toBeAttached();
  const tool = (pressed: boolean): Locator => page.locator(`.stage-tools [aria-pressed="${pressed}"]`).first();
  for (const name of ['Turn and choose', 'Point', 'Draw']) {
    await page.locator('.stage-tools').getByRole('button', { name }).click();
    await expect(tool(true)).toHaveAccessibleName(new RegExp(name));
    await differ(tool(true), tool(false));
  }
  const reader = (checked: string): Locator => page.locator(`.bar .segments label:${checked} span`).first();
  await differ(reader('has(:checked)'), reader('not(:has(:checked))'));
  // The rule's current question has a bar along its first rows.
  await differ(page.locator('.rule a[aria-current]'), page.locator('.rule a:not([aria-current])').last(), 5);
  await page.getByText('Look from').click();
  const view = (pressed: boolean): Locator => page.locator(`.chips .small[aria-pressed="${pressed}"]`).first();
  await differ(view(true), view(false));
  await page.getByText('The bones, heel to toe').click();
  await page.locator('.bone-list .choice').first().click();
  const bone = (pressed: boolean): Locator => page.locator(`.bone-list [aria-pressed="${pressed}"]`).first();
  await differ(bone(true), bone(false));

  await page.getByRole('link', { name: 'Say it' }).click();
  const link = (current: string): Locator => page.locator(`.bar-wide a:${current}`).first();
  await differ(link('is([aria-current])'), link('not([aria-current])'));
  const line = (pressed: boolean): Locator => page.locator(`.script .linkish[aria-pressed="${pressed}"]`).first();
  await expect(line(true)).toBeVisible();
  await differ(line(true), line(false));

  await open(page, appUrl, '#view=walk');
  await differ(page.locator('.walk-rule button[aria-current]'), page.locator('.walk-rule button').last(), 5);

  await open(page, appUrl, '#view=new');
  await chipOf(page, /Which side/, 'Left').click();
  const side = page.getByRole('group', { name: /Which side/ });
  await differ(
    side.locator('.chip:has(:checked) span').first(),
    side.locator('.chip:not(:has(:checked)) span').first(),
  );
});
