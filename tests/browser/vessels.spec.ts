/** How a person's vessels run can be tried: by keyboard, as a what-if, with the published frequencies in sight. */
import { violations } from './axe';
import { expect, test } from './fixtures';
import { explained, open, withoutPicture } from './walk';

test('another way in of the main artery is a what-if, and going back leaves none', async ({ page, appUrl }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await withoutPicture(page);
  await open(page, appUrl, '#demo=demo-handball&question=why');
  const fold = page.locator('details', { hasText: 'People’s vessels differ' });
  await fold.locator('summary').click();
  await expect(fold).toContainText('83 % of 56 feet');
  await expect(fold).toContainText('57 % of 100 feet');
  const choice = fold.getByRole('combobox', { name: /main artery enters/ });
  await choice.focus();
  await page.keyboard.press('ArrowDown');
  await explained(page);
  await expect(page.locator('.what-if-banner')).toBeVisible();
  await expect(choice).toHaveValue('elsewhere');
  expect(await violations(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await choice.focus();
  await page.keyboard.press('ArrowUp');
  await explained(page);
  await expect(page.locator('.what-if-banner')).toBeHidden();
});
