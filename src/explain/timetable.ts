/**
 * Weeks that somebody named, held against the odds: only where it was said to what they count. Weeks that have passed are not held
 * against odds any more: they are overrun, or it is known how it ended.
 */
import type { SubjectValue } from '../cases/schema';
import { backByOf } from '../recovery';
import type { Quantity } from '../units';
import { compute, find, message } from './build';
import { type CaseForecast, eventsFor, evidenceFor } from './forecast';
import { explainedForecast, type ForecastInputs } from './forecast-steps';
import type { ClaimTag } from './messages';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import type { Finding } from './types';

type Timetable = SubjectValue<'timetable'>;

interface TimetableInputs {
  readonly claim: ClaimTag;
  readonly value: Timetable;
}

const of = (value: Timetable) => ({ subject: 'timetable' as const, value });

export const timetableAsks = compute('back.timetableAsks', (_, { claim, value }: TimetableInputs) =>
  message('timetableAsks', { claim, of: of(value) }),
);

export const timetableNoOdds = compute('back.timetableNoOdds', (_, { claim, value }: TimetableInputs) =>
  message('timetableNoOdds', { claim, of: of(value) }),
);

const wholeWeek = (week: number): Quantity => ({ value: Math.floor(week), unit: 'week' });

/** Inputs end with the last follow-up that says that the point is not reached: of people like that, not of all from the start. */
export const timetableJudged = compute(
  'back.timetableJudged',
  (context, { claim, value, ...inputs }: TimetableInputs & ForecastInputs) => {
    const { outcome, steps } = explainedForecast(context, inputs);
    const now = steps.at(-1)?.forecast;
    if (outcome.kind !== 'pooled' || now === undefined || value.endpoint !== inputs.endpoint)
      throw new RangeError('this timetable has no odds to be held against');
    return message('timetableJudged', {
      claim,
      of: of(value),
      notThereAt: now.afterWeek === 0 ? null : wholeWeek(now.afterWeek),
      longer: 100 - backByOf(now, value.weeks),
    });
  },
);

/** Where no odds are pooled: against each study that prints how its people lie apart, by itself. */
export const timetableByStudy = compute(
  'back.timetableByStudy',
  (context, { claim, value, ...inputs }: TimetableInputs & ForecastInputs) => {
    const { spreads } = explainedForecast(context, inputs);
    const [first] = spreads;
    if (first === undefined || value.endpoint !== inputs.endpoint)
      throw new RangeError('this timetable has no study to be held against');
    const { afterWeek } = first.forecast;
    return message('timetableByStudy', {
      claim,
      of: of(value),
      notThereAt: afterWeek === 0 ? null : wholeWeek(afterWeek),
      studies: spreads.map(({ source, level, forecast }) => ({
        source,
        level,
        longer: 100 - backByOf(forecast, value.weeks),
      })),
    });
  },
);

interface PassedInputs extends TimetableInputs {
  /** The latest week at which the person is known not to be there. */
  readonly atWeek: number;
}
export const timetableOverrun = compute('back.timetableOverrun', (_, { claim, value, atWeek }: PassedInputs) =>
  message('timetableOverrun', { claim, of: of(value), week: wholeWeek(atWeek) }),
);

interface EndedInputs extends PassedInputs {
  readonly result: 'reached' | 'given up';
}
export const timetableEnded = compute(
  'back.timetableEnded',
  (_, { claim, value, atWeek, result: how }: EndedInputs) => {
    const result = how === 'given up' ? how : atWeek <= value.weeks ? 'kept' : 'late';
    return message('timetableEnded', { claim, of: of(value), result, week: wholeWeek(atWeek) });
  },
);

/** What the case knows of the point by now: how it ended, or the latest week at which it was not reached. */
const passedOf = (s: Situation, { endpoint, weeks }: Timetable) => {
  if (endpoint === undefined) return null;
  const known = eventsFor(s, endpoint).flatMap(({ week, says, claim }) =>
    week === null ? [] : [{ week, says, claim }],
  );
  const ended = known.find(({ says }) => says === 'there' || says === 'givenUp');
  if (ended !== undefined) return { ...ended, ended: true };
  const last = known.at(-1);
  return last !== undefined && last.week >= weeks ? { ...last, ended: false } : null;
};

const passedFinding = (
  s: Situation,
  inputs: TimetableInputs,
  id: string,
  passed: NonNullable<ReturnType<typeof passedOf>>,
): Finding => {
  const said = [...s.facts.followUps, ...s.facts.outcomes].find((each) => each.id === passed.claim);
  const claims: readonly ClaimTag[] = [
    inputs.claim,
    ...(said === undefined ? [] : [{ status: said.status, claims: [said.id] }]),
    ...(s.known.start === null ? [] : [tagOf(s.known.start)]),
  ];
  const given = { ...inputs, atWeek: passed.week };
  const rest = { id, depth: 'claim', claims } as const;
  return passed.ended
    ? find(s.context, 'back', {
        ...rest,
        compute: timetableEnded,
        inputs: { ...given, result: passed.says === 'there' ? 'reached' : 'given up' },
      })
    : find(s.context, 'back', { ...rest, compute: timetableOverrun, inputs: given });
};

export const timetableFindings = (s: Situation, forecasts: readonly CaseForecast[]): readonly Finding[] =>
  s.facts.timetables.map((said, i) => {
    const { value } = said;
    const claim: ClaimTag = { status: said.status, claims: [said.id] };
    const id = `timetable.${i + 1}`;
    const passed = passedOf(s, value);
    if (passed !== null) return passedFinding(s, { claim, value }, id, passed);
    const against = forecasts.find(
      ({ inputs, explained }) => inputs.endpoint === value.endpoint && explained.spreads.length > 0,
    );
    if (against !== undefined) {
      const isPooled = against.explained.outcome.kind === 'pooled';
      return find(s.context, 'back', {
        id,
        depth: 'claim',
        compute: isPooled ? timetableJudged : timetableByStudy,
        inputs: { claim, value, ...against.inputs },
        evidence: evidenceFor(s, against),
        claims: [claim, ...[s.injury, s.known.option].flatMap((known) => (known === null ? [] : [tagOf(known)]))],
        models: isPooled ? ['spreadOfStudies', 'forecast'] : ['spreadOfStudies'],
      });
    }
    return find(s.context, 'back', {
      id,
      depth: 'claim',
      compute: value.endpoint === undefined ? timetableAsks : timetableNoOdds,
      inputs: { claim, value },
      claims: [claim],
    });
  });
