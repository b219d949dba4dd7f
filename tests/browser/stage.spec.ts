/** The 3D figure in the built app: what it draws, when it draws, and every way to move it. */
import type { Page } from '@playwright/test';
import { expect, LONG_RUN, test } from './fixtures';
import { CASE } from './walk';

const READY = '.stage[data-ready="true"]';
const frames = async (page: Page): Promise<number> => Number(await page.locator('.stage').getAttribute('data-frames'));
const open = async (page: Page, url: string): Promise<void> => {
  await page.goto(`${url}${CASE}`);
  await page.waitForSelector(READY);
};
/** Waits for the fine frame that follows something that moved the picture. */
const settled = async (page: Page, before: number): Promise<void> => {
  await expect.poll(() => frames(page)).toBeGreaterThan(before);
  await page.waitForSelector(READY);
};

test('draws within its budget, and no frame while nothing changes', async ({ page, appUrl }) => {
  await open(page, appUrl);
  const stage = page.locator('.stage');
  expect(Number(await stage.getAttribute('data-triangles'))).toBeGreaterThan(1000);
  expect(Number(await stage.getAttribute('data-triangles'))).toBeLessThanOrEqual(60_000);
  expect(Number(await stage.getAttribute('data-draw-calls'))).toBeLessThanOrEqual(120);
  // Fonts may bring one more fine frame: wait until the count has stood still once.
  await expect
    .poll(async () => {
      const before = await frames(page);
      await page.waitForTimeout(400);
      return (await frames(page)) - before;
    })
    .toBe(0);
  const before = await frames(page);
  await page.waitForTimeout(1500);
  expect(await frames(page)).toBe(before);
});

test('turns, moves, grows, starts again and cuts to a view by the keys of the standards; Tab leaves', async ({
  page,
  appUrl,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await open(page, appUrl);
  const caption = page.locator('.stage figcaption');
  const opening = await caption.textContent();
  await page.locator('.stage-picture').focus();
  for (const key of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Shift+ArrowLeft', '+', '-']) {
    const before = await frames(page);
    await page.keyboard.press(key);
    await settled(page, before);
  }
  expect(await caption.textContent()).not.toBe(opening);
  let before = await frames(page);
  await page.keyboard.press('Home');
  await settled(page, before);
  await expect(caption).toHaveText(opening ?? '');
  before = await frames(page);
  await page.keyboard.press('3');
  await settled(page, before);
  await expect(caption).toContainText('from above');
  // Where motion is not wanted a view is cut to, in one frame.
  expect(await frames(page)).toBe(before + 1);
  await page.keyboard.press('Tab');
  await expect(page.locator('.stage-picture')).not.toBeFocused();
});

test('does by button what a hand does by gesture', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl);
  const buttons = page.locator('.stage-controls:not(.stage-tools) button');
  await expect(buttons).toHaveCount(7);
  for (const button of await buttons.all()) {
    expect(await button.getAttribute('aria-label')).not.toBe('');
    const box = await button.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
    const before = await frames(page);
    await button.click();
    await settled(page, before);
  }
});

test(
  'a pen draws on the bones, goes along with them, and is taken back; another case wipes it',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl);
    const strokes = page.locator('.stage-picture svg path[stroke-width="3"]');
    const before = await strokes.count();
    await page.getByRole('button', { name: 'Draw on the bones' }).click();
    const box = await page.locator('.stage-picture').boundingBox();
    if (box === null) throw new Error('no picture');
    const draw = async (y: number): Promise<void> => {
      await page.mouse.move(box.x + 0.3 * box.width, box.y + y * box.height);
      await page.mouse.down();
      for (let i = 1; i <= 12; i += 1) {
        await page.mouse.move(box.x + (0.3 + 0.03 * i) * box.width, box.y + (y + 0.01 * i) * box.height);
      }
      await page.mouse.up();
    };
    await draw(0.45);
    await expect.poll(() => strokes.count()).toBeGreaterThan(before);
    const drawn = await strokes.first().getAttribute('d');
    // The picture turns by its button while the pen is in the hand, and the stroke with it.
    await page.getByRole('button', { name: 'Turn left' }).click();
    await page.waitForSelector(READY);
    await expect.poll(() => strokes.first().getAttribute('d')).not.toBe(drawn);
    await draw(0.55);
    await page.getByRole('button', { name: 'Take the last stroke back' }).click();
    await page.getByRole('button', { name: 'Wipe all strokes' }).click();
    await expect.poll(() => strokes.count()).toBe(before);
    await draw(0.45);
    await expect.poll(() => strokes.count()).toBeGreaterThan(before);
    await page.locator('.bar-case').click();
    await page.getByRole('button', { name: /Hill runner/ }).click();
    await page.waitForSelector(READY);
    await expect(page.getByRole('button', { name: 'Wipe all strokes' })).toHaveCount(0);
  },
);

