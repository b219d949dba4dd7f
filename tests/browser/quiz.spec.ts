/** Ask it: ten questions answered through the list alone, each graded with its why; three for the patient with kind words. */

import { questionsOf } from '../../src/study';
import { content, foot } from '../tools/explained';
import { expect, LONG_RUN, test } from './fixtures';
import { heading, open, withoutPicture } from './walk';

test('ten questions can be answered from the list, and each says why', async ({ page, appUrl }) => {
  test.setTimeout(120_000);
  await open(page, appUrl, '#view=ask');
  await expect(page.locator('.stage[data-ready]')).toBeVisible();
  const kinds = new Set<string>();
  for (let number = 1; number <= 10; number += 1) {
    await expect(page.locator('.note')).toContainText(`${number} of 10`);
    if ((await page.locator('.order').count()) > 0) {
      kinds.add('order');
      await page.locator('.order button:enabled').first().click();
      await page.getByRole('button', { name: 'Answer' }).click();
    } else if ((await page.locator('.bone-list').count()) > 0) {
      kinds.add('point');
      const asked = (await page.locator('.note').textContent())?.match(/Point to this bone: ([^.]+)\./)?.[1] ?? '';
      await page.locator('.bone-list').getByRole('button', { name: asked, exact: true }).click();
      await expect(page.locator('.feedback')).toContainText('Right.');
    } else {
      kinds.add('choice');
      await page.locator('.chip').first().click();
      await page.getByRole('button', { name: 'Answer' }).click();
    }
    const feedback = page.locator('.feedback');
    await expect(feedback).toContainText('Why');
    expect(await feedback.locator('li').count()).toBeGreaterThan(0);
    const next = page.getByRole('button', { name: number < 10 ? 'Next question' : 'See the result' });
    await expect(next).toBeFocused();
    await next.press('Enter');
    await expect(page.locator('.note h2').first()).toBeFocused();
  }
  await expect(page.locator('.feedback')).toContainText(/\d+ of 10 fully right/);
  expect(kinds).toEqual(new Set(['order', 'point', 'choice']));
  await page.getByRole('button', { name: 'Ten more' }).click();
  await expect(page.locator('.note')).toContainText('1 of 10');
  await expect(heading(page)).toBeFocused();
});

test('three questions for the patient answer kindly, whatever is chosen', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=ask');
  await page.getByRole('radio', { name: 'Three for the patient' }).click();
  const items = page.locator('.teach-back > li');
  await expect(items).toHaveCount(3);
  for (const item of await items.all()) {
    const said = new Set<string>();
    for (const choice of await item.locator('.chip').all()) {
      await choice.click();
      said.add((await item.locator('.feedback').textContent()) ?? '');
    }
    expect([...said].every((text) => text.length > 10)).toBe(true);
    for (const text of said) expect(text).not.toMatch(/wrong|false|incorrect/i);
  }
});

test('a bone that lies hidden from the outer side is lit where it can be seen', LONG_RUN, async ({ page, appUrl }) => {
  // The same ten questions as the app makes of that seed.
  const lit = (seed: number) => questionsOf(content, foot, { count: 10, seed })[0];
  const seed = Array.from({ length: 4000 }, (_, i) => i + 1).find((each) => {
    const first = lit(each);
    return first?.kind === 'nameLit' && first.lit === 'sesamoidLateral';
  });
  if (seed === undefined) throw new Error('no such question');
  await page.addInitScript((given) => {
    crypto.getRandomValues = (array) => {
      if (array instanceof Uint32Array) array.fill(given);
      return array;
    };
  }, seed);
  await open(page, appUrl, '#view=ask');
  await expect(page.locator('.note')).toContainText('Which bone is lit?');
  await page.waitForSelector('.stage[data-ready="true"]');
  const caption = page.locator('.stage figcaption');
  await expect(caption).toContainText('from below');
});

test('a bone is pointed to on the foot itself', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#view=ask');
  const pointing = page.locator('.note', { hasText: 'Point to this bone' });
  for (let number = 1; number <= 10 && (await pointing.count()) === 0; number += 1) {
    if ((await page.locator('.order').count()) === 0) await page.locator('.chip').first().click();
    await page.getByRole('button', { name: 'Answer' }).click();
    await page.getByRole('button', { name: 'Next question' }).click();
  }
  await expect(pointing).toBeVisible();
  await expect(page.locator('.stage[data-ready="true"]')).toBeVisible();
  const canvas = page.locator('.stage canvas').first();
  const box = await canvas.boundingBox();
  if (box === null) throw new Error('the plate has no size');
  // The heel bone fills this corner of the outer view.
  await canvas.click({ position: { x: box.width * 0.2, y: box.height * 0.45 } });
  await expect(page.locator('.feedback')).toContainText('Why');
});
