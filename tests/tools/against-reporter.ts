/** Prints the table of reference checks at the end of the run. */
import type { Reporter, TestModule } from 'vitest/node';
import { type CheckedRow, evidenceLine, rowsOf, short } from './against-rows';

const line = ({ row, passed }: CheckedRow): string =>
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
    const rows = rowsOf(modules);
    if (rows.length === 0) return;
    console.log('\nChecks against the outside');
    for (const row of rows) console.log(line(row));
    console.log(evidenceLine(rows));
  }
}
