/**
 * Nothing of another case on the screen: from the moment another case is opened, no text, name or value of the one before can be
 * read, not even between two frames. Everything that assistive technology could read is written down at each change of the page.
 */
import type { Page } from '@playwright/test';
import { expect, LONG_RUN, test } from './fixtures';
import { chipOf, explained, open } from './walk';

/** All that can be read now: texts, spoken names, values of fields, and the labels in the picture. */
const watch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const read = (): string[] => {
      const root = document.querySelector('.page');
      if (root === null) return [];
      const texts: string[] = [];
      const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
      while (walker.nextNode()) texts.push(walker.currentNode.textContent?.trim() ?? '');
      for (const element of root.querySelectorAll('[aria-label]')) texts.push(element.getAttribute('aria-label') ?? '');
      for (const field of root.querySelectorAll('input, select, textarea')) {
        if (field instanceof HTMLInputElement && /radio|checkbox/.test(field.type)) {
          if (field.checked)
            texts.push(
              `${field.closest('fieldset')?.querySelector('legend')?.textContent}: ${field.closest('label')?.textContent}`,
            );
        } else if ('value' in field)
          texts.push(`${field.id && document.querySelector(`label[for="${field.id}"]`)?.textContent}: ${field.value}`);
      }
      return texts.filter((text) => text !== '');
    };
    const state = { before: read(), snapshots: [] as string[][], read };
    Object.assign(window, { seen: state });
    const note = () => state.snapshots.push(read());
    new MutationObserver(note).observe(document.documentElement, {
      subtree: true,
      childList: true,
      characterData: true,
      attributes: true,
    });
    // After each frame is painted, too: the labels in the picture are drawn with the frames.
    const each = () =>
      requestAnimationFrame(() =>
        setTimeout(() => {
          note();
          each();
        }),
      );
    each();
  });

/** What stood there before the change, is not there at the end, and was still to be read at some time in between. */
const leftOver = (page: Page): Promise<{ leftovers: string[]; own: number; snapshots: number }> =>
  page.evaluate(() => {
    const { before, snapshots, read } = Reflect.get(window, 'seen') as {
      before: string[];
      snapshots: string[][];
      read: () => string[];
    };
    const end = new Set(read());
    const own = new Set(before.filter((text) => !end.has(text)));
    const first = snapshots.findIndex((texts) => texts.some((text) => !before.includes(text)));
    const after = snapshots.slice(Math.max(0, first)).flat();
    return {
      leftovers: [...new Set(after.filter((text) => own.has(text)))],
      own: own.size,
      snapshots: snapshots.length,
    };
  });

/** The picture at rest: until then its scale bar and labels still change of themselves. */
const drawn = (page: Page): Promise<void> => expect(page.locator('.stage[data-ready="true"]')).toBeAttached();

/** Between two cases the bare foot stands, seen from the outer side, with a scale and names of its own. */
const BARE_FOOT = /^(, outer side|\d+|Heel bone|Ankle bone)$/;

const nothingLeft = async (page: Page) => {
  await explained(page);
  await drawn(page);
  await page.waitForTimeout(150);
  const { leftovers, own, snapshots } = await leftOver(page);
  expect(own).toBeGreaterThan(0);
  expect(snapshots).toBeGreaterThan(2);
  expect(leftovers.filter((text) => !BARE_FOOT.test(text))).toEqual([]);
};

const openExample = async (page: Page, name: string) => {
  await drawn(page);
  await page.locator('.bar-case').click();
  await watch(page);
  await page.locator('.panel').getByRole('button', { name }).click();
};

test('the watch itself sees what is left standing', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#demo=demo-dancer');
  await drawn(page);
  await watch(page);
  await page.evaluate(() => {
    const old = document.createElement('p');
    old.textContent = 'left over';
    const seen = Reflect.get(window, 'seen') as { before: string[] };
    seen.before.push('left over');
    document.querySelector('.page')?.append(old, 'something new');
    setTimeout(() => old.remove(), 80);
  });
  // Not after some time, but when it is gone: a page that is busy takes it away late.
  await expect(page.getByText('left over', { exact: true })).toHaveCount(0);
  expect((await leftOver(page)).leftovers).toEqual(['left over']);
});

