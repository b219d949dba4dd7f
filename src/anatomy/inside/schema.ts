/**
 * content/anatomy/inside.yaml: how thick the cortex of each bone is. Lengths in mm on the reference foot, places as shares of the
 * bone's length along its axis from its proximal end. Bands are [low, usual, high].
 */
import * as v from 'valibot';
import { BONE_IDS, type BoneId } from '../../ids';
import { boneId } from '../../ids/schema';

const finite = v.pipe(v.number('expected a number'), v.finite('expected a finite number'));
/** No cortex is thinner than the step at which a cut is sampled. */
const mm = v.pipe(finite, v.minValue(0.3, 'at least 0.3 mm'), v.maxValue(15, 'at most 15 mm'));
const share = v.pipe(finite, v.minValue(0), v.maxValue(1));
const name = v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*$/, 'expected a name in camel case'));
const source = v.pipe(v.string(), v.minLength(1));
const bones = v.pipe(v.array(boneId), v.minLength(1));

const bandOf = (value: typeof mm | typeof share) =>
  v.pipe(
    v.tuple([value, value, value]),
    v.check(([low, usual, high]) => low <= usual && usual <= high, 'expected low, usual, high'),
  );
const width = bandOf(mm);

/** A thickness with where it was read, or why nothing was. */
const cortex = v.pipe(
  v.strictObject({
    band: width,
    how: v.picklist(['abstract', 'from memory', 'assumed']),
    source: v.optional(source),
  }),
  v.check((c) => (c.how === 'abstract') === (c.source !== undefined), 'what was read, and only that, names its source'),
);

/** Widths of canals as one study measured them, all at the same share of the length, in abstract. */
const canals = v.strictObject({
  source,
  at: share,
  widths: v.array(v.strictObject({ bone: boneId, across: width, upDown: width })),
});

/** Names of cortices: one for all sides, one for each, or whatever leaves the measured canal where it was measured. */
const FROM_CANAL = 'fromCanal';
const station = v.strictObject({
  name,
  /** A place, or the band in which it lies. */
  at: v.union([share, bandOf(share)]),
  cortex: v.union([name, v.strictObject({ dorsal: name, plantar: name, medial: name, lateral: name })]),
});
export type Station = v.InferOutput<typeof station>;

/** Which end of its bands a bone is taken at: a thin wall goes with a wide canal and a short tube. */
export type Wall = 'thin' | 'usual' | 'thick';
export const WALLS: readonly Wall[] = ['thin', 'usual', 'thick'];

/** With a thin wall the tube's ends lie nearer the middle of the bone. */
export const placeOf = ({ at }: Pick<Station, 'at'>, wall: Wall): number => {
  if (typeof at === 'number') return at;
  const end = WALLS.indexOf(wall);
  return at[at[1] < 0.5 ? 2 - end : end] ?? at[1];
};

/** Tubular bones of the same wall. Between two stations the cortex changes evenly. */
const tube = v.pipe(
  v.strictObject({ bones, stations: v.pipe(v.array(station), v.minLength(2)) }),
  v.check(
    ({ stations }) => stations.some((s) => s.cortex !== FROM_CANAL),
    'some cortex is needed to keep a wall from vanishing',
  ),
  v.check(
    ({ stations }) => ['metaphysis', 'neck'].every((wanted) => stations.some((s) => s.name === wanted)),
    'a tube runs from its metaphysis to its neck',
  ),
  v.check(
    ({ stations }) =>
      WALLS.every((wall) =>
        stations.every((s, i) => i === 0 || placeOf(s, wall) > placeOf(stations[i - 1] ?? s, wall)),
      ),
    'stations follow each other along the bone',
  ),
);

const namesIn = ({ cortex: c }: Station): string[] => (typeof c === 'string' ? [c] : Object.values(c));

export const insideSchema = v.pipe(
  v.strictObject({
    cortex: v.record(name, cortex),
    canals: v.array(canals),
    tubes: v.array(tube),
    /** Bones filled with spongy bone under an even shell. */
    shells: v.array(v.strictObject({ bones, cortex: name })),
  }),
  v.check((inside) => {
    const listed: BoneId[] = [...inside.tubes, ...inside.shells].flatMap((entry) => entry.bones);
    return listed.sort().join() === [...BONE_IDS].sort().join();
  }, 'every bone is listed once, as a tube or as a shell'),
  v.check((inside) => {
    const used = [...inside.tubes.flatMap((t) => t.stations.flatMap(namesIn)), ...inside.shells.map((s) => s.cortex)];
    const known = Object.keys(inside.cortex);
    return used.every((n) => n === FROM_CANAL || known.includes(n)) && known.every((n) => used.includes(n));
  }, 'every cortex that is named is described, and every one described is used'),
  v.check((inside) => {
    const measured = inside.canals.flatMap((c) => c.widths.map((w) => w.bone));
    const wanted = inside.tubes.flatMap((t) => (t.stations.some((s) => s.cortex === FROM_CANAL) ? t.bones : []));
    return measured.sort().join() === wanted.sort().join();
  }, 'a canal is measured once for every bone whose wall comes from it, and for no other'),
);
export type Inside = v.InferOutput<typeof insideSchema>;

/** What of the shape parameters the inside needs. */
export interface InsideOfShape {
  readonly scale: { readonly referenceHMm: number };
  readonly inside: Inside;
}
