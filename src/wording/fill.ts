/** Templates with {braces}. A brace without a value is a programmer's error, so that no reader ever meets one. */
import type { Run } from './types';

export type Value = string | number | Run | readonly Run[];

const runsOf = (value: Value): readonly Run[] => {
  if (typeof value === 'string' || typeof value === 'number') return [{ text: String(value) }];
  return 'text' in value ? [value] : value;
};

const sameStyle = (a: Run, b: Run): boolean => a.mark === b.mark && a.latin === b.latin;

/** Runs of one style become one run; empty ones go. */
export const joined = (runs: readonly Run[]): readonly Run[] => {
  const out: Run[] = [];
  for (const run of runs) {
    const last = out.at(-1);
    if (run.text === '') continue;
    if (last !== undefined && sameStyle(last, run)) out[out.length - 1] = { ...last, text: last.text + run.text };
    else out.push(run);
  }
  return out;
};

export const fillRuns = (template: string, values: Readonly<Record<string, Value>>): readonly Run[] =>
  joined(
    template.split(/(\{\w+\})/).flatMap((part) => {
      const key = part.match(/^\{(\w+)\}$/)?.[1];
      if (key === undefined) return [{ text: part }];
      const value = Object.hasOwn(values, key) ? values[key] : undefined;
      if (value === undefined) throw new Error(`wording: no value for {${key}} in "${template}"`);
      return runsOf(value);
    }),
  );

export const fill = (template: string, values: Readonly<Record<string, string | number>> = {}): string =>
  fillRuns(template, values)
    .map((run) => run.text)
    .join('');

/** First letter of the first run in upper case. */
export const capitalRuns = (runs: readonly Run[]): readonly Run[] => {
  const [first, ...rest] = runs;
  return first === undefined
    ? runs
    : [{ ...first, text: first.text.charAt(0).toUpperCase() + first.text.slice(1) }, ...rest];
};

/** a, b and c. */
export const listRuns = (items: readonly Value[], and: string, none: string): readonly Run[] => {
  if (items.length === 0) return [{ text: none }];
  return joined(
    items.flatMap((item, i) => {
      const before = i === 0 ? '' : i === items.length - 1 ? and : ', ';
      return [{ text: before }, ...runsOf(item)];
    }),
  );
};
