/** Question 5: when is it back? Stages and what opens them, ranges of named studies, weeks always and dates once a day is known. */
import type { InjuryId } from '../ids';
import { isQuotable, weeksBetween } from '../recovery';
import {
  backGrowing,
  backUnknown,
  brokenAgain,
  followUpWeek,
  forecastMissed,
  healsSlowly,
  lookAgain,
} from './back-computes';
import { dependsFindings } from './back-depends';
import { rangeFindings } from './back-ranges';
import { find } from './build';
import { factFindings, manyFindings } from './claims';
import { disputedClassFindings } from './disputed-class';
import { factorFindings } from './factor-findings';
import { markOf, studiesOf } from './figures';
import { scoreFindings } from './film-scores';
import type { CaseForecast } from './forecast';
import { forecastSecond } from './forecast-computes';
import { scoredFindings } from './kept-forecasts';
import type { ClaimTag } from './messages';
import { tagOf } from './resolve';
import { reviewFindings } from './review-findings';
import { isAnew, isSecond } from './second-treatment';
import { mayGrow, type Situation } from './situation';
import { runningFindings } from './sooner';
import { stageFindings } from './stages';
import { textFinding } from './texts';
import { timetableFindings } from './timetable';
import type { Finding } from './types';

const behind = (f: Finding): Finding => (f.depth === 'sentence' ? { ...f, depth: 'more' } : f);

/** Behind slow healing: no day is counted from weeks that do not hold, and odds that know of it stay near. */
const behindSlow = (f: Finding): readonly Finding[] =>
  f.message.id === 'backDates'
    ? []
    : f.depth === 'sentence'
      ? [{ ...f, depth: f.message.id === 'forecastProblem' ? 'claim' : 'more' }]
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

const TODAY: ReadonlySet<string> = new Set(['back.weightToday', 'back.nextCheck', 'back.running']);

/** After what leads: how much weight today, what the next check decides and when running begins, which a patient asks before all else. */
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
    if (isSecond(s) && again === null)
      found.push(
        find(context, 'back', {
          id: 'forecastSecond',
          depth: slow === null ? 'sentence' : 'claim',
          compute: forecastSecond,
          inputs: { anew: isAnew(s) },
          claims: known.start === null ? [] : [tagOf(known.start)],
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
    if (!found.some(({ message }) => message.id === 'backSooner')) found.push(...runningFindings(s, injuryRecord));
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
