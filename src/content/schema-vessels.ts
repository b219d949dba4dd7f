/**
 * Vessels as a graph that ends in bones; the ways in which people's vessels differ; what was published of a bone's supply. What
 * feeds what inside a bone is computed from the ends (src/perfusion), never written here, but where a source that was read names the
 * main feeder of a part.
 */
import * as v from 'valibot';
import type { VesselChoiceId, VesselPatternId } from '../ids';
import { boneId, id, regionId, vesselEdgeId } from '../ids/schema';
import { text } from '../units/schema';
import { evidence, tellings, vesselId } from './schema-base';

/** A named vessel, or the vessels that enter one bone at one place. Edges: `parent>id` and `id>place`, or `id>bone` for a net. */
export const vessel = v.strictObject({
  id: vesselId,
  term: text(120),
  plain: text(100),
  /** Vessels that it comes from, each with its source. None: it comes down the leg. */
  from: v.array(v.strictObject({ vessel: vesselId, evidence })),
  /** Where it goes into bones: at a part or a place of the surface; null: a net all over it. */
  ends: v.optional(v.array(v.strictObject({ bone: boneId, at: v.nullable(regionId), evidence })), []),
  /** Parts of which a source that was read, or the whole trade, names it the main feeder. */
  said: v.optional(v.array(v.strictObject({ region: regionId, evidence })), []),
});
export type Vessel = v.InferOutput<typeof vessel>;

/** One of the ways: what of the whole graph it lacks, and parts of bones without vessels inside. */
const choice = v.strictObject({
  id: id<VesselChoiceId>(),
  term: text(160),
  plain: text(120),
  /** How often it was found, as printed: a percentage or a count, with the whole where that is printed; null: no count printed. */
  counted: v.nullable(
    v.pipe(
      v.strictObject({
        percent: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(100))),
        count: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(0))),
        of: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
        what: text(60),
        evidence,
      }),
      v.check(({ percent, count }) => (percent === null) !== (count === null), 'a percentage or a count'),
      v.check(
        ({ count, of }) => count === null || (of !== null && count <= of),
        'a count has its whole, and is no more',
      ),
    ),
  ),
  lacks: v.array(vesselEdgeId),
  bare: v.optional(v.array(regionId), []),
  evidence,
  note: v.optional(text(300)),
});
export type VesselChoice = v.InferOutput<typeof choice>;

/** `pattern`: how people's vessels differ, the commonest first. `torn`: what an injury tears, nothing first, then from the least on. */
export const vesselPattern = v.strictObject({
  id: id<VesselPatternId>(),
  kind: v.picklist(['pattern', 'torn']),
  term: text(120),
  plain: text(120),
  /** Bones at which it is asked. */
  bones: v.pipe(v.array(boneId), v.minLength(1)),
  choices: v.pipe(v.array(choice), v.minLength(2)),
});
export type VesselPattern = v.InferOutput<typeof vesselPattern>;

/** What was published of a bone's supply: shares stand here as text and are never computed with. */
export const boneSupply = v.strictObject({
  id: boneId,
  what: tellings,
  /** A source says that its territories join without a border. */
  noBorder: v.optional(evidence),
  evidence,
});
export type BoneSupply = v.InferOutput<typeof boneSupply>;
