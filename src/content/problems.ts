/** A mistake in content/, told so that the person who edits the file can go there and mend it. */
export interface ContentProblem {
  readonly file: string;
  /** 1-based line in the file. */
  readonly line: number;
  /** Where in the record, e.g. `records[3](talus).what.patient`. */
  readonly path: string;
  readonly expected: string;
  readonly got: string;
}

const LIMIT = 240;
export const shorten = (text: string, limit = LIMIT): string =>
  text.length <= limit ? text : `${text.slice(0, limit - 1)}…`;

/** One line, as compilers print them. */
export const formatProblem = (p: ContentProblem): string =>
  `${p.file}:${p.line}: ${p.path}: expected ${p.expected}; got ${p.got}`;

/** The same for whoever writes content. */
export const plainProblem = (p: ContentProblem): string =>
  `content/${p.file}, line ${p.line}: at ${p.path} there should be ${p.expected}. There is: ${p.got}.`;

export const byPlace = (a: ContentProblem, b: ContentProblem): number =>
  a.file < b.file ? -1 : a.file > b.file ? 1 : a.line - b.line || (a.path < b.path ? -1 : a.path > b.path ? 1 : 0);
