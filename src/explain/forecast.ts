/** The forecast of question 5: which points a forecast can be made for, what the follow-ups say of them, and the findings. */
import type { Evidence } from '../content/schema';
import type { Endpoint } from '../ids';
import { weeksBetween } from '../recovery';
import type { IsoDate } from '../units';
import { find, givenOf } from './build';
import { classInputs } from './case-classes';
import { ENDPOINT_ORDER } from './endpoint-order';
import { markOf } from './figures';
import { followUpSays } from './follow-up-says';
import { forecastMoved, forecastNot, forecastOdds, forecastProblem, forecastReached } from './forecast-computes';
import { type ExplainedForecast, explainedForecast, type ForecastEvent, type ForecastInputs } from './forecast-steps';
import type { ClaimTag } from './messages';
import { tagOf } from './resolve';
import { isSecond } from './second-treatment';
import { mayGrow, type Situation } from './situation';
import type { Finding } from './types';

/**
 * What the case says of an endpoint, oldest first: its follow-ups, and how it ended. Given up, it is waited for no more. Without a
 * start only a break anew counts.
 */
export const eventsFor = ({ facts, known }: Situation, endpoint: Endpoint): readonly ForecastEvent[] => {
  const { start } = known;
  const weekOf = (on: IsoDate): number | null => (start === null ? null : weeksBetween(start.value, on));
  const seen = facts.followUps.flatMap(({ id, value }): readonly ForecastEvent[] => {
    const says = followUpSays(value.finding, endpoint);
    const week = weekOf(value.on);
    if (says === null || (week === null ? says !== 'problem' : week < 0)) return [];
    return [{ claim: id, week, finding: value.finding, says }];
  });
  const ended = facts.outcomes.flatMap(({ id, value }): readonly ForecastEvent[] => {
    const week = weekOf(value.on);
    if (value.endpoint !== endpoint || week === null || week < 0) return [];
    return [{ claim: id, week, finding: null, says: value.result === 'reached' ? 'there' : 'givenUp' }];
  });
  // Given up and reached after all: only the latter is how it ended.
  const last = Math.max(...ended.flatMap(({ says, week }) => (says === 'there' && week !== null ? [week] : [])));
  const held = ended.filter(({ says, week }) => says === 'there' || week === null || week >= last);
  return [...seen, ...held].sort((a, b) => (a.week ?? 0) - (b.week ?? 0));
};

export interface CaseForecast {
  readonly inputs: ForecastInputs;
  readonly explained: ExplainedForecast;
}

/** Every endpoint with a study to show, in the order in which people of this level ask. None while class or treatment is open. */
export const forecastsOf = (s: Situation): readonly CaseForecast[] => {
  const { context, injury, known } = s;
  // All whom the studies counted were grown.
  if (injury === null || known.option === null || isSecond(s) || mayGrow(s)) return [];
  // Single studies stand side by side as they were counted: of first healing that went as hoped or not. Pooled odds know what happened.
  const asHoped = known.brokenAgain === null && known.healsBadly === null;
  const base: Omit<ForecastInputs, 'endpoint' | 'events'> = {
    injury: injury.value,
    option: known.option.value,
    level: known.level?.value ?? null,
    ...classInputs(s),
  };
  return ENDPOINT_ORDER[base.level ?? 'any']
    .map((endpoint) => {
      const inputs: ForecastInputs = { ...base, endpoint, events: eventsFor(s, endpoint) };
      return { inputs, explained: explainedForecast(context, inputs) };
    })
    .filter(({ explained: { outcome } }) => outcome.kind === 'pooled' || (outcome.kind === 'sideBySide' && asHoped));
};

/** The one people ask for first of those that can be forecast. */
export const firstForecast = (forecasts: readonly CaseForecast[]): CaseForecast | null =>
  forecasts.find(({ explained }) => explained.outcome.kind === 'pooled') ?? null;

export const evidenceFor = ({ context }: Situation, { explained: { outcome } }: CaseForecast): readonly Evidence[] => {
  if (outcome.kind === 'none') return [];
  const ids = new Set<string>(
    outcome.kind === 'pooled'
      ? [...outcome.arms, ...outcome.problem.arms, ...outcome.notReturned.arms].map(({ id }) => id)
      : outcome.arms.map(({ id }) => id),
  );
  return context.content.studies
    .filter(({ id }) => ids.has(id))
    .map((study) => ({ source: study.source, mark: markOf(study) }));
};

