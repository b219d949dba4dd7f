/**
 * content/anatomy/motions.yaml: how far the joints of the foot move in people, and how much an unloaded foot changes when it is stood
 * on. Joints by their ids in content/anatomy/joints.yaml. deg.
 */
import * as v from 'valibot';
import { howRead } from '../how-read';

const figure = v.pipe(v.number('expected a number'), v.finite('expected a finite number'));
const text = v.pipe(v.string(), v.minLength(2));
const joint = v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/));

const source = {
  source: text,
  how: howRead,
  note: v.optional(text),
};

const degrees = v.pipe(figure, v.minValue(0), v.maxValue(120));

const motion = v.pipe(
  v.strictObject({
    joints: v.pipe(v.array(joint), v.minLength(1)),
    motion: text,
    axis: text,
    /** How far each way from the foot standing, or, where a study gives no more, from one end to the other. */
    ways: v.optional(
      v.pipe(v.array(v.strictObject({ way: text, deg: degrees, sd: v.optional(degrees) })), v.length(2)),
    ),
    total: v.optional(v.strictObject({ deg: degrees, sd: v.optional(degrees) })),
    /** What moved it: a hand, a load, walking. */
    under: text,
    ...source,
  }),
  v.check(({ ways, total }) => (ways === undefined) !== (total === undefined), 'expected either both ways or a total'),
);

/** What changes when an unloaded foot is stood on. */
const loading = v.strictObject({
  what: text,
  change: v.strictObject({ deg: figure, sd: v.optional(degrees) }),
  of: text,
  ...source,
});

export const motionsSchema = v.strictObject({ joints: v.array(motion), loading: v.array(loading) });
export type Motions = v.InferOutput<typeof motionsSchema>;
