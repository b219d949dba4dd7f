/** Builds the plate's own page, serves it and opens it. Each worker has its own copy: two may build at the same time. */
import { fileURLToPath } from 'node:url';
import { type Browser, type Page, test } from '@playwright/test';
import { build } from 'vite';
import { serve } from '../../../src/cli/serve.js';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export const openPlatePage = async (browser: Browser): Promise<{ page: Page; close: () => Promise<void> }> => {
  const outDir = at(`../../../test-results/plate-page-${test.info().parallelIndex}`);
  await build({
    configFile: false,
    root: at('.'),
    base: './',
    publicDir: at('../../../public'),
    logLevel: 'warn',
    build: { outDir, emptyOutDir: true, target: 'es2022' },
  });
  const server = await serve({ folder: outDir });
  const page = await browser.newPage();
  await page.goto(server.url);
  await page.waitForSelector('body[data-ready="true"]', { state: 'attached' });
  return { page, close: server.close };
};