test('finding by typing goes to a bone, a question and a page, by keyboard alone', async ({ page, appUrl }) => {
  await open(page, appUrl);
  await page.keyboard.press('Control+k');
  await expect(page.getByRole('dialog').getByRole('searchbox')).toBeFocused();
  await page.keyboard.type('navic');
  await page.keyboard.press('Enter');
  await expect(page.locator('.bone-card h2')).toHaveText('inner midfoot bone');
  await page.keyboard.press('Control+k');
  await expect(page.getByRole('dialog').getByRole('searchbox')).toBeFocused();
  await page.keyboard.type('when is');
  await page.keyboard.press('Enter');
  await expect(page.locator('.question-title')).toHaveText('When is it back?');
  await page.keyboard.press('Control+k');
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
});

/** Every line of every label, with its box on the screen, px. */
const linesOf = (page: Page): Promise<{ text: string; label: number; box: DOMRect }[]> =>
  page.$$eval('.stage-overlay .stage-label', (labels) =>
    labels.flatMap((each, label) =>
      [...each.querySelectorAll('text')].map((line) => ({
        text: line.textContent ?? '',
        label,
        box: line.getBoundingClientRect().toJSON() as DOMRect,
      })),
    ),
  );
const overlapPx = (a: DOMRect, b: DOMRect): number =>
  Math.min(
    Math.min(a.right, b.right) - Math.max(a.left, b.left),
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top),
  );

test('names with their Latin lie apart, though its letters come last', LONG_RUN, async ({ page, appUrl }) => {
  test.slow();
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto(`${appUrl}${CASE}&reader=study`);
  await page.waitForSelector(READY);
  await expect
    .poll(async () => {
      const lines = await linesOf(page);
      expect(lines.length).toBeGreaterThan(12);
      return lines.flatMap((a) =>
        lines.flatMap((b) => (a.label < b.label && overlapPx(a.box, b.box) > 1 ? [`${a.text} / ${b.text}`] : [])),
      );
    })
    .toEqual([]);
});

test(
  'the stamp of a what-if covers no name, from above and from below, on plates of any size',
  LONG_RUN,
  async ({ page, appUrl }) => {
    test.slow();
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto(`${appUrl}${CASE}`);
    await page.waitForSelector(READY);
    await page.getByText('The foot itself: shape, pose, measures').click();
    await page.getByRole('slider', { name: 'Metatarsals turned inwards' }).press('ArrowRight');
    await page.getByRole('radio', { name: 'Pushing off' }).check();
    await expect(page.locator('.stage figcaption')).toContainText('Pushing off.', { timeout: 45_000 });
    let names = 0;
    for (const [width, height] of [
      [1440, 900],
      [1024, 768],
      [390, 844],
    ] as const) {
      await page.setViewportSize({ width, height });
      for (const key of ['3', '4']) {
        const before = await frames(page);
        await page.locator('.stage-picture').press(key);
        await settled(page, before);
        const tag = await page
          .locator('.plate-tag')
          .evaluate((each) => each.getBoundingClientRect().toJSON() as DOMRect);
        for (const { text, box } of await linesOf(page)) {
          names += 1;
          expect(overlapPx(tag, box), `${width} px, view ${key}: ${text}`).toBeLessThanOrEqual(0);
        }
      }
    }
    expect(names).toBeGreaterThan(12);
  },
);

test('drags the break along the bone as a what-if that looks different', LONG_RUN, async ({ page, appUrl }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await open(page, appUrl);
  const grip = page.locator('.stage-grip');
  const box = await grip.boundingBox();
  if (box === null) throw new Error('no handle on the break');
  expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 30, y + 15, { steps: 6 });
  await page.mouse.up();
  await expect(page.locator('.stage-overlay text', { hasText: 'What if here' })).toBeVisible();
  await page.waitForSelector(READY);
});

test('never holds the page: a wheel scrolls it until the plate has focus', async ({ page, appUrl }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, appUrl);
  const picture = page.locator('.stage-picture');
  await expect(picture).toHaveCSS('touch-action', 'pan-y');
  const before = await frames(page);
  await picture.hover();
  await page.mouse.wheel(0, 200);
  await page.waitForTimeout(300);
  expect(await frames(page)).toBe(before);
  await picture.focus();
  await expect(picture).toHaveCSS('touch-action', 'none');
  await page.mouse.wheel(0, -200);
  await settled(page, before);
});

test('without WebGL the words say so and stay usable', async ({ page, appUrl }) => {
  await page.addInitScript(() => {
    const original = HTMLCanvasElement.prototype.getContext as (kind: string, options?: unknown) => unknown;
    Object.assign(HTMLCanvasElement.prototype, {
      getContext(this: HTMLCanvasElement, kind: string, options?: unknown) {
        return kind.startsWith('webgl') ? null : original.call(this, kind, options);
      },
    });
  });
  await page.goto(`${appUrl}${CASE}`);
  await expect(page.locator('.stage-none')).toContainText('cannot draw the foot');
});
