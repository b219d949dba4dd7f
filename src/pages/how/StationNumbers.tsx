/** The stations of a metatarsal in numbers: forces in newtons, moments in N m, stress as a multiple. */
import type { StationBand } from '../../mechanics/foot/types';
import type { StationTable } from '../../mechanics/types';
import { usePages } from '../context';
import { ScrollBox } from '../parts/ScrollBox';
import { type CellBand, cellBand, cellText, columnsFor } from './strips';

interface Properties {
  readonly table: StationTable;
  readonly referenceMPa: number;
  /** What stress is a multiple of, in words. */
  readonly measure: string;
  /** Forces have no sizes here. */
  readonly forcesRank: boolean;
  /** Only more and less may be told: stress is a share of the most. */
  readonly ranks: boolean;
  /** Of this bone, in the order of its stations. `pending`: still to come; `none`: of another bone than the one in question. */
  readonly bands: readonly StationBand[] | 'pending' | 'none';
  readonly atMm: number;
}

const WITHOUT_BANDS = { pending: 'stations.bands.pending', none: 'stations.bands.none' } as const;

interface CellProperties {
  /** As the one run has it; null where it is not read. */
  readonly text: string | null;
  readonly band: CellBand | null;
}

/** The number and where the draws put it; "cannot tell" where they do not agree on which way it acts. */
const Cell = ({ text, band }: CellProperties) => {
  const { say } = usePages();
  if (text === null) return <td>{say('stations.outside')}</td>;
  return (
    <td>
      {band?.open ? say('stations.open') : text}
      {band !== null && (
        <span className="small-print station-band">{say('stations.band', { low: band.low, high: band.high })}</span>
      )}
    </td>
  );
};

export const StationNumbers = ({ table, referenceMPa, measure, forcesRank, ranks, bands, atMm }: Properties) => {
  const { say } = usePages();
  const columns = columnsFor(forcesRank);
  const listed = typeof bands === 'string' ? [] : bands;
  return (
    <div className="wide-table">
      <p className="small-print">
        {say('stations.signs', { measure })} {forcesRank && say('stations.noForces')}
      </p>
      <p className="small-print">{say(typeof bands === 'string' ? WITHOUT_BANDS[bands] : 'stations.bands.told')}</p>
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
            {table.stations.map((station, i) => (
              <tr key={station.sMm} aria-current={station.sMm === atMm || undefined}>
                <th scope="row">{station.sMm.toFixed(1)}</th>
                {columns.map((column) => (
                  <Cell
                    key={column.key}
                    text={cellText(column, station, referenceMPa)}
                    band={listed[i] === undefined ? null : cellBand(column, listed[i], ranks)}
                  />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </div>
  );
};
