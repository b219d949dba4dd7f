/** Sentences about the forecast: weeks as whole numbers, people out of 100. */

import type { FollowUpFinding } from '../explain/follow-up-says';
import type { BackWeeks, ForecastOdds } from '../explain/forecast-messages';
import type { ClaimTag, Given, Message, MessageOf } from '../explain/messages';
import type { Endpoint } from '../ids';
import type { Quantity } from '../units';
import { clauseOf, conditional, hedged, isOfJoint, reportedBy } from './claims';
import { FORECAST_PARTS as P, REACH_WORDS } from './en/forecast-messages';
import {
  ENDPOINT_WORDS,
  FOLLOW_UP_WORDS,
  FOLLOW_UP_WORDS_OF_JOINT,
  LEVEL_NAMES,
  LEVEL_PEOPLE,
  LEVEL_WORDS,
} from './en/lists';
import { PARTS, SENTENCES } from './en/messages';
import { fill, fillRuns, joined, listRuns, type Value } from './fill';
import { namesFor } from './names';
import { list, type Pen, quantity, sentence } from './pen';
import { formatDate, formatNumber, formatQuantity } from './quantities';
import { sourceName } from './sources';
import type { Run } from './types';

const FORECAST_MESSAGES = [
  'forecastOdds',
  'forecastNot',
  'forecastSecond',
  'forecastMoved',
  'borrowedScore',
  'forecastProblem',
  'forecastReached',
  'reviewMove',
  'reviewPoints',
  'factorEffect',
  'factorWaits',
  'factorsDisagree',
  'forecastScored',
  'timetableAsks',
  'timetableNoOdds',
  'timetableJudged',
  'timetableByStudy',
  'timetableOverrun',
  'timetableEnded',
] as const;
export type ForecastMessage = MessageOf<(typeof FORECAST_MESSAGES)[number]>;

const IDS: ReadonlySet<string> = new Set(FORECAST_MESSAGES);
export const isForecastMessage = (message: Message): message is ForecastMessage => IDS.has(message.id);

/** Weeks are counted up: by the end of this week. */
const whole = (week: Quantity): string => String(Math.ceil(week.value));

const weekValues = (pen: Pen, { ten, half, ninety }: BackWeeks, endpoint: Endpoint): Record<string, Value> => {
  const reach = REACH_WORDS[endpoint];
  const number = (week: Quantity): Run => pen.number(whole(week));
  const named = (week: Quantity | null): Value =>
    week === null ? P.never : fillRuns(P.weekOf, { week: pen.number(formatNumber(week.value)) });
  return {
    half: half === null ? fillRuns(P.halfNever, { reach }) : fillRuns(P.half, { week: number(half), reach }),
    halfShort:
      half === null ? fillRuns(P.halfShortNever, { reach }) : fillRuns(P.halfShort, { week: number(half), reach }),
    ninety: ninety === null ? (half === null ? '' : P.ninetyNever) : fillRuns(P.ninety, { week: number(ninety) }),
    middle:
      ten === null || ninety === null
        ? half === null
          ? ''
          : P.middleNever
        : fillRuns(P.middle, { ten: number(ten), ninety: number(ninety) }),
    tenWeek: named(ten),
    halfWeek: named(half),
    ninetyWeek: named(ninety),
  };
};

/** Before and after a follow-up, or as it stands: who has trouble, and who of them is never back. */
const people = (pen: Pen, { people: of }: ForecastOdds, when = ''): Record<string, Value> => ({
  [`trouble${when}`]: pen.number(String(of.trouble)),
  [`notBack${when}`]: pen.number(String(of.notBack)),
});

/** A ratio keeps its second decimal: 1.11 (0.99 to 1.23) rounded to one would cross 1 or not. */
const formatSize = ({ value, lowHigh: [low, high] = [value, value] }: Quantity): string => {
  const two = (ratio: number): string => String(Math.round(100 * ratio) / 100);
  return fill(PARTS.band, { value: two(value), low: two(low), high: two(high) });
};

/** A word is put to it only from nine in ten on, either way. */
const NINETY = 90;
const judgedValues = (pen: Pen, longer: number): Record<string, Value> => ({
  longer: pen.number(String(longer)),
  nine: longer >= NINETY ? P.shorterThanNine : longer <= 100 - NINETY ? P.longerThanNine : '',
});

const followUpWords = ({ content, explanation }: Pen) =>
  isOfJoint(content, explanation.injury) ? FOLLOW_UP_WORDS_OF_JOINT : FOLLOW_UP_WORDS;
const foundRuns = (pen: Pen, findings: readonly FollowUpFinding[]): readonly Run[] =>
  listRuns(
    findings.map((each) => followUpWords(pen)[each]),
    P.or,
    '',
  );

