/** Weeks of a stated treatment in question 5: its ranges, first the point that people of this level ask for, and the days they come to. */
import { type FindingId, type InjuryId, idOf, type Level, type OptionId } from '../ids';
import { backDates, backNoRange, backNotCounted, backRange, type RangeInputs, rangeFor } from './back-computes';
import { dependsFindings, isByClass, isCountedByClass, isDisputed } from './back-depends';
import { find, givenOf } from './build';
import { caseClasses, classInputs } from './case-classes';
import type { Context } from './context';
import { ENDPOINT_ORDER } from './endpoint-order';
import { evidenceOf } from './figures';
import { type CaseForecast, firstForecast, forecastFindings } from './forecast';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { classSoonerFindings, harmFindings, RUNNING, soonerFindings } from './sooner';
import type { Finding } from './types';

/** Endpoints with a range for this option, first the one that people of this level ask for. */
const endpointsFor = (
  context: Context,
  of: Pick<RangeInputs, 'injury' | 'option' | 'classes'>,
  level: Level | null,
): readonly RangeInputs[] => {
  const at = (l: Level | null): readonly RangeInputs[] =>
    ENDPOINT_ORDER[level ?? 'any']
      .map((endpoint) => ({ ...of, endpoint, level: l }))
      .filter((inputs) => rangeFor(context, inputs) !== null);
  const own = level === null ? [] : at(level);
  return [...own, ...at(null).filter((a) => !own.some((b) => b.endpoint === a.endpoint))];
};

/** The lead of the untreated, told behind the lead of a treatment that has no weeks. */
const asClaim = (f: Finding): Finding =>
  f.depth === 'sentence' ? { ...f, id: idOf<FindingId>('back.byClass'), depth: 'claim' } : f;

/** Whether the answers of daily life tell of work with this injury and treatment. */
const tellsOfWork = ({ content }: Context, injury: InjuryId, option: OptionId): boolean =>
  content.dailyLife.some(
    ({ id, says }) =>
      id === WORK && says.some(({ injuries, options }) => injuries.includes(injury) && options.includes(option)),
  );
const WORK = 'work';

/** Weeks of a stated treatment: those of its own arms, or, where it has none, what was counted of others. */
export const rangeFindings = (
  s: Situation,
  injury: InjuryId,
  option: OptionId,
  forecasts: readonly CaseForecast[],
): readonly Finding[] => {
  const { context, known } = s;
  const ranges = endpointsFor(context, { injury, option, ...classInputs(s) }, known.level?.value ?? null);
  const decided = isCountedByClass(s, injury, option) ? caseClasses(s).tags : [];
  const tags = [...[s.injury, known.option].flatMap((k) => (k === null ? [] : [tagOf(k)])), ...decided];
  const given = s.given === 'contradiction' ? 'contradiction' : givenOf(...tags);
  const whatIf = s.injury?.whatIf ?? false;
  if (ranges.length === 0) {
    const others = dependsFindings(s, injury);
    const byClass = isByClass(s);
    // A treatment is stated: weeks of others lead only where nothing speaks against setting them beside it.
    // Where no treatment has weeks, that the own one has none says it.
    const none = others.every(({ message }) => message.id === 'backDepends' && message.args.ranges.length === 0);
    const behind = none || (byClass && caseClasses(s).classes === undefined) || isDisputed(s, injury);
    const noRange = find(context, 'back', {
      id: behind ? 'headline' : 'noRange',
      depth: behind ? 'sentence' : 'claim',
      compute: backNoRange,
      inputs: { given, injury, option, ...(behind && byClass ? { byClass } : {}) },
      claims: tags,
      unsure: 'notStated',
      whatIf,
    });
    const sooner = classSoonerFindings(s, others, option);
    if (!behind) return [...others, ...sooner, noRange];
    return byClass ? [noRange, ...others.map(asClaim), ...sooner] : [noRange];
  }
  const [first] = ranges;
  // Odds are the sentence where they can be given of what is asked for first; the averages stand under them.
  const odds = first !== undefined && firstForecast(forecasts)?.inputs.endpoint === first.endpoint;
  const found: Finding[] = ranges.map((inputs, i) =>
    find(context, 'back', {
      id: i === 0 && !odds ? 'headline' : `range.${inputs.endpoint.replace(' ', '-')}`,
      depth: i > 0 ? 'more' : odds ? 'claim' : 'sentence',
      compute: backRange,
      inputs: { ...inputs, given },
      evidence: evidenceOf(rangeFor(context, inputs)?.arms ?? []),
      claims: tags,
      models: ['spreadOfStudies'],
      whatIf,
    }),
  );
  // Weeks until it no longer hurts are read as weeks until sport, and weeks until sport as weeks until work, where nothing says otherwise.
  const sport = !ranges.some(({ endpoint }) => RUNNING.includes(endpoint));
  const work = !ranges.some(({ endpoint }) => endpoint === 'work') && !tellsOfWork(context, injury, option);
  if (sport || work)
    found.push(
      find(context, 'back', {
        id: 'notCounted',
        depth: 'claim',
        compute: backNotCounted,
        inputs: { sport, work },
        readers: ['patient', 'broadcast'],
        whatIf,
      }),
    );
  found.unshift(...forecastFindings(s, forecasts, odds ? 'sentence' : 'claim'));
  found.push(...soonerFindings(s, ranges), ...harmFindings(s, ranges));
  const { start } = known;
  // One average, or averages without the slowest, make no span of days: a single date would be read off them.
  const people = first === undefined ? null : (rangeFor(context, first)?.people ?? null);
  if (
    first !== undefined &&
    start !== null &&
    people !== null &&
    mayGiveDates(context, first, known.level?.value ?? null)
  )
    found.push(
      find(context, 'back', {
        id: 'dates',
        depth: 'claim',
        compute: backDates,
        inputs: {
          ...first,
          given: s.given === 'contradiction' ? 'contradiction' : givenOf(...tags, tagOf(start)),
          start: start.value,
          from: start.from,
        },
        evidence: evidenceOf(rangeFor(context, first)?.arms ?? []),
        claims: [...tags, tagOf(start)],
        models: ['spreadOfStudies'],
        whatIf,
      }),
    );
  return found;
};

/**
 * A day read off other people's weeks is taken as one's own: none from another level of sport, or from another clock. Where nobody
 * stated the level, none from people who train for it.
 */
const mayGiveDates = (context: Context, range: RangeInputs, level: Level | null): boolean => {
  const ids: readonly string[] = rangeFor(context, range)?.arms.map(({ study }) => study) ?? [];
  return context.content.studies
    .filter(({ id }) => ids.includes(id))
    .every(
      (row) =>
        row.time?.since === 'first treatment' &&
        (level === null ? row.level === 'everyday' : row.level === level || row.alsoLevels?.includes(level) === true),
    );
};
