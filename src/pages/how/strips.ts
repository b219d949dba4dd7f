/** What the strips along a metatarsal show, and where their numbers come from. Bending in N m: N mm have three figures too many to read. */
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
  readonly key: string;
  readonly digits: number;
  readonly insideOnly: boolean;
  readonly of: (station: Station, referenceMPa: number) => number | null;
}

const column = (key: string, digits: number, of: StationColumn['of'], insideOnly = false): StationColumn => ({
  key,
  digits,
  of,
  insideOnly,
});

export const STATION_COLUMNS: readonly StationColumn[] = [
  column('axial', 0, (s) => s.axialN),
  column('shearUp', 0, (s) => s.shearDorsalN),
  column('shearSide', 0, (s) => s.shearLateralN),
  column('bendUp', 2, (s) => s.bendingUpDownNmm / NMM_PER_NM),
  column('bendSide', 2, (s) => s.bendingSidewaysNmm / NMM_PER_NM),
  column('torsion', 2, (s) => s.torsionNmm / NMM_PER_NM),
  column('tension', 2, (s, referenceMPa) => multipleOf(s.tensionMPa, referenceMPa), true),
  column('compression', 2, (s, referenceMPa) => multipleOf(s.compressionMPa, referenceMPa), true),
];

/** Columns that may be read: where forces are only more and less, stress as a multiple alone. */
export const columnsFor = (forcesRank: boolean): readonly StationColumn[] =>
  STATION_COLUMNS.filter(({ insideOnly }) => insideOnly || !forcesRank);

/** The number of a column as it is read; null where there is none. Zero has no sign. */
export const cellText = (
  { of, digits, insideOnly }: StationColumn,
  station: Station,
  referenceMPa: number,
): string | null => {
  const value = insideOnly && station.outsideBeamTheory ? null : of(station, referenceMPa);
  if (value === null) return null;
  return value
    .toFixed(digits)
    .replace(/^-(0(?:\.0+)?)$/, '$1')
    .replace('-', '−');
};

/** The station nearest to a place along the bone. */
export const nearest = (stations: readonly Station[], sMm: number): Station | undefined =>
  stations.reduce<Station | undefined>(
    (best, each) => (best === undefined || Math.abs(each.sMm - sMm) < Math.abs(best.sMm - sMm) ? each : best),
    undefined,
  );
