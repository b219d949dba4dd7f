/** Question 2 as it is used: sliders by keyboard, the band before greyed until the new one stands, edges, tables, and who reads what. */
import type { Locator, Page } from '@playwright/test';
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';
import { bandsOnHold, open, withoutBands, withoutPicture } from './walk';

/** Bands are some thousand frames in a worker; the picture is drawn in software beside it. */
const BANDS_MS = 90_000;
test.setTimeout(240_000);

const HOW = '#demo=demo-handball&question=how';

const fold = (page: Page, title: string): Locator => page.locator('.note summary').getByText(title, { exact: true });
const ratio = (page: Page): Locator => page.locator('.ratio');
const banded = (page: Page): Promise<void> =>
  expect(ratio(page)).toHaveAttribute('data-bands', 'current', { timeout: BANDS_MS });

/** What is said of the ratio, apart from how it was made. */
const words = (page: Page): Locator => ratio(page).locator('[aria-live] p');

for (const [width, height] of [
  [1440, 900],
  [390, 844],
] as const) {
  test(
    `a step of a slider is answered at once, and what was worked out before stays greyed until the new is, at ${width}`,
    width === 390 ? LONG_RUN : {},
    async ({ page, appUrl }) => {
      const bands = await bandsOnHold(page);
      await withoutPicture(page);
      await page.setViewportSize({ width, height });
      await open(page, appUrl, `${HOW}&reader=study`);
      await fold(page, 'What if it were otherwise?').click();
      await fold(page, 'What raises the load here?').click();
      const why = page.locator('.why-here');
      await expect(why).toHaveAttribute('data-bands', 'current', { timeout: BANDS_MS });
      await expect(words(page)).toContainText('its size is beyond what the theory can state');

      // Another movement: nothing worked out for the one before is left, and no number that would be taken back.
      await bands.hold();
      await page.getByRole('combobox', { name: 'Movement' }).selectOption('standing');
      await expect(ratio(page)).toHaveAttribute('data-bands', 'none');
      await expect(words(page)).toHaveText('Whether this pulls harder than walking is being worked out.');
      await expect(why).toHaveAttribute('data-bands', 'none');
      await expect(page.locator('.contributors > li')).toHaveCount(0);
      await expect(ratio(page).locator('svg')).toHaveCount(0);
      await bands.release();
      await banded(page);
      await expect(words(page)).toContainText('standing on both feet below push-off in walking');
      await expect(why).toHaveAttribute('data-bands', 'current', { timeout: BANDS_MS });
      const standing = (await words(page).textContent()) ?? '';

      // A step of the slider: its value and the run told with it are new, what was worked out stays and says that it is of before.
      await bands.hold();
      const carried = page.getByRole('slider', { name: 'Load carried' });
      await carried.focus();
      await page.keyboard.press('End');
      const kg = Number(await carried.inputValue());
      expect(kg).toBeGreaterThanOrEqual(10);
      await expect(carried).toHaveAttribute('aria-valuetext', `${kg} kg`);
      await expect(ratio(page)).toContainText(`Load carried: ${kg} kg.`);
      await expect(ratio(page)).toHaveAttribute('data-bands', 'before');
      await expect(words(page)).toHaveText('Whether this pulls harder than walking is being worked out.');
      await expect(ratio(page).locator('svg')).toHaveCount(0);
      await expect(why).toHaveAttribute('data-bands', 'before');
      await expect(why).toContainText('These are of the value before. The new ones are being worked out.');
      const rows = await page.locator('.contributors > li').count();
      expect(rows).toBeGreaterThan(3);
      expect(await page.locator('.contributors .held').count()).toBeGreaterThan(0);
      await bands.release();
      await banded(page);
      await expect(words(page)).toContainText('its size is beyond what the theory can state');
      await expect(why).toHaveAttribute('data-bands', 'current', { timeout: BANDS_MS });
      await expect(page.locator('.contributors .held')).toHaveCount(0);
      await expect(why).not.toContainText('of the value before');

      // Back by its own button: the same words again, and the hand stays at the slider.
      await page.getByRole('button', { name: 'As it was: Load carried' }).click();
      await expect(carried).toBeFocused();
      await banded(page);
      await expect(words(page)).toHaveText(standing);
    },
  );

  test(
    `tables, drawings and the whole calculation break no rule of access at ${width}`,
    LONG_RUN,
    async ({ page, appUrl }) => {
      await withoutPicture(page);
      await page.setViewportSize({ width, height });
      await open(page, appUrl, `${HOW}&reader=study`);
      await banded(page);
      for (const title of [
        'What if it were otherwise?',
        'What raises the load here?',
        'How sure is this?',
        'Forces and stress along the bone',
        'What this model cannot say',
      ])
        await fold(page, title).click();
      for (const summary of await page.locator('.contributor > summary').all()) await summary.click();
      for (const title of ['^The section at', '^How the numbers at', '^The numbers$'])
        await page
          .locator('.fold-body summary')
          .filter({ hasText: new RegExp(title) })
          .click();
      await expect(page.locator('.derivation')).toContainText('one run with the told figures');
      // Each number stands over where the draws put it.
      await expect(page.locator('table.stations .station-band').first()).toHaveText(/^−?\d[\d.]* to −?\d[\d.]*$/);
      // A measured strain in its own unit.
      await expect(page.getByText(/^\d+ \(\d+ to \d+\) microstrain$/).first()).toBeAttached();
      expect(await violations(page)).toEqual([]);
      await page.getByRole('button', { name: 'The whole calculation, with its sources' }).click();
      await expect(page.locator('dialog.calculation table.figures').first()).toBeVisible();
      expect(await violations(page)).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
      await page.keyboard.press('Escape');
      await expect(page.getByRole('button', { name: 'The whole calculation, with its sources' })).toBeFocused();
    },
  );
}

