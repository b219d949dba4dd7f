/**
 * Properties of a hollow section: an outline of any shape less an elliptic canal. Coordinates in the section's plane: dorsal,
 * lateral, mm. The outline is integrated as it is, by the same integrals as any cut of a bone.
 * Torsion constant: A^4 / (4 pi^2 Ip) of the outline less the same of the canal (Saint-Venant's approximation; exact for concentric
 * ellipses of the same shape, 1 % above a thin elliptic tube of constant wall; it ignores how far the canal lies off centre).
 */
import { type Integrals, integralsOf, momentsOf, NOTHING, type Point2, without } from '../anatomy/inside/polygon';
import type { SectionProperties } from './types';

/** Ellipse with its axes dorsal and lateral. */
export interface Canal {
  readonly centre: Point2;
  readonly semiDorsalMm: number;
  readonly semiLateralMm: number;
}

const integralsOfCanal = ({ centre: [y, z], semiDorsalMm: a, semiLateralMm: b }: Canal): Integrals => {
  const area = Math.PI * a * b;
  return {
    area,
    a: area * y,
    b: area * z,
    aa: (area * a * a) / 4 + area * y * y,
    bb: (area * b * b) / 4 + area * z * z,
    ab: area * y * z,
  };
};

const torsionConstant = (figure: Integrals): number => {
  if (figure.area === 0) return 0;
  const { area, aa, bb } = momentsOf(figure);
  return area ** 4 / (4 * Math.PI * Math.PI * (aa + bb));
};

/** Throws RangeError when nothing is left of the section: the caller decides how thick a wall must be. */
export const sectionOf = (outline: readonly Point2[], canal: Canal | null): SectionProperties => {
  const outer = integralsOf([outline]);
  const inner = canal ? integralsOfCanal(canal) : NOTHING;
  const left = without(outer, inner);
  if (!(left.area > 0)) {
    throw new RangeError(`a section of ${outer.area} mm2 has no room for a canal of ${inner.area} mm2`);
  }
  const { area, centroid, aa, bb, ab } = momentsOf(left);
  const [y, z] = centroid;
  const ys = outline.map((p) => p[0]);
  const zs = outline.map((p) => p[1]);
  return {
    centroidMm: centroid,
    areaMm2: area,
    iLateralMm4: aa,
    iDorsalMm4: bb,
    iProductMm4: ab,
    jMm4: torsionConstant(outer) - torsionConstant(inner),
    toDorsalMm: Math.max(...ys) - y,
    toPlantarMm: y - Math.min(...ys),
    toLateralMm: Math.max(...zs) - z,
    toMedialMm: z - Math.min(...zs),
  };
};
