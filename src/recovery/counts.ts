/** How many had a healing problem or did not return, trial by trial: people counted to several endpoints count once. */
import type { StudyLike } from './arms';
import { isOfPeople, isQuotable, type PeopleFilter } from './arms';
import type { Rate } from './types';

export type Counted = Rate['arms'][number];
type Filter = PeopleFilter & { readonly option: StudyLike['option'] };
type Event = { readonly what: string; readonly count: number; readonly of: number; readonly unit: Counted['unit'] };

/**
 * Rows whose counts may speak: read by us, first-hand (a review would count its studies twice), and not of people who were
 * picked because their bone had not healed, or were counted from a second treatment on.
 */
export const countingRows = (studies: readonly StudyLike[], { option, ...people }: Filter): StudyLike[] =>
  studies.filter(
    (s) =>
      isQuotable(s) &&
      s.design !== 'pooled' &&
      s.option === option &&
      isOfPeople(s, people) &&
      s.time?.branch !== 'problem' &&
      s.time?.since !== 'second treatment',
  );

const eventsOf = (rows: readonly StudyLike[]): Event[] =>
  rows
    .flatMap((s) => (s.event === null ? s.events : [s.event, ...s.events]))
    .flatMap(({ what, count, of, unit = 'people' }) =>
      count !== null && of !== null && of > 0 ? [{ what, count, of, unit }] : [],
    );

const groupBy = <T>(items: readonly T[], key: (item: T) => string): T[][] => {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return [...groups.values()];
};

type OfPeople = (events: readonly Event[]) => Omit<Event, 'what'> | null;

const unitOf = (all: readonly Pick<Event, 'unit'>[]): Event['unit'] =>
  all.some(({ unit }) => unit === 'breaks') ? 'breaks' : 'people';

/** One entry a trial. Rows of one trial that describe the same population are the same people; others are added. */
const perTrial = (rows: readonly StudyLike[], ofPeople: OfPeople): Counted[] =>
  groupBy(rows, (s) => s.trial).flatMap((trial) => {
    const [first] = trial;
    const people = groupBy(trial, (s) => s.population).flatMap((same) => ofPeople(eventsOf(same)) ?? []);
    if (first === undefined || people.length === 0) return [];
    const total = (key: 'count' | 'of') => people.reduce((all, p) => all + p[key], 0);
    return [{ id: first.id, source: first.source, count: total('count'), of: total('of'), unit: unitOf(people) }];
  });

const PROBLEMS = ['nonunion', 'delayed union', 'refracture'];

/** What a study called failure; where it did not, its nonunions, delayed unions and refractures, each kind once. */
export const problemCounts = (rows: readonly StudyLike[]): Counted[] =>
  perTrial(rows, (events) => {
    const failure = events.find((e) => e.what === 'failure');
    if (failure) return failure;
    const kinds = PROBLEMS.flatMap((what) => events.find((e) => e.what === what) ?? []);
    if (kinds.length === 0) return null;
    const of = Math.max(...kinds.map((e) => e.of));
    // One person may have had two of them.
    return {
      count: Math.min(
        of,
        kinds.reduce((all, e) => all + e.count, 0),
      ),
      of,
      unit: unitOf(kinds),
    };
  });

export const notReturnedCounts = (rows: readonly StudyLike[]): Counted[] =>
  perTrial(rows, (events) => {
    const missing = events.find((e) => e.what === 'not returned');
    if (missing) return missing;
    const returned = events.find((e) => e.what === 'returned');
    return returned ? { count: returned.of - returned.count, of: returned.of, unit: returned.unit } : null;
  });
