/** Builds parts of the bench: what is timed runs as the app does, bundled, and not through the loader of TypeScript files. */
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

/** A module of the bench for Node, two folders below the root as its sources are, where they look for content. */
export const moduleInto = (root: string, file: string, outDir: string) =>
  build({
    configFile: false,
    root,
    publicDir: false,
    logLevel: 'warn',
    build: { ssr: file, outDir, emptyOutDir: true, target: 'es2022' },
  });
