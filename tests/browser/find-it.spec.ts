/** Find it: from the start, by keyboard, from words to a card and to a case; each card opens under its own address. */
import type { Page } from '@playwright/test';
import { readContent } from '../../src/cli/read-content';
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';
import { withoutPicture } from './walk';

const { cards } = readContent();
const title = (page: Page) => page.getByRole('heading', { level: 1 });
const field = (page: Page) => page.getByRole('searchbox');
const ready = (page: Page) => expect(page.locator('.stage[data-ready="true"]')).toBeAttached({ timeout: 45_000 });

test('from the start, by keyboard: type, step down, open, and back to what was found', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await page.goto(appUrl);
  await page.getByRole('link', { name: /find the injury first/ }).press('Enter');
  await expect(title(page)).toBeFocused();
  await expect(page).toHaveURL(/#view=find/);
  await field(page).focus();
  await page.keyboard.type('outside of the foot, after a twsit');
  await expect(page.getByRole('heading', { name: 'This can be meant' })).toBeVisible();
  await expect(page.locator('.seek-hit').first()).toContainText('bump on the outer edge');
  await expect(page.locator('.seek-why').first()).toContainText('“twsit”: the foot was twisted or rolled over');
  await expect(page.locator('.red-flags')).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect(page.locator('.seek-hit').nth(1)).toBeFocused();
  // The first hits are told in full and begin a case; a card opens beside the plain foot.
  await page.locator('.seek-hit', { hasText: 'told in short' }).first().press('Enter');
  await expect(page).toHaveURL(/#card=/);
  await expect(title(page)).toBeFocused();
  await expect(page.locator('.note .question-count')).toHaveText('Told in short');
  expect(await violations(page)).toEqual([]);
  await page.goBack();
  await expect(field(page)).toHaveValue('outside of the foot, after a twsit');
  await expect(page.locator('.seek-hits').first()).not.toContainText(/you have/i);
});

test('a class told in full starts a case, in which all is only reported', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await page.goto(`${appUrl}#view=find`);
  await field(page).fill('jones fracure');
  await page.locator('.seek-hit').first().press('Enter');
  await page.getByRole('button', { name: /Start a case with this/ }).press('Enter');
  await expect(title(page)).toHaveText('What do you know?');
  await expect(page.getByRole('radio', { name: 'Told by the person' })).toBeChecked();
  await expect(
    page.getByRole('group', { name: /Where is it/ }).getByRole('radio', { name: /base of the outer long bone/ }),
  ).toBeChecked();
});

test('the dialog of the bar hands on what was typed, and leads to a card by its name', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await page.goto(`${appUrl}#view=find`);
  const dialog = page.getByRole('dialog', { name: 'What do you look for?' });
  const typed = async (text: string) => {
    await page.getByRole('button', { name: 'Find', exact: true }).click();
    await dialog.getByRole('searchbox').fill(text);
  };
  await typed('lis frank');
  await dialog.getByRole('searchbox').press('Enter');
  await expect(field(page)).toHaveValue('lis frank');
  await expect(page.locator('.seek-hit').first()).toContainText('midfoot');
  await typed('talar neck');
  await dialog.getByRole('searchbox').press('Enter');
  await expect(page).toHaveURL(/#card=talar-neck/);
});

test('every card opens under its own address: danger sign first, sources, and not one that a link made up', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await page.goto(`${appUrl}#view=find`);
  for (const { id, plain, danger } of cards) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#card=${id}&question=where`);
    await expect(title(page)).toHaveText(plain);
    await expect(page.locator('.card > section').first()).toContainText(danger.what.patient);
    await expect(page.locator('.card-sources li').first()).toBeVisible();
  }
  await page.goto('about:blank');
  await page.goto(`${appUrl}#card=nowhere`);
  await expect(page.getByText('card=nowhere')).toBeVisible();
  await expect(field(page)).toBeVisible();
});

test(
  'bone and part from the lists, by keyboard, give what a tap gives, and the part is named as why',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await page.goto(`${appUrl}#view=find&reader=study`);
    const bone = page.getByLabel('Or a bone');
    await bone.focus();
    // Down the list key by key: letters typed far apart, as on a busy machine, begin a new word each.
    for (let down = 0; down < 60 && (await bone.inputValue()) !== 'metatarsal5'; down++)
      await page.keyboard.press('ArrowDown');
    await expect(bone).toHaveValue('metatarsal5');
    const part = page.getByLabel('Part of it');
    await part.selectOption({ label: 'zone 3, proximal shaft' });
    await expect(page.locator('.seek-hit').first()).toContainText('zone 3');
    await expect(page.locator('.seek-why').first()).toContainText('zone 3, proximal shaft');
    await expect(page.getByText('Place: fifth metatarsal, zone 3, proximal shaft')).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await bone.selectOption({ label: 'cuboid' });
    await expect(page.getByText('Place: cuboid')).toBeVisible();
    await page.getByRole('button', { name: 'Take the place back' }).press('Enter');
    await expect(bone).toHaveValue('');
    await expect(part).toHaveCount(0);
  },
);

test('what is not so, what is asked, and a code that is none of these are told; what is typed stays plain text', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await page.goto(`${appUrl}#view=find`);
  const told = page.getByRole('status').filter({ hasText: 'be meant' });
  await field(page).fill('heel, no fall. Rule out Jones fracture. J45.901');
  await expect(told).toContainText('Understood as not so or unlikely: “fall”.');
  await expect(told).toContainText('Understood as asked or in doubt, not as found: “Jones”.');
  await expect(told).toContainText('Not a code of any injury told here: J45.901.');
  await expect(page.locator('.seek-hit').first()).toContainText('tired crack in the heel');
  await expect(page.locator('.seek-why').first()).toContainText('“fall”: many steps, no single moment');
  await field(page).fill('s92351a');
  await expect(page.locator('.seek-why').first()).toContainText('right, displaced or not stated, first visit, closed');
  await field(page).fill('<img src=x onerror=alert(1)> heel');
  await expect(told).toContainText('img');
  await expect(page.locator('.note img')).toHaveCount(0);
});

test('in the picture: the plain foot with the place named, a tap that searches, and nothing off a phone’s edge', async ({
  page,
  appUrl,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(`${appUrl}#card=talar-lateral-process&reader=study`);
  await ready(page);
  await expect(page.locator('.stage')).toContainText('Lateral process');
  await expect(page.locator('#picture-words')).toHaveText(/In ink: talus\. Outlined on it: lateral process\./);
  const wide = () => page.evaluate(() => document.documentElement.scrollWidth);
  expect(await wide()).toBeLessThanOrEqual(390);
  await page.getByRole('link', { name: 'Back to what was found' }).click();
  await ready(page);
  const picture = page.locator('.stage-picture');
  const box = await picture.boundingBox();
  if (box === null) throw new Error('no picture');
  await picture.click({ position: { x: 0.22 * box.width, y: 0.5 * box.height } });
  await expect(page.getByRole('heading', { name: 'Seen at this place' })).toBeVisible();
  await expect(page.getByText(/^Place: /)).toBeVisible();
  expect(await wide()).toBeLessThanOrEqual(390);
});
