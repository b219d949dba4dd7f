/** The screens: the five questions lead, every page can be reached, read and used by keyboard, at every width and in every look. */
import type { Page } from '@playwright/test';
import { PAGES } from '../../src/pages/places';
import { violations } from './axe';
import { expect, LONG_RUN, test } from './fixtures';
import { CASE, explained, framesLater, open, withoutBands, withoutPicture } from './walk';

const TITLES = [
  'Where is it?',
  'How did it happen?',
  'Why does it heal as it does?',
  'What can be done?',
  'When is it back?',
];
/** With the example each time: the pages stay open from one to the next, and two of them begin an empty case. */
const addressOf = (view: string): string => `${view === 'explain' ? CASE : `#view=${view}`}&demo=demo-handball`;

test('the five questions are the navigation, and the address follows', async ({ page, appUrl }) => {
  await withoutBands(page);
  await open(page, appUrl);
  const rule = page.getByRole('navigation', { name: 'The five questions' });
  for (const [index, title] of TITLES.entries()) {
    await rule.getByRole('link').nth(index).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
    await expect(rule.locator('[aria-current="step"]')).toContainText(title);
    await expect(page.locator('.one-sentence')).not.toBeEmpty();
  }
  await expect(page).toHaveURL(/question=back/);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('When is it back?');
});

test('each reader gets other words for the same question, and no more than three claims stand in sight', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await open(page, appUrl);
  const said = new Set<string>();
  for (const reader of ['Patient', 'Broadcast', 'Study']) {
    await page.getByRole('radio', { name: reader, exact: true }).first().check();
    said.add((await page.locator('.one-sentence').textContent()) ?? '');
    expect(await page.locator('.claims > li').count()).toBeLessThanOrEqual(3);
  }
  expect(said.size).toBe(3);
});

test('a bone chosen in the list is named, with what it meets and why it matters here', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl);
  await page.getByText('The bones, heel to toe').click();
  await expect(page.locator('.bone-list .choice')).toHaveCount(28);
  await expect(page.locator('.bone-list')).toHaveCount(5);
  await expect(page.getByRole('region', { name: 'Heel and ankle' }).getByRole('button')).toHaveCount(2);
  await page.locator('.bone-list .choice').nth(11).click();
  const card = page.locator('.bone-card');
  await expect(card).toContainText('It meets:');
  await expect(card).toContainText('Why it matters here:');
  await card.getByRole('button', { name: 'Close this bone' }).click();
  await expect(card).toBeHidden();
});

