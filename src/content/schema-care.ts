/** Records about care and what became of people: options, stages, studies, cautions, factors, injuries. */
import * as v from 'valibot';
import { ENDPOINTS, QUESTION_IDS, READERS } from '../ids';
import { ageBand, boneId, factorId, injuryId, level, mechanismId, optionId, regionId } from '../ids/schema';
import { text } from '../units/schema';
import { cautionId, evidence, mark, sourceId, stageId, studyId, tellings } from './schema-base';

export const option = v.strictObject({
  id: optionId,
  term: text(80),
  plain: text(80),
  kind: v.picklist(['non-operative', 'operative']),
  what: tellings,
  /** What it does to the bone mechanically. */
  does: tellings,
  burdens: v.array(v.strictObject({ what: tellings, evidence })),
  evidence,
});
export type Option = v.InferOutput<typeof option>;

export const stage = v.strictObject({
  id: stageId,
  term: text(80),
  plain: text(80),
  /** Criteria that open the next stage: a checklist, never computed into a date. */
  opensNext: v.array(v.strictObject({ what: tellings, evidence })),
  sendsBack: v.array(v.strictObject({ what: tellings, evidence })),
  what: tellings,
});
export type Stage = v.InferOutput<typeof stage>;

export const endpoint = v.picklist(ENDPOINTS);

const finite = v.pipe(v.number(), v.finite());

/** One arm of one study, as printed. */
export const study = v.strictObject({
  id: studyId,
  source: sourceId,
  mark,
  injuries: v.array(injuryId),
  option: optionId,
  /** Arms with the same `trial` are shown together. */
  trial: text(40),
  design: v.picklist(['randomised', 'cohort', 'series', 'pooled', 'register']),
  population: text(120),
  level,
  /** Further levels that took part, when the people were mixed. */
  alsoLevels: v.optional(v.array(level)),
  n: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
  time: v.nullable(
    v.strictObject({
      endpoint,
      centreWeeks: finite,
      centre: v.picklist(['mean', 'median']),
      sdWeeks: v.nullable(finite),
      rangeWeeks: v.nullable(v.pipe(v.array(finite), v.length(2))),
    }),
  ),
  /** A bad (or good) event counted, of `of` people. `percent` as printed when counts are not. */
  event: v.nullable(
    v.strictObject({
      what: v.picklist(['failure', 'nonunion', 'union', 'refracture', 'returned']),
      count: v.nullable(v.pipe(v.number(), v.integer())),
      of: v.nullable(v.pipe(v.number(), v.integer())),
      percent: v.nullable(finite),
      lowHighPercent: v.nullable(v.pipe(v.array(finite), v.length(2))),
    }),
  ),
  /** What was forecast in public for the same people, where the study set it beside what happened. Never part of a range. */
  forecast: v.optional(
    v.strictObject({ centreWeeks: finite, rangeWeeks: v.nullable(v.pipe(v.array(finite), v.length(2))) }),
  ),
  asPrinted: text(300),
  read: v.picklist(['read', 'abstract', 'secondary']),
});
export type Study = v.InferOutput<typeof study>;

export const caution = v.strictObject({
  id: cautionId,
  kind: v.picklist(['red flag', 'treatment danger', 'limit', 'disclaimer', 'do not say']),
  what: tellings,
  /** Where it matters: empty = everywhere. */
  injuries: v.array(injuryId),
  options: v.array(optionId),
  ages: v.optional(v.array(ageBand), []),
  questions: v.array(v.picklist(QUESTION_IDS)),
  readers: v.array(v.picklist(READERS)),
  evidence,
});
export type Caution = v.InferOutput<typeof caution>;

export const factor = v.strictObject({
  id: factorId,
  term: text(80),
  what: tellings,
  effect: text(300),
  evidence,
});
export type Factor = v.InferOutput<typeof factor>;

export const injury = v.strictObject({
  id: injuryId,
  term: text(100),
  plain: text(100),
  /** Trade names in use, with the caveat that belongs to them. */
  synonyms: v.array(text(60)),
  nameCaveat: v.nullable(tellings),
  bone: boneId,
  region: regionId,
  what: tellings,
  mechanisms: v.pipe(v.array(mechanismId), v.minLength(1)),
  /** Where published breaks of this class lie, for holding the model's peak against. Stations are shares of bone length or the region. */
  occursAt: v.strictObject({ region: regionId, evidence }),
  classification: v.array(
    v.strictObject({ id: text(40), scheme: text(60), term: text(60), criteria: tellings, evidence }),
  ),
  options: v.pipe(v.array(optionId), v.minLength(1)),
  stages: v.pipe(
    v.array(
      v.strictObject({
        stage: stageId,
        option: v.nullable(optionId),
        weeksFrom: v.nullable(finite),
        weeksTo: v.nullable(finite),
        evidence,
      }),
    ),
    v.minLength(1),
  ),
  /** One statement on healing speed, with its source. */
  heals: v.strictObject({ speed: v.picklist(['usual', 'slow', 'slowest']), what: tellings, evidence }),
  notSeen: v.array(v.strictObject({ what: tellings, evidence })),
  icd10cm: v.strictObject({ root: text(10), title: text(100), edition: text(40), evidence }),
  factors: v.array(factorId),
});
export type Injury = v.InferOutput<typeof injury>;
