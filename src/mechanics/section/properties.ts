/**
 * What a section is worth: area and second moments exact for its loops; torsion, shear areas and shear centre by finite elements.
 * Loops in coordinates dorsal and lateral of the bone's axis, mm, either way round. The roll is an angle from dorsal towards lateral.
 */
import { integralsOf, type Loop2, momentsOf, type Point2, principalOf, without } from '../../anatomy/inside/polygon';
import type { BendingSection, SectionProperties } from '../types';
import { coarsenedFigure, sizesOf } from './coarsen';
import { elementsOf } from './elements';
import { type Figure, figureOf } from './figure';
import { triangulate } from './mesh';
import { shearOf } from './shear';
import { torsionOf } from './torsion';

const bendingOf = ({ outline, holes }: Figure): BendingSection => {
  const inner = holes.map((hole) => integralsOf([hole]));
  const moments = momentsOf(inner.reduce(without, integralsOf([outline])));
  const { area, centroid, aa, bb, ab } = moments;
  const { most, least, along } = principalOf(moments);
  const [y, z] = centroid;
  const farthest = (way: (p: Point2) => number): number => outline.reduce((m, p) => Math.max(m, way(p)), -Infinity);
  return {
    centroidMm: centroid,
    areaMm2: area,
    iLateralMm4: aa,
    iDorsalMm4: bb,
    iProductMm4: ab,
    iMostMm4: most,
    iLeastMm4: least,
    rollRad: Math.atan2(along[1], along[0]),
    toDorsalMm: farthest((p) => p[0] - y),
    toPlantarMm: farthest((p) => y - p[0]),
    toLateralMm: farthest((p) => p[1] - z),
    toMedialMm: farthest((p) => z - p[1]),
    toMostMm: farthest((p) => Math.abs((p[0] - y) * along[0] + (p[1] - z) * along[1])),
    toLeastMm: farthest((p) => Math.abs((p[1] - z) * along[0] - (p[0] - y) * along[1])),
  };
};

/** The part that bending needs: no mesh. Throws SectionError for loops that are no section. */
export const bendingSectionOf = (outline: Loop2, holes: readonly Loop2[] = []): BendingSection =>
  bendingOf(figureOf(outline, holes));

/** All of it. Throws SectionError for loops that are no section. */
export const sectionOf = (outline: Loop2, holes: readonly Loop2[] = []): SectionProperties => {
  const figure = figureOf(outline, holes);
  const bending = bendingOf(figure);
  const sizes = sizesOf(figure, bending.areaMm2);
  const coarse = coarsenedFigure(figure, sizes);
  const elements = elementsOf(triangulate(coarse, sizes.elementMm));
  const torsion = torsionOf(elements, coarse);
  const { area, centroid, aa, bb, ab } = momentsOf(
    coarse.holes.map((hole) => integralsOf([hole])).reduce(without, integralsOf([coarse.outline])),
  );
  const { energy, centre } = shearOf(elements, { centroid, aa, bb, ab });
  const [c, s] = [Math.cos(bending.rollRad), Math.sin(bending.rollRad)];
  const [eA, eB, eAB] = energy;
  const scale = bending.areaMm2 / area;
  return {
    ...bending,
    jMm4: torsion.jMm4,
    torsionPeakPerNmm: torsion.peakPerNmm,
    torsionPeakAtMm: torsion.peakAt,
    shearAreaMostMm2: scale / (c * c * eA + s * s * eB + 2 * c * s * eAB),
    shearAreaLeastMm2: scale / (s * s * eA + c * c * eB - 2 * c * s * eAB),
    shearCentreMm: centre,
  };
};
