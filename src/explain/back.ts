/** Question 5: when is it back? Stages and what opens them, ranges of named studies, weeks always and dates once a day is known. */
import type { Evidence, Injury } from '../content/schema';
import { ENDPOINTS, type Endpoint, type InjuryId, type Level, type OptionId } from '../ids';
import { isQuotable, weeksBetween } from '../recovery';
import {
  backDates,
  backDepends,
  backNoRange,
  backRange,
  backUnknown,
  brokenAgain,
  followUpWeek,
  forecastMissed,
  type RangeInputs,
  rangeFor,
  stagesOf,
  stageUsual,
} from './back-computes';
import { find, givenOf } from './build';
import { factFindings, manyFindings } from './claims';
import type { Context } from './context';
import { markOf, studiesOf } from './figures';
import type { ArmFigures, ClaimTag } from './messages';
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
    const again = known.brokenAgain;
    if (again !== null)
      found.push(
        find(context, 'back', {
          id: 'brokenAgain',
          depth: 'sentence',
          compute: brokenAgain,
          inputs: { claim: tagOf(again), on: again.value },
          claims: [tagOf(again)],
        }),
      );
    const usual =
      known.option === null ? dependsFindings(s, injury.value) : rangeFindings(s, injury.value, known.option.value);
    found.push(
      ...(again === null ? usual : usual.map((f) => (f.depth === 'sentence' ? { ...f, depth: 'more' as const } : f))),
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
