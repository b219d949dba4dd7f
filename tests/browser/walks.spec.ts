/** The two walks that are promised with a count of clicks and characters. The counts are printed for the README. */
import { expect, test } from './fixtures';
import { counted, explained, open, withoutPicture } from './walk';

test('from empty to a printed zone 2 handout in at most 12 clicks and 40 characters', async ({ page, appUrl }) => {
  await page.addInitScript(() => {
    Object.assign(window, { printed: 0, print: () => Object.assign(window, { printed: 1 }) });
  });
  await open(page, appUrl);
  const walk = counted(page);
  await walk.click(page.locator('.bar-case'));
  await walk.click(page.getByRole('button', { name: 'New explanation' }));
  await walk.chip(/Which side/, 'Left');
  await walk.chip(/Where is it/, /./);
  await explained(page);
  await expect(page.locator('.stage')).toBeVisible();
  await page.screenshot();
  expect(walk.count.clicks).toBeLessThanOrEqual(4);
  await walk.chip(/How do you know/, 'X-ray or scan');
  await walk.chip(/How did it happen/, /./);
  await walk.chip(/What was done/, /./);
  await walk.type(page.getByLabel('On which day was it done?'), '2026-03-02');
  await walk.click(page.getByRole('navigation', { name: 'What to do' }).getByRole('link', { name: 'Hand it over' }));
  await explained(page);
  await walk.click(page.getByLabel('I have read this page'));
  await walk.click(page.getByRole('button', { name: 'Print' }));
  expect(await page.evaluate(() => Reflect.get(window, 'printed'))).toBe(1);
  await expect(page.locator('.sheet-side')).toContainText('Left');
  test.info().annotations.push({ type: 'count', description: `handout: ${JSON.stringify(walk.count)}` });
  console.log(`walk to a printed handout: ${walk.count.clicks} clicks, ${walk.count.typed} characters`);
  expect(walk.count.clicks).toBeLessThanOrEqual(12);
  expect(walk.count.typed).toBeLessThanOrEqual(40);
});

test('from a one-line report to a 90 second script in at most 10 clicks', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl);
  const walk = counted(page);
  await walk.click(page.locator('.bar-case'));
  await walk.click(page.getByRole('button', { name: 'New explanation' }));
  await walk.chip(/Which side/, 'Not stated');
  await walk.chip(/Where is it/, /./);
  await walk.chip(/How do you know/, 'The media say so');
  await walk.click(page.getByRole('navigation', { name: 'What to do' }).getByRole('link', { name: 'Say it' }));
  await explained(page);
  await walk.click(page.getByRole('radio', { name: '90 s' }));
  await expect(page.locator('.script > li').first()).toBeVisible();
  const [minutes = 9, seconds = 99] =
    ((await page.locator('.script-clock').textContent()) ?? '').split(' ')[0]?.split(':').map(Number) ?? [];
  expect(minutes * 60 + seconds).toBeLessThanOrEqual(90);
  // What a team or the media said is never told as confirmed.
  await expect(page.locator('.script')).not.toContainText('Confirmed');
  console.log(`walk to a 90 second script: ${walk.count.clicks} clicks, ${walk.count.typed} characters`);
  expect(walk.count.clicks).toBeLessThanOrEqual(10);
});

test('a way in opened by its address starts empty, and takes nothing for confirmed', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=new');
  await expect(page.getByRole('radio', { name: 'Told by the person' })).toBeChecked();
  const walk = counted(page);
  await walk.chip(/Which side/, 'Left');
  await walk.chip(/Where is it/, /./);
  await page.goto(`${appUrl}#view=known`);
  const claims = page.locator('.claim-list > .claim');
  await expect(claims).toHaveCount(4);
  await expect(claims.filter({ hasText: 'Confirmed' })).toHaveCount(0);
});
