/** Injuries: those done fully, and cards for those told in short. One injury a file, so that adding one is adding one file. */
import * as v from 'valibot';
import { DIRECTIONS, FILM_MEASURES, ONSETS } from '../ids';
import {
  boneId,
  cardId,
  codeId,
  factorId,
  injuryId,
  mechanismId,
  optionId,
  regionId,
  strandId,
  vesselEdgeId,
} from '../ids/schema';
import { text } from '../units/schema';
import { evidence, stageId, tellings, toldReaders } from './schema-base';
import { WALK_VIEWS } from './schema-foot';

const finite = v.pipe(v.number(), v.finite());
const weeks = v.nullable(finite);

/**
 * What decides that a class fits, where geometry does: the part of the bone in which the break lies; whether it is displaced; a
 * measure of a film, `from` counted in and `below` not, so that a value on a border belongs to the class that begins there.
 * `orNotStated`: the rule is taken to hold where nobody stated the measure, and that is said. `orDisplaced`: it holds, too, where nobody
 * stated the measure and the break is displaced: pieces that moved against each other hang together nowhere. Both at once collide.
 */
const rule = v.variant('by', [
  v.strictObject({ by: v.literal('place'), region: regionId }),
  v.strictObject({ by: v.literal('displaced'), displaced: v.boolean() }),
  v.pipe(
    v.strictObject({
      by: v.literal('measure'),
      what: v.picklist([...FILM_MEASURES, 'displacement']),
      from: v.optional(finite),
      below: v.optional(finite),
      orNotStated: v.optional(v.literal(true)),
      orDisplaced: v.optional(v.literal(true)),
    }),
    v.check(({ from, below }) => from !== undefined || below !== undefined, 'a rule has a from, a below or both'),
    v.check(({ from, below }) => from === undefined || below === undefined || from < below, 'from is less than below'),
    v.check(
      ({ what, orNotStated }) => what !== 'displacement' || !orNotStated,
      'only a measure of a film can be taken',
    ),
    v.check(
      ({ what, from, below, orNotStated, orDisplaced }) =>
        !orDisplaced || (what !== 'displacement' && from !== undefined && below === undefined && !orNotStated),
      'orDisplaced goes with a measure of a film that has only a from',
    ),
  ),
]);
export type ClassRule = v.InferOutput<typeof rule>;

/** One class of one scheme. Rules of one scheme never overlap. */
const classification = v.strictObject({
  id: text(40),
  scheme: text(60),
  term: text(80),
  criteria: tellings,
  /** Absent: geometry does not decide it. Several: all of them. */
  rules: v.optional(v.pipe(v.array(rule), v.minLength(1))),
  /** The treatments usual for this class; absent: those of the injury. */
  usual: v.optional(v.strictObject({ options: v.pipe(v.array(optionId), v.minLength(1)), evidence })),
  /** Edges of the graph of vessels that are torn in this class. */
  cuts: v.optional(v.array(vesselEdgeId)),
  evidence,
});

/** What it can be taken for: another injury, a card, a look-alike of films (content/anatomy/look-alikes.yaml), or something else. */
const other = v.variant('is', [
  v.strictObject({ is: v.literal('injury'), injury: injuryId }),
  v.strictObject({ is: v.literal('card'), card: cardId }),
  v.strictObject({ is: v.literal('lookAlike'), id: text(60) }),
  v.strictObject({ is: v.literal('other'), term: text(80), plain: text(80) }),
]);
export type Other = v.InferOutput<typeof other>;
const apart = v.strictObject({ from: other, how: tellings, evidence });

/** Words by which somebody looks for it: where it hurts, what happened, how it is reported. Trade names stand in `synonyms`. */
const findBy = v.array(text(60));

