/** Case text -> checked case, or what is wrong with it. Never throws on any text; a refused file leaves nothing behind. */
import * as v from 'valibot';
import { checkClaims } from './check-claims';
import { fromIssue } from './from-issue';
import { repeatedKey } from './json-keys';
import { placeOfJsonError } from './json-place';
import { caseMigrations, isJsonObject } from './migrations';
import { type CaseProblem, caseProblem, quoted } from './problems';
import { CASE_FORMAT, type CaseFile, caseFile } from './schema';

/** 2 MB: the fullest case that the schema admits is under half of it. */
export const MAX_CASE_BYTES = 2 * 1024 * 1024;
/** A case needs six levels; the rest is room for later versions. */
export const MAX_DEPTH = 12;
const MOST_PROBLEMS = 20;

/** `problem` is the first of `problems` (at most twenty). */
export type ReadResult =
  | { readonly ok: true; readonly file: CaseFile }
  | { readonly ok: false; readonly problem: CaseProblem; readonly problems: readonly CaseProblem[] };

const refused = (problem: CaseProblem, others: readonly CaseProblem[] = []): ReadResult => ({
  ok: false,
  problem,
  problems: [problem, ...others],
});

/** For a file that has not been read yet: null when it may be. Asked again of the text by `readCase`. */
export const tooBig = (bytes: number): CaseProblem | null => {
  if (bytes <= MAX_CASE_BYTES) return null;
  const inMb = (n: number): number => Math.ceil((n / 1024 / 1024) * 10) / 10;
  return caseProblem('tooBig', null, { size: inMb(bytes), limit: inMb(MAX_CASE_BYTES) });
};

/** Deepest nesting of brackets outside strings. Counted on the text, before anything is built from it. */
const depthOf = (text: string): number => {
  let depth = 0;
  let deepest = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (inString) {
      if (c === '\\') i++;
      else if (c === '"') inString = false;
    } else if (c === '"') inString = true;
    else if (c === '{' || c === '[') deepest = Math.max(deepest, ++depth);
    else if (c === '}' || c === ']') depth--;
  }
  return deepest;
};

const BYTE_ORDER_MARK = /^\uFEFF/;

export const readCase = (given: string): ReadResult => {
  const big = tooBig(given.length);
  if (big !== null) return refused(big);
  const text = given.replace(BYTE_ORDER_MARK, '');
  if (text.trim() === '') return refused(caseProblem('empty', null));
  if (depthOf(text) > MAX_DEPTH) return refused(caseProblem('tooDeep', null, { limit: MAX_DEPTH }));

  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    const detail = placeOfJsonError(text, error instanceof Error ? error.message : '');
    return refused(caseProblem('notJson', null, { detail }));
  }
  const twice = repeatedKey(text);
  if (twice !== null)
    return refused(caseProblem('repeatedKey', twice.path.slice(0, 200), { key: quoted(twice.key), line: twice.line }));
  if (!isJsonObject(raw) || !Object.hasOwn(raw, 'format') || raw.format !== CASE_FORMAT)
    return refused(caseProblem('notACase', null));

  const migrated = caseMigrations.migrate(raw);
  if (!migrated.ok) {
    const { oldest: from, current: to } = caseMigrations;
    return refused(
      caseProblem(migrated.reason, 'version', {
        found: migrated.found === undefined ? 'not given' : quoted(migrated.found),
        from,
        to,
      }),
    );
  }

  const checked = v.safeParse(caseFile, migrated.file);
  const problems = checked.success ? checkClaims(checked.output) : checked.issues.map(fromIssue);
  const [first, ...others] = problems.slice(0, MOST_PROBLEMS);
  if (first !== undefined) return refused(first, others);
  if (!checked.success) throw new Error('readCase: the schema refused a file without saying why');
  return { ok: true, file: checked.output };
};

/** What is wrong with a case that was put together by code, in the same words as for a file. */
export const checkCaseFile = (file: CaseFile): readonly CaseProblem[] => {
  const checked = v.safeParse(caseFile, file);
  return checked.success ? checkClaims(checked.output) : checked.issues.map(fromIssue);
};
