/** Question 5: the odds of being back, for the point the person asks for: rings on a rule, any week asked, outcomes, table, studies. */
import { useId, useState } from 'react';
import type { ExplainedForecast, ForecastStep } from '../../explain/forecast-steps';
import { keptOf } from '../../explain/kept-forecast';
import type { Endpoint } from '../../ids';
import { localDay } from '../../units/local-day';
import { usePages, useSession } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { Slider } from '../parts/Slider';
import { ForecastStudies } from './ForecastStudies';
import { KeptForecasts } from './KeptForecasts';
import { OddsRule } from './OddsRule';
import { OddsTable } from './OddsTable';
import { OutcomeSquares } from './OutcomeSquares';
import { StudyRules } from './StudyRules';
import { useEndpointName } from './use-endpoint-name';
import './back.css';

/** The forecasts of the case, and the one that is looked at: the first that can be forecast until another is chosen. */
const useChosen = () => {
  const forecasts = useSession((state) => state.explanation?.forecasts ?? NONE);
  const [endpoint, choose] = useState<Endpoint | null>(null);
  const chosen =
    forecasts.find((each) => each.endpoint === endpoint) ??
    forecasts.find(({ outcome }) => outcome.kind === 'pooled') ??
    forecasts[0] ??
    null;
  return { forecasts, chosen, choose };
};
const NONE: readonly ExplainedForecast[] = [];

const PointChoice = ({ forecasts, chosen, choose }: ReturnType<typeof useChosen>) => {
  const { say } = usePages();
  const id = useId();
  const name = useEndpointName();
  if (forecasts.length < 2 || chosen === null) return null;
  return (
    <p className="slider">
      <label htmlFor={id}>{say('forecast.point')}</label>
      <select
        id={id}
        value={chosen.endpoint}
        onChange={(event) => {
          const found = forecasts.find(({ endpoint }) => endpoint === event.currentTarget.value);
          if (found !== undefined) choose(found.endpoint);
        }}
      >
        {forecasts.map(({ endpoint }) => (
          <option key={endpoint} value={endpoint}>
            {name(endpoint)}
          </option>
        ))}
      </select>
    </p>
  );
};

/** Weeks a person may ask about. */
const ASKED_TO = 52;

const ByWeek = ({ step }: { readonly step: ForecastStep }) => {
  const { say } = usePages();
  const first = Math.ceil(step.forecast.afterWeek);
  const [asked, ask] = useState(12);
  const week = Math.max(first, asked);
  return (
    <Slider
      label={say('forecast.byWeek')}
      low={Math.min(first, ASKED_TO - 1)}
      high={ASKED_TO}
      step={1}
      value={week}
      text={say('forecast.byWeekText', { week, people: step.backBy[week] ?? 0 })}
      onChange={ask}
    />
  );
};

/** Odds on which somebody plans are worth keeping: they can be held against what happens. */
const KeepButton = ({ chosen, told }: { readonly chosen: ExplainedForecast; readonly told: ForecastStep }) => {
  const { say, session } = usePages();
  const injury = useSession((state) => state.explanation?.injury ?? null);
  const start = useSession((state) => state.explanation?.start?.date ?? null);
  const whatIf = useSession((state) => Object.keys(state.whatIf).length > 0);
  if (injury === null || start === null || whatIf || chosen.reachedWeek !== null) return null;
  return (
    <p>
      <button
        type="button"
        className="button"
        onClick={() => session.commands.keepForecast(keptOf(injury, chosen, told, start, localDay(new Date())))}
      >
        {say('kept.keep')}
      </button>
    </p>
  );
};

/** In sight under the sentence. */
export const ForecastPart = () => {
  const { say } = usePages();
  const name = useEndpointName();
  const choice = useChosen();
  const { chosen } = choice;
  const told = chosen?.steps.at(-1);
  if (chosen === null) return null;
  return (
    <section className="forecast" aria-label={say('forecast.title')}>
      <h2>
        {say(told === undefined ? 'forecast.studyByStudy' : 'forecast.until', { endpoint: name(chosen.endpoint) })}
      </h2>
      <PointChoice {...choice} />
      {told === undefined ? (
        <>
          <p>{say(`forecast.none.${chosen.outcome.kind === 'sideBySide' ? chosen.outcome.why : 'tooFew'}`)}</p>
          <StudyRules spreads={chosen.spreads} />
        </>
      ) : (
        <>
          <OddsRule step={told} />
          <ByWeek step={told} />
          <OutcomeSquares step={told} />
          <Disclosure title={say('forecast.table')}>
            <OddsTable steps={chosen.steps} />
          </Disclosure>
        </>
      )}
      <Disclosure title={say('forecast.studies')}>
        <ForecastStudies forecast={chosen} />
      </Disclosure>
      <Disclosure title={say('kept.title')}>
        {told !== undefined && <KeepButton chosen={chosen} told={told} />}
        <KeptForecasts />
      </Disclosure>
    </section>
  );
};