test('a what-if looks different, is dropped with one button, and becomes a claim only when somebody says so', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await withoutBands(page);
  await open(page, appUrl, '#question=how');
  const before = await page.locator('.one-sentence').textContent();
  await page.getByText('What if it were otherwise?').click();
  await page.getByLabel('Body mass').fill('120');
  await expect(page.locator('.what-if-banner')).toBeVisible();
  await expect(page.locator('.plate')).toHaveAttribute('data-what-if', 'true');
  await page.getByRole('button', { name: 'Drop the what-if' }).click();
  await expect(page.locator('.what-if-banner')).toBeHidden();
  await explained(page);
  expect(await page.locator('.one-sentence').textContent()).toBe(before);

  await page.getByLabel('Body mass').fill('120');
  await page.getByRole('button', { name: 'Keep it as a claim' }).click();
  const claims = page.locator('.claim-list > .claim:not(.claim-old)');
  await expect(claims.filter({ hasText: '120' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Keep as a claim', exact: true }).click();
  await expect(claims.filter({ hasText: '120' })).toHaveCount(1);
  await expect(claims.filter({ hasText: '120' })).toContainText('Reported');
});

test('the skip button and the rule work from the keyboard', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await withoutBands(page);
  await open(page, appUrl);
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Skip to the words' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('#note')).toBeFocused();
  await page.getByRole('link', { name: 'What can be done?' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What can be done?');
  await page.getByRole('button', { name: 'Side by side' }).press('Enter');
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
});

/** Opens what is folded, outer folds first. Of folds that open in each other's place the last stays open, what the others hold stays shut. */
async function openFolds(page: Page) {
  const folds = page.locator('.note summary');
  for (let nth = 0; nth < (await folds.count()); nth++) {
    const fold = folds.nth(nth);
    if ((await fold.isVisible()) && !(await fold.evaluate((it) => it.closest('details')?.open))) await fold.click();
  }
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(
    `axe finds nothing on the pages, ${colorScheme}`,
    colorScheme === 'dark' ? LONG_RUN : {},
    async ({ page, appUrl }) => {
      test.setTimeout(300_000);
      await page.emulateMedia({ colorScheme });
      // What bands tell stands in the same colours: one look with them will do.
      if (colorScheme === 'dark') await withoutBands(page);
      // One look at what people meet first in the short run; every page in the long one.
      const met: readonly string[] = ['start', 'explain', 'known', 'find', 'hand', 'ask'];
      for (const view of PAGES.filter((each) => process.env.UNDERFOOT_LONG || met.includes(each))) {
        await open(page, appUrl, addressOf(view));
        expect(await violations(page), view).toEqual([]);
      }
      const folded = process.env.UNDERFOOT_LONG ? ['how', 'why', 'options', 'back'] : ['back'];
      for (const question of folded) {
        await open(page, appUrl, `#question=${question}&reader=study`);
        await openFolds(page);
        expect(await violations(page), question).toEqual([]);
      }
    },
  );
}

/** Pages are opened once and looked at in every width: to open one costs more than to look at it five times. */
const WIDTHS = [320, 390, 768, 1024, 1440] as const;
const acrossOf = (page: Page) =>
  page.evaluate(() => ({
    scroll: document.documentElement.scrollWidth,
    width: document.documentElement.clientWidth,
    small: [...document.querySelectorAll('button, a, select, summary, input:not([type="file"]), label.chip')]
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .filter(({ element, box }) => {
        const seen = box.width > 1 && box.height > 1 && element.checkVisibility({ visibilityProperty: true });
        // A tick box inside its label, and a word that is a link in a line of text, are reached through a larger target.
        const inLabel = element.matches('input') && element.closest('label') !== null;
        return seen && !inLabel && (box.width < 24 || box.height < 24);
      })
      .map(({ element, box }) => `${element.outerHTML.slice(0, 80)} ${box.width} x ${box.height}`),
  }));

for (const views of [PAGES.slice(0, 3), PAGES.slice(3, 6), PAGES.slice(6, 9), PAGES.slice(9)]) {
  test(
    `nothing scrolls sideways, at any width and with text of twice the size, and every target is 24 px or more: ${views.join(', ')}`,
    views.includes('explain') ? {} : LONG_RUN,
    async ({ page, appUrl }) => {
      test.setTimeout(120_000);
      for (const view of views) {
        await page.setViewportSize({ width: WIDTHS[0], height: 800 });
        await open(page, appUrl, addressOf(view));
        for (const width of WIDTHS) {
          await page.setViewportSize({ width, height: 800 });
          await framesLater(page);
          const measured = await acrossOf(page);
          expect(measured.width, `${view} at ${width}`).toBeGreaterThan(width - 20);
          expect(measured.scroll, `${view} at ${width}`).toBeLessThanOrEqual(measured.width);
          expect(measured.small, `${view} at ${width}`).toEqual([]);
        }
        await page.setViewportSize({ width: 1024, height: 768 });
        const size = (percent: string): Promise<void> =>
          page.evaluate((given) => {
            document.documentElement.style.fontSize = given;
          }, percent);
        await size('200%');
        await framesLater(page);
        const large = await acrossOf(page);
        expect(large.scroll, `${view}, text of twice the size`).toBeLessThanOrEqual(large.width);
        await size('');
      }
    },
  );
}

test('forced colours keep the current question, the chosen reader and the words', async ({ page, appUrl }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  await open(page, appUrl);
  // Here the colours are the person's own; axe computes contrast from ours.
  expect(await violations(page, ['color-contrast'])).toEqual([]);
  const current = page.locator('.rule a[aria-current]');
  const weight = (of: typeof current) => of.evaluate((element) => getComputedStyle(element).fontWeight);
  expect(Number(await weight(current))).toBeGreaterThan(Number(await weight(page.locator('.rule a').nth(2))));
});

test('the patient screen shows one question, one sentence and three large buttons, and nothing of the case', async ({
  page,
  appUrl,
}) => {
  await open(page, appUrl, '#view=show');
  await expect(page.locator('.bar')).toHaveCount(0);
  await expect(page.locator('.rule')).toHaveCount(0);
  const buttons = page.locator('.patient-buttons button');
  await expect(buttons).toHaveCount(3);
  for (const box of await buttons.evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height)))
    expect(box).toBeGreaterThanOrEqual(48);
  for (const title of TITLES.slice(1)) {
    await page.getByRole('button', { name: 'Next' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
  }
  await page.getByRole('button', { name: 'Done' }).click();
  await expect(page.locator('.bar')).toBeVisible();
});

test('where the bands are dark and where such breaks lie is held together in sight, on the note and for the patient', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await withoutBands(page);
  test.setTimeout(120_000);
  const plain = /The model has nothing to say in zone 2 .*where such breaks are found/;
  await open(page, appUrl, '#demo=demo-handball&question=how');
  await expect(page.locator('.claims')).toContainText(plain);
  await open(page, appUrl, '#demo=demo-handball&view=show&question=how&reader=patient');
  await expect(page.locator('.patient-beside')).toHaveText(plain);
  // Where the model has places, whether they meet such breaks waits for the draws, and nothing of a mismatch stands there.
  await open(page, appUrl, '#demo=demo-hill-runner&view=show&question=how&reader=patient');
  await expect(page.locator('.patient-beside')).toContainText('is being worked out');
  await expect(page.locator('.patient-beside')).not.toHaveText(plain);
});

test('a patient reads no unit of stress and no term of the model, on the note and on the patient screen', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await withoutBands(page);
  const trade = /\bMPa\b|megapascal|beam theory/i;
  await open(page, appUrl, '#demo=demo-handball&question=how&reader=patient');
  await page.locator('.note summary').filter({ hasText: 'Forces and stress' }).click();
  await expect(page.locator('.strip')).toHaveCount(1);
  expect(await page.locator('.note').textContent()).not.toMatch(trade);
  await expect(page.locator('.ramp')).not.toHaveAttribute('aria-label', trade);
  await open(page, appUrl, '#demo=demo-handball&question=how&reader=study');
  expect(await page.locator('.note').textContent()).toMatch(trade);
});

test(
  'the patient screen has the key of the picture that it shows, and no sign that the picture lacks',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutBands(page);
    const key = page.locator('.legend-short');
    const at = (question: string) =>
      open(page, appUrl, `#demo=demo-handball&view=show&question=${question}&reader=patient`);
    await at('where');
    await expect(key.locator('.hatch')).toHaveCount(3);
    await at('how');
    await expect(key.locator('.ramp rect')).toHaveCount(6);
    await expect(key.locator('.ramp text').last()).toHaveText('most');
    await expect(key.locator('.cord').first()).toBeVisible();
    await expect(key.locator('.blocks')).toHaveCount(3);
    await at('why');
    // Three of the four states of feeding are left by this break and its screw, and the bare line between them.
    await expect(key.locator('.dot')).toHaveCount(4);
    await expect(key).not.toContainText('none of its known feeders');
    await at('options');
    await expect(key).toHaveCount(0);
  },
);

