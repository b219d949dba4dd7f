/**
 * content/anatomy/pose.yaml: how the bones turn from the as-scanned reference foot to a foot of a given shape that stands, and
 * from there into other poses. Turns are right-handed about axes of the foot frame ([1,0,0]: front end down is positive; [0,1,0]:
 * front end inwards; [0,0,1]: top outwards), in order, each about a joint or a point carried along by the turns before it.
 */
import * as v from 'valibot';

const figure = v.pipe(v.number('expected a number'), v.finite('expected a finite number'));
const vec3 = v.tuple([figure, figure, figure]);
const id = v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*$/, 'expected a name in camel case'));
const degrees = v.pipe(figure, v.minValue(-90), v.maxValue(90));
const bones = v.pipe(v.array(v.string()), v.minLength(1));

/** Degrees in the default foot standing, and what each measure of the foot's shape adds: the two of the arch at its ends, the rest a degree. */
const byShape = v.strictObject({
  standing: degrees,
  flat: v.optional(degrees, 0),
  high: v.optional(degrees, 0),
  hindfoot: v.optional(figure, 0),
  adductus: v.optional(figure, 0),
  hallux: v.optional(figure, 0),
});

const common = {
  id,
  name: v.string(),
  /** Bones or names of `sets`. */
  bones,
  axis: vec3,
  /** The joint whose centre of curvature across the axis (its centre where it is flat) is the pivot. */
  about: v.optional(v.string()),
  /** Or the pivot itself, on the as-scanned reference foot. */
  pivot: v.optional(vec3),
};

export const turnSchema = v.variant('by', [
  v.strictObject({
    by: v.literal('degrees'),
    ...common,
    degrees: byShape,
    /** Two heads: as far as the line from one to the other lies turned otherwise than in the usual foot, the axis turns about Y. */
    along: v.optional(v.tuple([v.string(), v.string()])),
  }),
  /** Turned about X until the centre of curvature of the joint `head` lies `height` mm above the ground. */
  v.strictObject({ by: v.literal('rest'), ...common, head: v.string(), height: figure }),
  /** Turned about X until the way from one joint's centre to the other's (or to the first bone's centre) falls so many degrees. */
  v.strictObject({
    by: v.literal('lie'),
    ...common,
    from: v.string(),
    to: v.optional(v.string()),
    declination: degrees,
  }),
  /** Turned as far as the turn so named was in all, and so many degrees further: what is tied to the bones it turned. */
  v.strictObject({ by: v.literal('follow'), ...common, turn: v.string(), further: degrees }),
]);
export type Turn = v.InferOutput<typeof turnSchema>;

export const poseSchema = v.strictObject({
  sets: v.record(id, bones),
  /** A sphere that fits the back of the calcaneus: its hindmost point is over the origin. */
  back: v.strictObject({ at: vec3, radius: figure }),
  /** A ray made longer or shorter: the bones in front of `of` go along. */
  lengths: v.array(v.strictObject({ measure: v.literal('firstRay'), of: v.string(), bones, along: vec3 })),
  standing: v.array(turnSchema),
  /** What winding up the plantar fascia does to the arch: share of the way to a high arch for each degree of that turn upwards. */
  windlass: v.strictObject({ by: v.string(), archPerDegree: figure }),
  /**
   * Further poses of a standing foot: a higher or lower arch, then turns of `standing` by their id; the whole foot moved up or down until
   * the heads it rests on lie, in the mean, as high as in standing; heads to `lift` turned up to their height where they would be in the ground;
   * turns that rest or lie solved `again`.
   */
  poses: v.array(
    v.strictObject({
      id,
      name: v.string(),
      arch: v.optional(figure, 0),
      turns: v.array(v.strictObject({ turn: v.string(), degrees })),
      lift: v.optional(v.array(v.string()), []),
      again: v.optional(v.array(v.string()), []),
      restsOn: v.optional(v.array(v.string()), []),
    }),
  ),
});
export type PoseShape = v.InferOutput<typeof poseSchema>;
