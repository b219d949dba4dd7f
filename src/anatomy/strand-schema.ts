/**
 * content/anatomy/strands.yaml: the ways of ligaments, tendons, vessels and nerves that are drawn beside the bones. A way is a row
 * of points told on the reference foot as scanned: the middle of a named part of a surface, or a place on a bone and so many mm off it.
 */
import * as v from 'valibot';
import { boneId } from '../ids/schema';
import { placeSchema } from './region-schema';

const name = v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/));
const off = v.pipe(v.number('expected a number'), v.minValue(0), v.maxValue(60, 'at most 60 mm off the bone'));

const point = v.union([
  v.strictObject({ region: name }),
  v.strictObject({ bone: boneId, ...placeSchema.entries, off }),
]);
export type StrandPoint = v.InferOutput<typeof point>;

export const strandRules = v.array(
  v.strictObject({
    id: name,
    points: v.pipe(v.array(point), v.minLength(2)),
    source: v.pipe(v.string('expected where it was read'), v.minLength(10)),
  }),
);
export type StrandRule = v.InferOutput<typeof strandRules>[number];
