/** Question 5: when is it back? Stages and what opens them, ranges of named studies, weeks always and dates once a day is known. */
import type { Evidence, Injury } from '../content/schema';
import { ENDPOINTS, type Endpoint, type InjuryId, type Level, type OptionId, type StudyId } from '../ids';
import { addWeeks, armsFor, calendarOf, isQuotable, rangeOf, weeksBetween } from '../recovery';
import type { IsoDate, Quantity } from '../units';
import { compute, find, givenOf, message } from './build';
import { factFindings, manyFindings } from './claims';
import type { Context } from './context';
import { figuresOf, markOf, studiesOf } from './figures';
import type { ArmFigures, ClaimTag, Given, MessageOf } from './messages';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { textFinding } from './texts';
import type { Finding } from './types';

/** What people of a level ask for first. All levels mixed: what most studies count. */
const ENDPOINT_ORDER: Readonly<Record<Level | 'any', readonly Endpoint[]>> = {
  professional: ['match play', 'performance', 'sport', 'training', 'release', 'clinical healing', 'union', 'work'],
  competitive: ['sport', 'match play', 'performance', 'training', 'release', 'clinical healing', 'union', 'work'],
  recreational: ['sport', 'training', 'performance', 'match play', 'clinical healing', 'union', 'release', 'work'],
  everyday: ['clinical healing', 'union', 'work', 'sport', 'release', 'training', 'performance', 'match play'],
  any: ['sport', 'performance', 'match play', 'clinical healing', 'union', 'work', 'release', 'training'],
};

interface RangeInputs {
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
const rangeFor = (context: Context, { injury, option, endpoint, level }: RangeInputs): RangeFound | null => {
  const { studies } = context.content;
  const arms = armsFor(studies, { injury, option, endpoint, ...(level === null ? {} : { level }) });
  const range = rangeOf(arms);
  if (range === null) return null;
  const ids = new Set(range.arms.map((a) => a.id));
  const printed = range.arms.flatMap((a) => a.rangeWeeks ?? []);
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
export const backNoRange = compute('back.noRange', (_, inputs: MessageOf<'backNoRange'>['args']) =>
  message('backNoRange', inputs),
);
export const backRange = compute('back.range', (context, inputs: RangeInputs & { readonly given: Given }) => {
  const range = rangeFor(context, inputs);
  if (range === null) throw new RangeError('no study for this range');
  const { given, injury, option, endpoint, level } = inputs;
  return message('backRange', { given, injury, option, endpoint, level, ...range });
});
export const backDepends = compute(
  'back.depends',
  (context, inputs: { readonly injury: InjuryId; readonly endpoint: Endpoint }) => {
    const options = context.content.injuries.find((i) => i.id === inputs.injury)?.options ?? [];
    const ranges = options.flatMap((option) => {
      const range = rangeFor(context, { ...inputs, option, level: null });
      return range === null ? [] : [{ option, ...range }];
    });
    return message('backDepends', { ...inputs, ranges });
  },
);
export const backDates = compute(
  'back.dates',
  (
    context,
    inputs: RangeInputs & { readonly given: Given; readonly start: IsoDate; readonly from: 'treatment' | 'injury' },
  ) => {
    const range = rangeFor(context, inputs);
    // Centres alone would promise a day: the dates go as far as single people did, where that was printed.
    const weeks = range?.people ?? range?.weeks;
    if (weeks?.lowHigh === undefined) throw new RangeError('no study for these dates');
    const { given, start, from, endpoint } = inputs;
    const [first, last] = weeks.lowHigh;
    return message('backDates', {
      given,
      from,
      start,
      weeks,
      endpoint,
      earliest: addWeeks(start, first),
      latest: addWeeks(start, last),
    });
  },
);

/** The stages that hold for an option: its own and those of every option, in the order of the content. */
export const stagesOf = (injury: Injury, option: OptionId | null): Injury['stages'] => {
  const own = injury.stages.filter((s) => s.option === null || s.option === option);
  if (own.length > 0) return own;
  const first = injury.stages[0]?.option ?? null;
  return injury.stages.filter((s) => s.option === first);
};

interface StageInputs {
  readonly injury: InjuryId;
  readonly option: OptionId | null;
  readonly index: number;
  readonly start: IsoDate | null;
}
export const stageUsual = compute('back.stage', ({ content }, inputs: StageInputs) => {
  const injury = content.injuries.find((i) => i.id === inputs.injury);
  if (injury === undefined) throw new RangeError(`no injury ${inputs.injury}`);
  const stages = stagesOf(injury, inputs.option);
  const row = stages[inputs.index];
  const day = calendarOf(stages, inputs.start)[inputs.index];
  if (row === undefined || day === undefined) throw new RangeError(`no stage ${inputs.index} for ${inputs.injury}`);
  const { fromWeek, toWeek, fromDate, toDate } = day;
  return message('stageUsual', {
    stage: row.stage,
    number: inputs.index + 1,
    of: stages.length,
    weeks:
      fromWeek === null ? null : { value: fromWeek, unit: 'week', lowHigh: [fromWeek, toWeek ?? fromWeek] as const },
    openEnded: toWeek === null,
    dates: fromDate === null ? null : { from: fromDate, to: toDate },
  });
});

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
    actual: figuresOf(study),
  });
});

