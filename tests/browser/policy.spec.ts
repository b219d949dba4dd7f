/** The policy of the standards, a worker, Trusted Types and a wasm module on demand: proved together on a page of their own. */
import { fileURLToPath } from 'node:url';
import { test as base, expect } from '@playwright/test';
import { build } from 'vite';
import { metaPolicy } from '../../src/cli/security-headers.js';
import { serve } from '../../src/cli/serve.js';
import { test } from './fixtures';
import { CASE } from './walk';

const trialFolder = fileURLToPath(new URL('./trial', import.meta.url));
const outDir = fileURLToPath(new URL('../../test-results/trial', import.meta.url));

base.describe('trial page', () => {
  base.describe.configure({ mode: 'serial' });

  base('policy, worker, Trusted Types and wasm work together', async ({ page }) => {
    await build({
      configFile: false,
      root: trialFolder,
      base: './',
      logLevel: 'warn',
      worker: { format: 'es' },
      build: { outDir, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0, modulePreload: { polyfill: false } },
    });
    const server = await serve({ folder: outDir });
    try {
      await page.goto(server.url);
      await expect(page.locator('#result')).not.toBeEmpty();
      const result = JSON.parse((await page.locator('#result').textContent()) ?? '');
      expect(result).toEqual({
        worker: { before: 128, after: 2 },
        foreignWorkerRefused: true,
        dataWorkerRefused: true,
        plainWorkerUrlRefused: true,
        evalRefused: true,
        wasmOnPageRefused: true,
        secondPolicyRefused: true,
        htmlRefused: true,
      });
    } finally {
      await server.close();
    }
  });
});

test('the served app carries the policy in header and page, and every answer its safety headers', async ({
  page,
  appUrl,
}) => {
  const response = await page.goto(appUrl);
  const headers = response?.headers() ?? {};
  expect(headers['content-security-policy']).toContain("default-src 'none'");
  expect(headers['content-security-policy']).toContain("require-trusted-types-for 'script'");
  expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
  expect(headers['content-security-policy']).not.toContain('unsafe');
  expect(headers['x-content-type-options']).toBe('nosniff');
  expect(headers['referrer-policy']).toBe('no-referrer');
  expect(await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')).toBe(metaPolicy());
});

test('the built folder runs from any sub-path of a server that sends nothing but files', async ({ page }) => {
  const server = await serve({ folder: fileURLToPath(new URL('../../dist', import.meta.url)), under: '/a/b-c/foot' });
  try {
    await page.goto(`${server.url}${CASE}`);
    await expect(page.locator('.stage[data-ready="true"]')).toBeVisible();
  } finally {
    await server.close();
  }
});
