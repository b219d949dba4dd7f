/** The table of `npm run verify`: one line a check, with what it was held against; whatever failed is told again at the end. */
import type { Reporter, TestModule } from 'vitest/node';
import { type CheckedRow, evidenceLine, rowsOf, short } from './against-rows';

const HEAD = ['', 'case', 'expected', 'got', 'error', 'allowed', 'source'] as const;

const difference = ({ row: { expected, got } }: CheckedRow): string =>
  typeof expected === 'number' && typeof got === 'number' ? Math.abs(got - expected).toExponential(1) : '';

const cells = (checked: CheckedRow): string[] => {
  const { row, passed } = checked;
  return [
    passed ? 'ok' : 'BAD',
    row.name,
    short(row.expected),
    short(row.got),
    difference(checked),
    row.tolerance === undefined ? '' : row.tolerance.toExponential(1),
    `${row.source}; ${row.where} (${row.how})`,
  ];
};

export default class VerifyReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const rows = rowsOf(modules);
    const table = [[...HEAD], ...rows.map(cells)];
    const widths = HEAD.map((_, i) => Math.max(...table.map((row) => row[i]?.length ?? 0)));
    for (const row of table)
      console.log(
        row
          .map((cell, i) => cell.padEnd(widths[i] ?? 0))
          .join('  ')
          .trimEnd(),
      );
    const failed = modules.flatMap((module) => [
      ...module.errors().map((error) => `${module.relativeModuleId}: ${error.message}`),
      ...[...module.children.allTests('failed')].map((test) => `${test.name}: ${test.result().errors?.[0]?.message}`),
    ]);
    console.log(`\n${evidenceLine(rows)}`);
    for (const line of [...failed, ...unhandled.map(String)]) console.error(`FAILED ${line}`);
    // A prediction that misses is expected to go on missing: its row holds, and it is counted here for what it is.
    const predicted = rows.filter(({ row }) => row.expected === 'miss' || row.got === 'hit' || row.got === 'miss');
    const misses = rows.filter(({ row }) => row.expected === 'miss').length;
    if (predicted.length > 0)
      console.log(`Of the foot's own predictions ${misses} miss what was published; they are kept as misses.`);
    console.log(`${rows.filter(({ passed }) => passed).length} of ${rows.length} rows are as expected`);
  }
}
