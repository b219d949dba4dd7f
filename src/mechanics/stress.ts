/**
 * Direct stress over a section from axial force and bending about both axes, unsymmetric sections included (product of inertia).
 * sigma = N/A + b y + c z about the centroid, y dorsal, z lateral, with  b Iyy + c Iyz = -Mz  and  b Iyz + c Izz = My:
 * Mz > 0 stretches the plantar side, My > 0 the lateral side. N, N mm, mm -> MPa, tension +.
 */
import type { Point2 } from '../anatomy/inside/polygon';
import type { BendingSection } from './types';

type Tensor = Pick<BendingSection, 'areaMm2' | 'iLateralMm4' | 'iDorsalMm4' | 'iProductMm4'>;

export type Field = readonly [a: number, b: number, c: number];

export const fieldOf = (section: Tensor, axialN: number, upDownNmm: number, sidewaysNmm: number): Field => {
  const { iLateralMm4: yy, iDorsalMm4: zz, iProductMm4: yz, areaMm2 } = section;
  const det = yy * zz - yz * yz;
  // Adding nothing turns -0 into 0, so that a table survives JSON unchanged.
  const [b, c] = [(-upDownNmm * zz - sidewaysNmm * yz) / det, (sidewaysNmm * yy + upDownNmm * yz) / det];
  return [axialN / areaMm2 + 0, b + 0, c + 0];
};

export interface Extremes {
  readonly tensionMPa: number;
  readonly tensionAtRad: number;
  readonly compressionMPa: number;
  readonly compressionAtRad: number;
}

/** Largest and smallest stress on the outline. A linear field has its extremes at corners, so the corners are enough. */
export const extremesOf = (
  section: Pick<BendingSection, 'centroidMm'>,
  outline: readonly Point2[],
  [a, b, c]: Field,
): Extremes => {
  const [cy, cz] = section.centroidMm;
  let [high, low] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [highAt, lowAt]: [Point2, Point2] = [
    [cy, cz],
    [cy, cz],
  ];
  for (let i = 0; i < outline.length; i++) {
    const p = outline[i] as Point2;
    const stress = a + b * (p[0] - cy) + c * (p[1] - cz);
    if (stress > high) {
      high = stress;
      highAt = p;
    }
    if (stress < low) {
      low = stress;
      lowAt = p;
    }
  }
  const direction = ([y, z]: Point2): number => Math.atan2(z - cz, y - cy);
  return {
    tensionMPa: high,
    tensionAtRad: direction(highAt),
    compressionMPa: low,
    compressionAtRad: direction(lowAt),
  };
};
