/** Turns what valibot found into problems with file, line, path, expected and got. */
import type { BaseIssue } from 'valibot';
import { type ContentProblem, shorten } from './problems';
import type { Path, YamlFile } from './yaml-file';

const idAt = (data: unknown, path: Path): string | null => {
  let value: unknown = data;
  for (const key of path) {
    if (value === null || typeof value !== 'object') return null;
    value = (value as Record<string | number, unknown>)[key];
  }
  if (value === null || typeof value !== 'object') return null;
  const { id, bone } = value as { id?: unknown; bone?: unknown };
  return typeof id === 'string' ? id : typeof bone === 'string' ? bone : null;
};

/** `records[3](talus).what.patient`. */
export const pathText = (data: unknown, path: Path): string => {
  const parts = path.map((key, i) => {
    if (typeof key === 'string') return i === 0 ? key : `.${key}`;
    const id = i === 1 ? idAt(data, path.slice(0, 2)) : null;
    return `[${key}]${id ? `(${id})` : ''}`;
  });
  return parts.join('') || '(file)';
};

export const problemAt = (file: YamlFile, path: Path, expected: string, got: string): ContentProblem => ({
  file: file.name,
  line: file.lineOf(path),
  path: pathText(file.data, path),
  expected: shorten(expected),
  got: shorten(got, 120),
});

export const problemsOf = (file: YamlFile, issues: readonly BaseIssue<unknown>[]): ContentProblem[] =>
  issues.map((issue) => {
    const path = (issue.path ?? []).map((item) => item.key as string | number);
    const unknownKey = issue.type === 'strict_object' && issue.expected === 'never';
    const own = !issue.message.startsWith('Invalid');
    const expected = unknownKey ? 'no such key' : own ? issue.message : (issue.expected ?? issue.message);
    return problemAt(file, path, expected, issue.received === 'undefined' ? 'nothing' : issue.received);
  });
