/** What question 5 computes: ranges of named studies and dates, weeks of follow-ups, forecasts that missed. */
import type { Endpoint, InjuryId, Level, OptionId, StudyId } from '../ids';
import { addWeeks, armsFor, rangeOf, weeksBetween } from '../recovery';
import type { IsoDate, Quantity } from '../units';
import { compute, message } from './build';
import { type ClassInputs, countedClasses } from './case-classes';
import type { Context } from './context';
import { figuresOf } from './figures';
import type { ArmFigures, ClaimTag, Given, MessageOf } from './messages';

export interface RangeInputs extends ClassInputs {
  readonly injury: InjuryId;
  readonly option: OptionId;
  readonly endpoint: Endpoint;
  readonly level: Level | null;
}

const weeksRange = (low: number, high: number): Quantity => ({
  value: (low + high) / 2,
  unit: 'week',
  lowHigh: [low, high],
});

interface RangeFound {
  /** From the lowest to the highest printed centre. */
  readonly weeks: Quantity;
  /** From the earliest to the latest single person, where a study printed them; centres of the others included. */
  readonly people: Quantity | null;
  readonly arms: readonly ArmFigures[];
}

/** The range of printed centres with its arms, null when no study speaks. */
export const rangeFor = (context: Context, { level, ...rest }: RangeInputs): RangeFound | null => {
  const { studies } = context.content;
  const arms = armsFor(studies, { ...rest, ...(level === null ? {} : { level }) });
  const range = rangeOf(arms);
  if (range === null) return null;
  const ids = new Set(range.arms.map((a) => a.id));
  // The quickest and the slowest are known only where every study printed its own.
  const all = range.arms.every((a) => a.rangeWeeks !== null);
  const printed = all ? range.arms.flatMap((a) => a.rangeWeeks ?? []) : [];
  return {
    weeks: weeksRange(range.lowWeeks, range.highWeeks),
    people:
      printed.length === 0
        ? null
        : weeksRange(Math.min(range.lowWeeks, ...printed), Math.max(range.highWeeks, ...printed)),
    arms: studies.filter((s) => ids.has(s.id)).map(figuresOf),
  };
};

export const backUnknown = compute('back.unknown', () => message('backUnknown', {}));
export const backClash = compute('back.clash', () => message('backClash', {}));
export const backNoRange = compute('back.noRange', (_, inputs: MessageOf<'backNoRange'>['args']) =>
  message('backNoRange', inputs),
);
export const backRange = compute('back.range', (context, inputs: RangeInputs & { readonly given: Given }) => {
  const range = rangeFor(context, inputs);
  if (range === null) throw new RangeError('no study for this range');
  const { given, injury, option, endpoint, level } = inputs;
  const { studies, injuries } = context.content;
  const record = injuries.find(({ id }) => id === injury);
  const byClass = record !== undefined && countedClasses(context.content, record).length > 0;
  const classed = range.arms.every(({ study }) => studies.find(({ id }) => id === study)?.classes !== undefined);
  return message('backRange', { given, injury, option, endpoint, level, ...range, classOpen: byClass && !classed });
});
export const backDates = compute(
  'back.dates',
  (
    context,
    inputs: RangeInputs & { readonly given: Given; readonly start: IsoDate; readonly from: 'treatment' | 'injury' },
  ) => {
    const range = rangeFor(context, inputs);
    if (range?.weeks.lowHigh === undefined) throw new RangeError('no study for these dates');
    const { given, start, from, endpoint } = inputs;
    // From the earliest average, not from the quickest person: nobody should count on that. As late as the slowest.
    const [first, latestCentre] = range.weeks.lowHigh;
    const last = Math.max(latestCentre, range.people?.lowHigh?.[1] ?? latestCentre);
    const weeks = weeksRange(first, last);
    return message('backDates', {
      given,
      from,
      start,
      weeks,
      counted: range.arms.map(({ level, levelAssumed, time }) => ({
        level,
        ...(levelAssumed ? { levelAssumed } : {}),
        time,
      })),
      endpoint,
      earliest: addWeeks(start, first),
      latest: addWeeks(start, last),
    });
  },
);

export const lookAgain = compute(
  'back.lookAgain',
  ({ content }, inputs: { readonly injury: InjuryId; readonly index: number }) => {
    const [low, high] = content.injuries.find((i) => i.id === inputs.injury)?.notSeen[inputs.index]?.againWeeks ?? [];
    if (low === undefined || high === undefined) throw new RangeError('no weeks after which to look again');
    return message('lookAgain', { injury: inputs.injury, weeks: weeksRange(low, high) });
  },
);

export const backNotCounted = compute('back.notCounted', (_, inputs: MessageOf<'backNotCounted'>['args']) =>
  message('backNotCounted', inputs),
);

export const backGrowing = compute('back.growing', () => message('backGrowing', {}));

export const brokenAgain = compute('back.brokenAgain', (_, inputs: MessageOf<'brokenAgain'>['args']) =>
  message('brokenAgain', inputs),
);

export const healsSlowly = compute('back.healsSlowly', (_, inputs: MessageOf<'healsSlowly'>['args']) =>
  message('healsSlowly', inputs),
);

export const followUpWeek = compute(
  'back.followUp',
  (
    _,
    inputs: {
      readonly claim: ClaimTag;
      readonly of: Extract<MessageOf<'claimStated'>['args']['of'], { subject: 'followUp' }>;
      readonly start: IsoDate;
      readonly from: 'treatment' | 'injury';
    },
  ) =>
    message('followUpWeek', {
      claim: inputs.claim,
      of: inputs.of,
      week: { value: Math.floor(weeksBetween(inputs.start, inputs.of.value.on)), unit: 'week' },
      from: inputs.from,
    }),
);

/** What was forecast in public against what happened, where one study set the two side by side. */
export const forecastMissed = compute('back.forecast', ({ content }, inputs: { readonly study: StudyId }) => {
  const study = content.studies.find((row) => row.id === inputs.study);
  if (study?.forecast === undefined) throw new RangeError(`no forecast in ${inputs.study}`);
  const [low, high] = study.forecast.rangeWeeks ?? [];
  return message('forecastMissed', {
    forecast: {
      value: study.forecast.centreWeeks,
      unit: 'week',
      ...(low === undefined || high === undefined ? {} : { lowHigh: [low, high] as const }),
    },
    centre: study.forecast.centre,
    actual: figuresOf(study),
  });
});
