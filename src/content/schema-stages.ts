/** The way back as content: stages, what clinics write of them, partial weight, daily life, tests before the return, cautions. */
import * as v from 'valibot';
import {
  type CriterionId,
  type ExerciseId,
  QUESTION_IDS,
  READERS,
  type ReturnTestId,
  type StageSheetId,
  type TopicId,
  type WeightPracticeId,
} from '../ids';
import { ageBand, id, injuryId, optionId } from '../ids/schema';
import { text } from '../units/schema';
import { cautionId, evidence, stageId, tellings, toldReaders } from './schema-base';

const told = v.strictObject({ what: tellings, evidence });
const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

/** How much of the body's weight may go on the foot, for some options; none named: for the others. Null: as pain allows. */
const weight = v.strictObject({
  options: v.array(optionId),
  share: v.nullable(v.strictObject({ low: share, high: share })),
  evidence,
});

/** How the foot is held in the picture: the poses of `src/anatomy`, which content may not import. */
const pose = v.picklist(['asScanned', 'standing', 'seated', 'heelRaise', 'pushOff', 'inversion']);

/** Common practice; the clinician strikes what does not fit. */
const exercise = v.strictObject({ id: id<ExerciseId>(), what: tellings, pose, evidence });
export type Exercise = v.InferOutput<typeof exercise>;

export const stage = v.strictObject({
  id: stageId,
  term: text(80),
  plain: text(80),
  what: tellings,
  /** Criteria that open the next stage: a checklist, never computed into a date. */
  opensNext: v.array(
    v.strictObject({
      id: id<CriterionId>(),
      /** None named: after every treatment. */
      options: v.optional(v.array(optionId), []),
      /** Of a broken bone or of a joint that came apart; none named: of both. */
      of: v.optional(v.picklist(['break', 'joint'])),
      what: tellings,
      evidence,
    }),
  ),
  sendsBack: v.pipe(v.array(told), v.minLength(1)),
  today: v.strictObject({
    /** The first that names the option, else the first that names none; empty where weight is no longer the question. */
    weights: v.array(weight),
    aids: told,
    exercises: v.pipe(v.array(exercise), v.minLength(3), v.maxLength(5)),
  }),
});
export type Stage = v.InferOutput<typeof stage>;

const weeks = v.nullable(v.pipe(v.number(), v.finite(), v.minValue(0)));

/** What one clinic or one study's people did in a stage: for the spread between them, never an order. */
export const stageSheet = v.strictObject({
  id: id<StageSheetId>(),
  stage: stageId,
  injuries: v.pipe(v.array(injuryId), v.minLength(1)),
  options: v.pipe(v.array(optionId), v.minLength(1)),
  weeksFrom: weeks,
  weeksTo: weeks,
  what: tellings,
  evidence,
});
export type StageSheet = v.InferOutput<typeof stageSheet>;

/** What became of people who were told to put part of their weight on a foot. */
export const weightPractice = v.strictObject({
  id: id<WeightPracticeId>(),
  what: tellings,
  /** Told so much of body weight, people put on so much. */
  overshoot: v.optional(v.strictObject({ told: share, reached: share })),
  readers: toldReaders,
  evidence,
});
export type WeightPractice = v.InferOutput<typeof weightPractice>;

export const dailyTopic = v.strictObject({
  id: id<TopicId>(),
  question: tellings,
  /** Not asked of a child under 12. */
  adultsOnly: v.optional(v.boolean(), false),
  /** Where it is asked; none named: in every stage. */
  stages: v.array(stageId),
  /** What is published; none named: for every option, for every injury. The answer is the clinic's. */
  says: v.array(
    v.strictObject({
      options: v.array(optionId),
      injuries: v.optional(v.array(injuryId), []),
      /** Of one foot only: the pedals of a car. */
      side: v.optional(v.picklist(['right', 'left'])),
      /** Told in these stages only, of those in which the question is asked. */
      stages: v.optional(v.pipe(v.array(stageId), v.minLength(1))),
      what: tellings,
      readers: toldReaders,
      evidence,
    }),
  ),
});
export type DailyTopic = v.InferOutput<typeof dailyTopic>;

export const returnTest = v.strictObject({
  id: id<ReturnTestId>(),
  term: text(80),
  plain: text(80),
  stages: v.pipe(v.array(stageId), v.minLength(1)),
  what: tellings,
  evidence,
  norms: v.pipe(v.array(v.strictObject({ ...told.entries, readers: toldReaders })), v.minLength(1)),
});
export type ReturnTest = v.InferOutput<typeof returnTest>;

/** How fast a sign wants somebody: an ambulance, the same day, or within days. */
export const URGENCIES = ['emergency', 'today', 'soon'] as const;
export type Urgency = (typeof URGENCIES)[number];

export const caution = v.strictObject({
  id: cautionId,
  kind: v.picklist(['red flag', 'treatment danger', 'limit', 'disclaimer', 'do not say']),
  what: tellings,
  /** Every danger of a treatment has one. */
  act: v.optional(v.picklist(URGENCIES)),
  /** Where it matters: empty = everywhere. */
  injuries: v.array(injuryId),
  options: v.array(optionId),
  stages: v.optional(v.array(stageId), []),
  ages: v.optional(v.array(ageBand), []),
  questions: v.array(v.picklist(QUESTION_IDS)),
  readers: v.array(v.picklist(READERS)),
  evidence,
  /** How often it came in others; none named: in whom it came does not matter. */
  figures: v.optional(
    v.array(
      v.strictObject({
        injuries: v.optional(v.array(injuryId), []),
        options: v.optional(v.array(optionId), []),
        what: tellings,
        readers: toldReaders,
        evidence,
      }),
    ),
    [],
  ),
});
export type Caution = v.InferOutput<typeof caution>;
