/** What the forecast of question 5 says, computed anew from its inputs alone. */
import type { SourceId } from '../ids';
import type { Forecast, ForecastOutcome, Rate } from '../recovery';
import type { Quantity } from '../units';
import { compute, message } from './build';
import type { Context } from './context';
import type { BackWeeks, ForecastOdds } from './forecast-messages';
import { type ExplainedForecast, explainedForecast, type ForecastInputs, type ForecastStep } from './forecast-steps';
import type { ClaimTag, Given, MessageOf } from './messages';

export type Pooled = Extract<ForecastOutcome, { readonly kind: 'pooled' }>;

const rounded = (value: number, digits: number): number => Math.round(value * 10 ** digits) / 10 ** digits;
const weeks = (value: number | null): Quantity | null =>
  value === null ? null : { value: rounded(value, 1), unit: 'week' };
const share = (value: number, band?: readonly [number, number]): Quantity => ({
  value: rounded(value, 3),
  unit: 'share',
  ...(band === undefined ? {} : { lowHigh: [rounded(band[0], 3), rounded(band[1], 3)] }),
});

const chanceOf = (forecast: Forecast, name: Forecast['branches'][number]['name']): number =>
  forecast.branches.find((branch) => branch.name === name)?.chance ?? 0;

const backWeeks = ({ weeks: { ten, half, ninety } }: ForecastStep): BackWeeks => ({
  ten: weeks(ten),
  half: weeks(half),
  ninety: weeks(ninety),
});

/**
 * The bands of the counted rates hold at the start; a follow-up moves the chances, and no study says how far apart they then are.
 * Problems were counted among those who came back or not alike; told are those who came back after one, and so is their band.
 */
const oddsOf = (step: ForecastStep, pooled: Pooled): ForecastOdds => {
  const band = ({ low, high }: Rate, of = 1): readonly [number, number] | undefined =>
    step.after === null ? [of * low, of * high] : undefined;
  return {
    weeks: backWeeks(step),
    people: step.people,
    uneventful: share(chanceOf(step.forecast, 'uneventful')),
    problem: share(chanceOf(step.forecast, 'problem'), band(pooled.problem, 1 - pooled.notReturned.share)),
    notBack: share(chanceOf(step.forecast, 'notReturned'), band(pooled.notReturned)),
  };
};

/** The median weeks of a fitted arm. */
const middles = (pooled: Pooled): readonly number[] => pooled.arms.map(({ fit }) => Math.exp(fit.mu));

const sourcesOf = (arms: readonly { readonly source: SourceId }[]): readonly SourceId[] => [
  ...new Set(arms.map(({ source }) => source)),
];

/** Throws RangeError where no forecast can be pooled: such a finding is never made. */
const pooledOf = (context: Context, inputs: ForecastInputs): ExplainedForecast & { readonly outcome: Pooled } => {
  const explained = explainedForecast(context, inputs);
  const { outcome } = explained;
  if (outcome.kind !== 'pooled') throw new RangeError(`no pooled forecast of ${inputs.endpoint}`);
  return { ...explained, outcome };
};

export const forecastOdds = compute(
  'back.forecastOdds',
  (context, { given, ...inputs }: ForecastInputs & { readonly given: Given }) => {
    const { outcome, steps } = pooledOf(context, inputs);
    const [start] = steps;
    if (start === undefined) throw new RangeError('a forecast without a start');
    const level = inputs.level ?? outcome.arms[0]?.level;
    if (level === undefined) throw new RangeError('a forecast without people');
    const found = middles(outcome);
    const [low, high] = [Math.min(...found), Math.max(...found)].map((week) => rounded(week, 1)) as [number, number];
    return message('forecastOdds', {
      given,
      injury: inputs.injury,
      option: inputs.option,
      endpoint: inputs.endpoint,
      studies: sourcesOf(outcome.arms),
      level,
      counted: outcome.arms.reduce((sum, { n }) => sum + (n ?? 0), 0),
      apart: { value: rounded((low + high) / 2, 1), unit: 'week', lowHigh: [low, high] },
      ...oddsOf(start, outcome),
    });
  },
);

export const forecastSecond = compute('back.forecastSecond', (_, inputs: MessageOf<'forecastSecond'>['args']) =>
  message('forecastSecond', inputs),
);

export const forecastNot = compute('back.forecastNot', (context, inputs: ForecastInputs) => {
  const { outcome } = explainedForecast(context, inputs);
  if (outcome.kind !== 'sideBySide') throw new RangeError(`nothing side by side for ${inputs.endpoint}`);
  return message('forecastNot', {
    option: inputs.option,
    endpoint: inputs.endpoint,
    why: outcome.why,
    studies: sourcesOf(outcome.arms),
  });
});

/** Inputs end with the follow-up that moved it. */
export const forecastMoved = compute(
  'back.forecastMoved',
  (context, { claim, ...inputs }: ForecastInputs & { readonly claim: ClaimTag }) => {
    const { outcome, steps } = pooledOf(context, inputs);
    const [before, after] = [steps.at(-2), steps.at(-1)];
    if (before === undefined || after?.after?.week == null || after.after.finding === null)
      throw new RangeError('no follow-up moved this forecast');
    return message('forecastMoved', {
      from: claim,
      finding: after.after.finding,
      healing: after.after.says === 'healing',
      endpoint: inputs.endpoint,
      week: { value: Math.floor(after.after.week), unit: 'week' },
      before: oddsOf(before, outcome),
      after: oddsOf(after, outcome),
    });
  },
);

export const forecastProblem = compute(
  'back.forecastProblem',
  (context, { claim, ...inputs }: ForecastInputs & { readonly claim: ClaimTag }) => {
    const { outcome, steps } = pooledOf(context, inputs);
    const last = steps.at(-1);
    if (last?.after?.says !== 'problem') throw new RangeError('no healing problem is known');
    const finding = last.after.finding ?? 'broken again';
    return message('forecastProblem', { claim, finding, endpoint: inputs.endpoint, after: oddsOf(last, outcome) });
  },
);

export const forecastReached = compute(
  'back.forecastReached',
  (context, { claim, ...inputs }: ForecastInputs & { readonly claim: ClaimTag }) => {
    const { reachedWeek } = explainedForecast(context, inputs);
    if (reachedWeek === null) throw new RangeError('the point is not reached');
    return message('forecastReached', {
      claim,
      endpoint: inputs.endpoint,
      week: { value: Math.floor(reachedWeek), unit: 'week' },
    });
  },
);
