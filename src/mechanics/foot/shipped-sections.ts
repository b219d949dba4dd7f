/**
 * Sections of the usual foot's metatarsals as a file beside its model: numbers as they were computed, to the last digit, so that a
 * foot with shipped sections and one that is cut anew say the same. JSON, keyed by ray.
 */
import * as v from 'valibot';
import { RAYS } from './landmarks';
import type { RayCut, RaySection, RaySections, RayWalls } from './ray-sections';

const mm = v.pipe(v.number(), v.finite());
const point = v.tuple([mm, mm]);

const ofEnds = {
  centroidMm: point,
  areaMm2: mm,
  iLateralMm4: mm,
  iDorsalMm4: mm,
  iProductMm4: mm,
  jMm4: mm,
  shearAreaMostMm2: mm,
  shearAreaLeastMm2: mm,
};
const endSchema: v.GenericSchema<unknown, RaySection> = v.strictObject(ofEnds);

const cutSchema: v.GenericSchema<unknown, RayCut> = v.strictObject({
  sMm: mm,
  outline: v.array(point),
  depthMm: mm,
  section: v.strictObject({
    ...ofEnds,
    iMostMm4: mm,
    iLeastMm4: mm,
    rollRad: mm,
    toDorsalMm: mm,
    toPlantarMm: mm,
    toLateralMm: mm,
    toMedialMm: mm,
    toMostMm: mm,
    toLeastMm: mm,
    torsionPeakPerNmm: mm,
    torsionPeakAtMm: point,
    shearCentreMm: point,
  }),
});

const wallsSchema: v.GenericSchema<unknown, RayWalls> = v.strictObject({
  usual: v.array(cutSchema),
  thick: v.array(endSchema),
  thin: v.array(endSchema),
});

const fileSchema: v.GenericSchema<unknown, RaySections> = v.strictObject({
  1: wallsSchema,
  2: wallsSchema,
  3: wallsSchema,
  4: wallsSchema,
  5: wallsSchema,
});

const cutOf = ({ sMm, outline, depthMm, section }: RayCut): RayCut => ({ sMm, outline, depthMm, section });

const endOf = (s: RaySection): RaySection => ({
  centroidMm: s.centroidMm,
  areaMm2: s.areaMm2,
  iLateralMm4: s.iLateralMm4,
  iDorsalMm4: s.iDorsalMm4,
  iProductMm4: s.iProductMm4,
  jMm4: s.jMm4,
  shearAreaMostMm2: s.shearAreaMostMm2,
  shearAreaLeastMm2: s.shearAreaLeastMm2,
});

/** Sections that were cut with the bands' ends, as text. */
export const sectionsText = (sections: RaySections): string =>
  JSON.stringify(
    Object.fromEntries(
      RAYS.map((ray) => {
        const { usual, thick, thin } = sections[ray];
        return [ray, { usual: usual.map(cutOf), thick: thick?.map(endOf), thin: thin?.map(endOf) }];
      }),
    ),
  );

/** Throws ValiError for what is no such file. */
export const readSections = (file: unknown): RaySections => v.parse(fileSchema, file);
