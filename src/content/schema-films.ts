/** Scores that readers give to films of a bone. Made for one bone, they are borrowed for any other. */
import * as v from 'valibot';
import { type FilmScoreId, FOLLOW_UP_FINDINGS } from '../ids';
import { id } from '../ids/schema';
import { text } from '../units/schema';
import { evidence, tellings } from './schema-base';

const points = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10));
const sides = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(4));

export const filmScore = v.pipe(
  v.strictObject({
    id: id<FilmScoreId>(),
    term: text(80),
    /** The bone it was made for. */
    madeFor: text(60),
    sides,
    /** For one side: no callus; callus, and the line still seen; callus, and no line. */
    points: v.strictObject({ bare: points, callus: points, bridged: points }),
    /** How many sides a follow-up finding says are grown over. A finding that counts none has no score. */
    counts: v.array(v.strictObject({ finding: v.picklist(FOLLOW_UP_FINDINGS), bridged: sides })),
    evidence,
    /** What was published of the score, in the bone it was made for. */
    says: v.array(v.strictObject({ what: tellings, evidence })),
  }),
  v.check(({ points: { bare, callus, bridged } }) => bare < callus && callus < bridged, 'more healing is more points'),
  v.check(({ sides: all, counts }) => counts.every(({ bridged }) => bridged <= all), 'more sides than the bone has'),
);
export type FilmScore = v.InferOutput<typeof filmScore>;
