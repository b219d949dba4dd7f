/** Records about the foot itself and how it is loaded: bones, joints, regions, attachments, mechanisms, load cases. */
import * as v from 'valibot';
import { activityId, boneId, mechanismId, regionId } from '../ids/schema';
import { text } from '../units/schema';
import { attachmentId, evidence, figure, jointId, mark, tellings } from './schema-base';

export const bone = v.strictObject({
  id: boneId,
  /** Preferred English term (Terminologia Anatomica), plain word for a patient, synonyms, Latin. */
  term: text(60),
  plain: text(60),
  synonyms: v.array(text(60)),
  latin: text(80),
  latinMark: mark,
  uberon: v.nullable(v.pipe(v.string(), v.regex(/^UBERON:\d{7}$/))),
  fma: v.nullable(v.pipe(v.string(), v.regex(/^FMA:\d+$/))),
  idEvidence: evidence,
  group: v.picklist(['hindfoot', 'midfoot', 'forefoot', 'toes', 'sesamoids']),
  /** Order heel to toe, medial first within a row. */
  order: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(28)),
  what: tellings,
});
export type Bone = v.InferOutput<typeof bone>;

export const joint = v.strictObject({
  id: jointId,
  term: text(80),
  plain: text(80),
  bones: v.pipe(v.array(boneId), v.length(2)),
  articular: v.boolean(),
  evidence,
});
export type JointRecord = v.InferOutput<typeof joint>;

export const region = v.strictObject({
  id: regionId,
  bone: boneId,
  /** `stretch`: a named length of a bone that is none of its parts; `spot`: a place that is spoken of and is none of the others. */
  kind: v.picklist(['zone', 'facet', 'footprint', 'foramen', 'groove', 'spot', 'stretch', 'watershed']),
  term: text(80),
  plain: text(80),
  /** How its border is found on the surface, in words. */
  border: text(400),
  evidence,
});
export type RegionRecord = v.InferOutput<typeof region>;

export const attachment = v.strictObject({
  id: attachmentId,
  structure: text(80),
  plain: text(80),
  kind: v.picklist(['tendon', 'ligament', 'fascia']),
  region: regionId,
  bone: boneId,
  what: tellings,
  evidence,
});
export type Attachment = v.InferOutput<typeof attachment>;

/** What kind of model applies to a way of breaking. The explanation says so when none of ours does. */
export const MODEL_KINDS = ['beam stress', 'pull-off', 'tie overload', 'joint force', 'not modelled'] as const;

export const mechanism = v.strictObject({
  id: mechanismId,
  term: text(80),
  plain: text(80),
  model: v.picklist(MODEL_KINDS),
  /** Load case used when the model is a beam. */
  activity: v.nullable(activityId),
  what: tellings,
  evidence,
});
export type Mechanism = v.InferOutput<typeof mechanism>;

/** What a load case puts on the frame of the foot: see `src/mechanics/foot/load-case.ts` for signs. */
const loadFigures = v.strictObject({
  total: figure,
  sideways: figure,
  forwards: figure,
  twist: figure,
  tilt: figure,
  centre: figure,
  toeShare: figure,
  fibularisLongus: figure,
  fibularisBrevis: figure,
  tibialisPosterior: figure,
  flexorHallucis: figure,
  flexorDigitorum: figure,
});

/** A task of the foot: its pose, what is known of its forces, what is not. */
export const activity = v.strictObject({
  id: activityId,
  term: text(80),
  plain: text(80),
  pose: v.picklist(['standing', 'heelRaise']),
  contact: v.picklist(['whole sole', 'forefoot']),
  /** The same task on the other edge of the foot: the person chooses. */
  otherEdge: v.optional(activityId),
  figures: loadFigures,
  /** How the total grows with speed (m/s), where a source says so. */
  speed: v.optional(
    v.strictObject({
      usual: v.number(),
      low: v.number(),
      high: v.number(),
      totalPerMetreASecond: v.number(),
      evidence,
    }),
  ),
  /** What is not known of the task. */
  unknown: tellings,
  what: tellings,
});
export type Activity = v.InferOutput<typeof activity>;

/** One figure of the foot's frame besides its shape. Which there are, `src/mechanics/foot/parameter-names.ts` says. */
export const frameFigure = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-zA-Z0-9]*$/)),
  group: v.picklist(['ties', 'joints', 'pads', 'bone']),
  /** On feet; a choice of a model's authors; ours; or fixed on the declared checks. */
  basis: v.picklist(['measured', 'another model', 'assumed', 'calibrated']),
  term: text(100),
  plain: text(100),
  figure,
});
export type FrameFigureRecord = v.InferOutput<typeof frameFigure>;

