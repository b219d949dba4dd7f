/**
 * content/anatomy/inside.yaml: how thick the cortex of each bone is. Lengths in mm on the reference foot, places as shares of the
 * bone's length along its axis from its proximal end. Bands are [low, usual, high].
 */
import * as v from 'valibot';
import { BONE_IDS } from '../../ids';
import { boneId } from '../../ids/schema';

const finite = v.pipe(v.number('expected a number'), v.finite('expected a finite number'));
/** No cortex is thinner than the step at which a cut is sampled. */
const thickness = v.pipe(finite, v.minValue(0.3, 'at least 0.3 mm'), v.maxValue(15, 'at most 15 mm'));
const share = v.pipe(finite, v.minValue(0), v.maxValue(1));

const rising = <T extends readonly [number, number, number]>(band: T): boolean =>
  band[0] <= band[1] && band[1] <= band[2];
const bandOf = (value: typeof thickness | typeof share) =>
  v.pipe(v.tuple([value, value, value]), v.check(rising, 'expected low, usual, high'));

/** A band with where it was read, or why nothing was. */
const figure = v.strictObject({
  band: bandOf(thickness),
  how: v.picklist(['abstract', 'from memory', 'assumed']),
  source: v.optional(v.pipe(v.string(), v.minLength(1))),
});
const read = v.pipe(
  figure,
  v.check(
    (f) => (f.how === 'abstract') === (f.source !== undefined),
    'a published band, and only that, names its source',
  ),
);
export type CortexFigure = v.InferOutput<typeof read>;

const bySide = v.strictObject({ dorsal: read, plantar: read, medial: read, lateral: read });

const station = v.strictObject({
  name: v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*$/, 'expected a name in camel case')),
  /** A place, or the band in which it lies. */
  at: v.union([share, bandOf(share)]),
  /** One for all sides, one for each, or whatever leaves the measured canal where it was measured. */
  cortex: v.union([read, bySide, v.literal('fromCanal')]),
});
export type CortexStation = v.InferOutput<typeof station>;

/** Which end of its bands a bone is taken at: a thin wall goes with a wide canal and a short tube. */
export type Wall = 'thin' | 'usual' | 'thick';
const END = { thin: 0, usual: 1, thick: 2 } as const;

export const thicknessOf = (figure: CortexFigure, wall: Wall): number => figure.band[END[wall]];
/** The wider the canal, the thinner the wall. */
export const widthOf = (figure: CortexFigure, wall: Wall): number => figure.band[2 - END[wall]] ?? 0;
/** With a thin wall the tube's ends lie nearer the middle of the bone. */
export const placeOf = ({ at }: CortexStation, wall: Wall): number => {
  if (typeof at === 'number') return at;
  return at[at[1] < 0.5 ? 2 - END[wall] : END[wall]] ?? at[1];
};

/** A tubular bone. Between two stations the cortex changes evenly. */
const tube = v.pipe(
  v.strictObject({
    bone: boneId,
    /** Width of the canal as measured, at a share of the length. */
    canal: v.optional(v.strictObject({ at: share, across: read, upDown: read })),
    stations: v.pipe(v.array(station), v.minLength(2)),
  }),
  v.check((t) => t.canal !== undefined || t.stations.every((s) => s.cortex !== 'fromCanal'), 'no canal was measured'),
  v.check(
    (t) => t.stations.some((s) => s.cortex !== 'fromCanal'),
    'some cortex is needed to keep a wall from vanishing',
  ),
  v.check(
    (t) => ['metaphysis', 'neck'].every((name) => t.stations.some((s) => s.name === name)),
    'a tube runs from its metaphysis to its neck',
  ),
  v.check(
    (t) =>
      (['thin', 'usual', 'thick'] as const).every((wall) =>
        t.stations.every((s, i) => i === 0 || placeOf(s, wall) > placeOf(t.stations[i - 1] ?? s, wall)),
      ),
    'stations follow each other along the bone',
  ),
);
export type CortexTube = v.InferOutput<typeof tube>;

export const insideSchema = v.pipe(
  v.strictObject({
    tubes: v.array(tube),
    /** Bones filled with spongy bone under an even shell. */
    shells: v.array(v.strictObject({ bone: boneId, cortex: read })),
  }),
  v.check((inside) => {
    const listed = [...inside.tubes, ...inside.shells].map((entry) => entry.bone).sort();
    return listed.join() === [...BONE_IDS].sort().join();
  }, 'every bone is listed once, as a tube or as a shell'),
);
export type Inside = v.InferOutput<typeof insideSchema>;

/** What of the shape parameters the inside needs. */
export interface InsideOfShape {
  readonly scale: { readonly referenceHMm: number };
  readonly inside: Inside;
}
