/** Gzipped size of the built app by part: what a first visit loads before the stage, with it, and what comes only when asked for. */
import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';

export interface Sizes {
  readonly parts: readonly { readonly file: string; readonly kB: number; readonly first: boolean }[];
  readonly scriptBeforeStageKB: number;
  readonly allKB: number;
}

const kB = (bytes: Uint8Array): number => Math.round(gzipSync(bytes).length / 102.4) / 10;

/** `first` = named by index.html itself, so loaded before anything else runs. */
export const sizesOf = (dist: string): Sizes => {
  const html = readFileSync(`${dist}/index.html`, 'utf8');
  const parts = readdirSync(dist, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(js|css|woff2|glb|html|json|wasm)$/.test(file))
    .map((file) => ({
      file,
      kB: kB(readFileSync(`${dist}/${file}`)),
      first: html.includes(file) || file === 'index.html',
    }))
    .sort((a, b) => b.kB - a.kB);
  const sum = (list: readonly { kB: number }[]) =>
    Math.round(list.reduce((total, part) => total + part.kB, 0) * 10) / 10;
  return {
    parts,
    scriptBeforeStageKB: sum(parts.filter((part) => part.first && part.file.endsWith('.js'))),
    allKB: sum(parts),
  };
};
