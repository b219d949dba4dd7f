/** The stations of a metatarsal in numbers: forces in newtons, moments in N m, stress as a multiple. */
import type { StationTable } from '../../mechanics/types';
import { usePages } from '../context';
import { ScrollBox } from '../parts/ScrollBox';
import { cellText, columnsFor } from './strips';

interface Properties {
  readonly table: StationTable;
  readonly referenceMPa: number;
  /** What stress is a multiple of, in words. */
  readonly measure: string;
  /** Forces have no sizes here. */
  readonly forcesRank: boolean;
  readonly atMm: number;
}

export const StationNumbers = ({ table, referenceMPa, measure, forcesRank, atMm }: Properties) => {
  const { say } = usePages();
  const columns = columnsFor(forcesRank);
  return (
    <div className="wide-table">
      <p className="small-print">
        {say('stations.signs', { measure })} {forcesRank && say('stations.noForces')}
      </p>
      <ScrollBox label={say('stations.table')}>
        <table className="stations">
          <caption className="unseen">{say('stations.table')}</caption>
          <thead>
            <tr>
              <th scope="col">{say('stations.column.from')}</th>
              {columns.map(({ key }) => (
                <th key={key} scope="col">
                  {say(`stations.column.${key}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.stations.map((station) => (
              <tr key={station.sMm} aria-current={station.sMm === atMm || undefined}>
                <th scope="row">{station.sMm.toFixed(1)}</th>
                {columns.map((column) => (
                  <td key={column.key}>{cellText(column, station, referenceMPa) ?? say('stations.outside')}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </div>
  );
};
