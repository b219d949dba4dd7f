/**
 * Forces and stress along the bone, from the model's own stations: axial force, shear, bending, torsion and the two extreme
 * stresses over the distance from the tip. Lines are d3's; the numbers stand in a table behind the drawing.
 */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { useId } from 'react';
import type { Zone } from '../../anatomy/types';
import type { Explanation } from '../../explain/types';
import type { Station, StationTable } from '../../mechanics/types';
import { usePages, useSession } from '../context';
import { beamAgainstBreaks } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { ScrollBox } from '../parts/ScrollBox';
import { useWidth } from '../parts/use-width';

interface Row {
  readonly key: string;
  readonly unit: string;
  /** One or two lines: the first solid, the second dashed. */
  readonly lines: readonly ((station: Station) => number)[];
}

/** Bending is shown in N m: the model's N mm have three figures too many to read. */
const NMM_PER_NM = 1000;

const ROWS: readonly Row[] = [
  { key: 'axial', unit: 'N', lines: [(s) => s.axialN] },
  { key: 'shear', unit: 'N', lines: [(s) => s.shearDorsalN, (s) => s.shearLateralN] },
  {
    key: 'bending',
    unit: 'Nm',
    lines: [(s) => s.bendingUpDownNmm / NMM_PER_NM, (s) => s.bendingSidewaysNmm / NMM_PER_NM],
  },
  { key: 'torsion', unit: 'Nm', lines: [(s) => s.torsionNmm / NMM_PER_NM] },
  { key: 'stress', unit: 'MPa', lines: [(s) => s.tensionMPa, (s) => s.compressionMPa] },
];

const USUAL_WIDTH = 360;
const LEFT = 52;
const HEIGHT = 64;

const spread = (values: readonly number[]): readonly [number, number] => {
  const low = Math.min(0, ...values);
  const high = Math.max(0, ...values);
  return high - low < 1e-9 ? [-1, 1] : [low, high];
};

/** The zone in which breaks of this class are published to lie, to hold the model's peak against. */
const occursAt = (explanation: Explanation): Zone | null => {
  const compared = beamAgainstBreaks(explanation);
  return explanation.zones.find((zone) => zone.region === compared?.message.args.occursRegion) ?? null;
};

/** Two figures are enough on an axis; zero has no sign. */
const short = (value: number): string => value.toFixed(Math.abs(value) < 10 ? 1 : 0).replace(/^-(0(?:\.0)?)$/, '$1');

/** A patient reads a share of the most; the forces behind it are for those who have the trade's units. */
const PLAIN_ROWS = ROWS.filter((row) => row.key === 'stress');

const percent = (value: number, most: number): string => `${Math.round((100 * value) / most)} %`.replace(/^-0 /, '0 ');

interface StripProperties {
  readonly row: Row;
  readonly table: StationTable;
  readonly explanation: Explanation;
}

