/**
 * A count that several texts tell is written once: with its study, its rate or its pattern of vessels, and where it is none of these in
 * `counts.yaml`. A text says where it stands, such as `{studies/larson-2002/failure}`, `{studies/boa-2012/weeks}`, `{rates/navicular-again}`,
 * `{vesselPatterns/navicular-inside/diffuse}`, `{factors/smoking/effects/0}` or `{counts/nerve-near-screw}`, and is filled in when the content is compiled. Pure.
 */
import type { Count, Factor, Rate, Study, VesselPattern } from './schema';
import type { CountedUnit } from './schema-care';
import type { Path } from './yaml-file';

/** Words of the screens have places for values too, but without a slash. */
const PLACE = /\{((?:studies|rates|counts|vesselPatterns|factors)\/[^{}]*)\}/g;

/** What may be quoted from, by id. */
export interface Quotable {
  readonly studies: ReadonlyMap<string, Study>;
  readonly rates: ReadonlyMap<string, Rate>;
  readonly counts: ReadonlyMap<string, Count>;
  readonly vesselPatterns: ReadonlyMap<string, VesselPattern>;
  readonly factors: ReadonlyMap<string, Factor>;
}

/** The records whose figures may be quoted. */
export const quotableOf = (
  records: {
    readonly [K in keyof Quotable]: readonly (Quotable[K] extends ReadonlyMap<string, infer R> ? R : never)[];
  },
): Quotable => {
  const byId = <T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, T> =>
    new Map(list.map((record) => [record.id, record]));
  return {
    studies: byId(records.studies),
    rates: byId(records.rates),
    counts: byId(records.counts),
    vesselPatterns: byId(records.vesselPatterns),
    factors: byId(records.factors),
  };
};

interface Counted {
  readonly count: number | null;
  readonly of: number | null;
  readonly unit?: CountedUnit;
  readonly percent: number | null;
  readonly lowHighPercent?: readonly number[] | null;
}

const whole = (n: number): string => String(n).replace(/\B(?=(\d{3})+$)/g, ',');

/** As so many of so many; a percentage only where no count is known, with the interval that was printed. */
const figureOf = ({ count, of, unit, percent, lowHighPercent }: Counted): string => {
  const breaks = unit === 'breaks' ? ' breaks' : '';
  if (count !== null && of !== null) return `${whole(count)} of ${whole(of)}${breaks}`;
  const group = of === null ? '' : ` of ${whole(of)}${breaks}`;
  const interval = lowHighPercent == null ? '' : ` (${lowHighPercent.join(' to ')})`;
  return `${percent} %${group}${interval}`;
};

/** Of the sizes of a factor the one at an index: a ratio with its interval, the weeks, or those of the others beside them. */
const sizeOf = (factor: Factor | undefined, what: string | undefined, index: number): string | null => {
  const [effect, waits] = [factor?.effects?.[index], factor?.waits?.[index]];
  if (what === 'effects' && effect !== undefined) return `${effect.value} (${effect.low} to ${effect.high})`;
  if (waits === undefined || !('weeks' in waits)) return null;
  if (what === 'waits') return String(waits.weeks);
  return what === 'without' && waits.withoutWeeks !== null ? String(waits.withoutWeeks) : null;
};

/** The words that stand at a place; null where nothing does. */
export const quoteOf = (
  place: string,
  { studies, rates, counts, vesselPatterns, factors }: Quotable,
): string | null => {
  const [kind, id = '', what, index, ...rest] = place.split('/');
  if (kind === 'factors') return rest.length > 0 ? null : sizeOf(factors.get(id), what, Number(index));
  if (index !== undefined) return null;
  if (kind === 'studies') {
    const study = studies.get(id);
    const weeks = {
      weeks: study?.time?.centreWeeks,
      spread: study?.time?.sdWeeks,
      forecast: study?.forecast?.centreWeeks,
    };
    if (what !== undefined && Object.hasOwn(weeks, what)) {
      const found = weeks[what as keyof typeof weeks];
      return found == null ? null : String(found);
    }
    const event = [study?.event, ...(study?.events ?? [])].find((each) => each != null && each.what === what);
    return event == null ? null : figureOf(event);
  }
  if (kind === 'vesselPatterns') {
    const counted = vesselPatterns.get(id)?.choices.find((choice) => choice.id === what)?.counted;
    return counted == null ? null : figureOf(counted);
  }
  if (what !== undefined) return null;
  if (kind === 'counts') return counts.get(id)?.says ?? null;
  const rate = rates.get(id);
  return rate === undefined ? null : figureOf(rate);
};

const eachText = (value: unknown, path: Path, at: (text: string, path: Path) => unknown): unknown => {
  if (typeof value === 'string') return at(value, path);
  if (Array.isArray(value)) return value.map((inner, i) => eachText(inner, [...path, i], at));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, eachText(inner, [...path, key], at)]));
};

/** A record with its quotes filled in, and every place at which nothing stands. A quote quotes nothing itself. */
export const quotedIn = (
  record: object,
  from: Quotable,
): { readonly record: object; readonly lost: readonly { readonly path: Path; readonly place: string }[] } => {
  const lost: { path: Path; place: string }[] = [];
  const filled = eachText(record, [], (text, path) =>
    text.replace(PLACE, (asWritten, place: string) => {
      const quote = quoteOf(place, from);
      if (quote === null) lost.push({ path, place });
      return quote ?? asWritten;
    }),
  );
  return { record: filled as object, lost };
};

/** Every place that a text quotes from. */
export const placesIn = (text: string): readonly string[] => [...text.matchAll(PLACE)].map(([, place = '']) => place);