test('the patient sees the rule of weeks where the question is of weeks, and only there', async ({ page, appUrl }) => {
  await withoutPicture(page);
  test.setTimeout(120_000);
  await open(page, appUrl, '#demo=demo-handball&view=show&question=back&reader=patient');
  await expect(page.locator('.patient-weeks .weeks')).toBeVisible();
  await expect(page.locator('.patient-weeks .bracket').first()).toBeVisible();
  await page.getByRole('button', { name: 'Back' }).click();
  await expect(page.locator('.weeks')).toHaveCount(0);
});

test('on a phone the current step of the rule shows its name, every step tells it, and the case is named whole at 1024 px', async ({
  page,
  appUrl,
}) => {
  await withoutPicture(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, appUrl, '#demo=demo-handball&question=why');
  const rule = page.getByRole('navigation', { name: 'The five questions' });
  for (const title of TITLES) await expect(rule.getByRole('link', { name: title })).toHaveCount(1);
  const seen = await rule
    .locator('.rule-title')
    .evaluateAll((all) => all.filter((each) => each.clientWidth > 1).map((each) => each.textContent));
  expect(seen).toEqual([TITLES[2]]);
  await page.setViewportSize({ width: 1024, height: 768 });
  await open(page, appUrl, '#demo=demo-hill-runner&question=where');
  const { cut, below } = await page.locator('.case-line').evaluate((line) => ({
    cut: line.scrollWidth > line.clientWidth || line.scrollHeight > line.clientHeight,
    below: line.getBoundingClientRect().bottom - (line.parentElement?.getBoundingClientRect().bottom ?? 0),
  }));
  expect(cut).toBe(false);
  expect(below).toBeLessThanOrEqual(0);
});

