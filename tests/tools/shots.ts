/**
 * `npm run shots`: every screen of the built app, at every size, in every look, for every reader, into tests/browser/shots, to be
 * opened and looked at. Words after it choose: `npm run shots -- where 390 paper` shoots what has all of them.
 */
import { mkdirSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from '@playwright/test';
import { build } from 'vite';
import { serve } from '../../src/cli/serve.js';
import { QUESTION_IDS, READERS } from '../../src/ids';
import { PAGES } from '../../src/pages/places';
import { findBrowser, HEADLESS_FLAGS, THREE_WAYS } from './find-browser.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = `${root}/tests/browser/shots`;
const SIZES = [
  [1440, 900],
  [1024, 768],
  [768, 1024],
  [390, 844],
  [320, 640],
] as const;
const LOOKS = ['paper', 'slate', 'print', 'contrast'] as const;
type Look = (typeof LOOKS)[number];

interface Screen {
  readonly name: string;
  readonly hash: string;
}
const DEMO = 'demo=demo-handball';
const SCREENS: readonly Screen[] = [
  ...QUESTION_IDS.map((question) => ({ name: question, hash: `#${DEMO}&question=${question}` })),
  ...PAGES.filter((page) => page !== 'explain').map((page) => ({ name: page, hash: `#${DEMO}&view=${page}` })),
];

const wants = process.argv.slice(2);
const wanted = (...parts: readonly string[]): boolean =>
  wants.every((want) => parts.some((part) => part === want || part.startsWith(`${want}x`)));

const settled = async (page: Page): Promise<void> => {
  await page.waitForSelector('.page[data-explained="true"], main', { state: 'attached' });
  const stage = page.locator('.stage');
  if ((await stage.count()) > 0)
    await page.waitForSelector('.stage[data-ready="true"]', { state: 'attached', timeout: 60_000 });
  await page.waitForTimeout(350);
};

const shoot = async (
  browser: Browser,
  url: string,
  [width, height]: (typeof SIZES)[number],
  look: Look,
): Promise<number> => {
  let count = 0;
  const context = await browser.newContext({ viewport: { width, height }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  for (const reader of READERS) {
    for (const { name, hash } of SCREENS) {
      const size = `${width}x${height}`;
      if (!wanted(name, size, look, reader)) continue;
      await page.goto('about:blank');
      await page.goto(`${url}${hash}&reader=${reader}`);
      await settled(page);
      await page.evaluate((name) => {
        document.documentElement.dataset.look = name;
      }, look);
      await settled(page);
      await page.screenshot({ path: `${folder}/${name}-${size}-${look}-${reader}.png` });
      count += 1;
    }
  }
  await context.close();
  return count;
};

const found = await findBrowser();
if (!found) throw new Error(THREE_WAYS);
await build({ root, logLevel: 'warn' });
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const server = await serve({ folder: `${root}/dist` });
const browser = await chromium.launch({ executablePath: found.path, args: HEADLESS_FLAGS });
let count = 0;
for (const size of SIZES) for (const look of LOOKS) count += await shoot(browser, server.url, size, look);
await browser.close();
await server.close();
console.log(`${count} pictures in tests/browser/shots`);
