/**
 * The dates that matter to a person: their chances by the forecast, ways to add them, and the stages to take along. Weeks come
 * first; days only once a start is known. Where no chance can be given it says so and why.
 */
import { useId, useState } from 'react';
import type { ExplainedForecast } from '../../explain/forecast-steps';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { AddFixtures } from './AddFixtures';
import { FixtureTable } from './FixtureTable';
import { TakePlan } from './TakePlan';
import { useEndpointName } from './use-endpoint-name';

const NONE: readonly ExplainedForecast[] = [];

/** Why no chance stands beside a date; null where one does. */
const useWhyNone = () => {
  const { say } = usePages();
  return (chosen: ExplainedForecast | undefined): string | null => {
    if (chosen === undefined) return say('dates.noForecastYet');
    const { outcome, reachedWeek } = chosen;
    if (reachedWeek !== null) return say('dates.reached', { week: Math.floor(reachedWeek) });
    if (outcome.kind === 'pooled') return null;
    return say(outcome.kind === 'sideBySide' ? `forecast.none.${outcome.why}` : 'forecast.none.tooFew');
  };
};

/** Where nothing is pooled, one study may be asked by itself. None is until somebody chooses it: no study speaks for another. */
const useStudyChoice = (forecast: ExplainedForecast | undefined) => {
  const [asked, ask] = useState<string>('');
  const spreads =
    forecast?.outcome.kind === 'sideBySide' && forecast.reachedWeek === null ? forecast.spreads : NO_SPREADS;
  return { spreads, chosen: spreads.find(({ study }) => study === asked) ?? null, ask };
};
const NO_SPREADS: ExplainedForecast['spreads'] = [];

const StudyChoice = ({ spreads, chosen, ask }: ReturnType<typeof useStudyChoice>) => {
  const { say } = usePages();
  const id = useId();
  const content = useSession((state) => state.content);
  if (spreads.length === 0) return null;
  return (
    <p className="field">
      <label htmlFor={id}>{say('dates.byStudy')}</label>
      <select id={id} value={chosen?.study ?? ''} onChange={(event) => ask(event.currentTarget.value)}>
        <option value="">{say('dates.noStudy')}</option>
        {spreads.map(({ study, source, level }) => (
          <option key={study} value={study}>
            {sourceName(content, source)}, {say(`level.${level}`)}
          </option>
        ))}
      </select>
      {chosen !== null && <span className="small-print"> {say('dates.oneStudy')}</span>}
    </p>
  );
};

export const DatesBody = () => {
  const { say, hrefOf } = usePages();
  const id = useId();
  const nameOf = useEndpointName();
  const start = useSession((state) => state.explanation?.start ?? null);
  const forecasts = useSession((state) => state.explanation?.forecasts ?? NONE);
  const hasFixtures = useSession((state) => state.file.fixtures.length > 0);
  const [asked, ask] = useState<string | null>(null);
  const chosen =
    forecasts.find(({ endpoint }) => endpoint === asked) ??
    forecasts.find(({ outcome }) => outcome.kind === 'pooled') ??
    forecasts[0];
  const why = useWhyNone()(chosen);
  const study = useStudyChoice(chosen);
  const told = why === null ? (chosen?.steps.at(-1)?.forecast ?? null) : (study.chosen?.forecast ?? null);
  return (
    <div className="dates">
      <p>{say('dates.what')}</p>
      {start === null && (
        <p>
          {say('dates.noStart')} <a href={hrefOf({ page: 'known' })}>{say('dates.sayStart')}</a>
        </p>
      )}
      {hasFixtures && chosen !== undefined && (
        <p className="field">
          <label htmlFor={id}>{say('dates.counted')}</label>
          <select id={id} value={chosen.endpoint} onChange={(event) => ask(event.currentTarget.value)}>
            {forecasts.map(({ endpoint }) => (
              <option key={endpoint} value={endpoint}>
                {nameOf(endpoint)}
              </option>
            ))}
          </select>
        </p>
      )}
      {hasFixtures && why !== null && <p>{why}</p>}
      {hasFixtures && why !== null && <StudyChoice {...study} />}
      <FixtureTable forecast={told} />
      <AddFixtures />
      <TakePlan />
    </div>
  );
};
