/** The reference checks of a run, as every table of them begins. */
import type { TestCase, TestModule } from 'vitest/node';
import type { AgainstRow } from './against';

export interface CheckedRow {
  readonly row: AgainstRow;
  readonly passed: boolean;
}

export const rowsOf = (modules: readonly TestModule[]): readonly CheckedRow[] => {
  const cases: TestCase[] = modules.flatMap((module) => [...module.children.allTests()]);
  return cases.flatMap((test) => {
    const row = test.meta().against;
    return row ? [{ row, passed: test.result().state === 'passed' }] : [];
  });
};

export const short = (value: number | string): string =>
  typeof value === 'number'
    ? String(Number(value.toPrecision(7)))
    : value.length > 40
      ? `${value.slice(0, 37)}...`
      : value;

/** How many of them count: read in the source or its abstract, and not given to the builder. */
export const evidenceLine = (rows: readonly CheckedRow[]): string => {
  const counting = rows.filter(({ row }) => !row.given && (row.how === 'read' || row.how === 'abstract'));
  return `${counting.length} of ${rows.length} were read in the source or its abstract and not given to the builder; only these count as evidence.`;
};