test('which edge is loaded is for the person to choose, by keyboard, and changes the answer', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await withoutBands(page);
  await open(page, appUrl, `${HOW}&reader=broadcast`);
  await fold(page, 'What if it were otherwise?').click();
  const edges = page.getByRole('group', { name: 'On which edge of the foot' });
  await expect(edges.getByRole('radio', { name: 'Outer edge' })).toBeChecked();
  await edges.getByRole('radio', { name: 'Outer edge' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(edges.getByRole('radio', { name: 'Inner edge' })).toBeChecked();
  await expect(page.getByRole('combobox', { name: 'Movement' })).toHaveValue('side-step-cut-inner');
  const tilt = page.getByRole('slider', { name: 'Slope of the ground under the foot' });
  await expect(tilt).toHaveAttribute('aria-valuetext', '6 degrees, higher under the inner edge');
  await expect(page.getByRole('slider', { name: 'Speed' })).toHaveCount(0);

  await page.getByRole('combobox', { name: 'Movement' }).selectOption('running');
  await expect(edges).toHaveCount(0);
  const speed = page.getByRole('slider', { name: 'Speed' });
  await expect(speed).toHaveAttribute('aria-valuetext', '3.3 m/s (12 km/h)');
  await speed.press('End');
  await expect(speed).toHaveAttribute('aria-valuetext', '4.0 m/s (14 km/h)');
  await page.getByRole('slider', { name: 'Stiffness of the sole' }).press('End');
  await expect(page.getByRole('slider', { name: 'Stiffness of the sole' })).toHaveAttribute(
    'aria-valuetext',
    'stiff sole (40 N m/rad)',
  );
});

test('stations are of any of the five bones, in multiples where forces have no size, and nowhere in megapascals', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await withoutBands(page);
  await open(page, appUrl, `${HOW}&reader=study`);
  await fold(page, 'Forces and stress along the bone').click();
  await page
    .locator('.fold-body summary')
    .filter({ hasText: /^The numbers$/ })
    .click();
  const table = page.locator('table.stations');
  const column = (n: number): Promise<string[]> => table.locator(`tbody td:nth-of-type(${n})`).allTextContents();
  // A cut is beyond the theory: pull and push as multiples, and no newtons.
  await expect(table.locator('thead th')).toHaveCount(3);
  const fifth = await column(1);
  expect(fifth.length).toBeGreaterThan(20);
  const choice = page.getByRole('combobox', { name: 'Which long bone' });
  await expect(choice.locator('option').first()).toHaveText('fifth metatarsal (the one in question)');
  await choice.selectOption('metatarsal2');
  await expect.poll(() => column(1)).not.toEqual(fifth);
  // Outside beam theory no stress is read, where the strip is hatched.
  expect((await column(1)).filter((text) => text === 'not read').length).toBeGreaterThan(3);
  // A section is looked at station by station.
  const place = page.getByRole('slider', { name: 'Place looked at, from the back end of the bone' });
  await place.press('Home');
  await expect(place).toHaveAttribute('aria-valuetext', /mm$/);
  await page.getByRole('button', { name: 'The whole calculation, with its sources' }).click();
  const text = (await page.locator('body').textContent()) ?? '';
  expect(text).not.toMatch(/\bMPa\b|megapascal/i);
  // Every figure of the frame stands there with what it rests on.
  await expect(page.locator('table.figures').first().locator('tbody tr:not(.trial-row)')).toHaveCount(53);
  await expect(page.locator('dialog.calculation')).toContainText('not modelled here');
});

test(
  'a patient reads the ratio, what raises it, and one step or many; no table of forces and no unit of stress',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await open(page, appUrl, `${HOW}&reader=patient`);
    await banded(page);
    // Beyond the theory: more or less, and no number.
    await expect(ratio(page)).toContainText('harder than');
    expect(await ratio(page).locator('p').first().textContent()).not.toMatch(/\d/);
    await fold(page, 'What raises the load here?').click();
    await expect(page.locator('.contributors > li').first()).toBeVisible({ timeout: BANDS_MS });
    await expect(page.getByRole('heading', { name: 'One step, or many?' })).toBeVisible();
    await expect(page.getByRole('button', { name: 'The whole calculation, with its sources' })).toHaveCount(0);
    await expect(page.locator('table.stations, table.figures')).toHaveCount(0);
    expect((await page.locator('.note').textContent()) ?? '').not.toMatch(/N m|MPa|newton/);
  },
);

test('what a single head carries is told to nobody, and why', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await withoutBands(page);
  const calculation = async (reader: string): Promise<string> => {
    await open(page, appUrl, `${HOW}&reader=${reader}`);
    await page.getByRole('button', { name: 'The whole calculation, with its sources' }).click();
    const text = (await page.locator('dialog.calculation').textContent()) ?? '';
    // Only the part behind the # changes next: the page stays, and so would the dialog.
    await page.keyboard.press('Escape');
    return text;
  };
  const study = await calculation('study');
  expect(study).toContain('Ground, all pads together');
  expect(study).toContain('least certain of all');
  expect(study).not.toContain('head of metatarsal 2');
  const broadcast = await calculation('broadcast');
  expect(broadcast).toContain('Ground, all pads together');
  expect(broadcast).not.toContain('head of long bone 2');
});