/** What moves the load on a bone: which there are, `src/mechanics/foot/types.ts` says; published evidence for and against. */
export const loadFactor = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-zA-Z0-9]*$/)),
  term: text(80),
  plain: text(80),
  step: text(80),
  published: v.pipe(
    v.array(v.strictObject({ says: v.picklist(['raises', 'lowers', 'no difference']), text: text(300), evidence })),
    v.minLength(1),
  ),
});
export type LoadFactor = v.InferOutput<typeof loadFactor>;

/** A strain as measured on a bone, or at which bone fails. */
export const strain = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-zA-Z0-9]*$/)),
  term: text(100),
  figure,
});
export type StrainRecord = v.InferOutput<typeof strain>;

/** Constants by which repeated loading is compared. Keys are fixed by `src/mechanics/repetition`. */
export const repetition = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z-]{1,40}$/)),
  /** Power of strain in damage. */
  exponent: figure,
  /** Time in which repair takes 63 % of a day's damage, and how late it sets in (Weibull's exponent). */
  repairDays: figure,
  repairExponent: figure,
});
export type Repetition = v.InferOutput<typeof repetition>;

/** What the numbers of a check must do; each of them, where there are several. As in `src/mechanics/foot/checks.ts`. */
const expected = v.variant('kind', [
  v.pipe(
    v.strictObject({ kind: v.literal('band'), low: v.optional(v.number()), high: v.optional(v.number()) }),
    v.check(({ low, high }) => low !== undefined || high !== undefined, 'a band has a low end, a high end or both'),
    v.check(({ low, high }) => low === undefined || high === undefined || low < high, 'low first, then high'),
  ),
  v.strictObject({ kind: v.literal('sign'), sign: v.picklist(['positive', 'negative']) }),
  v.strictObject({ kind: v.literal('ranking') }),
  v.strictObject({ kind: v.literal('trend'), way: v.picklist(['rises', 'falls']) }),
]);

/** The frame of the foot against a published result. `calibration`: figures were fixed on it. `prediction`: nothing was. */
export const loadCheck = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-zA-Z0-9]*$/)),
  set: v.picklist(['calibration', 'prediction']),
  theme: v.picklist(['arch', 'forces', 'strain', 'trends']),
  term: text(160),
  plain: text(160),
  /** What each number is, in the order in which they are computed; a ranking goes from the first down. */
  numbers: v.pipe(v.array(text(60)), v.minLength(1)),
  unit: v.picklist(['mm', '%', 'deg', 'body weight', 'N', 'N m', 'N m/rad', 'microstrain', 'MPa', 'share', 'ratio']),
  expected,
  /** The figure or statement as the source has it. */
  published: text(160),
  /** Why the band, or what is asked for, is as wide as it is. */
  tolerance: text(300),
  /** By how much of itself feet may differ in this: a draw of the figures beyond is no foot, and is dropped. */
  heldWithin: v.optional(v.pipe(v.number(), v.gtValue(0), v.ltValue(1))),
  /** Follows from how the frame is made or loaded. */
  nearTautology: v.optional(v.literal(true)),
  /** No prediction in full: the foot of the calibration in another state. */
  sameFootAsCalibration: v.optional(v.literal(true)),
  evidence,
  note: v.optional(text(400)),
});
export type LoadCheck = v.InferOutput<typeof loadCheck>;

/** A force in the foot as others measured or computed it, to hold the frame's beside. */
export const measuredLoad = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-zA-Z0-9]*$/)),
  part: v.picklist(['fascia', 'achilles', 'firstToeJoint', 'firstRayJoint']),
  task: text(120),
  figure,
});
export type MeasuredLoad = v.InferOutput<typeof measuredLoad>;

const screwMaterial = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z]{2,20}$/)),
  term: text(60),
  plain: text(40),
  young: figure,
  yields: figure,
});

/** A screw in the canal of a bone: what is known of it and advised. Keys are fixed by `src/explain/screws.ts`. */
export const fixation = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z-]{1,40}$/)),
  bone: boneId,
  /** Diameter of the core, and those of the screws whose length is asked. */
  core: figure,
  diameter: figure,
  advisedLength: figure,
  /** Of the bone's length. */
  advisedShare: figure,
  /** Rule of thumb: movement over width up to which bone, and fibrous cartilage, may form. */
  gapBone: figure,
  gapCartilage: figure,
  materials: v.pipe(v.array(screwMaterial), v.minLength(1)),
});
export type Fixation = v.InferOutput<typeof fixation>;

