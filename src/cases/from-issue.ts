/** Turns an issue of the schema into words, with the path written the way a person would look for it. */
import type * as v from 'valibot';
import { isJsonObject } from './migrations';
import { type CaseProblem, caseProblem, quoted } from './problems';
import { guessUnit, type MEASURES } from './unit-guess';

type Issue = v.BaseIssue<unknown>;

export const pathOf = (issue: Pick<Issue, 'path'>): string | null => {
  let path = '';
  for (const { key } of issue.path ?? [])
    path += typeof key === 'number' ? `[${key}]` : `${path === '' ? '' : '.'}${String(key)}`;
  return path === '' ? null : path.slice(0, 200);
};

const MOST_CHOICES = 8;
/** The library's words for a form, as a person says them. */
const FORMS: Readonly<Record<string, string>> = { Object: 'entries between { and }', Array: 'a list' };
/** `("a" | "b")` as the schema says it -> `a, b`; the beginning of a long list stands for it. */
const choices = (expected: string): string => {
  const form = Object.hasOwn(FORMS, expected) ? FORMS[expected] : undefined;
  if (form !== undefined) return form;
  const all = expected
    .replace(/^\(|\)$/g, '')
    .replaceAll('"', '')
    .split(' | ');
  const few = all.slice(0, MOST_CHOICES).join(', ');
  return all.length > MOST_CHOICES ? `${few} or one of ${all.length - MOST_CHOICES} more` : few;
};

/** Which measure a number out of bounds belongs to: the key it stands under, or the subject of its claim. */
const measureOf = (issue: Issue): keyof typeof MEASURES | null => {
  const item = issue.path?.at(-1);
  if (item === undefined) return null;
  const holder = item.input;
  const name = item.key === 'value' && isJsonObject(holder) ? holder.subject : item.key;
  return name === 'massKg' || name === 'heightCm' || name === 'mm' ? name : null;
};

const OUT_OF_BOUNDS = new Set(['finite', 'min_value', 'max_value']);
/** The library's own messages start like this; ours are written for people. */
const LIBRARY_MESSAGE = /^Invalid /;

export const fromIssue = (issue: Issue): CaseProblem => {
  const where = pathOf(issue);
  if (issue.expected === 'never') return caseProblem('unknownKey', where, { found: quoted(issue.input) });
  if (issue.type === 'strict_object' && issue.received === 'undefined')
    return caseProblem('missing', where, { expected: choices(issue.expected ?? '') });
  if (issue.input === undefined) return caseProblem('missing', where, { expected: where ?? '' });

  const measure = measureOf(issue);
  if (measure !== null && OUT_OF_BOUNDS.has(issue.type) && typeof issue.input === 'number')
    return caseProblem('wrongUnit', where, {
      detail: `${issue.message} (found ${quoted(issue.input)})`,
      guess: guessUnit(measure, issue.input),
    });

  const expected = LIBRARY_MESSAGE.test(issue.message)
    ? `expected ${choices(issue.expected ?? 'something else')}`
    : issue.message;
  return caseProblem('badValue', where, { detail: `${expected}; found ${quoted(issue.input)}` });
};
