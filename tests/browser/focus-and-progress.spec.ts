/** The focus goes on at a sensible place where something vanishes, and what takes a while says so. */
import { readFileSync } from 'node:fs';
import { expect, LONG_RUN, test } from './fixtures';
import {
  chooseFile,
  framesLater,
  heading,
  heard,
  listen,
  open,
  openFile,
  pressByKey,
  withoutBands,
  withoutPicture,
} from './walk';

test('dropping the what-if leads to the heading, from the banner and from the form', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await withoutBands(page);
  await open(page, appUrl, '#question=how');
  await page.getByText('What if it were otherwise?').click();
  await page.getByLabel('Body mass').fill('120');
  await pressByKey(page, page.locator('.what-if-banner').getByRole('button', { name: 'Drop the what-if' }));
  await expect(page.locator('.what-if-banner')).toHaveCount(0);
  await expect(heading(page)).toBeFocused();

  // The slider goes back with the explanation: filled with what it still shows it would not change.
  await expect(page.getByLabel('Body mass')).not.toHaveValue('120');
  await page.getByLabel('Body mass').fill('120');
  await page.getByRole('button', { name: 'Keep it as a claim' }).click();
  await pressByKey(page, page.locator('.claim-form').getByRole('button', { name: 'Drop the what-if' }));
  await expect(page.locator('.claim-form')).toHaveCount(0);
  await expect(heading(page)).toBeFocused();
});

test(
  'back to the foot of the case keeps the focus on its button, which then has nothing to do',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl);
    await page.getByText('The foot itself: shape, pose, measures').click();
    await page.getByRole('slider', { name: 'Arch' }).press('End');
    await expect(page.locator('.what-if-banner')).toBeVisible();
    const back = page.getByRole('button', { name: 'Back to the foot of the case' });
    await expect(back).toBeEnabled();
    await pressByKey(page, back);
    await expect(page.locator('.what-if-banner')).toHaveCount(0);
    await expect(back).toBeDisabled();
    // The browser takes the focus from a disabled button with the next frame.
    await framesLater(page);
    await expect(back).toBeFocused();
  },
);

const handball = readFileSync(new URL('../../content/cases/handball-zone-2.case.json', import.meta.url), 'utf8');

test('a claim removed leads to the next one, and of the last to the one before; undo keeps the focus', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=known');
  const claims = page.locator('.claim-list > .claim');
  const count = await claims.count();
  const at = 9;
  expect(count).toBeGreaterThan(at + 2);
  const next =
    (await claims
      .nth(at + 1)
      .locator('b')
      .textContent()) ?? 'no next claim';
  await pressByKey(page, claims.nth(at).getByRole('button', { name: /^Remove/ }));
  await expect(claims).toHaveCount(count - 1);
  await expect(claims.nth(at).locator('b')).toHaveText(next);
  await expect(claims.nth(at).getByRole('button', { name: /^Change/ })).toBeFocused();

  const undo = page.getByRole('button', { name: 'Undo' });
  await pressByKey(page, undo);
  await expect(undo).toBeDisabled();
  await expect(claims).toHaveCount(count);
  await framesLater(page);
  await expect(undo).toBeFocused();

  await pressByKey(page, claims.last().getByRole('button', { name: /^Remove/ }));
  await expect(claims).toHaveCount(count - 1);
  await expect(claims.last().getByRole('button', { name: /^Change/ })).toBeFocused();
});

test('the only claim removed leads to the heading', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=known');
  const whole: { claims: readonly unknown[] } = JSON.parse(handball);
  await openFile(page, JSON.stringify({ ...whole, claims: whole.claims.slice(0, 1) }));
  await page.goto(`${appUrl}#view=known`);
  const claims = page.locator('.claim-list > .claim');
  await expect(claims).toHaveCount(1);
  await pressByKey(page, claims.getByRole('button', { name: /^Remove/ }));
  await expect(page.locator('.nothing-yet')).toBeVisible();
  await expect(heading(page)).toBeFocused();
});

test(
  'adding a claim starts in its first field, changing one in the first that can be changed',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await open(page, appUrl, '#view=known');
    await pressByKey(page, page.getByRole('button', { name: 'Add a claim' }));
    await expect(page.getByLabel('About')).toBeFocused();
    await pressByKey(page, page.getByRole('button', { name: 'Leave it' }));
    await expect(heading(page)).toBeFocused();
    await pressByKey(page, page.getByRole('button', { name: /^Change/ }).first());
    await expect(page.getByLabel('About')).toBeDisabled();
    await expect(page.locator('.claim-form :is(select, input):not(:disabled)').first()).toBeFocused();
  },
);

test(
  'however the question before wiping is closed, the focus goes back to the button of the case',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await open(page, appUrl);
    const button = page.locator('.bar-case');
    const dialog = page.getByRole('dialog', { name: 'Finish?' });
    const ask = async (): Promise<void> => {
      await pressByKey(page, button);
      await pressByKey(page, page.getByRole('button', { name: 'Finish and remove everything' }));
      await expect(dialog).toBeVisible();
    };
    await ask();
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
    await expect(button).toBeFocused();
    await ask();
    await pressByKey(page, dialog.getByRole('button', { name: 'Go on working' }));
    await expect(dialog).toBeHidden();
    await expect(button).toBeFocused();
    await ask();
    await pressByKey(page, dialog.getByRole('button', { name: 'Remove everything' }));
    await expect(heading(page)).toHaveText('Underfoot');
    await expect(heading(page)).toBeFocused();
  },
);

