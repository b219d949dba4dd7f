/** Builds a page of the bench into a folder of its own. */
import { build } from 'vite';

export const buildInto = (folder: string, outDir: string, publicDir: string) =>
  build({
    configFile: false,
    root: folder,
    base: './',
    publicDir,
    logLevel: 'warn',
    build: { outDir, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  });
