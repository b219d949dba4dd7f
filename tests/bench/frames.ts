/** What a moving frame costs, as a ratio to the same things lit plainly in the same run. */
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { serve } from '../../src/cli/serve.js';
import type { Costed } from '../browser/plate-page/plate-page';
import { findBrowser, HEADLESS_FLAGS, THREE_WAYS } from '../tools/find-browser.js';
import { buildInto } from './build-into';
import { median, RUNS } from './runs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Frames of the plate beside the same triangles lit plainly: the look document allows 1.7 for the plate and 3.5 with a layer. */
export const frameCost = async (): Promise<string> => {
  const found = await findBrowser();
  if (!found) return THREE_WAYS;
  await buildInto(`${root}/tests/browser/plate-page`, `${root}/test-results/plate-page`, `${root}/public`);
  const server = await serve({ folder: `${root}/test-results/plate-page` });
  const browser = await chromium.launch({ executablePath: found.path, args: HEADLESS_FLAGS });
  const page = await browser.newPage();
  await page.goto(server.url);
  await page.waitForSelector('body[data-ready="true"]', { state: 'attached' });
  const kinds: readonly Costed[] = ['bare', 'plate', 'zones', 'blood', 'stress'];
  const times = new Map<Costed, number[]>(kinds.map((kind) => [kind, []]));
  for (let run = 0; run < RUNS; run++) {
    for (const kind of kinds) {
      const ms = await page.evaluate((of) => window.plateMeasures?.costOf(of) ?? Number.NaN, kind);
      times.get(kind)?.push(ms);
    }
  }
  await browser.close();
  await server.close();
  const bare = median(times.get('bare') ?? []);
  const lines = kinds.map((kind) => {
    const ms = median(times.get(kind) ?? []);
    return `frame, ${kind}: ${ms.toFixed(1)} ms, ${(ms / bare).toFixed(2)} of the plain scene`;
  });
  return lines.join('\n');
};
