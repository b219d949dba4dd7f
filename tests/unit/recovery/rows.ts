/** Study rows for tests, and random ones of every way a study prints a spread. */
import fc from 'fast-check';
import { type InjuryId, idOf, type OptionId, type SourceId, type StudyId } from '../../../src/ids';
import { type Forecast, type ForecastOutcome, forecastFor, type StudyLike } from '../../../src/recovery';

export const INJURY = idOf<InjuryId>('zone-2');
export const SCREW = idOf<OptionId>('screw');
export const SPORT = { injury: INJURY, option: SCREW, endpoint: 'sport' } as const;

type Time = NonNullable<StudyLike['time']>;

export const timeOf = (change: Partial<Time> = {}): Time => ({
  endpoint: 'sport',
  centreWeeks: 8,
  centre: 'mean',
  sdWeeks: null,
  rangeWeeks: null,
  quartilesWeeks: null,
  branch: 'all',
  ...change,
});

/** A row without time or count; every one is a trial of its own. */
export const rowOf = (id: string, change: Partial<StudyLike> = {}): StudyLike => ({
  id: idOf<StudyId>(id),
  source: idOf<SourceId>(id),
  mark: 'seen',
  read: 'abstract',
  injuries: [INJURY],
  option: SCREW,
  trial: id,
  design: 'series',
  population: 'people',
  level: 'recreational',
  n: 20,
  time: null,
  event: null,
  events: [],
  ...change,
});

export const meanRow = (id: string, mean: number, sd: number, n: number, change: Partial<StudyLike> = {}): StudyLike =>
  rowOf(id, { n, time: timeOf({ centreWeeks: mean, sdWeeks: sd }), ...change });

export const countRow = (
  id: string,
  what: NonNullable<StudyLike['event']>['what'],
  count: number,
  of: number,
  change: Partial<StudyLike> = {},
): StudyLike => rowOf(id, { event: { what, count, of }, ...change });

/** Six of 60 had a healing problem, one of 40 did not return: each of two trials. */
export const RATES = [countRow('problem', 'failure', 6, 60), countRow('back', 'returned', 39, 40)];

/** ln weeks: uneventful around 8 weeks, a problem half a unit later, one in ten not back. */
export const PLAIN: Forecast<'sport'> = {
  endpoint: 'sport',
  option: SPORT.option,
  branches: [
    { name: 'uneventful', chance: 0.72, time: { mu: Math.log(8), sigma: 0.5 } },
    { name: 'problem', chance: 0.18, time: { mu: Math.log(8) + 0.5, sigma: 0.5 } },
    { name: 'notReturned', chance: 0.1, time: null },
  ],
  afterWeek: 0,
};

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const spread = fc.oneof(
  share(0.05, 1.2).map((cv) => (centreWeeks: number) => timeOf({ centreWeeks, sdWeeks: cv * centreWeeks })),
  fc.tuple(share(0.05, 0.9), share(1.1, 4)).map(
    ([a, b]) =>
      (c: number) =>
        timeOf({ centreWeeks: c, rangeWeeks: [a * c, b * c] }),
  ),
  fc.tuple(share(0.05, 0.9), share(1.1, 4)).map(
    ([a, b]) =>
      (c: number) =>
        timeOf({ centreWeeks: c, centre: 'median', rangeWeeks: [a * c, b * c] }),
  ),
  fc.tuple(share(0.3, 0.95), share(1.05, 2)).map(
    ([a, b]) =>
      (c: number) =>
        timeOf({ centreWeeks: c, centre: 'median', quartilesWeeks: [a * c, b * c] }),
  ),
);

/** An arm to sport with a spread of one kind or another. */
export const anyTimed = fc
  .record({ centre: share(2, 40), n: fc.integer({ min: 5, max: 120 }), spread })
  .map(({ centre, n, spread }) => rowOf('arm', { n, time: spread(centre) }));

const anyCount = (what: 'failure' | 'nonunion' | 'refracture' | 'returned' | 'not returned') =>
  fc
    .integer({ min: 1, max: 60 })
    .chain((of) => fc.integer({ min: 0, max: of }).map((count) => countRow('count', what, count, of)));

const named = (rows: readonly StudyLike[], prefix: string): StudyLike[] =>
  rows.map((row, i) => ({
    ...row,
    id: idOf<StudyId>(`${prefix}-${i}`),
    source: idOf<SourceId>(`${prefix}-${i}`),
    trial: `${prefix}-${i}`,
  }));

/** Rows of which a curve can be made: three arms or more, some after a healing problem, rates of one trial or more each. */
export const anyRows = fc
  .record({
    arms: fc.array(anyTimed, { minLength: 3, maxLength: 7 }),
    after: fc.array(anyTimed, { maxLength: 2 }),
    problems: fc.array(fc.oneof(anyCount('failure'), anyCount('nonunion'), anyCount('refracture')), {
      minLength: 1,
      maxLength: 5,
    }),
    back: fc.array(fc.oneof(anyCount('returned'), anyCount('not returned')), { minLength: 1, maxLength: 5 }),
  })
  .map(({ arms, after, problems, back }) => [
    ...named(arms, 'arm'),
    ...named(
      after.map((row) => ({ ...row, time: row.time && { ...row.time, branch: 'problem' as const } })),
      'after',
    ),
    ...named(problems, 'problem'),
    ...named(back, 'back'),
  ]);

export type Pooled = Extract<ForecastOutcome<'sport'>, { kind: 'pooled' }>;

export const pooledOf = (rows: readonly StudyLike[]): Pooled => {
  const outcome = forecastFor(rows, SPORT);
  if (outcome.kind !== 'pooled') throw new Error(`no curve: ${outcome.kind}`);
  return outcome;
};

export const anyPooled = anyRows.map(pooledOf);
export const anyForecast = anyPooled.map((p) => p.forecast);