for (const [name, address] of [
  ['the start page', '#view=start'],
  ['the explain page', '#question=where'],
] as const) {
  test(
    `an error that is read leads on to the heading of ${name}; the size told is the file's own`,
    name === 'the start page' ? {} : LONG_RUN,
    async ({ page, appUrl }) => {
      await withoutPicture(page);
      await page.goto(`${appUrl}${address}`);
      const big = Buffer.alloc(5 * 1024 * 1024, 32);
      if (address === '#view=start')
        await page
          .locator('input[type="file"]')
          .setInputFiles({ name: 'x.case.json', mimeType: 'application/json', buffer: big });
      else await chooseFile(page, big);
      const problem = page.locator('.problem');
      await expect(problem).toContainText('The file is 5 MB. A case file is never larger than 2 MB.');
      await pressByKey(page, problem.getByRole('button', { name: 'All right' }));
      await expect(problem).toHaveCount(0);
      await expect(heading(page)).toBeFocused();
    },
  );
}

test('strokes wiped or taken back lead to the tool in the hand', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl);
  const pen = page.getByRole('button', { name: 'Draw on the bones' });
  await pen.click();
  const box = await page.locator('.stage-picture').boundingBox();
  if (box === null) throw new Error('no picture');
  for (const name of ['Wipe all strokes', 'Take the last stroke back']) {
    await page.mouse.move(box.x + 0.3 * box.width, box.y + 0.45 * box.height);
    await page.mouse.down();
    for (let i = 1; i <= 12; i += 1)
      await page.mouse.move(box.x + (0.3 + 0.03 * i) * box.width, box.y + (0.45 + 0.01 * i) * box.height);
    await page.mouse.up();
    await pressByKey(page, page.getByRole('button', { name }));
    await expect(page.getByRole('button', { name })).toHaveCount(0);
    await expect(pen).toBeFocused();
  }
});

test('the ends of the walk and of the patient screen keep the focus', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=walk');
  const back = page.locator('.walk-steps').getByRole('button', { name: 'Back', exact: true });
  const next = page.getByRole('button', { name: 'Next stop' });
  await pressByKey(page, next);
  await expect(next).toBeFocused();
  await pressByKey(page, back);
  await expect(back).toBeDisabled();
  await framesLater(page);
  await expect(back).toBeFocused();
  while ((await next.count()) > 0) await pressByKey(page, next);
  await expect(heading(page)).toBeFocused();

  await open(page, appUrl, '#view=show&question=how');
  const before = page.getByRole('button', { name: 'Back', exact: true });
  await pressByKey(page, before);
  await expect(before).toBeDisabled();
  await framesLater(page);
  await expect(before).toBeFocused();
});

test(
  'a page to hand over is not printed before its picture is drawn, and says so',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await page.addInitScript(() => {
      const make = window.createImageBitmap.bind(window);
      const held = new Promise<void>((letGo) => Object.assign(window, { letGo }));
      Object.assign(window, { createImageBitmap: (blob: Blob) => held.then(() => make(blob)) });
    });
    await open(page, appUrl, '#view=hand');
    const print = page.getByRole('button', { name: 'Print' });
    await page.getByLabel('I have read this page').check();
    await expect(page.locator('.sheet-figure')).toHaveText('The picture is being drawn.');
    await expect(page.locator('.sheet canvas')).toBeHidden();
    await expect(page.locator('.hand-controls [role="status"]')).toHaveText('The picture is being drawn.');
    await expect(print).toBeDisabled();
    await page.evaluate(() => Reflect.get(window, 'letGo')());
    await expect(page.locator('.sheet canvas[data-drawn="true"]')).toBeVisible({ timeout: 40_000 });
    await expect(page.locator('.sheet-no-figure')).toHaveCount(0);
    await expect(page.locator('.hand-controls [role="status"]')).toHaveText('The picture is drawn.');
    await expect(print).toBeEnabled();
  },
);

const NO_PICTURE = 'This device could not draw the picture. The page has none.';
test('a page whose picture cannot be drawn says so and can be printed', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=hand');
  await page.getByLabel('I have read this page').check();
  await expect(page.locator('.sheet-figure')).toHaveText(NO_PICTURE);
  await expect(page.locator('.hand-controls [role="status"]')).toHaveText(NO_PICTURE);
  await expect(page.locator('.sheet canvas')).toBeHidden();
  await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.sheet-no-figure')).toBeVisible();
});

test('a still says that it is being made, and its button keeps the focus', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#view=say&question=why');
  await expect(page.locator('.stage[data-ready]')).toBeVisible();
  await listen(page);
  const button = page.getByRole('button', { name: 'Download a still' });
  await Promise.all([page.waitForEvent('download', { timeout: 40_000 }), pressByKey(page, button)]);
  expect(await heard(page)).toContain('The still is being made…');
  await expect(button).toBeEnabled();
  await expect(button).toBeFocused();
  await expect(page.getByText('The still is being made…')).toHaveCount(0);
});

test('a model says that it is being made, and the other waits', LONG_RUN, async ({ page, appUrl }) => {
  test.setTimeout(240_000);
  await open(page, appUrl);
  await page.getByText('The foot itself: shape, pose, measures').click();
  await listen(page);
  const files = page.getByRole('region', { name: 'Take the foot along' });
  const [glb, stl] = [files.getByRole('button').first(), files.getByRole('button').last()];
  const download = page.waitForEvent('download', { timeout: 200_000 });
  await pressByKey(page, stl);
  await expect.poll(() => heard(page)).toContain('The file is being made…');
  await download;
  await expect(stl).toHaveText('For printing (STL, true size)');
  await expect(stl).toBeFocused();
  await expect(glb).toBeEnabled();
});
