/** What can go wrong with healing and how often it was counted; sources that disagree; codes of a published list; soft tissue; a rule. */
import * as v from 'valibot';
import { type ContradictionId, type CountId, type DecisionRuleId, QUESTION_IDS, type RateId } from '../ids';
import { boneId, cardId, codeId, id, injuryId, optionId, regionId, strandId, troubleId } from '../ids/schema';
import { text } from '../units/schema';
import { evidence, mark, sourceId, studyId, tellings } from './schema-base';
import { countedUnit, eventName } from './schema-care';
import { WALK_VIEWS } from './schema-foot';

const percent = v.pipe(v.number(), v.minValue(0), v.maxValue(100));
const whole = v.pipe(v.number(), v.integer(), v.minValue(0));

/** Death of bone, delayed union, nonunion, ...: what it is, in general. */
export const trouble = v.strictObject({
  id: troubleId,
  term: text(60),
  plain: text(60),
  what: tellings,
  /** Where it is told: of the spot, or of the way back. */
  question: v.picklist(['why', 'back']),
  /** Explained with every break or every joint that came apart; else only where somebody counted it. */
  always: v.picklist(['breaks', 'joints', 'none']),
  /** What study arms call it: their counts stand in studies.yaml and are not written here again. */
  events: v.array(eventName),
  /** After "of these people, so many ...", after "of these breaks, so many ...", and its name in study. */
  counted: v.strictObject({ plain: text(80), breaks: text(80), study: text(80) }),
  evidence,
});
export type Trouble = v.InferOutput<typeof trouble>;

/** How often a trouble was counted in one group. Never a chance of one person. */
export const rate = v.pipe(
  v.strictObject({
    id: id<RateId>(),
    trouble: troubleId,
    injuries: v.array(injuryId),
    cards: v.array(cardId),
    /** Of which type: a class of a scheme, a treatment; null: all together. */
    type: v.nullable(text(80)),
    /** The treatments of ours that these people had, none where theirs is none of ours; left out where nothing is said of it. */
    options: v.optional(v.array(optionId)),
    count: v.nullable(whole),
    of: v.nullable(v.pipe(whole, v.minValue(1))),
    unit: v.optional(countedUnit, 'people'),
    /** As printed; null where only counts are. */
    percent: v.nullable(percent),
    lowHighPercent: v.nullable(v.pipe(v.array(percent), v.length(2))),
    group: text(160),
    /** Group and type for whoever does not study: words, no figure. */
    plain: v.strictObject({ group: text(100), type: v.nullable(text(80)) }),
    /** Over what time, as printed; null when not said. */
    span: v.nullable(text(80)),
    asPrinted: text(300),
    read: v.picklist(['read', 'abstract', 'secondary']),
    source: sourceId,
    mark,
  }),
  v.check(({ count, percent: p }) => count !== null || p !== null, 'a rate has a count or a percentage'),
  v.check(({ count, of }) => count === null || (of !== null && count <= of), 'a count has its whole, and is no more'),
  v.check(({ type, plain }) => (type === null) === (plain.type === null), 'a type has its plain words, and only then'),
  v.check(({ read, mark: m }) => read !== 'secondary' || m !== 'seen', 'what was read second-hand is not marked seen'),
);
export type Rate = v.InferOutput<typeof rate>;

/** A count that several texts tell and that is neither an arm of a study nor how often a trouble was counted. They quote it. */
export const count = v.strictObject({
  id: id<CountId>(),
  /** In study wording, with its group. */
  says: text(300),
  evidence,
});
export type Count = v.InferOutput<typeof count>;

/** Sources that say different things of one matter, and what is done about it here. */
export const contradiction = v.strictObject({
  id: id<ContradictionId>(),
  topic: text(120),
  injuries: v.array(injuryId),
  cards: v.optional(v.array(cardId), []),
  /** Told to a patient as well: it changes what a patient does or asks. The page of sources tells all of them to everybody. */
  toPatients: v.optional(v.boolean(), false),
  /** In whose fold it stands beside the injuries. */
  question: v.picklist(QUESTION_IDS),
  sides: v.pipe(
    v.array(
      v.strictObject({
        says: text(300),
        evidence,
        /** Whose figures it rests on, where they stand already: they are shown from there. */
        studies: v.optional(v.array(studyId), []),
        rates: v.optional(v.array(id<RateId>()), []),
      }),
    ),
    v.minLength(2),
  ),
  weDo: tellings,
});
export type Contradiction = v.InferOutput<typeof contradiction>;

/** A rule that decides on a film, as teaching: its steps, where it is felt, how well it was found to work, and what it is not for. */
export const decisionRule = v.strictObject({
  id: id<DecisionRuleId>(),
  term: text(80),
  what: tellings,
  steps: v.array(
    v.strictObject({
      what: tellings,
      /** Where on the foot; null: a step in words. */
      at: v.nullable(v.strictObject({ bone: boneId, region: v.nullable(regionId), view: v.picklist(WALK_VIEWS) })),
      evidence,
    }),
  ),
  figures: v.array(
    v.strictObject({
      what: text(120),
      percent,
      lowHighPercent: v.nullable(v.pipe(v.array(percent), v.length(2))),
      of: text(160),
      evidence,
    }),
  ),
  /** What was found beside the figures. */
  found: v.array(v.strictObject({ what: tellings, evidence })),
  /** For whom or what it does not hold, each looked up by its words. */
  notFor: v.array(v.strictObject({ id: text(40), what: tellings, evidence })),
  evidence,
});
export type DecisionRule = v.InferOutput<typeof decisionRule>;

const sides = v.strictObject({ right: text(1), left: text(1), notStated: text(1) });

/** A code of ICD-10-CM as a rule: its root, the character that side and displacement put after it, and the visit's. */
export const code = v.strictObject({
  id: codeId,
  root: v.pipe(v.string(), v.regex(/^[A-Z][0-9][0-9A-Z](\.[0-9A-Z]{1,3})?$/)),
  title: text(120),
  /** The one bone that it is of, where an injury of several bones has a code for each. */
  bone: v.optional(boneId),
  next: v.variant('by', [
    v.strictObject({ by: v.literal('side'), ...sides.entries }),
    v.strictObject({ by: v.literal('displacement and side'), displaced: sides, notDisplaced: sides }),
  ]),
  /** Which characters of the visit the list has for it. */
  visit: v.picklist(['fracture', 'stress fracture', 'injury', 'none']),
  evidence,
});
export type Code = v.InferOutput<typeof code>;

/** A ligament, tendon, vessel or nerve as it is drawn; its way is told in content/anatomy/strands.yaml under the same id. */
export const strand = v.strictObject({
  id: strandId,
  kind: v.picklist(['ligament', 'tendon', 'vessel', 'nerve']),
  term: text(100),
  plain: text(100),
  synonyms: v.array(text(60)),
  from: v.nullable(regionId),
  to: v.nullable(regionId),
  /** From where it is looked at. */
  view: v.picklist(WALK_VIEWS),
  /** Lies between bones, where nothing of it could be seen: drawn over them. */
  between: v.optional(v.boolean(), false),
  what: tellings,
  evidence,
});
export type Strand = v.InferOutput<typeof strand>;
