/** The page stands still while it loads, answers with text of twice the size, and cuts no letter of a drawn number. */
import type { Page } from '@playwright/test';
import { DEMOS } from '../../src/pages/places';
import { expect, LONG_RUN, test } from './fixtures';
import { explained, open, withoutPicture } from './walk';

/** What our standards ask; Core Web Vitals call no more than that good (web.dev/articles/cls, from memory). */
const MOST_SHIFT = 0.1;

const shiftOf = async (page: Page): Promise<number> => {
  await expect(page.locator('.stage[data-ready="true"]')).toBeAttached({ timeout: 45_000 });
  await page.waitForTimeout(300);
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        new PerformanceObserver((list) => {
          resolve(list.getEntries().reduce((sum, entry) => sum + (Reflect.get(entry, 'value') as number), 0));
        }).observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => resolve(0), 500);
      }),
  );
};

test('the measure sees what is pushed about', async ({ page, appUrl }) => {
  await open(page, appUrl, '#demo=demo-handball&question=where');
  const before = await shiftOf(page);
  await page.evaluate(() => {
    const pushing = document.createElement('div');
    pushing.style.height = '240px';
    document.querySelector('.note')?.prepend(pushing);
  });
  // A page that is busy with its bands paints the push late.
  await expect.poll(() => shiftOf(page)).toBeGreaterThan(before + 0.02);
});

for (const [width, height] of [
  [1440, 900],
  ...(process.env.UNDERFOOT_LONG ? ([[768, 1024]] as const) : []),
  [390, 844],
] as const) {
  test(
    `nothing is pushed about while the page loads, ${width} x ${height}`,
    width === 390 ? {} : LONG_RUN,
    async ({ page, appUrl }) => {
      await page.setViewportSize({ width, height });
      for (const question of ['where', 'back']) {
        await page.goto('about:blank');
        await page.goto(`${appUrl}#demo=demo-handball&question=${question}`);
        await explained(page);
        expect(await shiftOf(page), question).toBeLessThan(MOST_SHIFT);
      }
    },
  );
}

test('a type that comes late moves nothing', LONG_RUN, async ({ page, appUrl }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.route('**/*.woff2', async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 700));
    await route.continue();
  });
  await page.goto(`${appUrl}#demo=demo-handball&question=back`);
  await explained(page);
  expect(await shiftOf(page)).toBeLessThan(MOST_SHIFT);
});

/** Each size needs a start of its own; between the widest page of two columns and a phone the long run looks too. */
for (const [width, height] of [
  [1440, 900],
  [390, 844],
  ...(process.env.UNDERFOOT_LONG
    ? ([
        [1280, 800],
        [1024, 768],
      ] as const)
    : []),
] as const) {
  test(
    `with text of twice the size from the start the picture keeps its room, ${width} x ${height}`,
    LONG_RUN,
    async ({ page, appUrl }) => {
      await page.setViewportSize({ width, height });
      await page.addInitScript(() => {
        document.addEventListener('DOMContentLoaded', () => {
          document.documentElement.style.fontSize = '200%';
        });
      });
      await open(page, appUrl, '#demo=demo-handball&question=where&reader=study');
      await expect(page.locator('.stage[data-ready="true"]')).toBeAttached({ timeout: 45_000 });
      await page.waitForTimeout(1000);
      const picture = await page.locator('.stage-picture').boundingBox();
      expect(picture?.height).toBeGreaterThanOrEqual(180);
      const sideways = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(sideways).toBeLessThanOrEqual(0);
    },
  );
}

for (const demo of DEMOS) {
  test(
    `no letter of the rule of weeks is cut off, ${demo}`,
    demo === 'demo-handball' ? {} : LONG_RUN,
    async ({ page, appUrl }) => {
      await withoutPicture(page);
      for (const [width, height] of [
        [1440, 900],
        [1024, 768],
        [390, 844],
        [320, 640],
      ] as const) {
        await page.setViewportSize({ width, height });
        await open(page, appUrl, `#demo=${demo}&question=back&reader=study`);
        const outside = await page.locator('.weeks svg').evaluate((svg) => {
          const frame = svg.getBoundingClientRect();
          return [...svg.querySelectorAll('text')]
            .filter((text) => {
              const { left, right } = text.getBoundingClientRect();
              return left < frame.left - 1 || right > frame.right + 3;
            })
            .map((text) => text.textContent);
        });
        expect(outside, `${width}`).toEqual([]);
      }
    },
  );
}
