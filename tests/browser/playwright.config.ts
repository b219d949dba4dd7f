/** Browser tests: the real built app, real headers, real content. Built by `npm test` before this runs, by the setup otherwise. */
import { defineConfig } from '@playwright/test';
import { findBrowser, HEADLESS_FLAGS } from '../tools/find-browser.js';

const executablePath = process.env.UNDERFOOT_BROWSER ?? (await findBrowser())?.path ?? 'no browser found';

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results/browser',
  globalSetup: './setup.ts',
  // No test is about time: a machine may be as slow as it likes.
  timeout: 150_000,
  expect: { timeout: 45_000 },
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  ...(process.env.UNDERFOOT_LONG ? {} : { grepInvert: /@long/ }),
  reporter: [
    ['list'],
    ['json', { outputFile: process.env.PLAYWRIGHT_JSON_OUTPUT_NAME ?? '../../test-results/browser.json' }],
  ],
  use: {
    viewport: { width: 1024, height: 768 },
    launchOptions: { executablePath, args: HEADLESS_FLAGS },
  },
});