const Strip = ({ row, table, explanation }: StripProperties) => {
  const { say } = usePages();
  const plain = useSession((state) => state.reader === 'patient');
  const hatch = useId();
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const isStress = row.key === 'stress';
  const { stations } = table;
  const last = stations.at(-1)?.sMm ?? 1;
  const x = scaleLinear([0, last], [LEFT, width - 6]);
  const read = isStress ? stations.filter((station) => !station.outsideBeamTheory) : stations;
  const [low, high] = spread(read.flatMap((station) => row.lines.map((of) => of(station))));
  const axis = (value: number): string => (plain ? percent(value, Math.max(high, Math.abs(low))) : short(value));
  const y = scaleLinear([low, high], [HEIGHT - 8, 8]);
  const outside = stations.filter((station) => station.outsideBeamTheory);
  // Stress is not read outside beam theory, so its line stops there; forces hold everywhere.
  const path = (of: Row['lines'][number]): string =>
    line<Station>()
      .defined((station) => !isStress || !station.outsideBeamTheory)
      .x((station) => x(station.sMm))
      .y((station) => y(of(station)))([...stations]) ?? '';
  const step = stations.length > 1 ? last / (stations.length - 1) : last;
  const occurs = occursAt(explanation);
  return (
    <>
      <p className="strip-title">
        {say(`stations.${row.key}`)} {!plain && <span className="small-print">{say(`unit.${row.unit}`)}</span>}
      </p>
      <svg ref={ref} viewBox={`0 0 ${width} ${HEIGHT}`} className="strip" aria-hidden="true">
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse">
          <path className="hatch hatch-thin" d="M0 6L6 0M-1 1L1 -1M5 7L7 5" />
        </pattern>
        {outside.map((station) => (
          <rect
            key={station.sMm}
            x={x(station.sMm - step / 2)}
            y="0"
            width={Math.max(0, x(step) - x(0)) + 0.3}
            height={HEIGHT}
            fill={`url(#${hatch})`}
          />
        ))}
        {explanation.zones.slice(1).map((zone) => (
          <path key={zone.region} className="strip-zone" d={`M${x(zone.fromMm)} 0V${HEIGHT}`} />
        ))}
        <path className="strip-axis" d={`M${LEFT} ${y(0)}H${width - 6}`} />
        {row.lines.map((of, index) => (
          <path
            key={index === 0 ? 'first' : 'second'}
            className={index === 0 ? 'strip-line' : 'strip-line strip-line-second'}
            d={path(of)}
          />
        ))}
        {explanation.breakAt !== null && (
          <path className="strip-break" d={`M${x(explanation.breakAt.sMm)} 0V${HEIGHT}`} />
        )}
        {isStress && (
          <>
            {occurs !== null && (
              <path className="strip-occurs" d={`M${x(occurs.fromMm)} ${HEIGHT - 3}H${x(occurs.toMm)}`} />
            )}
            <circle className="strip-peak" cx={x(table.peakTension.sMm)} cy={y(table.peakTension.mpa)} r="4" />
            <circle className="strip-peak" cx={x(table.peakCompression.sMm)} cy={y(table.peakCompression.mpa)} r="4" />
          </>
        )}
        <text x={LEFT - 6} y={y(high) + 5} textAnchor="end">
          {axis(high)}
        </text>
        <text x={LEFT - 6} y={y(low) + 3} textAnchor="end">
          {axis(low)}
        </text>
      </svg>
    </>
  );
};

const Numbers = ({ table }: { readonly table: StationTable }) => {
  const { say } = usePages();
  return (
    <div className="wide-table">
      <ScrollBox label={say('stations.table')}>
        <table>
          <caption>{say('stations.table')}</caption>
          <thead>
            <tr>
              {['from', 'axial', 'shearUp', 'shearSide', 'bendUp', 'bendSide', 'torsion', 'tension', 'compression'].map(
                (key) => (
                  <th key={key} scope="col">
                    {say(`stations.column.${key}`)}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {table.stations.map((s) => (
              <tr key={s.sMm}>
                <th scope="row">{s.sMm.toFixed(1)}</th>
                <td>{s.axialN.toFixed(0)}</td>
                <td>{s.shearDorsalN.toFixed(0)}</td>
                <td>{s.shearLateralN.toFixed(0)}</td>
                <td>{(s.bendingUpDownNmm / NMM_PER_NM).toFixed(2)}</td>
                <td>{(s.bendingSidewaysNmm / NMM_PER_NM).toFixed(2)}</td>
                <td>{(s.torsionNmm / NMM_PER_NM).toFixed(2)}</td>
                <td>{s.outsideBeamTheory ? say('stations.outside') : s.tensionMPa.toFixed(0)}</td>
                <td>{s.outsideBeamTheory ? say('stations.outside') : s.compressionMPa.toFixed(0)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </div>
  );
};

export const StationDiagram = () => {
  const { say } = usePages();
  const plain = useSession((state) => state.reader === 'patient');
  const explanation = useSession((state) => state.explanation);
  const table = explanation?.stations ?? null;
  if (explanation === null || table === null) return <p>{say('stations.none')}</p>;
  return (
    <div>
      <p className="small-print">{say(plain ? 'stations.whatPlain' : 'stations.what')}</p>
      {(plain ? PLAIN_ROWS : ROWS).map((row) => (
        <Strip key={row.key} row={row} table={table} explanation={explanation} />
      ))}
      <ul className="legend legend-lines small-print">
        <li>{say('stations.key.peak')}</li>
        <li>{say('stations.key.break')}</li>
        {occursAt(explanation) !== null && <li>{say('stations.key.occurs')}</li>}
        <li>{say('stations.key.zones')}</li>
        <li>{say(plain ? 'stations.key.secondPlain' : 'stations.key.second')}</li>
      </ul>
      {!plain && (
        <Disclosure title={say('stations.numbers')}>
          <Numbers table={table} />
        </Disclosure>
      )}
    </div>
  );
};
