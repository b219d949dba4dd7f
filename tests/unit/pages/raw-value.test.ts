/** What a form holds becomes a value of its subject, or nothing; and a value fills the form again. */
import { describe, expect, it } from 'vitest';
import { SUBJECTS } from '../../../src/cases';
import type { Content } from '../../../src/content/schema';
import type { ClaimValue } from '../../../src/explain/messages';
import {
  type ActivityId,
  type FactorId,
  type InjuryId,
  idOf,
  type MechanismId,
  type OptionId,
  type RegionId,
} from '../../../src/ids';
import { EMPTY_RAW, rawFromValue, valueFromRaw } from '../../../src/pages/case/raw-value';
import type { IsoDate } from '../../../src/units';

/** Only ids are looked at here. */
const content = {
  regions: [{ id: 'mt5-zone-1' }],
  injuries: [{ id: 'an-injury' }],
  mechanisms: [{ id: 'a-way' }],
  options: [{ id: 'an-option', named: true }],
  activities: [{ id: 'an-activity' }],
  factors: [{ id: 'a-factor' }],
} as unknown as Content;

const values: readonly ClaimValue[] = [
  { subject: 'side', value: 'left' },
  { subject: 'bone', value: 'cuboid' },
  { subject: 'place', value: { by: 'region', region: idOf<RegionId>('mt5-zone-1') } },
  { subject: 'place', value: { by: 'distance', mm: 23.5 } },
  { subject: 'injury', value: idOf<InjuryId>('an-injury') },
  { subject: 'direction', value: 'spiral' },
  { subject: 'displacement', value: { displaced: true, mm: 2 } },
  { subject: 'displacement', value: { displaced: false } },
  { subject: 'measure', value: { what: 'joint step', value: 2.5 } },
  { subject: 'measure', value: { what: 'Boehler angle', value: -4 } },
  { subject: 'measure', value: { what: 'line depth', value: 0 } },
  { subject: 'onset', value: 'acute on gradual' },
  { subject: 'mechanism', value: idOf<MechanismId>('a-way') },
  { subject: 'injuryDate', value: '2026-02-28' as IsoDate },
  { subject: 'treatment', value: { option: idOf<OptionId>('an-option') } },
  { subject: 'treatment', value: { option: idOf<OptionId>('an-option'), on: '2026-03-02' as IsoDate } },
  { subject: 'followUp', value: { finding: 'line visible', on: '2026-04-02' as IsoDate } },
  { subject: 'timetable', value: { weeks: 6 } },
  { subject: 'timetable', value: { weeks: 6.5, endpoint: 'match play' } },
  { subject: 'outcome', value: { endpoint: 'match play', result: 'given up', on: '2026-04-03' as IsoDate } },
  { subject: 'ageBand', value: '18-34' },
  { subject: 'massKg', value: 71 },
  { subject: 'heightCm', value: 180 },
  { subject: 'footShape', value: 'high' },
  { subject: 'activity', value: idOf<ActivityId>('an-activity') },
  { subject: 'level', value: 'recreational' },
  { subject: 'riskFactor', value: idOf<FactorId>('a-factor') },
];

describe('values in forms', () => {
  it('covers every subject of a case', () => {
    expect(new Set(values.map((of) => of.subject))).toEqual(new Set(SUBJECTS));
  });

  it.each(values)('gives $subject back as it was', (of) => {
    expect(valueFromRaw(content, of.subject, rawFromValue(of))).toEqual(of);
  });

  it.each(SUBJECTS)('makes nothing of an empty form: %s', (subject) => {
    expect(valueFromRaw(content, subject, EMPTY_RAW)).toBe(null);
  });

  it('takes a decimal comma, and no text for a number', () => {
    expect(valueFromRaw(content, 'massKg', { ...EMPTY_RAW, main: '71,5' })).toEqual({ subject: 'massKg', value: 71.5 });
    expect(valueFromRaw(content, 'massKg', { ...EMPTY_RAW, main: 'heavy' })).toBe(null);
    expect(valueFromRaw(content, 'massKg', { ...EMPTY_RAW, main: 'Infinity' })).toBe(null);
  });

  it('does not take a follow-up without its day, nor an id that content does not have', () => {
    expect(valueFromRaw(content, 'followUp', { ...EMPTY_RAW, main: 'united' })).toBe(null);
    expect(valueFromRaw(content, 'injury', { ...EMPTY_RAW, main: 'nothing-known' })).toBe(null);
  });

  it.each(['main', 'result', 'date'] as const)('does not take an outcome without its %s', (part) => {
    const whole = { ...EMPTY_RAW, main: 'union', result: 'reached', date: '2026-04-03' };
    expect(valueFromRaw(content, 'outcome', whole)).not.toBe(null);
    expect(valueFromRaw(content, 'outcome', { ...whole, [part]: '' })).toBe(null);
  });
});