type TimetableMessage = Extract<ForecastMessage, { readonly id: `timetable${string}` }>;
const judgement = (pen: Pen, message: TimetableMessage): readonly Run[] => {
  switch (message.id) {
    case 'timetableJudged': {
      const { longer, notThereAt } = message.args;
      return sentence(pen, 'timetableJudged', {
        ...judgedValues(pen, longer),
        who: notThereAt === null ? P.whoAll : fillRuns(P.whoNotThere, { week: String(notThereAt.value) }),
      });
    }
    case 'timetableByStudy': {
      const { studies, notThereAt } = message.args;
      return sentence(pen, 'timetableByStudy', {
        who: notThereAt === null ? P.whoBack : fillRuns(P.whoBackLater, { week: String(notThereAt.value) }),
        studies: list(
          studies.map(({ source, level, longer }) =>
            fillRuns(pen.reader === 'study' ? P.longerIn : P.longerAmong, {
              longer: pen.number(String(longer)),
              source: sourceName(pen.content, source),
              level: LEVEL_WORDS[level],
              people: LEVEL_PEOPLE[level],
            }),
          ),
        ),
        nine: studies.every(({ longer }) => longer >= NINETY)
          ? P.shorterThanNine
          : studies.every(({ longer }) => longer <= 100 - NINETY)
            ? P.longerThanNine
            : '',
      });
    }
    case 'timetableOverrun':
      return sentence(pen, 'timetableOverrun', { week: String(message.args.week.value) });
    case 'timetableEnded':
      return sentence(pen, `timetableEnded.${message.args.result}`, { week: String(message.args.week.value) });
    default:
      return sentence(pen, message.id);
  }
};

/** What follows from a claim holds as far as the claim does. */
const following = (
  pen: Pen,
  id: 'borrowedScore' | 'forecastProblem' | 'forecastReached' | 'forecastScored',
  claim: ClaimTag,
  values: Record<string, Value>,
): readonly Run[] => {
  const given: Given = claim.status === 'ruledOut' ? 'none' : claim.status;
  return joined([...conditional(fillRuns(SENTENCES[id][pen.reader], values), given, pen.reader), { text: '.' }]);
};

