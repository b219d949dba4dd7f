/** Forecasts that were given once, held against what became of it: inside its ten to ninety, and the score that forecasters use. */
import type { KeptForecast, SubjectValue } from '../cases/schema';
import { type Forecast, scoreOf, weeksBetween } from '../recovery';
import { compute, find, message } from './build';
import type { ClaimTag } from './messages';
import type { Situation } from './situation';
import type { Finding } from './types';

type Outcome = SubjectValue<'outcome'>;

/** Up to here a score is summed: two years, when nearly all who come back are back. */
const HORIZON_WEEKS = 104;

const forecastOf = ({ endpoint, option, atWeek, branches }: KeptForecast): Forecast => ({
  endpoint,
  option,
  branches: branches as Forecast['branches'],
  afterWeek: atWeek,
});

export const forecastScored = compute(
  'back.forecastScored',
  (
    _,
    { kept, outcome, claim }: { readonly kept: KeptForecast; readonly outcome: Outcome; readonly claim: ClaimTag },
  ) => {
    if (kept.start === null) throw new RangeError('a forecast without a start cannot be held against a day');
    const weeks = weeksBetween(kept.start, outcome.on);
    const score = scoreOf(
      forecastOf(kept),
      { endpoint: outcome.endpoint, week: outcome.result === 'reached' ? weeks : 'never' },
      HORIZON_WEEKS,
    );
    return message('forecastScored', {
      claim,
      endpoint: kept.endpoint,
      madeAt: { value: Math.floor(kept.atWeek), unit: 'week' },
      madeOn: kept.madeOn,
      result: outcome.result,
      week: { value: Math.floor(weeks), unit: 'week' },
      place: score.inside,
      crps: { value: Math.round(10 * score.crps) / 10, unit: 'week' },
      horizon: { value: score.horizonWeeks, unit: 'week' },
    });
  },
);

/** Each kept forecast against the last word on its point, where that day comes after the forecast's own week. */
export const scoredFindings = (s: Situation): readonly Finding[] =>
  s.facts.keptForecasts.flatMap((kept, i) => {
    const claim = s.facts.outcomes.filter(({ value }) => value.endpoint === kept.endpoint).at(-1);
    const { start } = kept;
    if (claim === undefined || start === null || weeksBetween(start, claim.value.on) < kept.atWeek) return [];
    const tag: ClaimTag = { status: claim.status, claims: [claim.id] };
    return [
      find(s.context, 'back', {
        id: `forecastScored.${i + 1}`,
        depth: 'claim',
        compute: forecastScored,
        inputs: { kept, outcome: claim.value, claim: tag },
        claims: [tag],
        models: ['forecast'],
      }),
    ];
  });
