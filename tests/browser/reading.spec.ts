/** Reading along: the clock runs, the line being said is marked and its picture shown; it waits, moves by line, and is left. */
import { expect, test } from './fixtures';
import { open } from './walk';

test('a reading goes by the clock, its picture with it, waits, goes line by line and ends', async ({
  page,
  appUrl,
}) => {
  await open(page, appUrl, '#demo=demo-handball&view=say');
  await page.getByRole('slider', { name: 'Words a minute' }).focus();
  await page.keyboard.press('End');
  const now = page.locator('.script [aria-current="step"]');
  await expect(now).toHaveCount(0);
  await page.getByRole('button', { name: 'Read along with the clock' }).click();
  await expect(now).toHaveCount(1);
  await expect(now).toContainText('Nobody here has examined this person');
  const clock = page.getByRole('timer');
  // Without a hand it comes to the second line when its second has come.
  const second = page.locator('.script li').nth(1);
  await expect(second).toHaveAttribute('aria-current', 'step', { timeout: 20_000 });
  const [at = '', shown = ''] = [await second.locator('.script-time').textContent(), await clock.textContent()];
  const seconds = (text: string | null): number => {
    const [minutes = 0, rest = 0] = (text ?? '').split(':').map(Number);
    return 60 * minutes + rest;
  };
  expect(seconds(shown) - seconds(at)).toBeGreaterThanOrEqual(0);
  expect(seconds(shown) - seconds(at)).toBeLessThanOrEqual(5);

  await page.getByRole('button', { name: 'Wait' }).click();
  const held = await clock.textContent();
  await page.waitForTimeout(1200);
  expect(await clock.textContent()).toBe(held);

  // Line by line to the first that speaks of how it broke: the picture is that of the second question.
  const how = page
    .locator('.script li')
    .filter({ has: page.getByRole('button', { name: /How did it happen/ }) })
    .first();
  for (let i = 0; i < 20 && (await how.getAttribute('aria-current')) === null; i += 1)
    await page.getByRole('button', { name: 'Next line' }).click();
  await expect(how).toHaveAttribute('aria-current', 'step');
  await expect(how.getByRole('button', { name: /How did it happen/ })).toHaveAttribute('aria-pressed', 'true');
  await expect(how).toBeInViewport();
  await page.getByRole('button', { name: 'Line before' }).click();
  await expect(how).not.toHaveAttribute('aria-current', 'step');

  await page.getByRole('button', { name: 'Leave the reading' }).click();
  await expect(now).toHaveCount(0);
});
