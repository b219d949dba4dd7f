/** Question 5: when is it back? Stages and what opens them, ranges of named studies, weeks always and dates once a day is known. */
import { type FindingId, type InjuryId, idOf, type Level, type OptionId } from '../ids';
import { isQuotable, weeksBetween } from '../recovery';
import {
  backDates,
  backGrowing,
  backNoRange,
  backRange,
  backUnknown,
  brokenAgain,
  followUpWeek,
  forecastMissed,
  healsSlowly,
  lookAgain,
  type RangeInputs,
  rangeFor,
} from './back-computes';
import { dependsFindings, isByClass, isCountedByClass, isDisputed } from './back-depends';
import { find, givenOf } from './build';
import { caseClasses, classInputs } from './case-classes';
import { factFindings, manyFindings } from './claims';
import type { Context } from './context';
import { disputedClassFindings } from './disputed-class';
import { ENDPOINT_ORDER } from './endpoint-order';
import { factorFindings } from './factor-findings';
import { evidenceOf, markOf, studiesOf } from './figures';
import { scoreFindings } from './film-scores';
import { type CaseForecast, firstForecast, forecastFindings, isSecond } from './forecast';
import { scoredFindings } from './kept-forecasts';
import type { ClaimTag } from './messages';
import { tagOf } from './resolve';
import { reviewFindings } from './review-findings';
import { mayGrow, type Situation } from './situation';
import { classSoonerFindings, harmFindings, soonerFindings } from './sooner';
import { stageFindings } from './stages';
import { textFinding } from './texts';
import { timetableFindings } from './timetable';
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

const rangeFindings = (
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
      inputs: { injury, option, ...(behind && byClass ? { byClass } : {}) },
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

const behind = (f: Finding): Finding =>
  f.depth === 'sentence' && f.message.id !== 'forecastSecond' ? { ...f, depth: 'more' } : f;

/** Behind slow healing: no day is counted from weeks that do not hold, and odds that know of it stay near. */
const behindSlow = (f: Finding): readonly Finding[] =>
  f.message.id === 'backDates'
    ? []
    : f.depth === 'sentence'
      ? [{ ...f, depth: f.message.id === 'forecastProblem' || f.message.id === 'forecastSecond' ? 'claim' : 'more' }]
      : [f];

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

const missedFindings = (s: Situation, injury: InjuryId): readonly Finding[] =>
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

const TODAY: ReadonlySet<string> = new Set(['back.weightToday', 'back.nextCheck']);

/** After what leads: how much weight today and what the next check decides, which a patient asks before all else. */
const todayFirst = (found: readonly Finding[]): readonly Finding[] => {
  const isToday = ({ id }: Finding): boolean => TODAY.has(id);
  const leads = found.filter(({ depth }) => depth === 'sentence');
  return [...leads, ...found.filter(isToday), ...found.filter((f) => !isToday(f) && f.depth !== 'sentence')];
};

/** `bands`: with what takes seconds. */
export const backFindings = (s: Situation, forecasts: readonly CaseForecast[], bands: boolean): readonly Finding[] => {
  const { context, facts, injury, injuryRecord, known } = s;
  // Weeks that somebody named are judged first: whoever speaks of them is asked about them first.
  const found: Finding[] = [...timetableFindings(s, forecasts)];
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
    // Weeks of adults are kept from a patient who grows (told-to.ts): this stands in their place.
    if (mayGrow(s))
      found.push(
        find(context, 'back', {
          id: 'growing',
          depth: 'sentence',
          compute: backGrowing,
          inputs: {},
          readers: ['patient'],
        }),
      );
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
    const slow = again === null ? known.healsBadly : null;
    if (slow !== null)
      found.push(
        find(context, 'back', {
          id: 'healsSlowly',
          depth: 'sentence',
          compute: healsSlowly,
          inputs: { claim: slow.tag, healing: slow.healing, on: slow.on },
          claims: [slow.tag],
        }),
      );
    const usual =
      known.option === null
        ? dependsFindings(s, injury.value)
        : rangeFindings(s, injury.value, known.option.value, forecasts);
    // Whose weeks would be this person's is disputed: that leads, and the weeks of each class follow.
    const disputed = slow === null && again === null && !isSecond(s) ? disputedClassFindings(s) : [];
    found.push(
      ...disputed,
      // Ranges are of first treatments from their own start: neither leads after a break anew or for a second treatment.
      ...(slow !== null
        ? usual.flatMap(behindSlow)
        : again !== null || isSecond(s)
          ? usual.map(behind)
          : usual.map((f) => (disputed.length > 0 && f.depth === 'sentence' ? { ...f, depth: 'claim' as const } : f))),
    );
  }
  found.push(
    ...factFindings(context, 'back', 'injuryDate', facts, { unstatedDepth: known.start === null ? 'claim' : 'more' }),
  );
  found.push(
    ...followUpFindings(s),
    ...scoreFindings(s),
    ...manyFindings(context, 'back', facts.outcomes),
    ...scoredFindings(s),
    ...reviewFindings(s, forecasts),
  );
  if (injury !== null && injuryRecord !== null) {
    found.push(...stageFindings(s, injuryRecord, bands));
    injuryRecord.notSeen.forEach(({ againWeeks, evidence }, index) => {
      found.push(
        ...textFinding(context, 'back', {
          id: `notSeen.${index + 1}`,
          at: { kind: 'injuryNotSeen', injury: injury.value, index },
          whatIf: injury.whatIf,
        }),
        ...(againWeeks === undefined
          ? []
          : [
              find(context, 'back', {
                id: `notSeen.${index + 1}.again`,
                depth: 'more',
                compute: lookAgain,
                inputs: { injury: injury.value, index },
                evidence: [evidence],
                whatIf: injury.whatIf,
              }),
            ]),
      );
    });
    found.push(...missedFindings(s, injury.value), ...factorFindings(s));
  }
  return todayFirst(found);
};
