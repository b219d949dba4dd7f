/** The way back by keyboard: one stage open, exercises struck, criteria ticked, the clinic's own kept over a reload and undone. */
import type { Locator, Page } from '@playwright/test';
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';
import { open, withoutPicture } from './walk';

/** Draws of the frame on a busy machine, and reloads of the whole app. */
test.describe.configure({ timeout: 300_000 });

const openStages = async (page: Page, appUrl: string, reader = 'patient', picture = false): Promise<Locator> => {
  if (!picture) await withoutPicture(page);
  await open(page, appUrl, `#demo=demo-handball&question=back&reader=${reader}`);
  const fold = page.locator('details.fold').filter({ hasText: 'The stages and what opens each' });
  await fold.locator('> summary').focus();
  await page.keyboard.press('Enter');
  await expect(fold.locator('.way-stage')).toHaveCount(7);
  return fold;
};
const stageOf = (fold: Locator, number: number): Locator => fold.locator('.way-stage').nth(number - 1);

test('one stage is open, and another opens in its place by keyboard', async ({ page, appUrl }) => {
  const fold = await openStages(page, appUrl);
  await expect(stageOf(fold, 1).locator('.way-body')).toBeVisible();
  await stageOf(fold, 2).locator('> details > summary').focus();
  await page.keyboard.press('Enter');
  await expect(stageOf(fold, 2).locator('.way-body')).toBeVisible();
  await expect(stageOf(fold, 1).locator('.way-body')).toHaveCount(0);
  // 74 kg, as the case states.
  await expect(stageOf(fold, 2).locator('.way-weight')).toContainText('15 to 37 kg');
  await expect(stageOf(fold, 2)).toContainText(/told 15 kg.*, expect about 30 kg/);
  expect(await violations(page)).toEqual([]);
});

test(
  'an exercise shows its pose on the foot, which stands again when the list goes',
  LONG_RUN,
  async ({ page, appUrl }) => {
    const fold = await openStages(page, appUrl, 'patient', true);
    await stageOf(fold, 4).locator('> details > summary').click();
    const show = stageOf(fold, 4).getByRole('button', { name: /^Show the foot: Rise on the toes/ });
    await show.focus();
    await page.keyboard.press('Enter');
    await expect(show).toHaveAttribute('aria-pressed', 'true');
    await expect(page.locator('.plate')).toContainText('Heel raised', { timeout: 30_000 });
    await fold.locator('> summary').click();
    await expect(page.locator('.plate')).not.toContainText('Heel raised', { timeout: 30_000 });
  },
);

test(
  'what the clinic ticks, strikes, sets and answers stays over a reload, marked as its own',
  LONG_RUN,
  async ({ page, appUrl }) => {
    const fold = await openStages(page, appUrl);
    const second = stageOf(fold, 2);
    await second.locator('> details > summary').click();
    await second.getByRole('button', { name: 'The person is here' }).press('Enter');
    await second
      .getByLabel(/pick up a cloth/)
      .first()
      .press('Space');
    await expect(second.getByText('Struck by the clinic')).toBeVisible();
    await second.getByLabel(/no longer hurts much/).press('Space');
    await expect(second.getByText('Met, says the clinic')).toBeVisible();
    await second.getByText('The clinic’s own for this stage').click();
    const share = second.getByRole('group', { name: 'Share of body weight, the clinic’s own' });
    await share.getByLabel('from').fill('40');
    await share.getByLabel('to').fill('10');
    await page.keyboard.press('Tab');
    await expect(share.getByRole('alert')).toContainText('the smaller one first');
    await share.getByLabel('from').fill('10');
    await share.getByLabel('to').fill('30');
    await page.keyboard.press('Tab');
    await expect(second.locator('.way-weight')).toContainText('The clinic’s own: Put 10 to 30 % of your weight');
    await expect(second.locator('.way-weight')).toContainText('20 to 50 %');
    await second.getByText('Daily life').click();
    await second.getByLabel(/^The clinic’s answer: When can I drive/).fill('Not before the next visit');
    await page.keyboard.press('Tab');
    expect(await violations(page)).toEqual([]);
    // Kept on the device: the address alone would open the demo anew.
    await page.waitForTimeout(1500);
    await page.goto(`${appUrl}#question=back&reader=patient`);
    await page.reload();
    const again = page.locator('details.fold').filter({ hasText: 'The stages and what opens each' });
    await again.locator('> summary').click();
    const kept = stageOf(again, 2);
    // Opened by itself: the person is there.
    await expect(kept.locator('.way-body')).toBeVisible();
    await expect(kept.getByText('Struck by the clinic')).toBeVisible();
    await expect(kept.getByText('Met, says the clinic')).toBeVisible();
    await expect(kept.locator('.way-weight')).toContainText('The clinic’s own: Put 10 to 30 %');
    await kept.getByText('Daily life').click();
    await expect(kept.getByLabel(/^The clinic’s answer: When can I drive/)).toHaveValue('Not before the next visit');
  },
);

test('the load at that share is worked out once it is asked for', LONG_RUN, async ({ page, appUrl }) => {
  const fold = await openStages(page, appUrl, 'study');
  const second = stageOf(fold, 2);
  await second.locator('> details > summary').click();
  await second.getByText('What that weight does to the bone').click();
  await expect(second).toContainText(/Walking in a boot, 20 to 50 % of body weight: less tension/, {
    timeout: 240_000,
  });
  await expect(second).toContainText('no statement for this ray');
});

test('fits a phone and prints the open stage without its buttons', async ({ page, appUrl }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const fold = await openStages(page, appUrl);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  await page.emulateMedia({ media: 'print' });
  await expect(stageOf(fold, 1).locator('.way-body')).toBeVisible();
  await expect(stageOf(fold, 1).getByRole('button', { name: 'Show' }).first()).toBeHidden();
});
