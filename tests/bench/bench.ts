/** `npm run bench`: ratios of one run, never a timed test. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { type Browser, chromium } from '@playwright/test';
import { build } from 'vite';
import { factsOf, readCase } from '../../src/cases';
import { readContent } from '../../src/cli/read-content';
import { serve } from '../../src/cli/serve.js';
import { explain, NO_WHAT_IF } from '../../src/explain';
import { findBrowser, HEADLESS_FLAGS, THREE_WAYS } from '../tools/find-browser.js';
import { buildInto, moduleInto } from './build-into';
import { timesOfFeet } from './feet';
import { frameCost } from './frames';
import type * as Loads from './loads';
import { median, RUNS } from './runs';
import { sizesOf } from './sizes';
import { timesOfSpaceFrames } from './space-frames';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The bare page's mark, and the app's first frame of the foot. */
const FIRST_FRAME = 'body[data-ready="true"], [data-frames]:not([data-frames="0"])';
/** The app's mark of the complete picture: explanation, labels, fine lines. */
const COMPLETE = '[data-ready="true"]';

/** Milliseconds from navigation to the mark, cold cache. */
/** The start page has no picture: the first one is that of a case. */
const CASE = '#question=where';

const timeTo = async (browser: Browser, url: string, mark: string): Promise<number> => {
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 } });
  const page = await context.newPage();
  await page.addInitScript((selector) => {
    const watch = new MutationObserver(() => {
      if (document.querySelector(selector)) {
        (globalThis as { readyAt?: number }).readyAt ??= performance.now();
        watch.disconnect();
      }
    });
    watch.observe(document, { subtree: true, childList: true, attributes: true });
  }, mark);
  await page.goto(url);
  await page.waitForFunction(() => (globalThis as { readyAt?: number }).readyAt !== undefined, null, {
    timeout: 60_000,
  });
  const at = await page.evaluate(() => (globalThis as { readyAt?: number }).readyAt ?? Number.NaN);
  await context.close();
  return at;
};

const firstPicture = async (): Promise<void> => {
  const found = await findBrowser();
  if (!found) return console.error(THREE_WAYS);
  await build({ root, logLevel: 'warn' });
  await buildInto(`${root}/tests/bench/bare`, `${root}/test-results/bare`, `${root}/public`);
  const app = await serve({ folder: `${root}/dist` });
  const bare = await serve({ folder: `${root}/test-results/bare` });
  const browser = await chromium.launch({ executablePath: found.path, args: HEADLESS_FLAGS });
  const times: { app: number[]; complete: number[]; bare: number[] } = { app: [], complete: [], bare: [] };
  for (let run = 0; run < RUNS; run++) {
    times.bare.push(await timeTo(browser, bare.url, FIRST_FRAME));
    times.app.push(await timeTo(browser, `${app.url}${CASE}`, FIRST_FRAME));
    times.complete.push(await timeTo(browser, `${app.url}${CASE}`, COMPLETE));
  }
  await browser.close();
  await app.close();
  await bare.close();
  const [a, c, b] = [median(times.app), median(times.complete), median(times.bare)];
  console.log(
    `first picture: app ${a.toFixed(0)} ms, bare three.js page ${b.toFixed(0)} ms, ratio ${(a / b).toFixed(2)}; complete picture ${c.toFixed(0)} ms, ratio ${(c / b).toFixed(2)} (median of ${RUNS}, same run, software rendering)`,
  );
};

const loadsBundled = async (): Promise<typeof Loads> => {
  const folder = `${root}/test-results/bench`;
  await moduleInto(root, 'tests/bench/loads.ts', folder);
  return import(`${folder}/loads.js`);
};

const ensembleInWorker = async (): Promise<string> => {
  const folder = `${root}/test-results/bench-worker`;
  await moduleInto(root, 'tests/bench/ensemble.ts', folder);
  return new Promise((resolve, reject) => {
    const worker = new Worker(`${folder}/ensemble.js`);
    worker.once('message', resolve);
    worker.once('error', reject);
  });
};

const timeOfExplain = (): void => {
  const content = readContent();
  for (const name of ['handball-zone-2', 'dancer-spiral', 'hill-runner']) {
    const read = readCase(readFileSync(`${root}/content/cases/${name}.case.json`, 'utf8'));
    if (!read.ok) throw new Error(`demo case ${name} does not read`);
    const facts = factsOf(read.file);
    const times: number[] = [];
    for (let run = 0; run < RUNS; run++) {
      const started = performance.now();
      explain(content, facts, NO_WHAT_IF);
      times.push(performance.now() - started);
    }
    console.log(
      `explain ${name}: first ${times[0]?.toFixed(0)} ms, then median ${median(times.slice(1)).toFixed(1)} ms`,
    );
  }
};

const sizes = (): void => {
  const { parts, scriptBeforeStageKB, allKB } = sizesOf(`${root}/dist`);
  console.log('\nsize of the built app, gzip');
  for (const part of parts.filter((p) => p.kB >= 1))
    console.log(`${part.kB.toFixed(1).padStart(8)} kB  ${part.first ? 'first' : 'later'}  ${part.file}`);
  console.log(`script before the stage: ${scriptBeforeStageKB} kB of 350; everything: ${allKB} kB of 6000`);
};

console.log(await timesOfFeet());
console.log((await loadsBundled()).timesOfLoads());
console.log(await ensembleInWorker());
timeOfExplain();
console.log(timesOfSpaceFrames());
console.log(await frameCost());
await firstPicture();
sizes();
