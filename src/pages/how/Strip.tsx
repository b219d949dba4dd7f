/** One quantity along a metatarsal, tip to head, as a line or two over the hatched parts outside beam theory. Lines are d3's. */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { useId } from 'react';
import type { Zone } from '../../anatomy/types';
import type { Explanation } from '../../explain/types';
import type { Station, StationTable } from '../../mechanics/types';
import { usePages, useSession } from '../context';
import { beamAgainstBreaks } from '../findings';
import { useWidth } from '../parts/use-width';
import { multipleOf, short } from './multiples';
import type { StripRow } from './strips';

const USUAL_WIDTH = 360;
const LEFT = 52;
const RIGHT = 6;
const HEIGHT = 64;

/** What lies along the bone in question: zones, the break, where such breaks are found. Nothing is known of the other four. */
export interface Along {
  readonly zones: readonly Zone[];
  readonly breakMm: number | null;
  readonly occurs: Zone | null;
}
export const NOTHING_ALONG: Along = { zones: [], breakMm: null, occurs: null };

export const alongOf = (explanation: Explanation): Along => {
  const compared = beamAgainstBreaks(explanation);
  return {
    zones: explanation.zones,
    breakMm: explanation.breakAt?.sMm ?? null,
    occurs: explanation.zones.find((zone) => zone.region === compared?.message.args.occursRegion) ?? null,
  };
};

const reach = (values: readonly number[]): readonly [number, number] => {
  const low = Math.min(0, ...values);
  const high = Math.max(0, ...values);
  return high - low < 1e-9 ? [-1, 1] : [low, high];
};

const percent = (value: number, most: number): string => `${Math.round((100 * value) / most)} %`.replace(/^-0 /, '0 ');

/** A place along the bone to x, CSS px: the same in every strip. */
export const alongScale = ({ stations }: StationTable, width: number) =>
  scaleLinear([0, stations.at(-1)?.sMm ?? 1], [LEFT, width - RIGHT]);

interface GroundProperties {
  readonly table: StationTable;
  readonly along: Along;
  readonly width: number;
  readonly height: number;
}

/** What lies behind every strip: hatched where no beam is, borders of zones, the break, where such breaks are found. */
export const StripGround = ({ table, along, width, height }: GroundProperties) => {
  const hatch = useId();
  const x = alongScale(table, width);
  const { stations } = table;
  const last = stations.at(-1)?.sMm ?? 1;
  const step = stations.length > 1 ? last / (stations.length - 1) : last;
  return (
    <>
      <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse">
        <path className="hatch hatch-thin" d="M0 6L6 0M-1 1L1 -1M5 7L7 5" />
      </pattern>
      {stations
        .filter((station) => station.outsideBeamTheory)
        .map((station) => (
          <rect
            key={station.sMm}
            x={x(station.sMm - step / 2)}
            y="0"
            width={Math.max(0, x(step) - x(0)) + 0.3}
            height={height}
            fill={`url(#${hatch})`}
          />
        ))}
      {along.zones.slice(1).map((zone) => (
        <path key={zone.region} className="strip-zone" d={`M${x(zone.fromMm)} 0V${height}`} />
      ))}
      {along.breakMm !== null && <path className="strip-break" d={`M${x(along.breakMm)} 0V${height}`} />}
    </>
  );
};

interface StripProperties {
  readonly row: StripRow;
  readonly table: StationTable;
  readonly referenceMPa: number;
  /** Only more and less may be told: stress is then a share of the most. */
  readonly ranks: boolean;
  /** Forces have no sizes here: they too are a share of their most. */
  readonly forcesRank: boolean;
  readonly along: Along;
  /** The station whose numbers are looked at. */
  readonly atMm: number | null;
}

export const Strip = ({ row, table, referenceMPa, ranks, forcesRank, along, atMm }: StripProperties) => {
  const { say } = usePages();
  const plain = useSession((state) => state.reader === 'patient');
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const { stations, peakTension, peakCompression } = table;
  const x = alongScale(table, width);
  const read = (of: StripRow['lines'][number], station: Station): number | null =>
    row.insideOnly && station.outsideBeamTheory ? null : of(station, referenceMPa);
  const values = stations.flatMap((station) => row.lines.map((of) => read(of, station))).filter((v) => v !== null);
  const [low, high] = reach(values);
  const shares = plain || (forcesRank && row.unit !== 'times');
  const axis = (value: number): string => (shares ? percent(value, Math.max(high, Math.abs(low))) : short(value));
  const y = scaleLinear([low, high], [HEIGHT - 8, 8]);
  const path = (of: StripRow['lines'][number]): string =>
    line<Station>()
      .defined((station) => read(of, station) !== null)
      .x((station) => x(station.sMm))
      .y((station) => y(read(of, station) ?? 0))([...stations]) ?? '';
  const peaks = row.key === 'stress' && values.length > 0 ? [peakTension, peakCompression] : [];
  return (
    <>
      <p className="strip-title">
        {say(`stations.${row.key}`)}{' '}
        {!plain && (
          <span className="small-print">
            {say(shares ? 'unit.ofItsMost' : ranks && row.unit === 'times' ? 'unit.ofMost' : `unit.${row.unit}`)}
          </span>
        )}
      </p>
      <svg ref={ref} viewBox={`0 0 ${width} ${HEIGHT}`} className="strip" aria-hidden="true">
        <StripGround table={table} along={along} width={width} height={HEIGHT} />
        <path className="strip-axis" d={`M${LEFT} ${y(0)}H${width - RIGHT}`} />
        {atMm !== null && <path className="strip-at" d={`M${x(atMm)} 0V${HEIGHT}`} />}
        {row.lines.map((of, index) => (
          <path
            key={index === 0 ? 'first' : 'second'}
            className={index === 0 ? 'strip-line' : 'strip-line strip-line-second'}
            d={path(of)}
          />
        ))}
        {row.key === 'stress' && along.occurs !== null && (
          <path className="strip-occurs" d={`M${x(along.occurs.fromMm)} ${HEIGHT - 3}H${x(along.occurs.toMm)}`} />
        )}
        {peaks.map(({ sMm, mpa }) => (
          <circle
            key={`${sMm} ${mpa}`}
            className="strip-peak"
            cx={x(sMm)}
            cy={y(multipleOf(mpa, referenceMPa) ?? 0)}
            r="4"
          />
        ))}
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
