/** The project's own files, as git sees them, for the tests that keep the house in order. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Tracked and new files, without ignored ones; paths relative to the top with forward slashes. */
export const trackedFiles = (): string[] =>
  execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], { cwd: root, encoding: 'utf8' })
    .split('\n')
    .filter(Boolean);

const TEXT = /\.(ts|tsx|js|json|yaml|md|css|html|npmrc|gitignore)$|^\.ci\/run$|^LICENSE$/;

export const textFiles = (): { path: string; text: string }[] =>
  trackedFiles()
    .filter((path) => TEXT.test(path))
    .map((path) => ({ path, text: readFileSync(`${root}${path}`, 'utf8') }));
