/** Records about care and what became of people: options, studies, factors. Injuries: schema-injuries.ts. */
import * as v from 'valibot';
import { ENDPOINTS } from '../ids';
import { boneId, factorId, injuryId, level, optionId, vesselEdgeId } from '../ids/schema';
import { text } from '../units/schema';
import { evidence, mark, sourceId, studyId, tellings, toldReaders } from './schema-base';

export const option = v.strictObject({
  id: optionId,
  term: text(80),
  plain: text(80),
  kind: v.picklist(['non-operative', 'operative']),
  /** False: where people of studies stand whose kind of treatment nobody stated. Told with them, never a treatment of a case. */
  named: v.optional(v.boolean(), true),
  what: tellings,
  /** What it does to the bone mechanically. */
  does: tellings,
  burdens: v.array(v.strictObject({ what: tellings, readers: toldReaders, evidence })),
  /** What the operation itself takes from the blood of a bone: ways of vessels into it, how that is told, and what it rests on. */
  takes: v.optional(v.strictObject({ cuts: v.pipe(v.array(vesselEdgeId), v.minLength(1)), what: tellings, evidence })),
  evidence,
});
export type Option = v.InferOutput<typeof option>;

export const endpoint = v.picklist(ENDPOINTS);

const finite = v.pipe(v.number(), v.finite());

const pair = v.pipe(v.array(finite), v.length(2));

export const eventName = v.picklist([
  'failure',
  'nonunion',
  'delayed union',
  'union',
  'refracture',
  'returned',
  'not returned',
]);

/** What a study counted: most count people; some count breaks, of which one person can have two. */
export const countedUnit = v.picklist(['people', 'breaks']);
export type CountedUnit = v.InferOutput<typeof countedUnit>;

/** What was counted, of `of` people or breaks. `percent` as printed when counts are not. */
const event = v.strictObject({
  what: eventName,
  count: v.nullable(v.pipe(v.number(), v.integer())),
  of: v.nullable(v.pipe(v.number(), v.integer())),
  unit: v.optional(countedUnit, 'people'),
  percent: v.nullable(finite),
  lowHighPercent: v.nullable(pair),
});

/** One arm of one study, as printed. */
export const study = v.strictObject({
  id: studyId,
  source: sourceId,
  mark,
  injuries: v.array(injuryId),
  /** Its authors count these injuries as one: each may be told of it, with its people. */
  asOne: v.optional(v.boolean()),
  /** Ids of the classes, of the injury's classification, in which its people were counted. Absent: not stated. */
  classes: v.optional(v.pipe(v.array(text(40)), v.minLength(1))),
  option: optionId,
  /** Further treatments that some of its people had, when they were mixed; `plain` tells of all of them. */
  alsoOptions: v.optional(v.array(optionId)),
  /** Arms with the same `trial` are shown together. */
  trial: text(40),
  design: v.picklist(['randomised', 'cohort', 'series', 'pooled', 'register']),
  /** Who was studied, as a study would say it. */
  population: text(120),
  /** The same for whoever does not study: words, no figure but the number of a zone. */
  plain: text(100),
  level,
  /** What `n` counts: people, unless their breaks were counted. */
  nUnit: v.optional(countedUnit, 'people'),
  /** Nobody printed their level: the one above is taken for them, and that is said. */
  levelAssumed: v.optional(v.literal(true)),
  /** Further levels that took part, when the people were mixed. */
  alsoLevels: v.optional(v.array(level)),
  n: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
  time: v.nullable(
    v.strictObject({
      endpoint,
      centreWeeks: finite,
      centre: v.picklist(['mean', 'median']),
      sdWeeks: v.nullable(finite),
      rangeWeeks: v.nullable(pair),
      /** First and third quartile. */
      quartilesWeeks: v.optional(v.nullable(pair), null),
      /** Whose times were printed: all, those whose bone healed as planned, or those whose bone did not at first. */
      branch: v.optional(v.picklist(['all', 'uneventful', 'problem']), 'all'),
      /**
       * Where the weeks begin. Those of a second treatment run on another clock: told, never part of a range or a forecast. Where the
       * print counts from the diagnosis, that is said, and no day of the treatment is counted on from.
       */
      since: v.optional(v.picklist(['first treatment', 'second treatment', 'diagnosis']), 'first treatment'),
    }),
  ),
  /** The bad (or good) event that is told first. */
  event: v.nullable(event),
  /** Further events of the same people. */
  events: v.optional(v.array(event), []),
  /** What was forecast in public for the same people, where the study set it beside what happened. Never part of a range. */
  forecast: v.optional(
    v.strictObject({ centreWeeks: finite, centre: v.picklist(['mean', 'median']), rangeWeeks: v.nullable(pair) }),
  ),
  asPrinted: text(300),
  read: v.picklist(['read', 'abstract', 'secondary']),
});
export type Study = v.InferOutput<typeof study>;

/** A published size with its 95 % interval, as printed. Sources that disagree stand as several. */
const effect = v.strictObject({
  measure: v.picklist(['odds ratio', 'relative risk']),
  value: finite,
  low: finite,
  high: finite,
  /** People, operations or bones counted, as printed. */
  n: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
  /** Of what, among whom. */
  of: tellings,
  /** Whether it speaks of healing after a break, or of getting one. */
  about: v.picklist(['healing', 'getting it']),
  bones: v.picklist(['fifth metatarsal', 'many bones']),
  /** Whether the forecast uses it. Only what was seen, of the healing of these breaks, may be true (rules.ts). */
  inForecast: v.boolean(),
  evidence,
});
export type Effect = v.InferOutput<typeof effect>;

/** Mean weeks to a point with the factor and, where the same source has them, without it, as printed. None printed an interval. */
const printedWaits = v.strictObject({
  endpoint: v.picklist(ENDPOINTS),
  weeks: finite,
  withoutWeeks: v.nullable(finite),
  /** How likely by chance alone, as printed. */
  p: v.nullable(text(12)),
  n: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
  of: tellings,
  evidence,
});
/** Those of a study stand with the study, and only there. */
const waits = v.union([printedWaits, v.strictObject({ fromStudy: studyId, of: tellings })]);
export type Waits = v.InferOutput<typeof waits>;
export type PrintedWaits = v.InferOutput<typeof printedWaits>;

/** The question under which a factor is told: how it broke, or why it heals as it does. */
export const factorTold = v.picklist(['how', 'why']);
export type FactorTold = v.InferOutput<typeof factorTold>;

export const factor = v.strictObject({
  id: factorId,
  term: text(80),
  what: tellings,
  told: v.optional(factorTold, 'how'),
  /** Of the text; a factor that the case names is told to everybody. */
  readers: toldReaders,
  /** Bones that it was studied at. Null: bone of any kind, or no study of one bone stands behind it. */
  studiedAt: v.nullable(v.pipe(v.array(boneId), v.minLength(1))),
  effects: v.optional(v.array(effect), []),
  waits: v.optional(v.array(waits), []),
  /** What was published that speaks against it. */
  against: v.optional(v.array(v.strictObject({ what: tellings, evidence })), []),
  /** Told of a child under 12 only where the case names it. */
  adultsOnly: v.optional(v.boolean(), false),
  /** Stands beside the forecast of these, without being a way in which they break. */
  besideForecastOf: v.optional(v.array(injuryId), []),
  /** Said by another subject of the case, and not asked for again. */
  saidBy: v.optional(v.nullable(v.picklist(['level'])), null),
  /** Why the effects change no forecast. Needed as soon as there are any that do not. */
  limit: v.optional(v.nullable(tellings), null),
  evidence,
});
export type Factor = v.InferOutput<typeof factor>;
