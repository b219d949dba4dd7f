/** The text of `npm run content`: what cannot be read, or tables of coverage, gaps in words, statements that rest on little. Pure. */
import { type Content, compileContent } from '../content';
import { type Covered, coverageRows, gapsOf, type Row, weakStatements } from '../content/coverage';
import { plainProblem } from '../content/problems';
import { writingFaults } from '../content/writing';
import { writtenTwice } from '../content/written-twice';

const SIGNS: Readonly<Record<Covered, string>> = { full: 'yes', weak: 'weak', none: '-' };

/** Parts down, records across: an id is shorter than the names of twenty parts. */
const tableOf = (title: string, rows: readonly Row[]): string => {
  if (rows.length === 0) return `${title}: none yet.\n`;
  const names = rows[0]?.parts.map(({ name }) => name) ?? [];
  const first = Math.max(...names.map((name) => name.length));
  const width = (row: Row): number => Math.max(row.id.length, 4);
  const line = (head: string, cells: readonly string[]): string =>
    [head.padEnd(first), ...cells.map((cell, i) => cell.padEnd(rows[i] === undefined ? 0 : width(rows[i])))]
      .join('  ')
      .trimEnd();
  return [
    title,
    line(
      '',
      rows.map(({ id }) => id),
    ),
    ...names.map((name, k) =>
      line(
        name,
        rows.map(({ parts }) => SIGNS[parts[k]?.covered ?? 'none']),
      ),
    ),
    '',
  ].join('\n');
};

const list = (title: string, lines: readonly string[]): string =>
  [title, ...(lines.length === 0 ? ['  nothing'] : lines.map((line) => `  ${line}`)), ''].join('\n');

export const contentReport = (content: Content, files: ReadonlyMap<string, string>): string => {
  const rows = coverageRows(content);
  const unread = Object.entries(content.reviews).filter(([, review]) => review.state !== 'reviewed');
  const [injuries, cards] = [rows.filter(({ kind }) => kind === 'injury'), rows.filter(({ kind }) => kind === 'card')];
  return [
    tableOf('Injuries (yes: there; weak: nothing better than a secondary page or memory; -: missing)', injuries),
    tableOf('Cards', cards),
    list('Missing or weak in injuries and cards', rows.flatMap(gapsOf)),
    list('Texts to be written otherwise (the unit tests hold them to the same)', writingFaults(content)),
    list(
      'Counts that stand in two places: let one quote the other ({studies/id/what}, {rates/id}, {counts/id})',
      writtenTwice(files, content.sources).map(
        ({ figure, source, places }) => `${figure} of ${source}: ${places.join(' and ')}`,
      ),
    ),
    list('Statements that rest on little', weakStatements(content)),
    list('Files that no clinician has reviewed', [
      unread.length === 0 ? 'none' : `${unread.length} of ${Object.keys(content.reviews).length}`,
    ]),
  ].join('\n');
};

/** The report of files, or in plain words what keeps them from being read. */
export const checkedContent = (
  files: ReadonlyMap<string, string>,
): { readonly readable: boolean; readonly text: string } => {
  const compiled = compileContent(files);
  if (compiled.ok) return { readable: true, text: contentReport(compiled.content, files) };
  return {
    readable: false,
    text: list('This has to be mended before content can be read', compiled.problems.map(plainProblem)),
  };
};
