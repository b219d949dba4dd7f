/**
 * A screw as a round bar: its core carries, not its thread. I = pi (d^4 - c^4) / 64, d the core, c the hole of a cannulated screw;
 * strength of materials, common practice. mm, MPa, N mm.
 */
import type { Point2 } from '../../anatomy/inside/polygon';
import type { Part } from '../section';

export interface Screw {
  /** Diameter of the core, under the thread. */
  readonly coreMm: number;
  /** Diameter of the hole for a wire; 0 for a solid screw. */
  readonly cannulaMm: number;
  readonly modulusMPa: number;
}

export interface ScrewSection {
  readonly iMm4: number;
  readonly eiNmm2: number;
  /** Bending moment at which the outermost fibre reaches a stress of 1 MPa. */
  readonly modulusMm3: number;
}

/** Throws RangeError for a screw that is all hole, or of no material. */
export const screwSectionOf = ({ coreMm, cannulaMm, modulusMPa }: Screw): ScrewSection => {
  if (!(coreMm > 0 && cannulaMm >= 0 && cannulaMm < coreMm && modulusMPa > 0)) {
    throw new RangeError(
      `a screw of core ${coreMm} mm, hole ${cannulaMm} mm and modulus ${modulusMPa} MPa: give a core above its hole`,
    );
  }
  const iMm4 = (Math.PI * (coreMm ** 4 - cannulaMm ** 4)) / 64;
  return { iMm4, eiNmm2: modulusMPa * iMm4, modulusMm3: (2 * iMm4) / coreMm };
};

/** Moment at which the outermost fibre yields, N mm. */
export const yieldMomentOf = (screw: Screw, yieldMPa: number): number => yieldMPa * screwSectionOf(screw).modulusMm3;

const CORNERS = 180;

/** Regular polygon of a circle's own area: its second moments are right within 1e-8, its corners lie 1e-4 outside. */
const circle = (diameterMm: number, [y, z]: Point2): Point2[] => {
  const step = (2 * Math.PI) / CORNERS;
  const r = (diameterMm / 2) * Math.sqrt(step / Math.sin(step));
  return Array.from({ length: CORNERS }, (_, i) => [y + r * Math.cos(i * step), z + r * Math.sin(i * step)]);
};

/** The screw as a part of a composite section, its axis along the bone at a point of the section. */
export const screwPart = (screw: Screw, at: Point2): Part => {
  screwSectionOf(screw);
  const holes = screw.cannulaMm > 0 ? [circle(screw.cannulaMm, at)] : [];
  return { outline: circle(screw.coreMm, at), holes, modulusMPa: screw.modulusMPa };
};
