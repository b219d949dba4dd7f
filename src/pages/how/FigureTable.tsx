/** A table of figures with all that stands behind each: range, unit, basis, source with its mark, note, its share of the spread. */
import type { Figure, FrameFigureRecord } from '../../content/schema';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { wordKey } from '../words';
import { rangeText, shareText, valueText } from './figure-rows';

export const FIGURE_COLUMNS = ['figure', 'value', 'range', 'unit', 'basis', 'source', 'share', 'note'] as const;

export interface FigureRow {
  readonly id: string;
  readonly name: string;
  readonly figure: Figure;
  readonly basis: FrameFigureRecord['basis'] | null;
  readonly share: number | 'chance' | null;
}

export interface FigureGroup {
  readonly title: string;
  readonly rows: readonly FigureRow[];
}

const Row = ({ row }: { readonly row: FigureRow }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const { figure, basis } = row;
  const { source, mark } = figure.evidence;
  return (
    <tr>
      <th scope="row">{row.name}</th>
      <td>
        <Known mark={mark}>{valueText(figure)}</Known>
      </td>
      <td>{rangeText(figure)}</td>
      <td>{say(`figureUnit.${wordKey(figure.unit)}`)}</td>
      {basis !== null && <td>{say(`figures.basis.${wordKey(basis)}`)}</td>}
      <td>
        {source === null ? say('figures.noSource') : sourceName(content, source)}, {say(markWordKey(mark))}
      </td>
      <td className="figure-share">{row.share === 'chance' ? say('figures.chance') : shareText(row.share)}</td>
      <td>{figure.note}</td>
    </tr>
  );
};

interface Properties {
  readonly title: string;
  readonly groups: readonly FigureGroup[];
  readonly held: boolean;
}

export const FigureTable = ({ title, groups, held }: Properties) => {
  const { say } = usePages();
  // The load case has no bases: who told a figure, its source and note say.
  const based = groups.some(({ rows }) => rows.some(({ basis }) => basis !== null));
  const columns = FIGURE_COLUMNS.filter((key) => based || key !== 'basis');
  return (
    <ScrollBox label={title}>
      <table className={held ? 'figures figures-held' : 'figures'}>
        <caption className="unseen">{title}</caption>
        <thead>
          <tr>
            {columns.map((key) => (
              <th key={key} scope="col">
                {say(`figures.column.${key}`)}
              </th>
            ))}
          </tr>
        </thead>
        {groups.map((group) => (
          <tbody key={group.title}>
            <tr className="trial-row">
              <th scope="rowgroup" colSpan={columns.length}>
                {group.title}
              </th>
            </tr>
            {group.rows.map((row) => (
              <Row key={row.id} row={row} />
            ))}
          </tbody>
        ))}
      </table>
    </ScrollBox>
  );
};
