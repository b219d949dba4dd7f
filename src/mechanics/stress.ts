/**
 * Direct stress over a section from axial force and bending about both axes, unsymmetric sections included (product of inertia).
 * sigma = N/A + b y + c z about the centroid, y dorsal, z lateral, with  b Iyy + c Iyz = -Mz  and  b Iyz + c Izz = My:
 * Mz > 0 stretches the plantar side, My > 0 the lateral side. N, N mm, mm -> MPa, tension +.
 */
import type { Point2 } from '../anatomy/inside/polygon';
import type { SectionProperties } from './types';

export type Field = readonly [a: number, b: number, c: number];

export const fieldOf = (section: SectionProperties, axialN: number, upDownNmm: number, sidewaysNmm: number): Field => {
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
export const extremesOf = (section: SectionProperties, outline: readonly Point2[], [a, b, c]: Field): Extremes => {
  const [cy, cz] = section.centroidMm;
  let [high, highAt, low, lowAt] = [Number.NEGATIVE_INFINITY, 0, Number.POSITIVE_INFINITY, 0];
  for (const [py, pz] of outline) {
    const [y, z] = [py - cy, pz - cz];
    const stress = a + b * y + c * z;
    if (stress > high) [high, highAt] = [stress, Math.atan2(z, y)];
    if (stress < low) [low, lowAt] = [stress, Math.atan2(z, y)];
  }
  return { tensionMPa: high, tensionAtRad: highAt, compressionMPa: low, compressionAtRad: lowAt };
};
