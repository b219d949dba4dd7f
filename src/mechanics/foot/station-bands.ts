/**
 * What every station of one metatarsal carries over the draws. Forces and moments as they are (N, N mm): whether they may be told is
 * asked where they are told. Stress, and strain with it, only as a share: of the bone's largest pull in the reference task of the same
 * draw, and of its largest pull in the task itself, for a run of which no size may be told.
 */
import { quantileOfSorted } from './draws';
import type { RayStation } from './recover';
import { HIGH, LOW } from './spread';
import {
  type SignedSpread,
  STATION_FORCES,
  STATION_STRESSES,
  type StationBand,
  type StationForce,
  type StationStress,
} from './types';

const FORCE_OF: Readonly<Record<StationForce, (station: RayStation) => number>> = {
  axial: (s) => s.axialN,
  shearUp: (s) => s.shearDorsalN,
  shearSide: (s) => s.shearLateralN,
  bendUp: (s) => s.bendingUpDownNmm,
  bendSide: (s) => s.bendingSidewaysNmm,
  torsion: (s) => s.torsionNmm,
};
const STRESS_OF: Readonly<Record<StationStress, (station: RayStation) => number>> = {
  tension: (s) => s.tensionMPa,
  compression: (s) => s.compressionMPa,
};

/** Numbers of a station in one draw: six forces, two stresses in the reference's pull, the same two in the task's own. */
const FORCES = STATION_FORCES.length;
const STRESSES = STATION_STRESSES.length;
const EACH = FORCES + 2 * STRESSES;

/** One draw, station after station: ten numbers each. Peaks are the bone's largest pulls, MPa. */
export const stationRow = (stations: readonly RayStation[], peakMPa: number, referenceMPa: number): Float64Array => {
  const row = new Float64Array(EACH * stations.length);
  stations.forEach((station, i) => {
    const at = EACH * i;
    STATION_FORCES.forEach((force, k) => {
      row[at + k] = FORCE_OF[force](station);
    });
    STATION_STRESSES.forEach((stress, k) => {
      const mpa = STRESS_OF[stress](station);
      row[at + FORCES + k] = mpa / referenceMPa;
      row[at + FORCES + STRESSES + k] = mpa / peakMPa;
    });
  });
  return row;
};

/** `draws` counts those without an answer too: they agree with no sign. `places`: stations, mm from the tip. */
export const bandsOfStations = (
  places: readonly number[],
  told: Float64Array,
  drawn: readonly Float64Array[],
  draws: number,
): readonly StationBand[] => {
  const values = new Float64Array(drawn.length);
  const signed = (at: number): SignedSpread => {
    const here = told[at] as number;
    const sign = Math.sign(here);
    let same = 0;
    drawn.forEach((row, d) => {
      const value = row[at] as number;
      values[d] = value;
      if (Math.sign(value) === sign) same++;
    });
    values.sort();
    return {
      told: here,
      low: quantileOfSorted(values, LOW),
      high: quantileOfSorted(values, HIGH),
      share: same / draws,
    };
  };
  return places.map((sMm, i): StationBand => {
    const at = EACH * i;
    const stresses = (from: number) =>
      Object.fromEntries(STATION_STRESSES.map((name, k) => [name, signed(at + from + k)])) as Record<
        StationStress,
        SignedSpread
      >;
    return {
      sMm,
      forces: Object.fromEntries(STATION_FORCES.map((name, k) => [name, signed(at + k)])) as Record<
        StationForce,
        SignedSpread
      >,
      ofReference: stresses(FORCES),
      ofMost: stresses(FORCES + STRESSES),
    };
  });
};
