/** Numbers, dates and lists as a person reads them. English; other languages would each bring their own file. */
import type { IsoDate, Quantity } from '../units';
import { PARTS } from './en/messages';
import { fill } from './fill';

const DATE = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** 14 September 2026. */
export const formatDate = (date: IsoDate): string => DATE.format(new Date(`${date}T00:00:00Z`));

/** At most one decimal, none when it says nothing; never a trailing zero. */
export const formatNumber = (value: number): string => String(Math.round(value * 10) / 10);

/** As it was given: a class is decided by this value, and a rounded one would tell another. */
export const asGiven = (value: number, unit: Quantity['unit'] | null): string =>
  `${value}${unit === null ? '' : UNIT_WORDS[unit]}`;

const UNIT_WORDS: Readonly<Record<Quantity['unit'], string>> = {
  mm: ' mm',
  mm2: ' mm²',
  mm4: ' mm⁴',
  N: ' N',
  'N mm': ' N mm',
  'N m': ' N m',
  MPa: ' MPa',
  kg: ' kg',
  cm: ' cm',
  week: ' weeks',
  deg: '°',
  count: '',
  share: ' %',
  'body weight': ' times body weight',
  second: ' s',
  times: ' times',
  'm/s': ' m/s',
  'N m/rad': ' N m/rad',
};

const inUnit = (value: number, unit: Quantity['unit']): string => formatNumber(unit === 'share' ? value * 100 : value);

/** 7.5 weeks; 72 MPa (30 to 140). */
export const formatQuantity = (quantity: Quantity): string => {
  const value = `${inUnit(quantity.value, quantity.unit)}${UNIT_WORDS[quantity.unit]}`;
  if (quantity.lowHigh === undefined) return value;
  const [low, high] = quantity.lowHigh;
  return fill(PARTS.band, { value, low: inUnit(low, quantity.unit), high: inUnit(high, quantity.unit) });
};

/** A range of weeks: its band when it has one, "about" its value else. */
export const formatWeeks = (weeks: Quantity): string => {
  const [low, high] = weeks.lowHigh ?? [weeks.value, weeks.value];
  return low === high
    ? fill(PARTS.about, { value: formatNumber(low) })
    : fill(PARTS.weeks, { low: formatNumber(low), high: formatNumber(high) });
};

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** To a whole person of a hundred; a tenth only where a whole one would hide that somebody was counted. */
export const hundredOfCount = (percent: number): string =>
  percent > 0 && percent < 0.5 ? formatNumber(percent) : String(Math.round(percent));
