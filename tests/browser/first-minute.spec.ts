/**
 * The first minute, by keyboard: three doors, the walk from heel to toe, pages with nothing on them yet, keys and hands, and answers
 * to links and files that cannot be followed.
 */
import type { Page } from '@playwright/test';
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';
// Most of these tests are of words; drawing the foot without a graphics card is most of their cost: they go without a picture.
import { CASE, chipOf, chooseFile, explained, open, withoutBands, withoutPicture } from './walk';

const title = (page: Page) => page.getByRole('heading', { level: 1 });
const reader = (page: Page, name: string) => page.getByRole('radio', { name, exact: true }).first();

/** Goes on by Tab until this has the focus, as somebody without a mouse does. */
const tabTo = async (page: Page, name: string): Promise<void> => {
  for (let presses = 0; presses < 25; presses += 1) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => document.activeElement?.textContent?.trim());
    if (at === name) return;
  }
  throw new Error(`Tab does not reach "${name}"`);
};

/** Empty pages of three kinds; the others differ from these in their words only. */
const AXED: ReadonlySet<string> = new Set(['known', 'hand', 'show']);

test('who comes with nothing meets three doors, in words alone, with nothing of any case', async ({ page, appUrl }) => {
  await page.route('**/*.glb', () => undefined);
  await page.goto(appUrl);
  await expect(title(page)).toHaveText('Underfoot');
  await expect(page.locator('.door h2')).toHaveText(['Explain to a patient', 'Prepare a segment', 'Test yourself']);
  for (const gives of await page.locator('.door-main > p:last-child').allTextContents())
    expect(gives.match(/\.(\s|$)/g)).toHaveLength(1);
  await expect(page.locator('.stage, canvas, .bar, .start-kept')).toHaveCount(0);
  expect(await violations(page)).toEqual([]);
});

test('the door to a patient leads by keyboard from four choices to the explanation', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await page.goto(appUrl);
  await tabTo(page, 'Explain to a patient');
  await page.keyboard.press('Enter');
  await expect(title(page)).toHaveText('What do you know?');
  await expect(title(page)).toBeFocused();
  await expect(reader(page, 'Patient')).toBeChecked();
  await expect(page.locator('.note input:checked')).toHaveCount(1);
  await page
    .getByRole('group', { name: /Which side/ })
    .getByRole('radio', { name: 'Left' })
    .press('Space');
  await page
    .getByRole('group', { name: /Where is it/ })
    .getByRole('radio')
    .first()
    .press('Space');
  await page.getByRole('link', { name: 'See the explanation' }).press('Enter');
  await explained(page);
  await expect(title(page)).toHaveText('Where is it?');
  await expect(page.locator('.case-line')).toContainText('Your case: left foot');
});

test('the door to a segment leads to the script, in words to be spoken', async ({ page, appUrl }) => {
  await withoutBands(page);
  await withoutPicture(page);
  await page.goto(appUrl);
  await tabTo(page, 'Prepare a segment');
  await page.keyboard.press('Enter');
  await expect(reader(page, 'Broadcast')).toBeChecked();
  await page
    .getByRole('group', { name: /Where is it/ })
    .getByRole('radio')
    .first()
    .press('Space');
  await page.locator('.note').getByRole('link', { name: 'Say it' }).press('Enter');
  await explained(page);
  await expect(page.locator('.script > li').first()).toBeVisible();
});

test('the door to the questions needs no case', async ({ page, appUrl }) => {
  await page.goto(appUrl);
  await tabTo(page, 'Test yourself');
  await page.keyboard.press('Enter');
  await expect(reader(page, 'Study')).toBeChecked();
  await expect(page.locator('.note')).toContainText('1 of 10');
  await expect(page.locator('.case-line')).not.toContainText('Invented');
});

