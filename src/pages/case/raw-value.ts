/** From what a form holds (strings) to one typed value of a claim, and back. Null while something needed is missing. */

import type { Place, Subject } from '../../cases';
import { FOLLOW_UP_FINDINGS, OUTCOME_RESULTS, subjectValues } from '../../cases';
import type { Content } from '../../content/schema';
import type { ClaimValue } from '../../explain/messages';
import { AGE_BANDS, ENDPOINTS, FILM_MEASURES } from '../../ids';
import type { IsoDate } from '../../units';

export interface Raw {
  /** A choice from a list, a number or a date as typed. */
  readonly main: string;
  readonly date: string;
  /** Distance in mm, or a measure in its unit, where a subject has one beside its choice. */
  readonly mm: string;
  /** How an outcome ended, beside its endpoint. */
  readonly result: string;
  /** How long somebody said it takes. */
  readonly weeks: string;
}
export const EMPTY_RAW: Raw = { main: '', date: '', mm: '', result: '', weeks: '' };

/** How a subject is asked for. */
export type Field =
  | 'choice'
  | 'number'
  | 'date'
  | 'place'
  | 'displacement'
  | 'measure'
  | 'choiceAndDate'
  | 'choiceAndNeededDate'
  | 'outcome'
  | 'timetable';

export const FIELDS: Readonly<Record<Subject, Field>> = {
  side: 'choice',
  bone: 'choice',
  place: 'place',
  injury: 'choice',
  direction: 'choice',
  displacement: 'displacement',
  measure: 'measure',
  onset: 'choice',
  mechanism: 'choice',
  injuryDate: 'date',
  treatment: 'choiceAndDate',
  followUp: 'choiceAndNeededDate',
  outcome: 'outcome',
  timetable: 'timetable',
  ageBand: 'choice',
  massKg: 'number',
  heightCm: 'number',
  footShape: 'choice',
  activity: 'choice',
  level: 'choice',
  riskFactor: 'choice',
};

const pick = <T extends string>(list: readonly T[], value: string): T | null =>
  list.find((item) => item === value) ?? null;

const numberOf = (text: string): number | null => {
  const value = Number(text.replace(',', '.'));
  return text.trim() === '' || !Number.isFinite(value) ? null : value;
};

/** The browser's date field gives a real day as YYYY-MM-DD or nothing; the case's own check has the last word. */
export const dateOf = (text: string): IsoDate | null => (/^\d{4}-\d{2}-\d{2}$/.test(text) ? (text as IsoDate) : null);

const placeOf = (content: Content, raw: Raw): Place | null => {
  const mm = numberOf(raw.mm);
  if (mm !== null) return { by: 'distance', mm };
  const region = content.regions.find((each) => each.id === raw.main);
  return region === undefined ? null : { by: 'region', region: region.id };
};

export const valueFromRaw = (content: Content, subject: Subject, raw: Raw): ClaimValue | null => {
  const as = <T>(value: T | null | undefined, make: (value: T) => ClaimValue): ClaimValue | null =>
    value === null || value === undefined ? null : make(value);
  const idIn = <T extends { readonly id: string }>(list: readonly T[]): T['id'] | null =>
    list.find((item) => item.id === raw.main)?.id ?? null;
  const on = dateOf(raw.date);
  switch (subject) {
    case 'side':
      return as(pick(subjectValues.side.options, raw.main), (value) => ({ subject, value }));
    case 'bone':
      return as(pick(subjectValues.bone.options, raw.main), (value) => ({ subject, value }));
    case 'place':
      return as(placeOf(content, raw), (value) => ({ subject, value }));
    case 'injury':
      return as(idIn(content.injuries), (value) => ({ subject, value }));
    case 'direction':
      return as(pick(subjectValues.direction.options, raw.main), (value) => ({ subject, value }));
    case 'displacement': {
      const mm = numberOf(raw.mm);
      if (raw.main !== 'yes' && raw.main !== 'no') return null;
      return { subject, value: { displaced: raw.main === 'yes', ...(mm === null ? {} : { mm }) } };
    }
    case 'measure': {
      const what = pick(FILM_MEASURES, raw.main);
      return what === null ? null : as(numberOf(raw.mm), (value) => ({ subject, value: { what, value } }));
    }
    case 'onset':
      return as(pick(subjectValues.onset.options, raw.main), (value) => ({ subject, value }));
    case 'mechanism':
      return as(idIn(content.mechanisms), (value) => ({ subject, value }));
    case 'injuryDate':
      return as(on, (value) => ({ subject, value }));
    case 'treatment':
      return as(idIn(content.options.filter((each) => each.named)), (option) => ({
        subject,
        value: { option, ...(on === null ? {} : { on }) },
      }));
    case 'followUp':
      return on === null
        ? null
        : as(pick(FOLLOW_UP_FINDINGS, raw.main), (finding) => ({ subject, value: { finding, on } }));
    case 'outcome': {
      const endpoint = pick(ENDPOINTS, raw.main);
      const result = pick(OUTCOME_RESULTS, raw.result);
      return endpoint === null || result === null
        ? null
        : as(on, (day) => ({ subject, value: { endpoint, result, on: day } }));
    }
    case 'timetable': {
      const endpoint = pick(ENDPOINTS, raw.main);
      return as(numberOf(raw.weeks), (weeks) => ({
        subject,
        value: { weeks, ...(endpoint === null ? {} : { endpoint }) },
      }));
    }
    case 'ageBand':
      return as(pick(AGE_BANDS, raw.main), (value) => ({ subject, value }));
    case 'massKg':
      return as(numberOf(raw.main), (value) => ({ subject, value }));
    case 'heightCm':
      return as(numberOf(raw.main), (value) => ({ subject, value }));
    case 'footShape':
      return as(pick(subjectValues.footShape.options, raw.main), (value) => ({ subject, value }));
    case 'activity':
      return as(idIn(content.activities), (value) => ({ subject, value }));
    case 'level':
      return as(pick(subjectValues.level.options, raw.main), (value) => ({ subject, value }));
    case 'riskFactor':
      return as(idIn(content.factors), (value) => ({ subject, value }));
  }
};

export const rawFromValue = (of: ClaimValue): Raw => {
  switch (of.subject) {
    case 'place':
      return of.value.by === 'region'
        ? { ...EMPTY_RAW, main: of.value.region }
        : { ...EMPTY_RAW, mm: String(of.value.mm) };
    case 'displacement':
      return { ...EMPTY_RAW, main: of.value.displaced ? 'yes' : 'no', mm: String(of.value.mm ?? '') };
    case 'measure':
      return { ...EMPTY_RAW, main: of.value.what, mm: String(of.value.value) };
    case 'injuryDate':
      return { ...EMPTY_RAW, date: of.value };
    case 'treatment':
      return { ...EMPTY_RAW, main: of.value.option, date: of.value.on ?? '' };
    case 'followUp':
      return { ...EMPTY_RAW, main: of.value.finding, date: of.value.on };
    case 'timetable':
      return { ...EMPTY_RAW, main: of.value.endpoint ?? '', weeks: String(of.value.weeks) };
    case 'outcome':
      return { ...EMPTY_RAW, main: of.value.endpoint, result: of.value.result, date: of.value.on };
    default:
      return { ...EMPTY_RAW, main: String(of.value) };
  }
};
