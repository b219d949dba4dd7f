import { chromium } from '@playwright/test';
import { fileURLToPath } from 'node:url';
import { serve } from '../../src/cli/serve.js';
import { findBrowser, HEADLESS_FLAGS } from './find-browser.js';
const root = fileURLToPath(new URL('../..', import.meta.url));
const found = await findBrowser();
const server = await serve({ folder: `${root}/dist` });
const url = server.url;
console.log(url);
const browser = await chromium.launch({ executablePath: (found as any).path ?? (found as any), args: HEADLESS_FLAGS as string[] });
const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' })).newPage();
page.on('console', m => m.type()==='error' && console.log('ERR', m.text()));
const steps = JSON.parse(process.argv[2]!);
for (const s of steps) {
  if (s.goto) { await page.goto('about:blank'); await page.goto(url + s.goto); await page.waitForSelector('.page[data-explained="true"], main', { state: 'attached' }); await page.waitForSelector('.stage[data-ready="true"]', { state: 'attached', timeout: 60000 }).catch(()=>{}); await page.waitForTimeout(500);}
  if (s.size) await page.setViewportSize({ width: s.size[0], height: s.size[1] });
  if (s.click) await page.getByText(s.click, { exact: s.exact ?? true }).first().click();
  if (s.button) await page.getByRole('button', { name: s.button }).first().click();
  if (s.fill) await page.locator(s.fill[0]).fill(s.fill[1]);
  if (s.wait) await page.waitForTimeout(s.wait);
  if (s.shot) await page.screenshot({ path: `/tmp/shots/${s.shot}.png` });
}
await browser.close(); process.exit(0);
