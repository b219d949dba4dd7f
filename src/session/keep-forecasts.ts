/**
 * A forecast is kept when it is about to be overtaken: before a follow-up or an outcome is added, the odds as they were shown go into
 * the case, to be held against what happens. An explanation that is not of this very case, or has no day to count from, gives none.
 */
import { type CaseFile, type Claim, MOST_FORECASTS, withForecast } from '../cases';
import { keptOf } from '../explain/kept-forecast';
import type { Explanation } from '../explain/types';
import type { IsoDate } from '../units';

const OVERTAKES: ReadonlySet<Claim['subject']> = new Set(['followUp', 'outcome']);

export const keepingForecasts = (
  file: CaseFile,
  claim: Claim,
  shown: { readonly explanation: Explanation | null; readonly stale: boolean },
  today: IsoDate,
): CaseFile => {
  const { explanation, stale } = shown;
  if (explanation === null || stale || !OVERTAKES.has(claim.subject)) return file;
  const { injury, start, forecasts, whatIf } = explanation;
  if (injury === null || start === null || Object.keys(whatIf).length > 0) return file;
  return forecasts.reduce((kept, forecast) => {
    const step = forecast.steps.at(-1);
    return step === undefined || forecast.reachedWeek !== null || kept.forecasts.length >= MOST_FORECASTS
      ? kept
      : withForecast(kept, keptOf(injury, forecast, step, start.date, today));
  }, file);
};
