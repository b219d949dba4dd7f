/**
 * Sections of more than one material that strain together (cortex and spongy bone, bone and screw): a transformed section with
 * the true modulus of each part. Plane sections stay plane, no slip between the parts. Coordinates dorsal and lateral, mm; moduli
 * in MPa, so that stiffnesses are N and N mm2. Signs as in `fieldOf`: Mz > 0 stretches plantar, My > 0 lateral.
 */
import { integralsOf, type Loop2, type Point2, without } from '../../anatomy/inside/polygon';
import type { Field } from '../stress';
import { figureOf, SectionError } from './figure';

export interface Part {
  readonly outline: Loop2;
  /** Where this material is not; what fills it is a part of its own. */
  readonly holes?: readonly Loop2[];
  readonly modulusMPa: number;
}

export interface Composite {
  readonly parts: readonly Part[];
  /** Elastic centre: an axial force through it does not bend. */
  readonly centreMm: Point2;
  readonly eaN: number;
  /** E I about the elastic centre, axes lateral (bends up/down) and dorsal (bends sideways), and the product. */
  readonly eiLateralNmm2: number;
  readonly eiDorsalNmm2: number;
  readonly eiProductNmm2: number;
}

/** Throws SectionError for a part that is no section; RangeError for a modulus that is not above zero. */
export const compositeOf = (parts: readonly Part[]): Composite => {
  if (parts.length === 0) throw new SectionError('no section', 'a composite needs at least one part');
  let [ea, ey, ez, eyy, ezz, eyz] = [0, 0, 0, 0, 0, 0];
  for (const { outline, holes = [], modulusMPa: e } of parts) {
    if (!(e > 0 && Number.isFinite(e))) throw new RangeError(`a modulus of ${e} MPa: give one above zero`);
    const figure = figureOf(outline, holes);
    const i = figure.holes.map((hole) => integralsOf([hole])).reduce(without, integralsOf([figure.outline]));
    [ea, ey, ez] = [ea + e * i.area, ey + e * i.a, ez + e * i.b];
    [eyy, ezz, eyz] = [eyy + e * i.aa, ezz + e * i.bb, eyz + e * i.ab];
  }
  const centreMm: Point2 = [ey / ea, ez / ea];
  return {
    parts,
    centreMm,
    eaN: ea,
    eiLateralNmm2: eyy - ea * centreMm[0] ** 2,
    eiDorsalNmm2: ezz - ea * centreMm[1] ** 2,
    eiProductNmm2: eyz - ea * centreMm[0] * centreMm[1],
  };
};

/** Strain over the section about its elastic centre, and curvature with it: e = a + b y + c z. N, N mm. */
export const strainOf = (c: Composite, axialN: number, upDownNmm: number, sidewaysNmm: number): Field => {
  const { eiLateralNmm2: yy, eiDorsalNmm2: zz, eiProductNmm2: yz } = c;
  const det = yy * zz - yz * yz;
  return [
    axialN / c.eaN + 0,
    (-upDownNmm * zz - sidewaysNmm * yz) / det + 0,
    (sidewaysNmm * yy + upDownNmm * yz) / det + 0,
  ];
};

export interface PartStress {
  readonly tensionMPa: number;
  readonly tensionAtMm: Point2;
  readonly compressionMPa: number;
  readonly compressionAtMm: Point2;
}

/** Largest and smallest stress in each part, in order: at corners, since a linear field has its extremes there. */
export const partStressesOf = (c: Composite, [a, by, bz]: Field): PartStress[] =>
  c.parts.map(({ outline, modulusMPa }) => {
    const stress = (p: Point2): number => modulusMPa * (a + by * (p[0] - c.centreMm[0]) + bz * (p[1] - c.centreMm[1]));
    const most = outline.reduce((p, q) => (stress(q) > stress(p) ? q : p));
    const least = outline.reduce((p, q) => (stress(q) < stress(p) ? q : p));
    return {
      tensionMPa: stress(most),
      tensionAtMm: most,
      compressionMPa: stress(least),
      compressionAtMm: least,
    };
  });
