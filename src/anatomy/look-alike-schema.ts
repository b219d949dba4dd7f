/**
 * content/anatomy/look-alikes.yaml: what on a film looks like a break and is none. Where it lies and how large it is are told on the
 * reference foot as scanned, like the places of region-schema.ts.
 */
import * as v from 'valibot';
import { boneId } from '../ids/schema';
import { text } from '../units/schema';
import { howRead } from './how-read';
import { placeSchema } from './region-schema';

const figure = v.pipe(v.number('expected a number'), v.finite('expected a finite number'));
const mm = v.pipe(figure, v.minValue(0.2), v.maxValue(30));
const vec3 = v.tuple([figure, figure, figure]);
const percent = v.pipe(figure, v.minValue(0), v.maxValue(100));
const years = v.pipe(figure, v.minValue(0), v.maxValue(100));

/** A small bone of its own beside the surface. */
const ossicle = v.strictObject({
  is: v.literal('ossicle'),
  ...placeSchema.entries,
  /** From the bone's surface to the ossicle: tendon or cartilage. */
  gap: v.pipe(figure, v.minValue(0.5), v.maxValue(6)),
  /** Along `along`, across it, and away from the bone. */
  size: v.tuple([mm, mm, mm]),
  along: vec3,
  /** The side towards the bone is flat up to this share of the half depth; 1 = round all over. */
  flat: v.pipe(figure, v.minValue(0.1), v.maxValue(1)),
});

/** A line round the bone: where a plane, `inset` below the place, cuts off the part on the place's side. */
const line = v.strictObject({
  is: v.literal('line'),
  ...placeSchema.entries,
  normal: vec3,
  inset: mm,
  /** Width of the cleft: two lines so far apart. */
  cleft: mm,
});

const lookAlike = v.strictObject({
  id: v.picklist([
    'os-peroneum',
    'os-vesalianum',
    'accessory-navicular',
    'os-trigonum',
    'bipartite-sesamoid',
    'apophysis-fifth-metatarsal',
  ]),
  bone: boneId,
  term: text(80),
  plain: text(80),
  where: v.strictObject({ plain: text(200), study: text(300) }),
  /** Shares of people or feet, each with who was counted and where it was read. */
  howOften: v.pipe(
    v.array(
      v.strictObject({
        percent: v.tuple([percent, percent]),
        of: text(160),
        source: text(200),
        how: howRead,
      }),
    ),
    v.minLength(1),
  ),
  /** Years of age at which it can be there; null: for life. */
  ages: v.strictObject({ from: years, to: v.nullable(years), source: text(200) }),
  /** How a break differs from it. */
  differs: v.strictObject({ patient: text(400), broadcast: text(400), study: text(700) }),
  /** Where size and place come from. */
  source: text(400),
  shape: v.variant('is', [ossicle, line]),
});

export const lookAlikeRules = v.array(lookAlike);
export type LookAlikeRules = v.InferOutput<typeof lookAlikeRules>;
export type LookAlikeRule = LookAlikeRules[number];
export type LookAlikeId = LookAlikeRule['id'];