const followUpTag = ({ facts }: Situation, { claim }: ForecastEvent): ClaimTag => {
  const status = [...facts.followUps, ...facts.outcomes].find(({ id }) => id === claim)?.status ?? 'reported';
  return { status, claims: [claim] };
};

/** What the follow-ups did to one forecast: each that moved it, a break anew, the point reached. */
const movesOf = (s: Situation, forecast: CaseForecast, slug: string): readonly Finding[] => {
  const { context, known } = s;
  const { inputs, explained } = forecast;
  const evidence = evidenceFor(s, forecast);
  const rest = {
    evidence,
    models: ['spreadOfStudies', 'forecast'],
    whatIf: s.injury?.whatIf ?? false,
  } as const;
  const found: Finding[] = [];
  const moved = explained.steps.flatMap(({ after }) => (after === null ? [] : [after]));
  const startTag = known.start === null ? [] : [tagOf(known.start)];
  moved.forEach((event, i) => {
    const claim = followUpTag(s, event);
    const latest = i === moved.length - 1 && explained.reachedWeek === null;
    const upTo = { ...inputs, events: inputs.events.slice(0, inputs.events.indexOf(event) + 1), claim };
    found.push(
      find(context, 'back', {
        id: `forecastMoved.${slug}.${i + 1}`,
        depth: latest ? 'claim' : 'more',
        compute: event.says === 'problem' ? forecastProblem : forecastMoved,
        inputs: upTo,
        claims: [claim, ...startTag],
        ...rest,
      }),
    );
  });
  const ended = inputs.events.find(({ says }) => says === 'there' || says === 'givenUp');
  if (ended?.says === 'there' && ended.week !== null) {
    const claim = followUpTag(s, ended);
    found.push(
      find(context, 'back', {
        id: `forecastReached.${slug}`,
        depth: 'claim',
        compute: forecastReached,
        inputs: { ...inputs, claim },
        claims: [claim, ...startTag],
        ...rest,
      }),
    );
  }
  return found;
};

/** The odds as they stand now take the place of those at the start. */
const latestFirst = (start: Finding, moves: readonly Finding[]): readonly Finding[] => {
  const latest = moves.find(({ depth }) => depth === 'claim');
  if (latest === undefined || start.depth === 'more') return [start, ...moves];
  return [
    ...moves.map((each) => (each === latest ? { ...each, depth: start.depth } : each)),
    { ...start, depth: 'more' },
  ];
};

/** The first that can be forecast stands at the given depth; where none can, the first says why not. */
export const forecastFindings = (
  s: Situation,
  forecasts: readonly CaseForecast[],
  depth: Finding['depth'],
): readonly Finding[] => {
  const { context, known } = s;
  const first = firstForecast(forecasts);
  const tags = [s.injury, known.option].flatMap((k) => (k === null ? [] : [tagOf(k)]));
  const given = s.given === 'contradiction' ? ('contradiction' as const) : givenOf(...tags);
  return forecasts.flatMap((forecast, i) => {
    const { inputs, explained } = forecast;
    const slug = inputs.endpoint.replace(' ', '-');
    const shared = { evidence: evidenceFor(s, forecast), claims: tags, whatIf: s.injury?.whatIf ?? false };
    if (explained.outcome.kind === 'pooled')
      return latestFirst(
        find(context, 'back', {
          id: forecast === first && depth === 'sentence' ? 'headline' : `forecast.${slug}`,
          depth: forecast === first ? depth : 'more',
          compute: forecastOdds,
          inputs: { ...inputs, events: [], given },
          models: ['spreadOfStudies', 'forecast'],
          ...shared,
        }),
        movesOf(s, forecast, slug),
      );
    // Said of the point that is asked for first; of the others the drawing says it.
    if (i > 0) return [];
    return [
      find(context, 'back', {
        id: `forecastNot.${slug}`,
        depth: first === null ? 'claim' : 'more',
        compute: forecastNot,
        inputs: { ...inputs, events: [] },
        ...shared,
      }),
    ];
  });
};