test(
  'with text of twice the size the names in the picture are larger, and the bar covers nothing of its own',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await page.setViewportSize({ width: 1440, height: 900 });
    await open(page, appUrl, '#demo=demo-hill-runner&question=where');
    const letters = () =>
      page
        .locator('.stage-overlay text')
        .first()
        .evaluate((text) => Number.parseFloat(getComputedStyle(text).fontSize));
    await expect(page.locator('.stage[data-ready="true"]')).toBeAttached();
    const usual = await letters();
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    await expect.poll(letters).toBeGreaterThan(1.5 * usual);
    const covered = await page.locator('.bar').evaluate((bar) => {
      const parts = [...bar.querySelectorAll('.brand, .case-line, button, a, label span')];
      return parts.flatMap((one, i) =>
        parts.slice(i + 1).flatMap((other) => {
          if (one.contains(other) || other.contains(one)) return [];
          const [a, b] = [one.getBoundingClientRect(), other.getBoundingClientRect()];
          const apart =
            a.right <= b.left + 2 || b.right <= a.left + 2 || a.bottom <= b.top + 2 || b.bottom <= a.top + 2;
          return apart || a.width < 2 || b.width < 2 ? [] : [`${one.textContent} / ${other.textContent}`];
        }),
      );
    });
    expect(covered).toEqual([]);
  },
);

test('an address typed while the app is open is followed', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl);
  await expect(page.locator('.question-title')).toHaveText('Where is it?');
  await page.evaluate(() => {
    location.hash = '#question=back&reader=study';
  });
  await expect(page.locator('.question-title')).toHaveText('When is it back?');
  await expect(page.getByRole('radio', { name: 'Study' })).toBeChecked();
});

test(
  'an address is followed even where the screen changes before the browser tells of it',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl);
    await page.evaluate(() => {
      location.hash = '#question=back&reader=study';
      document.querySelector<HTMLInputElement>('input[name="reader-bar"][value="broadcast"]')?.click();
    });
    await expect(page.locator('.question-title')).toHaveText('When is it back?');
    await expect(page.getByRole('radio', { name: 'Study' })).toBeChecked();
  },
);

test('an example opened by its address is there again after a reload', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#demo=demo-dancer&question=how');
  await expect(page.locator('.bar')).toContainText('left foot');
  await page.reload();
  await expect(page.locator('.question-title')).toHaveText('How did it happen?');
  await expect(page.locator('.bar')).toContainText('left foot');
});

test(
  'no screw is drawn, named or described where nobody said that one was put in',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl, '#demo=demo-hill-runner&question=options');
    await expect(page.locator('.one-sentence')).toContainText('What is usually done');
    await expect(page.locator('.legend-box .screw')).toHaveCount(0);
    await expect(page.locator('.note')).not.toContainText('A screw is drawn');
  },
);
