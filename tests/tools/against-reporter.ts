/** Prints the table of reference checks at the end of the run. */
import type { Reporter, TestCase, TestModule } from 'vitest/node';
import type { AgainstRow } from './against';

const short = (value: number | string): string =>
  typeof value === 'number'
    ? String(Number(value.toPrecision(7)))
    : value.length > 40
      ? `${value.slice(0, 37)}...`
      : value;

const line = (row: AgainstRow, passed: boolean): string =>
  [
    passed ? 'ok ' : 'BAD',
    row.name,
    `${row.source}, ${row.where} (${row.how}${row.given ? ', given to the builder' : ''})`,
    `expected ${short(row.expected)}`,
    `got ${short(row.got)}`,
    row.tolerance === undefined ? '' : `within ${short(row.tolerance)}: ${row.why}`,
  ]
    .filter(Boolean)
    .join(' | ');

export default class AgainstReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const cases: TestCase[] = modules.flatMap((module) => [...module.children.allTests()]);
    const rows = cases.flatMap((test) => {
      const row = test.meta().against;
      return row ? [{ row, passed: test.result().state === 'passed' }] : [];
    });
    if (rows.length === 0) return;
    const counting = rows.filter(({ row }) => !row.given && (row.how === 'read' || row.how === 'abstract'));
    console.log('\nChecks against the outside');
    for (const { row, passed } of rows) console.log(line(row, passed));
    console.log(
      `${counting.length} of ${rows.length} were read in the source or its abstract and not given to the builder; only these count as evidence.`,
    );
  }
}
