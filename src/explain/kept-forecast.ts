/** A forecast as a case keeps it. By itself, so that keeping one loads nothing that makes one. */
import type { KeptForecast } from '../cases/schema';
import type { InjuryId, StudyId } from '../ids';
import type { IsoDate } from '../units';
import type { ExplainedForecast, ForecastStep } from './forecast-steps';

export const keptOf = (
  injury: InjuryId,
  { outcome, endpoint }: ExplainedForecast,
  { forecast }: ForecastStep,
  start: IsoDate,
  madeOn: IsoDate,
): KeptForecast => ({
  endpoint,
  option: forecast.option,
  injury,
  madeOn,
  start,
  atWeek: forecast.afterWeek,
  branches: forecast.branches as KeptForecast['branches'],
  studies: outcome.kind === 'pooled' ? outcome.arms.map(({ id }): StudyId => id) : [],
});
