/** What the strips along a metatarsal show, and where their numbers come from. Bending in N m: N mm have three figures too many to read. */

import {
  type SignedSpread,
  type StationBand,
  type StationForce,
  type StationStress,
  signMayBeTold,
} from '../../mechanics/foot/types';
import type { Station } from '../../mechanics/types';
import { multipleOf } from './multiples';

const NMM_PER_NM = 1000;

export interface StripRow {
  readonly key: 'axial' | 'shear' | 'bending' | 'torsion' | 'stress';
  readonly unit: 'N' | 'Nm' | 'times';
  /** Stress is not read outside beam theory, so its line stops there; forces hold everywhere. */
  readonly insideOnly: boolean;
  /** One or two lines: the first solid, the second dashed. Null where there is no number to show. */
  readonly lines: readonly ((station: Station, referenceMPa: number) => number | null)[];
}

export const STRIPS: readonly StripRow[] = [
  { key: 'axial', unit: 'N', insideOnly: false, lines: [(s) => s.axialN] },
  { key: 'shear', unit: 'N', insideOnly: false, lines: [(s) => s.shearDorsalN, (s) => s.shearLateralN] },
  {
    key: 'bending',
    unit: 'Nm',
    insideOnly: false,
    lines: [(s) => s.bendingUpDownNmm / NMM_PER_NM, (s) => s.bendingSidewaysNmm / NMM_PER_NM],
  },
  { key: 'torsion', unit: 'Nm', insideOnly: false, lines: [(s) => s.torsionNmm / NMM_PER_NM] },
  {
    key: 'stress',
    unit: 'times',
    insideOnly: true,
    lines: [
      (s, referenceMPa) => multipleOf(s.tensionMPa, referenceMPa),
      (s, referenceMPa) => multipleOf(s.compressionMPa, referenceMPa),
    ],
  },
];

/** Columns of the table of stations, in its order; `outside` marks those that are not read outside beam theory. */
export interface StationColumn {
  readonly key: StationForce | StationStress;
  readonly digits: number;
  readonly insideOnly: boolean;
  readonly of: (station: Station, referenceMPa: number) => number | null;
  /** The same over the draws; `ranks`: stress is told as a share of the most in the task itself. */
  readonly bandOf: (band: StationBand, ranks: boolean) => SignedSpread;
}

const forceColumn = (
  key: StationForce,
  digits: number,
  per: number,
  of: (station: Station) => number,
): StationColumn => ({
  key,
  digits,
  insideOnly: false,
  of: (station) => of(station) / per,
  bandOf: ({ forces }) => {
    const { told, low, high, share } = forces[key];
    return { told: told / per, low: low / per, high: high / per, share };
  },
});

const stressColumn = (key: StationStress, of: (station: Station) => number): StationColumn => ({
  key,
  digits: 2,
  insideOnly: true,
  of: (station, referenceMPa) => multipleOf(of(station), referenceMPa),
  bandOf: ({ ofMost, ofReference }, ranks) => (ranks ? ofMost : ofReference)[key],
});

export const STATION_COLUMNS: readonly StationColumn[] = [
  forceColumn('axial', 0, 1, (s) => s.axialN),
  forceColumn('shearUp', 0, 1, (s) => s.shearDorsalN),
  forceColumn('shearSide', 0, 1, (s) => s.shearLateralN),
  forceColumn('bendUp', 2, NMM_PER_NM, (s) => s.bendingUpDownNmm),
  forceColumn('bendSide', 2, NMM_PER_NM, (s) => s.bendingSidewaysNmm),
  forceColumn('torsion', 2, NMM_PER_NM, (s) => s.torsionNmm),
  stressColumn('tension', (s) => s.tensionMPa),
  stressColumn('compression', (s) => s.compressionMPa),
];

/** Columns that may be read: where forces are only more and less, stress as a multiple alone. */
export const columnsFor = (forcesRank: boolean): readonly StationColumn[] =>
  STATION_COLUMNS.filter(({ insideOnly }) => insideOnly || !forcesRank);

/** Zero has no sign. */
const numberText = (value: number, digits: number): string =>
  value
    .toFixed(digits)
    .replace(/^-(0(?:\.0+)?)$/, '$1')
    .replace('-', '−');

/** The number of a column as it is read; null where there is none. */
export const cellText = (
  { of, digits, insideOnly }: StationColumn,
  station: Station,
  referenceMPa: number,
): string | null => {
  const value = insideOnly && station.outsideBeamTheory ? null : of(station, referenceMPa);
  return value === null ? null : numberText(value, digits);
};

/** From the low to the high end of the inner eight tenths of the draws, what is told among them. */
export interface CellBand {
  readonly low: string;
  readonly high: string;
  /** Too few draws agree on which way it acts: the number of the one run is not told. */
  readonly open: boolean;
}

/** Null where there is no number, or where all draws say the same one. */
export const cellBand = (column: StationColumn, band: StationBand, ranks: boolean): CellBand | null => {
  const spread = column.bandOf(band, ranks);
  const [low, high] = [spread.low, spread.high].map((value) => numberText(value, column.digits)) as [string, string];
  const open = !signMayBeTold(spread);
  return low === high && !open ? null : { low, high, open };
};

/** The station nearest to a place along the bone. */
export const nearest = (stations: readonly Station[], sMm: number): Station | undefined =>
  stations.reduce<Station | undefined>(
    (best, each) => (best === undefined || Math.abs(each.sMm - sMm) < Math.abs(best.sMm - sMm) ? each : best),
    undefined,
  );