/** From where a stop of the walk is looked at: the sides of the foot by name. */
export const WALK_VIEWS = ['outer', 'inner', 'top', 'sole', 'front', 'back'] as const;

/** One stop of the walk from heel to toe: a bone of the plain foot, the side it is seen from, and one sentence. */
export const walkStop = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z-]{1,40}$/)),
  bone: boneId,
  view: v.picklist(WALK_VIEWS),
  what: tellings,
  evidence,
});
export type WalkStop = v.InferOutput<typeof walkStop>;

const NEGATING = ['not', 'asked', 'earlier', 'no negation', 'clause end', 'degree'] as const;
/** What says of the words beside it that they are no present finding. */
const CUES: readonly string[] = ['not', 'asked', 'earlier'];
/** What a negation takes with it and what not. */
const AROUND = ['alone', 'hurting', 'goes with', 'finding', 'healed', 'imaging', 'shows'] as const;
const findWordId = v.pipe(v.string(), v.regex(/^[a-z][a-z-]{1,40}$/));

/**
 * Words by which people speak of a foot, and what is meant: a place by the bones and parts there; an event, by the ways of breaking
 * that it can mean; who it happened to. `same`: one word and its others. `filler`: words that tell nothing apart.
 * `not`, `asked` and `earlier`: what stands beside them is not so, was only asked, or was so at an earlier time. `no negation`: it looks
 * like one of these and is none.
 * `clause end`: a negation goes no further. `degree`: how far apart or moved; said not to be so, it takes no place with it.
 * `alone`: after a verb that is denied it is the only thing denied. `hurting`: a negation ends there, and what hurts is not denied by
 * what stood before. `goes with`: ends what is denied ahead. `finding`: denied of one place it is denied of a list of them.
 * `healed`: what a bone had and heals from; a fall that is told as of earlier times without it is how the present injury came.
 * `imaging` and `shows`: "but MRI did" takes back what a film did not show.
 */
export const findWord = v.pipe(
  v.strictObject({
    id: findWordId,
    is: v.picklist(['place', 'event', 'who', 'same', 'filler', ...NEGATING, ...AROUND]),
    /** How it is told back; of `same`, the word that the others stand for. */
    plain: text(60),
    words: v.pipe(v.array(text(40)), v.minLength(1)),
    groups: v.optional(v.array(bone.entries.group), []),
    bones: v.optional(v.array(boneId), []),
    regions: v.optional(v.array(regionId), []),
    mechanisms: v.optional(v.array(mechanismId), []),
    /** Events that it is the general word for. */
    covers: v.optional(v.array(findWordId), []),
    /** Not so, it says as much as this event not being so: no fall is no single moment at all. */
    whenNot: v.optional(findWordId),
    /** Not so, it speaks for this event. */
    opposite: v.optional(findWordId),
    /** Of `not`: the event that these words by themselves say was not. */
    says: v.optional(findWordId),
    /** Of `not`, `asked` and `earlier`: it stands behind what it is about, as in "was ruled out". */
    behind: v.optional(v.boolean(), false),
    /**
     * Of the same: it takes but the next word; is part of a verb, of which some words are denied alone; stands behind what it is about
     * or, where nothing stands there, before it (one that stands before it the other way round); is an adjective, which
     * stands before what it is about as well, where that is a place; or counts only alone behind a colon.
     */
    binds: v.optional(v.picklist(['next word', 'verb', 'either side', 'noun', 'colon'])),
  }),
  v.check(
    ({ is, groups, bones, regions }) => (is === 'place') === groups.length + bones.length + regions.length > 0,
    'a place has groups, bones or regions, and nothing else has',
  ),
  v.check(({ is, mechanisms }) => is === 'event' || mechanisms.length === 0, 'only an event has mechanisms'),
  v.check(
    ({ is, covers, whenNot, opposite }) =>
      is === 'event' || (covers.length === 0 && whenNot === undefined && opposite === undefined),
    'only an event covers others, or says something when it is not so',
  ),
  v.check(({ is, says }) => is === 'not' || says === undefined, 'only what negates says that an event was not'),
  v.check(
    ({ is, binds }) => CUES.includes(is) || binds === undefined,
    'only what negates, asks or is of old binds a word',
  ),
  v.check(({ is, behind }) => CUES.includes(is) || !behind, 'only what negates, asks or is of old stands behind'),
);
export type FindWord = v.InferOutput<typeof findWord>;
