/**
 * A case: a list of claims and nothing else about the injury. A claim says one thing about one subject, with its status, the
 * kind of source it came from, and what it supersedes. Beside the claims: the forecasts that were given, the clinic's own
 * protocol, the days that are asked about. No identifiers of a person: there is no field for one.
 */
import * as v from 'valibot';
import {
  type CaseId,
  type ClaimId,
  DIRECTIONS,
  ENDPOINTS,
  FILM_MEASURES,
  type FilmMeasure,
  FOLLOW_UP_FINDINGS,
  ONSETS,
} from '../ids';
import {
  activityId,
  ageBand,
  boneId,
  factorId,
  id,
  injuryId,
  level,
  mechanismId,
  optionId,
  regionId,
} from '../ids/schema';
import { isoDate, text } from '../units/schema';
import { bounded, listOf, roundedTo1 } from './bounded';
import { type Clinic, clinic, fixtures } from './schema-clinic';
import { type KeptForecast, keptForecast, MOST_FORECASTS } from './schema-forecast';

export type { KeptForecast } from './schema-forecast';

export const CASE_FORMAT = 'underfoot-case';
export const CASE_VERSION = 3;

export const STATUSES = ['reported', 'confirmed', 'inferred', 'ruledOut'] as const;
export const status = v.picklist(STATUSES);
export type ClaimStatus = v.InferOutput<typeof status>;

/** Only an examination, an imaging report or an operation report can confirm or rule out. Inference is our own. */
export const SOURCE_KINDS = [
  'examination',
  'imaging',
  'operation',
  'person',
  'team',
  'media',
  'generalKnowledge',
] as const;
export const sourceKind = v.picklist(SOURCE_KINDS);
export type SourceKind = v.InferOutput<typeof sourceKind>;

export { FOLLOW_UP_FINDINGS };

/** How it ended, for one endpoint: the forecasts of the case are held against it. */
export const OUTCOME_RESULTS = ['reached', 'given up'] as const;

const place = v.variant('by', [
  v.strictObject({ by: v.literal('region'), region: regionId }),
  /** From the most proximal point of the bone along its axis. */
  v.strictObject({ by: v.literal('distance'), mm: bounded(0, 120, 'a distance along a foot bone is 0 to 120 mm') }),
]);
export type Place = v.InferOutput<typeof place>;

/**
 * How far each measure of a film can go, in its unit: mm, degrees, percent of the joint's surface, pieces. The depth of a line is
 * percent of its way from the first cortex (0: still within it) to another (100: in that one, whichever it meets).
 */
export const MEASURE_BOUNDS = {
  angulation: [0, 90],
  gap: [0, 30],
  'joint step': [0, 30],
  diastasis: [0, 30],
  'arch loss': [0, 30],
  'joint share': [0, 100],
  'Boehler angle': [-60, 60],
  fragments: [1, 20],
  'line depth': [0, 100],
} as const satisfies Readonly<Record<FilmMeasure, readonly [number, number]>>;

/** Counted, or never read finer: 0 percent deep is a line within the cortex, and the next step has left it. */
export const WHOLE_MEASURES: ReadonlySet<FilmMeasure> = new Set<FilmMeasure>(['fragments', 'line depth']);

const measure = v.pipe(
  v.strictObject({
    what: v.picklist(FILM_MEASURES),
    // Kept and told as given: a rounded one could cross the border of a class.
    value: bounded(-60, 100, 'a measure is -60 to 100'),
  }),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const { what, value } = dataset.value;
    const [low, high] = MEASURE_BOUNDS[what];
    const whole = WHOLE_MEASURES.has(what);
    if (value < low || value > high || (whole && !Number.isInteger(value)))
      addIssue({ message: `the ${what} is ${low} to ${high}${whole ? ', a whole number' : ''}` });
  }),
);

/** subject -> its value. The closed list of what a case can claim. "Not stated" = no current claim. */
export const subjectValues = {
  side: v.picklist(['right', 'left']),
  bone: boneId,
  place,
  injury: injuryId,
  direction: v.picklist(DIRECTIONS),
  displacement: v.strictObject({
    displaced: v.boolean(),
    mm: v.optional(bounded(0, 30, 'displacement is 0 to 30 mm')),
  }),
  /** What was measured on a film or a scan; displacement has a subject of its own. */
  measure,
  onset: v.picklist(ONSETS),
  mechanism: mechanismId,
  injuryDate: isoDate,
  treatment: v.strictObject({ option: optionId, on: v.optional(isoDate) }),
  followUp: v.strictObject({ finding: v.picklist(FOLLOW_UP_FINDINGS), on: isoDate }),
  outcome: v.strictObject({ endpoint: v.picklist(ENDPOINTS), result: v.picklist(OUTCOME_RESULTS), on: isoDate }),
  /** How long somebody said it takes. To what is often left out; then it can't be judged. */
  timetable: v.strictObject({
    weeks: bounded(0.1, 260, 'a timetable is 0.1 to 260 weeks'),
    endpoint: v.optional(v.picklist(ENDPOINTS)),
  }),
  ageBand,
  massKg: roundedTo1(20, 250, 'a mass is 20 to 250 kg: is it in another unit?'),
  heightCm: roundedTo1(80, 230, 'a height is 80 to 230 cm: is it in another unit?'),
  footShape: v.picklist(['neutral', 'high', 'low']),
  activity: activityId,
  level,
  riskFactor: factorId,
} as const;
export const SUBJECTS = Object.keys(subjectValues) as readonly Subject[];
export type Subject = keyof typeof subjectValues;
export type SubjectValue<S extends Subject> = v.InferOutput<(typeof subjectValues)[S]>;