export const injury = v.strictObject({
  id: injuryId,
  term: text(100),
  plain: text(100),
  /** Trade names in use, with the caveat that belongs to them. */
  synonyms: v.array(text(60)),
  nameCaveat: v.nullable(tellings),
  bone: boneId,
  /** Further bones that it takes part in. */
  alsoBones: v.optional(v.array(boneId), []),
  /** A joint comes apart where `joint`: no line of a break is drawn, and no bone is said to be broken. */
  kind: v.optional(v.picklist(['break', 'joint']), 'break'),
  /** Its name says which way the break runs: that nobody stated it is then no news. */
  directionInName: v.optional(v.literal(true)),
  /** How it can have come on and which ways its break can run. Whatever else is stated speaks against the class; absent: nothing does. */
  fits: v.strictObject({
    onsets: v.pipe(v.array(v.picklist(ONSETS)), v.minLength(1)),
    directions: v.optional(v.pipe(v.array(v.picklist(DIRECTIONS)), v.minLength(1))),
    /** A stress fracture is a line: pieces that stand so far apart, or farther, speak for another kind, unless it gave way at last. */
    apartBelowMm: v.optional(v.pipe(v.number(), v.finite(), v.minValue(0))),
    evidence,
  }),
  region: regionId,
  /** Further parts in which it lives, on the bones of `alsoBones`: one text for what is the same in each of them. */
  alsoRegions: v.optional(v.array(regionId), []),
  what: tellings,
  mechanisms: v.pipe(v.array(mechanismId), v.minLength(1)),
  /** Where published breaks of this class lie, for holding the model's peak against. Stations are shares of bone length or the region. */
  occursAt: v.strictObject({ region: regionId, evidence }),
  classification: v.array(classification),
  tellApart: v.optional(v.array(apart), []),
  options: v.pipe(v.array(optionId), v.minLength(1)),
  stages: v.pipe(
    v.array(
      v.strictObject({
        stage: stageId,
        option: v.nullable(optionId),
        weeksFrom: weeks,
        weeksTo: weeks,
        evidence,
      }),
    ),
    v.minLength(1),
  ),
  /** One statement on healing speed, with its source. */
  heals: v.strictObject({ speed: v.picklist(['usual', 'slow', 'slowest']), what: tellings, evidence }),
  /** What a film can miss, and, where a source says so, after how many weeks to look again. */
  notSeen: v.array(
    v.strictObject({
      what: tellings,
      againWeeks: v.optional(v.pipe(v.array(finite), v.length(2))),
      /** Of no use to a patient any more once the injury is found. */
      untilFound: v.optional(v.boolean(), false),
      readers: toldReaders,
      evidence,
    }),
  ),
  /** What settles its class where claims of a measure differ: asked for of injuries whose studies count people by class. */
  settles: v.optional(v.strictObject({ what: tellings, evidence })),
  codes: v.pipe(v.array(codeId), v.minLength(1)),
  /** Which of the codes hold, where class or displacement decides: by classes of `classification`, else by what is said of displacement. */
  codesWhen: v.optional(
    v.array(v.strictObject({ codes: v.array(codeId), classes: v.array(text(40)), displaced: v.boolean() })),
    [],
  ),
  /** Codes that come on top where a bone broke too: named, not assembled. */
  codesBeside: v.optional(v.array(codeId), []),
  /** What the list has for a break of this bone through a growth plate, its type not stated: named where somebody still grows. */
  codeOfGrowing: v.optional(codeId),
  /** Its number in the AO/OTA compendium, for study only: as far as it was read, in which edition, and what it says. Never its text or figures. */
  alsoNumbered: v.optional(v.strictObject({ number: text(20), says: text(200), edition: evidence, evidence })),
  factors: v.array(factorId),
  /** Soft tissue that matters to it. */
  strands: v.optional(v.array(strandId), []),
  findBy: v.optional(findBy, []),
});
export type Injury = v.InferOutput<typeof injury>;

/**
 * Where an injury told in short lies on its bones: in named parts of them, each found on any foot, or in no part more than another, so
 * that each of its bones is meant whole. One of the two is said: a place that nobody has looked for yet has no form.
 */
const cardPlace = v.variant('is', [
  v.strictObject({ is: v.literal('regions'), regions: v.pipe(v.array(regionId), v.minLength(1)) }),
  v.strictObject({ is: v.literal('bones') }),
]);

/** An injury in short: where, what it is, one picture, its danger sign, sources. No forecast and no stress colour, ever. */
export const card = v.strictObject({
  id: cardId,
  term: text(100),
  plain: text(100),
  synonyms: v.array(text(60)),
  /** The first is the one looked at. */
  bones: v.pipe(v.array(boneId), v.minLength(1)),
  place: cardPlace,
  /** From where it is looked at. */
  view: v.picklist(WALK_VIEWS),
  what: tellings,
  where: tellings,
  danger: v.strictObject({ what: tellings, evidence }),
  tellApart: v.array(apart),
  codes: v.array(codeId),
  strands: v.optional(v.array(strandId), []),
  findBy,
  evidence,
});
export type Card = v.InferOutput<typeof card>;