test('an invented example is one step away and says so', LONG_RUN, async ({ page, appUrl }) => {
  await withoutBands(page);
  await withoutPicture(page);
  for (const [example, heading] of [
    ['Handball player', 'Where is it?'],
    ['Hill runner', 'A script to speak'],
  ] as const) {
    await page.goto('about:blank');
    await page.goto(appUrl);
    await page.getByRole('link', { name: new RegExp(`invented example: ${example}`) }).click();
    await explained(page);
    await expect(title(page)).toHaveText(heading);
    await expect(page.locator('.case-line')).toContainText('Invented example');
  }
});

test('who has a case of their own comes back to it; the start says only that it is there', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=new');
  await chipOf(page, /Which side/, 'Left').click();
  await expect(page.locator('.case-line')).toContainText('left');
  // Saved a little after the change: a page that is left saves at once.
  await page.waitForTimeout(700);
  await page.goto('about:blank');
  await page.goto(appUrl);
  await expect(title(page)).toHaveText('Where is it?');
  await expect(page.locator('.case-line')).toContainText('Your case: left foot');
  await page.getByRole('link', { name: 'Underfoot' }).click();
  await expect(page.locator('.start-kept')).toBeVisible();
  await expect(page.locator('.start')).not.toContainText(/left/i);
  await page.getByRole('link', { name: 'Explain to a patient' }).click();
  await expect(page.locator('.case-line')).toContainText('Your case: left foot');
});

test('the walk goes from heel to toe by keys, each stop one cut of the camera where motion is not wanted', async ({
  page,
  appUrl,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(appUrl);
  await tabTo(page, 'Or first a walk over the foot, from heel to toe');
  await page.keyboard.press('Enter');
  await expect(title(page)).toHaveText('calcaneus');
  const rule = page.getByRole('navigation', { name: 'Stops of the walk' });
  await expect(rule.getByRole('button')).toHaveCount(10);
  const ready = page.locator('.stage[data-ready="true"]');
  await expect(ready).toBeVisible();
  const frames = async () => Number(await page.locator('.stage').getAttribute('data-frames'));
  const said = new Set<string>();
  for (let number = 1; number <= 10; number += 1) {
    await expect(page.locator('.question-count')).toHaveText(`Heel to toe: ${number} of 10`);
    await expect(rule.locator('[aria-current="step"]')).toHaveText(String(number));
    said.add((await page.locator('.one-sentence').textContent()) ?? '');
    const before = await frames();
    if (number === 10) break;
    await page.keyboard.press('ArrowRight');
    await expect.poll(frames).toBe(before + 1);
    await expect(ready).toBeVisible();
  }
  expect(said.size).toBe(10);
  await expect(page.locator('.stage figcaption')).toContainText('A right foot, inner side');
  await page.keyboard.press('ArrowLeft');
  await expect(page.locator('.question-count')).toHaveText('Heel to toe: 9 of 10');
  // In the picture the arrows are the picture's own.
  await page.locator('.stage-picture').focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('.question-count')).toHaveText('Heel to toe: 9 of 10');
  await page.keyboard.press('Escape');
  await expect(title(page)).toHaveText('Underfoot');
});

test(
  'the walk shows nothing of an open case, and gives it back when it is left',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl, '#demo=demo-dancer&reader=study');
    await expect(page.locator('.stage-overlay')).toContainText('In this part');
    await page.getByRole('link', { name: 'Walk from heel to toe' }).click();
    await expect(page.locator('.stage[data-ready="true"]')).toBeVisible();
    await expect(page.locator('.stage-overlay')).toContainText('Calcaneus');
    await expect(page.locator('.stage-overlay')).not.toContainText('In this part');
    await expect(page.locator('.stage figcaption')).not.toContainText('Left');
    await page.getByRole('button', { name: 'Leave the walk' }).click();
    await expect(title(page)).toHaveText('Where is it?');
    await expect(page.locator('.stage-overlay')).toContainText('In this part');
    await expect(page.locator('.bone-card')).toHaveCount(0);
  },
);

test('the walk goes on in words where no picture can be drawn', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=walk');
  await page.getByRole('button', { name: 'Next stop' }).click();
  await expect(title(page)).toHaveText('ankle bone');
  await expect(page.locator('.one-sentence')).not.toBeEmpty();
});