/** Subjects of which several claims may hold at once. */
export const MANY: ReadonlySet<Subject> = new Set<Subject>([
  'followUp',
  'measure',
  'outcome',
  'riskFactor',
  'timetable',
  'treatment',
]);

const claimOf = <S extends Subject>(subject: S) =>
  v.strictObject({
    id: id<ClaimId>(),
    subject: v.literal(subject),
    value: subjectValues[subject],
    status,
    source: v.strictObject({ kind: sourceKind, on: v.optional(isoDate) }),
    supersedes: v.optional(id<ClaimId>()),
    /** "No names here": never told unless asked for. */
    note: v.optional(text(300)),
  });

export const claim = v.variant('subject', [
  claimOf('side'),
  claimOf('bone'),
  claimOf('place'),
  claimOf('injury'),
  claimOf('direction'),
  claimOf('displacement'),
  claimOf('measure'),
  claimOf('onset'),
  claimOf('mechanism'),
  claimOf('injuryDate'),
  claimOf('treatment'),
  claimOf('followUp'),
  claimOf('outcome'),
  claimOf('timetable'),
  claimOf('ageBand'),
  claimOf('massKg'),
  claimOf('heightCm'),
  claimOf('footShape'),
  claimOf('activity'),
  claimOf('level'),
  claimOf('riskFactor'),
]);
export type Claim = v.InferOutput<typeof claim>;

export const caseFile = v.strictObject({
  format: v.literal(CASE_FORMAT),
  version: v.literal(CASE_VERSION),
  id: id<CaseId>(),
  /** Invented cases say so; their one-line scenario comes from content by this key. */
  demo: v.optional(v.strictObject({ invented: v.literal(true), scenario: text(40) })),
  /** Counted before each is looked at: a file of a million broken claims gives one problem. */
  claims: v.pipe(v.array(v.unknown()), v.maxLength(200, 'a case has at most 200 claims'), v.array(claim)),
  /** "No names here": never told unless asked for. */
  note: v.optional(text(1000)),
  /** Forecasts that were given, oldest first. */
  forecasts: listOf(keptForecast, MOST_FORECASTS, `a case keeps at most ${MOST_FORECASTS} forecasts`),
  /** Missing: the clinic has said nothing of its own. */
  clinic: v.optional(clinic),
  fixtures,
});
export type CaseFile = v.InferOutput<typeof caseFile>;

/**
 * The current value of one subject. Contradictions stay contradictions: two current claims that differ, or one value that another
 * current claim rules out (then `values` holds that one value and `ruledOut` the claim against it).
 */
export type Fact<S extends Subject> =
  | { readonly state: 'notStated'; readonly ruledOut: readonly Claim[] }
  | {
      readonly state: 'stated';
      readonly value: SubjectValue<S>;
      readonly status: Exclude<ClaimStatus, 'ruledOut'>;
      readonly claims: readonly ClaimId[];
      readonly ruledOut: readonly Claim[];
    }
  | {
      readonly state: 'contradiction';
      readonly values: readonly {
        readonly value: SubjectValue<S>;
        readonly status: Exclude<ClaimStatus, 'ruledOut'>;
        readonly claims: readonly ClaimId[];
      }[];
      readonly ruledOut: readonly Claim[];
    };

export type SingleSubject = Exclude<
  Subject,
  'followUp' | 'measure' | 'outcome' | 'riskFactor' | 'timetable' | 'treatment'
>;

export type Facts = { readonly [S in SingleSubject]: Fact<S> } & {
  readonly caseId: CaseId;
  readonly demo: boolean;
  /** Who said each current claim. */
  readonly saidBy: Readonly<Record<ClaimId, SourceKind>>;
  /** In order of date, oldest first; undated before dated, so that the last one is the latest known. Never a ruled-out claim. */
  readonly treatments: readonly Extract<Claim, { subject: 'treatment' }>[];
  readonly followUps: readonly Extract<Claim, { subject: 'followUp' }>[];
  readonly outcomes: readonly Extract<Claim, { subject: 'outcome' }>[];
  readonly measures: readonly Extract<Claim, { subject: 'measure' }>[];
  readonly timetables: readonly Extract<Claim, { subject: 'timetable' }>[];
  /** The clinic's own protocol: no claim, and never mixed with what has a source. */
  readonly clinic: Clinic;
  readonly riskFactors: readonly Extract<Claim, { subject: 'riskFactor' }>[];
  /** Forecasts that were given, oldest first: never a fact of the injury, only held against the outcomes. */
  readonly keptForecasts: readonly KeptForecast[];
  /** Current claims that rule out a treatment, a follow-up finding, a measure, an outcome or a risk factor. */
  readonly ruledOut: readonly Claim[];
};