/** What the forecast computes was read in no source: its numbers carry no mark. A published size keeps its own. */
export const forecastRuns = (given: Pen, message: ForecastMessage): readonly Run[] => {
  const pen: Pen =
    message.id === 'factorEffect' || message.id === 'factorWaits' ? given : { ...given, number: (text) => ({ text }) };
  const { content, reader } = pen;
  switch (message.id) {
    case 'forecastOdds': {
      const { args } = message;
      const level = reader === 'patient' ? LEVEL_PEOPLE[args.level] : LEVEL_NAMES[args.level];
      const clause = fillRuns(SENTENCES.forecastOdds[reader], {
        ...weekValues(pen, args.weeks, args.endpoint),
        ...people(pen, args),
        option: namesFor(content, reader).option(args.option),
        people: level,
        endpoint: ENDPOINT_WORDS[args.endpoint],
        studies: list(args.studies.map((source) => sourceName(content, source))),
        counted: args.counted,
        apart: formatQuantity(args.apart),
        uneventful: quantity(pen, args.uneventful),
        problemBand: quantity(pen, args.problem),
        notBackBand: quantity(pen, args.notBack),
      });
      return joined([...conditional(clause, args.given, reader), { text: '.' }]);
    }
    case 'forecastNot': {
      const { option, endpoint, why, studies } = message.args;
      return sentence(pen, 'forecastNot', {
        why: P[reader === 'patient' ? (`${why}.patient` as const) : why],
        option: namesFor(content, reader).option(option),
        endpoint: ENDPOINT_WORDS[endpoint],
        studies: list(studies.map((source) => sourceName(content, source))),
      });
    }
    case 'forecastSecond':
      return sentence(pen, message.args.anew ? 'forecastSecond' : 'forecastSecond.changed');
    case 'forecastMoved': {
      const { week, before, after, endpoint, finding } = message.args;
      const { half } = after.weeks;
      return sentence(pen, `forecastMoved.${message.args.healing ? 'healing' : 'notThere'}`, {
        ...weekValues(pen, after.weeks, endpoint),
        reach: REACH_WORDS[endpoint],
        half: half === null ? P.halfNowNever : fillRuns(P.halfNow, { week: pen.number(whole(half)) }),
        week: String(week.value),
        finding: followUpWords(pen)[finding],
        ...people(pen, before, 'Before'),
        ...people(pen, after, 'After'),
      });
    }
    case 'borrowedScore': {
      const { claim, score, finding, points, ofPoints } = message.args;
      const record = content.filmScores.find(({ id }) => id === score);
      const [low, high] = points.lowHigh ?? [points.value, points.value];
      const [least, most] = ofPoints;
      return following(pen, 'borrowedScore', claim, {
        finding: followUpWords(pen)[finding],
        term: record?.term ?? '',
        bone: record?.madeFor ?? '',
        low: given.number(formatNumber(low)),
        high: given.number(formatNumber(high)),
        least,
        most,
      });
    }
    case 'forecastProblem': {
      const { claim, finding, after, endpoint } = message.args;
      return following(pen, 'forecastProblem', claim, {
        found: followUpWords(pen)[finding],
        back: pen.number(String(100 - after.people.notBack)),
        endpoint: ENDPOINT_WORDS[endpoint],
      });
    }
    case 'forecastScored': {
      const { claim, madeAt, madeOn, result, week, place, crps, horizon, endpoint } = message.args;
      return following(pen, 'forecastScored', claim, {
        madeAt: String(madeAt.value),
        madeOn: madeOn === null ? '' : fillRuns(P.madeOn, { date: formatDate(madeOn) }),
        what: fillRuns(P[result], { week: String(week.value) }),
        place: result === 'given up' ? P.gaveUp : P[place ?? 'noPlace'],
        crps: formatQuantity(crps),
        horizon: String(horizon.value),
        endpoint: ENDPOINT_WORDS[endpoint],
      });
    }
    case 'reviewMove': {
      const { endpoint, week, says, findings, now, after } = message.args;
      const reach = REACH_WORDS[endpoint];
      const half = after?.half ?? null;
      return sentence(pen, `reviewMove.${says}`, {
        week: String(week.value),
        reach,
        findings: foundRuns(pen, findings),
        half:
          half === null
            ? fillRuns(P.reviewNever, { reach })
            : fillRuns(P.reviewHalf, { reach, week: pen.number(whole(half)) }),
        now: pen.number(String(now.trouble)),
        after: after === null ? '' : pen.number(String(after.trouble)),
      });
    }
    case 'reviewPoints': {
      const { says, findings, endpoint } = message.args;
      return sentence(pen, `reviewPoints.${says}`, {
        findings: foundRuns(pen, findings),
        reach: REACH_WORDS[endpoint],
      });
    }
    case 'factorEffect': {
      const { factor, index, measure, size, n, bones, says } = message.args;
      const effect = content.factors.find(({ id }) => id === factor)?.effects[index];
      return sentence(pen, 'factorEffect', {
        factor: namesFor(content, reader).factor(factor),
        says: P[`effect.${says}`],
        of: effect?.of[reader] ?? '',
        measure,
        size: pen.number(formatSize(size)),
        n: n === null ? '' : fillRuns(P.counted, { n }),
        bones,
      });
    }
    case 'factorWaits': {
      const { factor, index, endpoint, centre, weeks, without, p, n } = message.args;
      const waits = content.factors.find(({ id }) => id === factor)?.waits[index];
      return sentence(pen, 'factorWaits', {
        factor: namesFor(content, reader).factor(factor),
        says: without === null ? P.waitsAlone : weeks.value > without.value ? P.waitsLonger : P.waitsNoLonger,
        of: waits?.of[reader] ?? '',
        endpoint: ENDPOINT_WORDS[endpoint],
        centre,
        weeks: quantity(pen, weeks),
        without: without === null ? '' : fillRuns(P.against, { weeks: quantity(pen, without) }),
        p: p === null ? '' : fillRuns(P.byChance, { p }),
        n: n === null ? '' : fillRuns(P.counted, { n }),
      });
    }
    case 'factorsDisagree':
      return sentence(pen, 'factorsDisagree', { factor: namesFor(content, reader).factor(message.args.factor) });
    case 'timetableAsks':
    case 'timetableNoOdds':
    case 'timetableJudged':
    case 'timetableByStudy':
    case 'timetableOverrun':
    case 'timetableEnded': {
      const { claim, of } = message.args;
      const by = reportedBy(pen.explanation.saidBy, claim.claims);
      const said = hedged(
        clauseOf(content, of, reader, isOfJoint(content, pen.explanation.injury)),
        claim.status,
        reader,
        by,
      );
      return joined([...said, { text: ' ' }, ...judgement(pen, message)]);
    }
    case 'forecastReached':
      return following(pen, 'forecastReached', message.args.claim, {
        week: String(message.args.week.value),
        endpoint: ENDPOINT_WORDS[message.args.endpoint],
      });
  }
};
