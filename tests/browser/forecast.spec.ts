/** Question 5 where no odds are pooled: studies side by side, each by itself, and weeks named by the media. */
import { violations } from './axe';
import { expect, test } from './fixtures';
import { open, withoutPicture } from './walk';

test('too few to be put together: each study stands by itself, with its level and rings; nothing against access', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await open(page, appUrl, '#demo=demo-handball&question=back');
  const part = page.getByRole('region', { name: 'Odds of being back' });
  await expect(part.getByText(/Fewer than three comparable studies/)).toBeVisible();
  await part.getByRole('combobox', { name: 'Counted to' }).selectOption('match play');
  await expect(part.getByText(/Fewer than three comparable studies/)).toBeVisible();
  await expect(part.locator('.study-rule')).toHaveCount(2);
  await expect(part.locator('.study-rule svg')).toHaveCount(2);
  await expect(part.locator('.study-rule').filter({ hasText: 'Professional sport' })).toHaveCount(1);
  // A follow-up of week 6 is part of the case: only those who were not back by then are left.
  await expect(part.locator('.study-rule').last()).toContainText(/came back after week 6, half did by week \d+/);
  await expect(part.getByRole('slider')).toHaveCount(0);

  await part.locator('summary', { hasText: 'Which studies, and how far apart' }).press('Enter');
  await expect(part.getByText('Side by side, not put together', { exact: true })).toBeVisible();
  await part.locator('summary', { hasText: 'Odds given before' }).press('Enter');
  await expect(part.getByRole('button', { name: 'Keep these odds' })).toHaveCount(0);

  expect(await violations(page)).toEqual([]);
});

test('weeks that the media named are asked to what they count, then told as overrun, or held against each study', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await open(page, appUrl, '#demo=demo-handball&view=known&reader=broadcast');
  const name = async (endpoint: string | null, weeks: string): Promise<void> => {
    await page.getByRole('button', { name: 'Add a claim' }).click();
    await page.getByLabel('About', { exact: true }).selectOption('timetable');
    if (endpoint !== null) await page.getByLabel('What was waited for?').selectOption(endpoint);
    await page.getByLabel('How many weeks?').fill(weeks);
    await page.getByLabel('From', { exact: true }).selectOption('media');
    await page.getByRole('button', { name: 'Add this claim' }).click();
  };
  await name(null, '1.5');
  await name('match play', '1.5');
  await name('match play', '9');
  await page.goto(`${appUrl}#question=back`);
  await page.getByText('Tell me more').click();
  await expect(page.getByText(/To what those weeks count was not said/).first()).toBeVisible();
  await expect(page.getByText(/That time is over: as far as is known, at week 6/).first()).toBeVisible();
  await expect(page.getByText(/No odds can be given, but study by study/).first()).toBeVisible();
});