test('sentence, stamps, side, labels, chosen bone and what-if go at once', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#demo=demo-handball&question=how');
  await page.getByText('The bones, heel to toe').click();
  await page.locator('.bone-list .choice').nth(1).click();
  await page.getByText('What if it were otherwise?').click();
  await page.getByLabel('Body mass').fill('120');
  await explained(page);
  await expect(page.locator('.stage-overlay')).toContainText('In this part');
  await openExample(page, 'Hill runner');
  await nothingLeft(page);
  await expect(page.locator('.bone-card, .what-if-banner, .what-if-tag')).toHaveCount(0);
  await expect(page.locator('.case-line')).toContainText('side not stated');
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
});

test('a handed page loses its picture and its tick with its case', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#demo=demo-dancer&view=hand');
  await page.getByLabel('I have read this page').check();
  await expect(page.locator('.sheet canvas')).toBeVisible();
  await page.evaluate(() => {
    const marked = document.querySelector('.sheet canvas');
    Object.assign(window, { old: 0 });
    new MutationObserver(() => {
      const sheet = document.querySelector('.sheet')?.textContent ?? '';
      if (marked?.isConnected && !sheet.includes('Left')) Object.assign(window, { old: 1 });
    }).observe(document.documentElement, { subtree: true, childList: true, characterData: true });
  });
  await watch(page);
  await page.evaluate(() => {
    location.hash = '#demo=demo-handball&view=hand';
  });
  await expect(page.locator('.sheet-side')).toContainText('Right');
  await expect(page.locator('.sheet canvas')).toBeVisible();
  await nothingLeft(page);
  expect(await page.evaluate(() => Reflect.get(window, 'old'))).toBe(0);
  await expect(page.getByLabel('I have read this page')).not.toBeChecked();
});

test('a form that was open on a claim of one case is closed with it', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#demo=demo-dancer&view=known');
  await page.getByRole('button', { name: 'Change: Side' }).click();
  await expect(page.locator('.claim-form')).toBeVisible();
  await watch(page);
  await page.evaluate(() => {
    location.hash = '#demo=demo-handball&view=known';
  });
  await nothingLeft(page);
  await expect(page.locator('.claim-form')).toHaveCount(0);
});

test('a new explanation begun from the form of another is empty', async ({ page, appUrl }) => {
  await open(page, appUrl, '#view=new');
  await chipOf(page, /Which side/, 'Left').click();
  await chipOf(page, /How do you know/, 'X-ray or scan').click();
  await chipOf(page, /Where is it/, 'Not stated').click();
  await expect(page.locator('.case-line')).toContainText('left');
  await drawn(page);
  await page.locator('.bar-case').click();
  await watch(page);
  await page.getByRole('button', { name: 'New explanation' }).click();
  await nothingLeft(page);
  await expect(page.locator('.note input:checked')).toHaveCount(1);
  await expect(page.getByRole('radio', { name: 'Told by the person' })).toBeChecked();
});

test(
  'an own case that was kept is the first thing on the screen, not an invented one before it',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl, '#view=new');
    await chipOf(page, /Which side/, 'Left').click();
    await page.waitForTimeout(700);
    await page.addInitScript(() => {
      const lines: string[] = [];
      Object.assign(window, { lines });
      new MutationObserver(() => {
        const line = document.querySelector('.case-line')?.textContent;
        if (line) lines.push(line);
      }).observe(document, { subtree: true, childList: true, characterData: true });
    });
    await page.goto('about:blank');
    await open(page, appUrl);
    await expect(page.locator('.case-line')).toContainText('Your case: left foot');
    const lines = (await page.evaluate(() => Reflect.get(window, 'lines'))) as string[];
    expect(lines.length).toBeGreaterThan(0);
    expect(lines.filter((line) => line.includes('Invented'))).toEqual([]);
  },
);
