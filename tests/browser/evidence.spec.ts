/** The evidence, readable: the page of sources, what a basis says, counts of groups, and the rule of films for those who learn. */
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';
import { explained, open, withoutBands, withoutPicture } from './walk';

test('every source is found, opens what rests on it, and nothing is asked of another origin', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(appUrl) && !/^(blob|data):/.test(request.url())) elsewhere.push(request.url());
  });
  await open(page, appUrl, '#demo=demo-handball&question=why&reader=study');
  await page.getByText('How do you know?').click();
  await expect(page.locator('.bases li').first().locator('.confidence')).not.toBeEmpty();
  await page.getByRole('link', { name: 'All sources, and where they disagree' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Where it comes from' })).toBeFocused();
  const field = page.getByLabel(/Find a source/);
  await field.fill('torg 2010');
  // A statement that names it stands with its own source: found too, under another head.
  const torg = page.locator('.source').filter({ has: page.locator('summary', { hasText: 'Torg' }) });
  await expect(torg).toHaveCount(1);
  await torg.locator('summary').click();
  await expect(torg.locator('.source-uses li').filter({ hasText: '4 % and 18 % failed' })).toHaveCount(1);
  await expect(torg.locator('.source-address a')).toHaveAttribute('rel', /noopener/);
  await page.getByText(/^Where sources disagree \(/).click();
  await expect(page.locator('.contradictions > li').first()).toContainText('What we do:');
  expect(await violations(page)).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  expect(elsewhere).toEqual([]);
});

test(
  'counts stand with the question, of a hundred people of a study, and no square where few were counted',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await open(page, appUrl, '#demo=demo-handball&question=why');
    await page.getByText('If it does not heal as it should').click();
    const lines = page.locator('.counts > li');
    await expect(lines.first()).toContainText(/^Of 100 such people/);
    await expect(lines.first().locator('svg')).toHaveCount(1);
    await page.locator('.more-counts').last().locator('summary').click();
    const few = lines.filter({ hasText: 'too few people to be sure' });
    expect(await few.count()).toBeGreaterThan(0);
    await expect(few.locator('svg')).toHaveCount(0);
    expect(await violations(page)).toEqual([]);
  },
);

test(
  'the rule of films lights its places for those who learn, and has no word for a patient',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutBands(page);
    await open(page, appUrl, '#demo=demo-handball&view=rule&reader=study');
    await expect(page.locator('.stage[data-ready="true"]')).toBeVisible();
    await expect(page.locator('.stage')).toContainText('Fifth metatarsal');
    await expect(page.locator('.stage')).toContainText('Navicular');
    await page.getByRole('button', { name: /^Show on the foot: Bone tenderness at the navicular/ }).click();
    await page.getByLabel(/Look up/).fill('toes');
    await expect(page.getByRole('status').filter({ hasText: '1 listed' })).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('radio', { name: 'Patient' }).first().check();
    await explained(page);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Not in this wording');
    await expect(page.locator('body')).not.toContainText('Ottawa');
    await page.locator('.bar-case').click();
    await expect(page.getByRole('link', { name: 'Where it comes from' })).toBeVisible();
    await expect(page.getByRole('link', { name: 'When is a film taken?' })).toHaveCount(0);
  },
);
