/**
 * Properties of a hollow section: an outline of any shape less an elliptic canal. Coordinates in the section's plane: y dorsal,
 * z lateral, mm. Area, centroid and second moments of the outline by Green's theorem over its straight sides (exact for the polygon).
 * Torsion constant: A^4 / (4 pi^2 Ip) of the outline less the same of the canal (Saint-Venant's approximation; exact for concentric
 * ellipses of the same shape, 1 % above a thin elliptic tube of constant wall; it ignores how far the canal lies off centre).
 */
import type { SectionProperties } from './types';

export type Point2 = readonly [dorsalMm: number, lateralMm: number];

/** Ellipse with its axes dorsal and lateral. */
export interface Canal {
  readonly centre: Point2;
  readonly semiDorsalMm: number;
  readonly semiLateralMm: number;
}

interface Moments {
  readonly area: number;
  /** First and second moments about the origin. */
  readonly y: number;
  readonly z: number;
  readonly yy: number;
  readonly zz: number;
  readonly yz: number;
}

const momentsOfPolygon = (outline: readonly Point2[]): Moments => {
  let [area, y, z, yy, zz, yz] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < outline.length; i++) {
    const [y0, z0] = outline[i] ?? [0, 0];
    const [y1, z1] = outline[(i + 1) % outline.length] ?? [0, 0];
    const c = y0 * z1 - y1 * z0;
    area += c / 2;
    y += (c * (y0 + y1)) / 6;
    z += (c * (z0 + z1)) / 6;
    yy += (c * (y0 * y0 + y0 * y1 + y1 * y1)) / 12;
    zz += (c * (z0 * z0 + z0 * z1 + z1 * z1)) / 12;
    yz += (c * (y0 * z1 + 2 * y0 * z0 + 2 * y1 * z1 + y1 * z0)) / 24;
  }
  // Either way round.
  const sign = area < 0 ? -1 : 1;
  return { area: sign * area, y: sign * y, z: sign * z, yy: sign * yy, zz: sign * zz, yz: sign * yz };
};

const momentsOfCanal = ({ centre: [y, z], semiDorsalMm: a, semiLateralMm: b }: Canal): Moments => {
  const area = Math.PI * a * b;
  return {
    area,
    y: area * y,
    z: area * z,
    yy: (area * a * a) / 4 + area * y * y,
    zz: (area * b * b) / 4 + area * z * z,
    yz: area * y * z,
  };
};

const torsionConstant = ({ area, y, z, yy, zz }: Moments): number => {
  if (area === 0) return 0;
  const polar = yy + zz - (y * y + z * z) / area;
  return area ** 4 / (4 * Math.PI * Math.PI * polar);
};

/** Throws RangeError when nothing is left of the section: the caller decides how thick a wall must be. */
export const sectionOf = (outline: readonly Point2[], canal: Canal | null): SectionProperties => {
  const outer = momentsOfPolygon(outline);
  const inner = canal ? momentsOfCanal(canal) : { area: 0, y: 0, z: 0, yy: 0, zz: 0, yz: 0 };
  const area = outer.area - inner.area;
  if (!(area > 0)) throw new RangeError(`a section of ${outer.area} mm2 has no room for a canal of ${inner.area} mm2`);
  const y = (outer.y - inner.y) / area;
  const z = (outer.z - inner.z) / area;
  const ys = outline.map((p) => p[0]);
  const zs = outline.map((p) => p[1]);
  return {
    centroidMm: [y, z],
    areaMm2: area,
    iLateralMm4: outer.yy - inner.yy - area * y * y,
    iDorsalMm4: outer.zz - inner.zz - area * z * z,
    iProductMm4: outer.yz - inner.yz - area * y * z,
    jMm4: torsionConstant(outer) - torsionConstant(inner),
    toDorsalMm: Math.max(...ys) - y,
    toPlantarMm: y - Math.min(...ys),
    toLateralMm: Math.max(...zs) - z,
    toMedialMm: z - Math.min(...zs),
  };
};
