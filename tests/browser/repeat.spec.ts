/** Weeks and wear in question 2; boot, sole, wedge and screw in question 4: by keyboard, heard, drawn as told, printed. */
import type { Locator, Page } from '@playwright/test';
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';
import { framesLater, open, withoutBands, withoutPicture } from './walk';

const openWeeks = async (page: Page, appUrl: string, demo: string, reader = 'patient'): Promise<Locator> => {
  await withoutPicture(page);
  await withoutBands(page);
  await open(page, appUrl, `#demo=${demo}&question=how&reader=${reader}`);
  const fold = page.locator('details.fold').filter({ has: page.locator('.wear') });
  await fold.first().locator('> summary').click();
  await expect(fold.locator('.wear svg')).toBeVisible();
  return fold.first();
};

test('the weeks are set by keyboard, each value is spoken, and the sentence follows', async ({ page, appUrl }) => {
  const fold = await openWeeks(page, appUrl, 'demo-hill-runner');
  const sentence = fold.locator('.repeat-sentence[role="status"]');
  await expect(sentence).toContainText(/Over these 6 weeks the bone gets 1\.4 times.* the wear of your habit\./);
  const ramp = fold.getByLabel('Change from week to week');
  await ramp.focus();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  await expect(ramp).toHaveAttribute('aria-valuetext', '0 % a week, the last 20 km a week');
  await expect(sentence).toContainText(
    /the bone gets just.* the wear of your habit\. At their end just.* as much as usual/,
  );
  // A step that loads a tenth more: 1.1 to the powers 5.3 to 9.
  await fold.getByLabel('more or less than one before').check();
  const own = fold.getByLabel('Load of a step against before');
  await own.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(own).toHaveAttribute('aria-valuetext', '1.10 times');
  await expect(sentence).toContainText(/the bone gets 1\.7 to 2\.4 times.* the wear/);
});

test(
  'weeks typed one by one stand in the table, and the whole is marked from memory',
  LONG_RUN,
  async ({ page, appUrl }) => {
    const fold = await openWeeks(page, appUrl, 'demo-handball', 'study');
    await expect(fold.locator('.repeat-mark .known-memory')).toHaveText('from memory');
    await fold.getByLabel('sessions', { exact: true }).check();
    await fold.getByLabel('one by one').check();
    await fold.getByLabel('Week 2, sessions').fill('6');
    await fold.getByText('The numbers, week by week').click();
    const row = fold.locator('.wear-table tbody tr').nth(1);
    await expect(row.locator('td').first()).toHaveText('6');
    // Weeks of 3.3 and 6 sessions after weeks of 3: (1.1 + 2) / 2.
    await expect(row.locator('td').nth(1)).toContainText('1.6');
    await fold.getByText('The constants, and what this cannot say').click();
    await expect(fold).toContainText('no risk and no probability');
    expect(await violations(page)).toEqual([]);
    // Printed: the drawing, the table and what was told, without the sliders' rails.
    await page.emulateMedia({ media: 'print' });
    await expect(fold.locator('.wear svg')).toBeVisible();
    await expect(fold.locator('.wear-table')).toBeVisible();
    await expect(fold.getByText('3 sessions a week')).toBeVisible();
    await expect(fold.locator('input[type="range"]').first()).toBeHidden();
  },
);

test('the drawing ends where the table does', LONG_RUN, async ({ page, appUrl }) => {
  const fold = await openWeeks(page, appUrl, 'demo-handball');
  await fold.getByText('The numbers, week by week').click();
  const told = await fold.locator('.wear-table tbody tr:last-child td').nth(2).textContent();
  const [low = 0, high = 0] = (told?.match(/[\d.]+/g) ?? []).map(Number);
  const drawn = await fold.locator('.wear svg').evaluate((svg) => {
    const at = (text: string): number =>
      Number([...svg.querySelectorAll('text')].find((each) => each.textContent === text)?.getAttribute('y'));
    const [none, one] = [at('0×'), at('1×')];
    const numbers = (
      svg
        .querySelector('.wear-left')
        ?.getAttribute('d')
        ?.match(/-?[\d.]+/g) ?? []
    ).map(Number);
    const most = Math.max(...numbers.filter((_, i) => i % 2 === 0));
    const ends = numbers
      .filter((_, i) => i % 2 === 1 && numbers[i - 1] === most)
      .map((y) => (none - 5 - y) / (none - one));
    return [Math.min(...ends), Math.max(...ends)];
  });
  expect(drawn[0]).toBeCloseTo(low, 1);
  expect(drawn[1]).toBeCloseTo(high, 1);
});

test(
  'letters of the new drawings can be read at every width, and nothing is pushed aside',
  LONG_RUN,
  async ({ page, appUrl }) => {
    const letterPx = (drawing: Locator): Promise<number> =>
      drawing.evaluate((svg) => {
        const text = svg.querySelector('text');
        if (text === null || !(svg instanceof SVGSVGElement)) return Number.NaN;
        return Number.parseFloat(getComputedStyle(text).fontSize) * (svg.getScreenCTM()?.a ?? Number.NaN);
      });
    await page.setViewportSize({ width: 320, height: 640 });
    const fold = await openWeeks(page, appUrl, 'demo-handball');
    for (const [width, height] of [
      [320, 640],
      [390, 844],
      [1440, 900],
    ] as const) {
      await page.setViewportSize({ width, height });
      await framesLater(page);
      // look.md, section 4: captions and legends at least 13 px.
      await expect
        .poll(() => letterPx(fold.locator('.wear svg')), { message: `${width}` })
        .toBeGreaterThanOrEqual(12.9);
      const beyond = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      await expect.poll(beyond, { message: `${width}` }).toBeLessThanOrEqual(0);
    }
  },
);

test('supports and screw are told once the runs are made, and print', LONG_RUN, async ({ page, appUrl }) => {
  await withoutPicture(page);
  test.setTimeout(120_000);
  await open(page, appUrl, '#demo=demo-handball&question=options&reader=study');
  await page.getByText('Boot, sole, wedge and screw, computed').click();
  const rows = page.locator('.supports-table tbody tr');
  await expect(rows).toHaveCount(4, { timeout: 90_000 });
  // No size is earned here: more and less, and nothing drawn to scale.
  await expect(rows.nth(0)).toContainText('less');
  await expect(rows.nth(1)).toContainText('cannot tell');
  await expect(page.locator('.screw-table thead th')).toHaveText(['Figure', 'titanium', 'steel']);
  await expect(page.locator('svg.supports')).toHaveCount(0);
  expect(await violations(page)).toEqual([]);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.supports-table')).toBeVisible();
  await expect(page.locator('.screw-table')).toBeVisible();
});
