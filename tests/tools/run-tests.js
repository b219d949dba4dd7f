/**
 * `npm test`: types, lint, then unit, property, reference and house tests, then the browser tests against the built app.
 * Everything that can run runs; the last line counts. `--long` adds the long checks.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from './install.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const results = `${root}/test-results`;
const long = process.argv.includes('--long');
const tally = { passed: 0, failed: 0, notRun: [] };

const run = (title, script, args, env = {}) => {
  console.log(`\n== ${title}`);
  const started = Date.now();
  const { status } = spawnSync(process.execPath, [`${root}/node_modules/${script}`, ...args], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  console.log(`== ${title}: ${status === 0 ? 'ok' : 'FAILED'} after ${((Date.now() - started) / 1000).toFixed(0)} s`);
  return status === 0;
};

/** A step without counts of its own is one check. */
const check = (title, script, args) => {
  const ok = run(title, script, args);
  tally[ok ? 'passed' : 'failed'] += 1;
  return ok;
};

const report = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null);

const runVitest = () => {
  const file = `${results}/unit.json`;
  const ok = run(
    'unit, property, reference and house tests',
    'vitest/vitest.mjs',
    ['run', `--outputFile.json=${file}`],
    {
      UNDERFOOT_LONG: long ? '1' : '',
    },
  );
  const counts = report(file);
  tally.passed += counts?.numPassedTests ?? 0;
  tally.failed += counts?.numFailedTests ?? 0;
  if (!ok && !counts?.numFailedTests) tally.failed += 1;
};

const runBrowser = async () => {
  const { findBrowser, THREE_WAYS } = await import('./find-browser.js');
  const browser = await findBrowser();
  if (!browser) {
    console.error(`\n${THREE_WAYS}`);
    tally.notRun.push('all browser tests (tests/browser)');
    return;
  }
  console.log(`\nBrowser: ${browser.path} (from ${browser.from})`);
  const file = `${results}/browser.json`;
  const ok = run(
    'browser tests against the built app',
    '@playwright/test/cli.js',
    ['test', '-c', 'tests/browser/playwright.config.ts'],
    {
      UNDERFOOT_BROWSER: browser.path,
      UNDERFOOT_LONG: long ? '1' : '',
      PLAYWRIGHT_JSON_OUTPUT_NAME: file,
    },
  );
  const counts = report(file)?.stats;
  tally.passed += (counts?.expected ?? 0) + (counts?.flaky ?? 0);
  tally.failed += counts?.unexpected ?? 0;
  if (!ok && !counts?.unexpected) tally.failed += 1;
};

ensureInstalled(root);
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });
check('types', 'typescript/bin/tsc', ['--noEmit']);
check('lint', '@biomejs/biome/bin/biome', ['ci', '.']);
runVitest();
if (check('build', 'vite/bin/vite.js', ['build', '--logLevel', 'warn'])) await runBrowser();
else tally.notRun.push('all browser tests: the app did not build');

for (const what of tally.notRun) console.error(`\nDID NOT RUN: ${what}`);
console.log(`\n${tally.passed} passed, ${tally.failed} failed`);
process.exit(tally.failed > 0 || tally.notRun.length > 0 ? 1 : 0);
