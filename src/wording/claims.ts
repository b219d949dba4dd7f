/** Claims as clauses, and the hedge in front of them. A reported fact cannot read as confirmed: there is no other way in. */
import type { ClaimStatus, SourceKind } from '../cases/schema';
import type { Content } from '../content/schema';
import type { ClaimValue, Given } from '../explain/messages';
import type { ClaimId, FilmMeasure, InjuryId, Reader } from '../ids';
import { CLAUSES, type ClauseKey, CONDITIONS, HEDGES, PIECES } from './en/clauses';
import {
  DIRECTION_WORDS,
  ENDPOINT_WORDS,
  FOLLOW_UP_WORDS,
  FOLLOW_UP_WORDS_OF_JOINT,
  FOOT_SHAPE_WORDS,
  GIVEN_UP_WORDS,
  LEVEL_WORDS,
  MEASURE_WORDS,
  ONSET_WORDS,
  REACHED_WORDS,
  WHO_WORDS,
} from './en/lists';
import { capitalRuns, fill, fillRuns, type Value } from './fill';
import { namesFor } from './names';
import { asGiven, formatDate, formatQuantity } from './quantities';
import { plainText, type Run } from './types';

const MEASURE_UNITS = {
  angulation: 'deg',
  gap: 'mm',
  'joint step': 'mm',
  diastasis: 'mm',
  'arch loss': 'mm',
  'joint share': 'share',
  'Boehler angle': 'deg',
  'line depth': 'share',
} as const;

/** In its unit; pieces have none. */
export const measureText = (what: FilmMeasure, value: number): string =>
  asGiven(value, what === 'fragments' ? null : MEASURE_UNITS[what]);

interface Clause {
  readonly key: ClauseKey;
  readonly values: Readonly<Record<string, Value>>;
}

const clauseParts = (content: Content, of: ClaimValue, reader: Reader, ofJoint: boolean): Clause => {
  const names = namesFor(content, reader);
  const mm = (value: number): string => formatQuantity({ value, unit: 'mm' });
  switch (of.subject) {
    case 'side':
      return { key: 'side', values: { side: of.value } };
    case 'bone':
      return { key: 'bone', values: { bone: names.bone(of.value) } };
    case 'place':
      return of.value.by === 'region'
        ? { key: 'placeRegion', values: { region: names.region(of.value.region) } }
        : { key: 'placeDistance', values: { distance: mm(of.value.mm) } };
    case 'injury':
      return { key: 'injury', values: { injury: names.injury(of.value) } };
    case 'direction':
      return { key: 'direction', values: { direction: DIRECTION_WORDS[of.value] } };
    case 'displacement': {
      const by = of.value.mm === undefined ? '' : fill(PIECES.by, { distance: asGiven(of.value.mm, 'mm') });
      const [apart, inLine] = ofJoint
        ? (['displaced.joint', 'notDisplaced.joint'] as const)
        : (['displaced', 'notDisplaced'] as const);
      return of.value.displaced ? { key: apart, values: { by } } : { key: inLine, values: {} };
    }
    case 'measure': {
      const { what, value } = of.value;
      return { key: 'measure', values: { what: MEASURE_WORDS[what][reader], value: measureText(what, value) } };
    }
    case 'onset':
      return { key: 'onset', values: { onset: ONSET_WORDS[of.value] } };
    case 'mechanism':
      return { key: 'mechanism', values: { mechanism: names.mechanism(of.value) } };
    case 'injuryDate':
      return { key: 'injuryDate', values: { date: formatDate(of.value) } };
    case 'treatment': {
      const since = of.value.on === undefined ? '' : fill(PIECES.since, { date: formatDate(of.value.on) });
      return { key: 'treatment', values: { option: names.option(of.value.option), since } };
    }
    case 'followUp':
      return {
        key: 'followUp',
        values: {
          date: formatDate(of.value.on),
          finding: (ofJoint ? FOLLOW_UP_WORDS_OF_JOINT : FOLLOW_UP_WORDS)[of.value.finding],
        },
      };
    case 'outcome': {
      const ended = (of.value.result === 'reached' ? REACHED_WORDS : GIVEN_UP_WORDS)[of.value.endpoint];
      return { key: 'outcome', values: { date: formatDate(of.value.on), ended } };
    }
    case 'timetable': {
      const until = of.value.endpoint === undefined ? '' : ` ${ENDPOINT_WORDS[of.value.endpoint]}`;
      return { key: 'timetable', values: { weeks: formatQuantity({ value: of.value.weeks, unit: 'week' }), until } };
    }
    case 'ageBand':
      return { key: 'ageBand', values: { age: of.value.replace('-', PIECES.to) } };
    case 'massKg':
      return { key: 'massKg', values: { mass: formatQuantity({ value: of.value, unit: 'kg' }) } };
    case 'heightCm':
      return { key: 'heightCm', values: { height: formatQuantity({ value: of.value, unit: 'cm' }) } };
    case 'footShape':
      return { key: 'footShape', values: { shape: FOOT_SHAPE_WORDS[of.value] } };
    case 'activity':
      return { key: 'activity', values: { activity: names.activity(of.value) } };
    case 'level':
      return { key: 'level', values: { level: LEVEL_WORDS[of.value] } };
    case 'riskFactor':
      return { key: 'riskFactor', values: { factor: names.factor(of.value) } };
  }
};

/** Whether the class in question is of a joint: then no bone is said to be broken. */
export const isOfJoint = (content: Pick<Content, 'injuries'>, injury: InjuryId | null): boolean =>
  content.injuries.find((i) => i.id === injury)?.kind === 'joint';

/** The claim without its hedge: only to be set behind a stamp or a hedge. */
export const clauseOf = (content: Content, of: ClaimValue, reader: Reader, ofJoint: boolean): readonly Run[] => {
  const { key, values } = clauseParts(content, of, reader, ofJoint);
  return fillRuns(CLAUSES[key][reader], values);
};

/** The value alone, for a list whose lines carry their own stamp and subject. */
export const wordValue = (content: Content, of: ClaimValue, reader: Reader, injury: InjuryId | null): string =>
  plainText({ runs: clauseOf(content, of, reader, isOfJoint(content, injury)) });

/** Who said these claims, for a hedge: each kind of source once. Empty when none is kept. */
export const reportedBy = (saidBy: Readonly<Record<ClaimId, SourceKind>>, claims: readonly ClaimId[]): string => {
  const kinds = [...new Set(claims.flatMap((id) => (Object.hasOwn(saidBy, id) ? (saidBy[id] ?? []) : [])))];
  return kinds.length === 0
    ? ''
    : fill(PIECES.reportedBy, { who: kinds.map((kind) => WHO_WORDS[kind]).join(PIECES.and) });
};

/** @param by from `reportedBy`: a reader who speaks to others says whose report it is */
export const hedged = (
  clause: readonly Run[],
  status: ClaimStatus | 'supposed',
  reader: Reader,
  by = '',
): readonly Run[] => capitalRuns(fillRuns(HEDGES[status][reader], { clause, by }));

/** A clause that follows from facts of the case, opened by a condition unless they are confirmed. */
export const conditional = (clause: readonly Run[], given: Given, reader: Reader): readonly Run[] => {
  const opening = given === 'confirmed' || given === 'none' ? '' : CONDITIONS[given][reader];
  return capitalRuns(fillRuns('{opening}{clause}', { opening, clause }));
};