test(
  'keys and hands open by ? and by a button, close by Escape, and give the focus back',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl);
    await expect(page.locator('.stage[data-ready="true"]')).toBeVisible();
    const dialog = page.getByRole('dialog', { name: 'Keys and hands' });
    await page.locator('.stage-picture').focus();
    await page.keyboard.press('?');
    await expect(dialog).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
    await expect(page.locator('.stage-picture')).toBeFocused();

    const button = page.getByRole('button', { name: 'Keys and hands' });
    // The browser tells of the closing a task later than it closes: a press in between would open what is then told as closed.
    await expect(async () => {
      await button.press('Enter');
      await expect(dialog).toBeVisible({ timeout: 2000 });
    }).toPass({ timeout: 20_000 });
    await dialog.getByLabel('The key ? opens this').press('Space');
    await dialog.getByRole('button', { name: 'Close' }).press('Enter');
    await expect(button).toBeFocused();
    // Turned off, the key is the picture's alone.
    await page.keyboard.press('?');
    await expect(dialog).toBeHidden();
    await page.locator('.stage-picture').focus();
    await expect(page.locator('.stage-picture')).toBeFocused();
    await page.keyboard.press('?');
    await expect(dialog).toBeVisible();
  },
);

test('? is a sign like any other where text is typed', LONG_RUN, async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=known');
  await page.getByRole('button', { name: 'Add a claim' }).click();
  const note = page.getByLabel('Why (no names here');
  await note.press('?');
  await expect(note).toHaveValue('?');
  await expect(page.getByRole('dialog')).toHaveCount(0);
});

test(
  'a page with nothing on it yet says what would be there and leads to the one next step',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await open(page, appUrl, '#view=new');
    for (const view of ['explain', 'known', 'say', 'hand', 'ask', 'show']) {
      await page.goto(`${appUrl}#view=${view}`);
      if (view === 'ask') await page.getByRole('radio', { name: 'Three for the patient' }).check();
      const nothing = page.locator('.nothing-yet');
      await expect(nothing, view).toHaveCount(1);
      await expect(nothing.getByRole('link', { name: 'Say what is known' })).toBeVisible();
      if (AXED.has(view)) expect(await violations(page), view).toEqual([]);
    }
    await expect(page.locator('.sheet, .script')).toHaveCount(0);
    await page.getByRole('link', { name: 'Say what is known' }).click();
    await expect(title(page)).toHaveText('What do you know?');
  },
);

test('a link that asks for what is not here is answered, and nothing is lost', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await page.goto(`${appUrl}#view=somewhere&foot=left`);
  const problem = page.locator('.problem');
  await expect(problem).toContainText('view=somewhere, foot=left');
  await expect(problem).toContainText('Check that the link');
  await expect(title(page)).toHaveText('Underfoot');
  await problem.getByRole('button').click();

  await page.goto('about:blank');
  await open(page, appUrl, '#demo=demo-dancer');
  await page.evaluate(() => {
    location.hash = '#question=back&name=somebody';
  });
  await expect(problem).toContainText('name=somebody');
  await expect(title(page)).toHaveText('When is it back?');
  await expect(page.locator('.case-line')).toContainText('left foot');
  await expect(page).not.toHaveURL(/name/);
});

test('a broken file chosen at the start, or one the device cannot read, is refused there', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await page.goto(appUrl);
  const field = page.locator('input[type="file"]');
  await field.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{') });
  await expect(page.locator('.problem')).toContainText('Nothing was changed');
  await expect(title(page)).toHaveText('Underfoot');
  await page.evaluate(() => {
    Blob.prototype.text = () => Promise.reject(new DOMException('gone', 'NotReadableError'));
  });
  await page.goto(`${appUrl}${CASE}`);
  await chooseFile(page, '{}');
  await expect(page.locator('.problem')).toContainText('could not read the file');
  await expect(page.locator('.problem')).toContainText('choose it again');
});
