/**
 * A forecast as the case has it: as it stood at the start, and after each follow-up that says something of the point counted to.
 * Follow-ups before the start and after the point was reached are left out. Plain data for words, chart and fixtures alike.
 */
import type { ClaimId, Endpoint, InjuryId, Level, OptionId, SourceId, StudyId } from '../ids';
import {
  backByOf,
  ceilingOf,
  type FittedArm,
  type Forecast,
  type ForecastOutcome,
  forecastFor,
  healingAt,
  hundredOf,
  knownProblem,
  notThereAt,
  type OfHundred,
  weekOf,
} from '../recovery';
import type { ClassInputs } from './case-classes';
import type { Context } from './context';
import type { FollowUpFinding, Says } from './follow-up-says';

/** What a follow-up says of one endpoint, at a week since the start; null when no start is known (a break anew). */
export interface ForecastEvent {
  readonly claim: ClaimId;
  readonly week: number | null;
  /** Null: not a follow-up but how it ended. */
  readonly finding: FollowUpFinding | null;
  readonly says: Says | 'givenUp';
}

export interface ForecastInputs extends ClassInputs {
  readonly injury: InjuryId;
  readonly option: OptionId;
  readonly endpoint: Endpoint;
  readonly level: Level | null;
  readonly events: readonly ForecastEvent[];
}

export interface ForecastStep {
  /** The follow-up that led to it; null at the start. */
  readonly after: ForecastEvent | null;
  readonly forecast: Forecast;
  /** Weeks by which 10, 50 and 90 of 100 are back; null where fewer than so many ever are. */
  readonly weeks: { readonly ten: number | null; readonly half: number | null; readonly ninety: number | null };
  /** Of 100 people in the order in which they are back, the week of the third, eighth ... ninety-eighth; null: never. For twenty rings. */
  readonly fives: readonly (number | null)[];
  /** Share of people ever back. */
  readonly everBack: number;
  /** How it goes for 100 people, and how many of them are back by the end of week 0, 1, 2 ... */
  readonly people: OfHundred;
  readonly backBy: readonly number[];
}

/**
 * One study by itself: of those of its people who came back, and were not back yet when the case's person was not, the weeks by which
 * so many of 100 were, by the study's own fit. Never pooled with another.
 */
export interface StudySpread {
  readonly study: StudyId;
  readonly source: SourceId;
  readonly level: Level;
  readonly population: string;
  readonly n: number;
  readonly forecast: Forecast;
  readonly ten: number | null;
  readonly half: number | null;
  readonly ninety: number | null;
  readonly fives: readonly (number | null)[];
}

export interface ExplainedForecast {
  readonly endpoint: Endpoint;
  readonly outcome: ForecastOutcome;
  /** Of the studies in the curve, as printed; without a curve of every study that prints a spread, as far as is known of the person. */
  readonly spreads: readonly StudySpread[];
  /** Empty unless the outcome is pooled. */
  readonly steps: readonly ForecastStep[];
  /** Week in which the point was reached or given up. */
  readonly reachedWeek: number | null;
}

/** As far as a chart goes: a year and a half, long after all but few are back. */
export const LAST_WEEK = 78;

const fivesOf = (forecast: Forecast): readonly (number | null)[] =>
  Array.from({ length: 20 }, (_, ring) => weekOf(forecast, (ring + 0.5) / 20));

const spreadOf = (
  { id, source, level, population, n, fit, endpoint, option }: FittedArm,
  afterWeek: number,
): StudySpread => {
  const forecast: Forecast = {
    endpoint,
    option,
    branches: [
      { name: 'uneventful', chance: 1, time: fit },
      { name: 'problem', chance: 0, time: null },
      { name: 'notReturned', chance: 0, time: null },
    ],
    afterWeek,
  };
  const [ten, half, ninety] = [0.1, 0.5, 0.9].map((share) => weekOf(forecast, share)) as [
    number | null,
    number | null,
    number | null,
  ];
  return { study: id, source, level, population, n, forecast, ten, half, ninety, fives: fivesOf(forecast) };
};

/** The latest week at which the person is known not to be there. */
const notThereWeek = (events: readonly ForecastEvent[]): number =>
  Math.max(0, ...events.flatMap(({ says, week }) => (says === 'problem' || week === null ? [] : [week])));

const stepOf = (forecast: Forecast, after: ForecastEvent | null): ForecastStep => ({
  after,
  forecast,
  weeks: { ten: weekOf(forecast, 0.1), half: weekOf(forecast, 0.5), ninety: weekOf(forecast, 0.9) },
  fives: fivesOf(forecast),
  everBack: ceilingOf(forecast),
  people: hundredOf(forecast),
  backBy: Array.from({ length: LAST_WEEK + 1 }, (_, week) => backByOf(forecast, week)),
});

const stepsOf = (start: Forecast, events: readonly ForecastEvent[]): readonly ForecastStep[] => {
  const steps = [stepOf(start, null)];
  for (const event of events) {
    const last = steps.at(-1)?.forecast ?? start;
    if (event.says === 'problem') steps.push(stepOf(knownProblem(last), event));
    else if (event.week !== null && event.week > last.afterWeek) {
      if (event.says === 'notThere') steps.push(stepOf(notThereAt(last, event.week), event));
      if (event.says === 'healing') steps.push(stepOf(healingAt(last, event.week), event));
    }
  }
  return steps;
};

export const explainedForecast = (context: Context, inputs: ForecastInputs): ExplainedForecast => {
  const { injury, option, endpoint, level, events, classes } = inputs;
  const outcome = forecastFor(context.content.studies, {
    injury,
    option,
    endpoint,
    ...(classes === undefined ? {} : { classes }),
    ...(level === null ? {} : { level }),
  });
  const reached = events.findIndex(({ says }) => says === 'there' || says === 'givenUp');
  const before = reached < 0 ? events : events.slice(0, reached);
  return {
    endpoint,
    outcome,
    spreads:
      outcome.kind === 'pooled'
        ? outcome.arms.map((arm) => spreadOf(arm, 0))
        : outcome.kind === 'sideBySide'
          ? outcome.fitted.map((arm) => spreadOf(arm, notThereWeek(before)))
          : [],
    steps: outcome.kind === 'pooled' ? stepsOf(outcome.forecast, before) : [],
    reachedWeek: events[reached]?.week ?? null,
  };
};
