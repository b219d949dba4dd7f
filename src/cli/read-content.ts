/** Reads content/ from the disk for a command: checked content, or an error that lists every problem with file and line. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Content, compileContent, formatProblem } from '../content';

const FOLDER = fileURLToPath(new URL('../../content/', import.meta.url));

export const contentFiles = (): Map<string, string> =>
  new Map(
    readdirSync(FOLDER, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.yaml'))
      .sort()
      .map((name) => [`content/${name.replaceAll('\\', '/')}`, readFileSync(join(FOLDER, name), 'utf8')]),
  );

export const readContent = (): Content => {
  const compiled = compileContent(contentFiles());
  if (!compiled.ok) throw new Error(`content/ can't be used:\n${compiled.problems.map(formatProblem).join('\n')}`);
  return compiled.content;
};
