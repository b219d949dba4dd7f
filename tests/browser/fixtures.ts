/**
 * `test` for every browser spec: fails on any console error, any uncaught error, and any request that leaves the origin.
 */
import { test as base, expect } from '@playwright/test';

export { expect };

/** Of a test that only `npm run test:long` runs: the same rule once more on another size, case or look, or a corner of one. */
export const LONG_RUN = { tag: '@long' };

export const test = base.extend<{ appUrl: string; strict: undefined }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the fixture's needs from this pattern
  appUrl: async ({}, use) => {
    const url = process.env.UNDERFOOT_URL;
    if (!url) throw new Error('The setup did not serve the app');
    await use(url);
  },
  strict: [
    async ({ page, appUrl }, use) => {
      const problems: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error') problems.push(`console: ${message.text()}`);
      });
      page.on('pageerror', (error) => problems.push(`uncaught: ${error.message}`));
      page.on('request', (request) => {
        const url = new URL(request.url());
        const own = url.origin === new URL(appUrl).origin || ['127.0.0.1', 'localhost'].includes(url.hostname);
        if (!own && url.protocol !== 'blob:') problems.push(`request off the origin: ${request.url()}`);
      });
      await use(undefined);
      expect(problems).toEqual([]);
    },
    { auto: true },
  ],
});