const evidenceOf = (arms: readonly ArmFigures[]): readonly Evidence[] =>
  arms.map((a) => ({ source: a.source, mark: a.mark }));

/** Endpoints with a range for this option, first the one that people of this level ask for. */
const endpointsFor = (
  context: Context,
  injury: InjuryId,
  option: OptionId,
  level: Level | null,
): readonly RangeInputs[] => {
  const at = (l: Level | null): readonly RangeInputs[] =>
    ENDPOINT_ORDER[level ?? 'any']
      .map((endpoint) => ({ injury, option, endpoint, level: l }))
      .filter((inputs) => rangeFor(context, inputs) !== null);
  const own = level === null ? [] : at(level);
  return [...own, ...at(null).filter((a) => !own.some((b) => b.endpoint === a.endpoint))];
};

const rangeFindings = (s: Situation, injury: InjuryId, option: OptionId): readonly Finding[] => {
  const { context, known } = s;
  const ranges = endpointsFor(context, injury, option, known.level?.value ?? null);
  const tags = [s.injury, known.option].flatMap((k) => (k === null ? [] : [tagOf(k)]));
  const given = s.given === 'contradiction' ? 'contradiction' : givenOf(...tags);
  const whatIf = s.injury?.whatIf ?? false;
  if (ranges.length === 0)
    return [
      ...dependsFindings(s, injury),
      find(context, 'back', {
        id: 'noRange',
        depth: 'claim',
        compute: backNoRange,
        inputs: { injury, option },
        claims: tags,
        unsure: 'notStated',
        whatIf,
      }),
    ];
  const found = ranges.map((inputs, i) =>
    find(context, 'back', {
      id: i === 0 ? 'headline' : `range.${inputs.endpoint.replace(' ', '-')}`,
      depth: i === 0 ? 'sentence' : 'more',
      compute: backRange,
      inputs: { ...inputs, given },
      evidence: evidenceOf(rangeFor(context, inputs)?.arms ?? []),
      claims: tags,
      models: ['spreadOfStudies'],
      whatIf,
    }),
  );
  const [first] = ranges;
  const { start } = known;
  if (first !== undefined && start !== null)
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

/** No treatment stated: the endpoint that most options have a range for, the earliest in people's order when several tie. */
const dependsFindings = (s: Situation, injury: InjuryId): readonly Finding[] => {
  const { context } = s;
  const options = s.injuryRecord?.options ?? [];
  const count = (endpoint: Endpoint): number =>
    options.filter((option) => rangeFor(context, { injury, option, endpoint, level: null }) !== null).length;
  const order = ENDPOINT_ORDER[s.known.level?.value ?? 'any'];
  const endpoint = order.reduce((a, b) => (count(b) > count(a) ? b : a), order[0] ?? ENDPOINTS[0]);
  const tags = s.injury === null ? [] : [tagOf(s.injury)];
  const whatIf = s.injury?.whatIf ?? false;
  if (count(endpoint) === 0)
    return [
      find(context, 'back', {
        id: 'headline',
        depth: 'sentence',
        compute: backNoRange,
        inputs: { injury, option: null },
        claims: tags,
        unsure: 'notStated',
        whatIf,
      }),
    ];
  return [
    find(context, 'back', {
      id: 'headline',
      depth: 'sentence',
      compute: backDepends,
      inputs: { injury, endpoint },
      evidence: options.flatMap((option) =>
        evidenceOf(rangeFor(context, { injury, option, endpoint, level: null })?.arms ?? []),
      ),
      claims: tags,
      models: ['spreadOfStudies'],
      whatIf,
    }),
  ];
};

const stageFindings = (s: Situation, injury: Injury): readonly Finding[] => {
  const { context, known } = s;
  const option = known.option?.value ?? null;
  const whatIf = s.injury?.whatIf ?? false;
  const stages = stagesOf(injury, option);
  return stages.flatMap((row, index) => {
    const { stage } = row;
    const record = context.content.stages.find((r) => r.id === stage);
    const text = (id: string, at: Parameters<typeof textFinding>[2]['at']) =>
      textFinding(context, 'back', { id, at, whatIf });
    return [
      find(context, 'back', {
        id: `stage.${index + 1}`,
        depth: 'more',
        compute: stageUsual,
        inputs: { injury: injury.id, option, index, start: known.start?.value ?? null },
        evidence: [row.evidence],
        claims: known.start === null ? [] : [tagOf(known.start)],
        whatIf,
      }),
      ...text(`stage.${index + 1}.what`, { kind: 'stage', stage, part: 'what' }),
      ...(record?.opensNext ?? []).flatMap((_, i) =>
        text(`stage.${index + 1}.opens.${i + 1}`, { kind: 'stageOpens', stage, index: i }),
      ),
      ...(record?.sendsBack ?? []).flatMap((_, i) =>
        text(`stage.${index + 1}.back.${i + 1}`, { kind: 'stageSendsBack', stage, index: i }),
      ),
    ];
  });
};

const followUpFindings = (s: Situation): readonly Finding[] => {
  const { context, facts, known } = s;
  const plain = manyFindings(context, 'back', [
    ...facts.followUps,
    ...facts.ruledOut.filter((c) => c.subject === 'followUp'),
  ]);
  const { start } = known;
  if (start === null) return plain;
  return plain.map((finding, i) => {
    const claim = facts.followUps[i];
    if (claim === undefined || weeksBetween(start.value, claim.value.on) < 0) return finding;
    const tag: ClaimTag = { status: claim.status, claims: [claim.id] };
    return find(context, 'back', {
      id: `followUp.${i + 1}`,
      depth: 'claim',
      compute: followUpWeek,
      inputs: { claim: tag, of: { subject: 'followUp', value: claim.value }, start: start.value, from: start.from },
      claims: [tag, tagOf(start)],
    });
  });
};

const forecastFindings = (s: Situation, injury: InjuryId): readonly Finding[] =>
  studiesOf(s.context.content, injury)
    .filter((row) => isQuotable(row) && row.forecast !== undefined && row.time !== null)
    .map((row) =>
      find(s.context, 'back', {
        id: `forecast.${row.id}`,
        depth: 'more',
        compute: forecastMissed,
        inputs: { study: row.id },
        evidence: [{ source: row.source, mark: markOf(row) }],
        whatIf: s.injury?.whatIf ?? false,
      }),
    );

export const backFindings = (s: Situation): readonly Finding[] => {
  const { context, facts, injury, injuryRecord, known } = s;
  const found: Finding[] = [];
  if (injury === null || injuryRecord === null) {
    found.push(
      find(context, 'back', {
        id: 'headline',
        depth: 'sentence',
        compute: backUnknown,
        inputs: {},
        unsure: 'notStated',
      }),
    );
  } else {
    found.push(
      ...(known.option === null
        ? dependsFindings(s, injury.value)
        : rangeFindings(s, injury.value, known.option.value)),
    );
  }
  found.push(
    ...factFindings(context, 'back', 'injuryDate', facts, { unstatedDepth: known.start === null ? 'claim' : 'more' }),
  );
  found.push(...followUpFindings(s));
  if (injury !== null && injuryRecord !== null) {
    found.push(...stageFindings(s, injuryRecord));
    injuryRecord.notSeen.forEach((_, index) => {
      found.push(
        ...textFinding(context, 'back', {
          id: `notSeen.${index + 1}`,
          at: { kind: 'injuryNotSeen', injury: injury.value, index },
          whatIf: injury.whatIf,
        }),
      );
    });
    found.push(...forecastFindings(s, injury.value));
  }
  return found;
};
