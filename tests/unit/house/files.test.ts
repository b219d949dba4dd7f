/** The shape of the project: what may stand at the top, what no file may contain, what the lock file may name. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { root, textFiles, trackedFiles } from '../../tools/tracked';

const TOP_LEVEL = [
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'CHANGELOG.md',
  'package.json',
  'package-lock.json',
  'vite.config.ts',
  'index.html',
  'tsconfig.json',
  'biome.json',
  'src',
  'public',
  'tests',
  'content',
];

test('the top level holds exactly what the architecture lists', () => {
  const top = [...new Set(trackedFiles().map((path) => path.split('/')[0] ?? ''))].filter(
    (name) => !name.startsWith('.'),
  );
  expect(top.sort()).toEqual([...TOP_LEVEL].sort());
});

test('the lock file names no registry host', () => {
  const lock = readFileSync(`${root}package-lock.json`, 'utf8');
  expect(lock).not.toContain('"resolved"');
  expect(lock).not.toContain('://registry');
});

test('every dependency is pinned to an exact version', () => {
  const manifest = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
  const versions = Object.entries<string>({
    ...manifest.dependencies,
    ...manifest.devDependencies,
    ...manifest.optionalDependencies,
  });
  expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version))).toEqual([]);
});

test('no file names a path of a machine', () => {
  const path = /(^|[^A-Za-z0-9_.])\/(work|tmp|home|root|farm)\/[A-Za-z]/;
  const found = textFiles().filter(({ text }) => path.test(text));
  expect(found.map((file) => file.path)).toEqual([]);
});

test('nothing cites the document the idea came from', () => {
  const cited = new RegExp(
    ['seed', 'source', 'origin', 'founding']
      .map((word) => `\\b${word}[ -](document|transcript|talk|video)\\b`)
      .join('|'),
    'i',
  );
  const own = 'tests/unit/house/files.test.ts';
  const found = textFiles().filter(({ path, text }) => path !== own && (cited.test(text) || /transcript/i.test(path)));
  expect(found.map((file) => file.path)).toEqual([]);
});

test('every source file is one idea of readable length', () => {
  const long = textFiles().filter(
    ({ path, text }) => /^src\/.*\.(ts|tsx|js)$/.test(path) && text.split('\n').length > 400,
  );
  expect(long.map((file) => file.path)).toEqual([]);
});

test('no test is skipped or singled out', () => {
  const pattern = /\b(it|test|describe)\.(skip|only|todo)\b/;
  const found = textFiles().filter(
    ({ path, text }) => path.startsWith('tests/') && path !== 'tests/unit/house/files.test.ts' && pattern.test(text),
  );
  expect(found.map((file) => file.path)).toEqual([]);
});
