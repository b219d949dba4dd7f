/** Build of the app: a static folder that runs from any sub-path, with the content checked and compiled in. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import react from '@vitejs/plugin-react';
import { type Plugin, runnerImport } from 'vite';
import { defineConfig } from 'vitest/config';
import { metaPolicy } from './src/cli/security-headers.js';

const root = import.meta.dirname;

const yamlFiles = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => join(folder, name));

/**
 * `virtual:content`: content/ as one checked object, in a file of its own beside the scripts, so that what is no code is not read as
 * code. A broken file stops the build with file, line, path, what was expected.
 */
const contentPlugin = (): Plugin => ({
  name: 'underfoot-content',
  resolveId: (id) => (id === 'virtual:content' ? '\0content' : null),
  async load(id) {
    if (id !== '\0content') return null;
    const { module } = await runnerImport<typeof import('./src/content')>(join(root, 'src/content/index.ts'));
    const { module: checks } = await runnerImport<typeof import('./src/checks')>(join(root, 'src/checks/index.ts'));
    const files = yamlFiles(join(root, 'content'));
    for (const file of files) this.addWatchFile(file);
    const compiled = module.compileContent(
      new Map(files.map((file) => [relative(root, file).replaceAll('\\', '/'), readFileSync(file, 'utf8')])),
    );
    if (!compiled.ok) {
      const lines = compiled.problems.map((p) => `${p.file}:${p.line} ${p.path}: expected ${p.expected}, got ${p.got}`);
      this.error(`content/ has ${lines.length} problem(s):\n${lines.join('\n')}`);
    }
    const faults = checks.checkShape(compiled.content.shape);
    if (faults.length > 0) {
      const lines = faults.map((f) => `content/anatomy ${f.where}: expected ${f.expected}, got ${f.got}`);
      this.error(`content/anatomy has ${lines.length} problem(s):\n${lines.join('\n')}`);
    }
    const source = JSON.stringify(compiled.content);
    // The development server writes no files.
    if (this.meta.watchMode) return `export const loadContent = async () => JSON.parse(${JSON.stringify(source)});`;
    const file = this.emitFile({ type: 'asset', name: 'content.json', source });
    return `export const loadContent = async () => (await fetch(import.meta.ROLLUP_FILE_URL_${file})).json();`;
  },
});

/** The content is asked for with the first script and not only by it. */
const preloadContentPlugin = (): Plugin => ({
  name: 'underfoot-preload-content',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: (_, { bundle }) =>
      Object.keys(bundle ?? {})
        .filter((file) => /content-.*\.json$/.test(file))
        .map((file) => ({
          tag: 'link',
          attrs: { rel: 'preload', href: `./${file}`, as: 'fetch', crossorigin: true },
          injectTo: 'head' as const,
        })),
  },
});

/** The policy in the page itself, for hosts that send no headers. The development server needs inline scripts and goes without. */
const policyPlugin = (): Plugin => ({
  name: 'underfoot-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: metaPolicy() },
      injectTo: 'head-prepend',
    },
  ],
});

/** A library asks by `eval` whether generators exist, which our policy forbids. Every browser we build for has them. */
const ASKS_BY_EVAL = '@stdlib/assert-has-generator-support';
const noEvalPlugin = (): Plugin => ({
  name: 'underfoot-no-eval',
  enforce: 'pre',
  resolveId: (id) => (id === ASKS_BY_EVAL ? '\0generators' : null),
  load: (id) => (id === '\0generators' ? 'module.exports = () => true;' : null),
});
const UNIT = ['tests/unit/**/*.test.{ts,tsx}', 'tests/reference/**/*.test.ts'];
/** These change what is global (storage, clocks, loaded modules), so that each file has a process of its own. */
const ALONE = ['tests/unit/session/**/*.test.{ts,tsx}', 'tests/unit/app/**/*.test.{ts,tsx}'];

export default defineConfig({
  base: './',
  plugins: [react(), contentPlugin(), preloadContentPlugin(), policyPlugin(), noEvalPlugin()],
  build: { target: 'es2022', assetsInlineLimit: 0, chunkSizeWarningLimit: 1200, modulePreload: { polyfill: false } },
  worker: { format: 'es', plugins: () => [noEvalPlugin()] },
  test: {
    // The others share what was read, built and computed before them (content, feet, frames): half of all the time is that.
    projects: [
      { extends: true, test: { name: 'shared', include: UNIT, exclude: ALONE, isolate: false } },
      { extends: true, test: { name: 'alone', include: ALONE } },
    ],
    environment: 'node',
    testTimeout: 30_000,
    hookTimeout: 60_000,
    // Every core: by itself vitest leaves one free, which on two cores is half the machine.
    maxWorkers: '100%',
    reporters: [['default', { summary: false }], 'json', './tests/tools/against-reporter.ts'],
    outputFile: { json: 'test-results/unit.json' },
  },
});
