/**
 * How far a member bends: curvature from the field of stress, integrated twice from a station that keeps place and direction.
 * Bending only; shear adds about 5 % in a metatarsal's shaft and more near its base. Curvature varies linearly between stations.
 */
import type { Station } from './types';

export interface Deflection {
  readonly sMm: number;
  readonly dorsalMm: number;
  readonly lateralMm: number;
  readonly slopeDorsal: number;
  readonly slopeLateral: number;
}

/** Deflection at every station distal to the first, which is held. Modulus in MPa. */
export const deflectionsOf = (stations: readonly Station[], modulusMPa: number): Deflection[] => {
  let here: Deflection = { sMm: stations[0]?.sMm ?? 0, dorsalMm: 0, lateralMm: 0, slopeDorsal: 0, slopeLateral: 0 };
  return stations.map((station, i) => {
    const before = stations[i - 1];
    if (!before) return here;
    const h = station.sMm - before.sMm;
    // sigma = E eps and eps = -y v'': the member curves towards +y where +y is compressed.
    const step = (k: 1 | 2): readonly [slope: number, sag: number] => {
      const [k0, k1] = [-before.field[k] / modulusMPa, -station.field[k] / modulusMPa];
      return [((k0 + k1) * h) / 2, ((2 * k0 + k1) * h * h) / 6];
    };
    const [slopeD, sagD] = step(1);
    const [slopeL, sagL] = step(2);
    here = {
      sMm: station.sMm,
      dorsalMm: here.dorsalMm + here.slopeDorsal * h + sagD,
      lateralMm: here.lateralMm + here.slopeLateral * h + sagL,
      slopeDorsal: here.slopeDorsal + slopeD,
      slopeLateral: here.slopeLateral + slopeL,
    };
    return here;
  });
};
