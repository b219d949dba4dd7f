/** One finding in one reader's words. The hedge, the condition and the "what if" are put on here, for every message alike. */
import type { ClaimStatus } from '../cases/schema';
import type { Content, Mark } from '../content/schema';
import { MARKS } from '../content/schema';
import type { ClaimTag, Message } from '../explain/messages';
import type { Explanation, Finding } from '../explain/types';
import type { Reader } from '../ids';
import { armsRuns, comparisonsRuns, countedIn, groupsOfPeople, timeRuns, weeksOfWhom, whoTheyWere } from './arms';
import { backRuns, isBackMessage, peopleRuns } from './back-runs';
import { byLevelRuns, levelNames } from './by-level';
import { centredWeeks, centreOf, firstCentre, mixedNote } from './centres';
import { clauseOf, conditional, hedged as hedgedAs, isOfJoint, reportedBy } from './claims';
import { contentRuns } from './content-text';
import { PIECES } from './en/clauses';
import {
  DESIGN_WORDS,
  ENDPOINT_WORDS,
  LEVEL_PEOPLE,
  STATUS_WORDS,
  SUBJECT_WORDS,
  SUBJECT_WORDS_OF_JOINT,
} from './en/lists';
import { PARTS } from './en/messages';
import { fillRuns, joined, listRuns } from './fill';
import { forecastRuns, isForecastMessage } from './forecast-runs';
import { isLoadMessage, loadRuns } from './load-runs';
import { namesFor } from './names';
import { ofThisAge } from './of-this-age';
import { after, clause, list, type Pen, quantity, sentence } from './pen';
import { peopleOfStudy } from './people';
import { formatDate, formatWeeks } from './quantities';
import { sourceName } from './sources';
import { isStageMessage, stageRuns } from './stage-runs';
import { isSupportMessage, supportRuns } from './support-runs';
import { isTroubleMessage, troubleRuns } from './trouble-runs';
import type { Run, Sentence } from './types';
import { usualWeeksRuns } from './usual-weeks';
import { computedClassClause, isWhereDetail, whereDetailRuns } from './where-runs';
import { isWhyMessage, whyRuns } from './why-runs';

/** The weakest mark a finding rests on: what its own numbers are underlined with. */
const weakestMark = (finding: Finding): Mark | null => {
  const ranks = finding.basis.sources.map((source) => MARKS.indexOf(source.mark));
  return ranks.length === 0 ? null : (MARKS[Math.max(...ranks)] ?? null);
};

/** Each once, in the order they come. */
const joinedWords = (words: readonly string[]): readonly Run[] => list([...new Set(words)]);

const startWord = (from: 'treatment' | 'injury'): string =>
  from === 'treatment' ? PARTS.startTreatment : PARTS.startInjury;

const runsFor = (pen: Pen, message: Message): readonly Run[] => {
  const { content, explanation, reader } = pen;
  const by = 'claim' in message.args ? reportedBy(explanation.saidBy, message.args.claim.claims) : '';
  const hedged = (told: readonly Run[], status: ClaimStatus, to: Reader): readonly Run[] =>
    hedgedAs(told, pen.whatIf ? 'supposed' : status, to, by);
  // What follows of a mere report follows only if it is right.
  const thenOf = (id: 'brokenAgain' | 'healsSlowly', told: readonly Run[], { status }: ClaimTag): readonly Run[] =>
    joined([...told, { text: ' ' }, ...sentence(pen, `${id}.${status === 'confirmed' ? 'so' : 'if'}`)]);
  const names = namesFor(content, reader);
  const ofJoint = isOfJoint(content, explanation.injury);
  const subjects = ofJoint ? SUBJECT_WORDS_OF_JOINT : SUBJECT_WORDS;
  const region = (id: Parameters<typeof names.region>[0] | null): string =>
    id === null ? PARTS.nothing : names.region(id);
  if (isLoadMessage(message)) return loadRuns(pen, message);
  if (isSupportMessage(message)) return supportRuns(pen, message);
  if (isBackMessage(message)) return backRuns(pen, message);
  if (isForecastMessage(message)) return forecastRuns(pen, message);
  if (isStageMessage(message)) return stageRuns(pen, message);
  if (isTroubleMessage(message)) return troubleRuns(pen, message);
  if (isWhereDetail(message)) return whereDetailRuns(pen, message);
  if (isWhyMessage(message)) return whyRuns(pen, message);
  switch (message.id) {
    case 'claimStated':
      return hedged(clauseOf(content, message.args.of, reader, ofJoint), message.args.claim.status, reader);
    case 'notStated':
      return sentence(pen, 'notStated', { subject: subjects[message.args.subject] });
    case 'contradiction': {
      const values = message.args.values.map(({ claim, of }) =>
        joined([
          ...clauseOf(content, of, reader, ofJoint),
          {
            text: ` (${STATUS_WORDS[claim.status]}${reader === 'broadcast' ? reportedBy(explanation.saidBy, claim.claims) : ''})`,
          },
        ]),
      );
      const all = joined(values.flatMap((runs, i) => (i === 0 ? runs : fillRuns(PIECES.orElse, { clause: runs }))));
      return sentence(pen, 'contradiction', { subject: subjects[message.args.subject], values: all });
    }
    case 'contentText':
      return contentRuns(content, explanation, message.args, reader);

    case 'brokenHere': {
      const { claim, bone } = message.args;
      const cracked = explanation.breakAt?.direction === 'incomplete';
      const key = explanation.injury === null ? 'hurt' : cracked ? 'cracked' : 'broken';
      return hedged(
        clause(pen, names.namesBone(message.args.region, bone) ? `brokenHere.${key}.part` : `brokenHere.${key}`, {
          bone: names.bone(bone),
          region: region(message.args.region),
        }),
        claim.status,
        reader,
      );
    }
    case 'jointHurt':
      return hedged(
        clause(pen, 'jointHurt', { region: region(message.args.region) }),
        message.args.claim.status,
        reader,
      );
    case 'boneHurt':
      return hedged(
        clause(pen, 'boneHurt', { bone: names.bone(message.args.bone) }),
        message.args.claim.status,
        reader,
      );
    case 'nothingLocated':
      return sentence(pen, message.args.disputed ? 'nothingLocated.disputed' : 'nothingLocated');
    case 'sideDefault':
    case 'howUnknown':
    case 'modelApplies':
    case 'whyUnknown':
    case 'optionsUnknown':
    case 'backGrowing':
    case 'backUnknown':
    case 'backClash':
      return sentence(pen, message.id);
    case 'optionNotUsual': {
      const { given, instead } = message.args;
      const told = instead.map((id) => names.option(id)).join(PARTS.or);
      const key = instead.length === 0 ? 'optionNotUsual' : 'optionNotUsual.class';
      return conditional(clause(pen, key, { options: told }), given, reader);
    }
    case 'backNoRange': {
      const { given, byClass } = message.args;
      return conditional(clause(pen, byClass ? 'backNoRange.byClass' : 'backNoRange', {}), given, reader);
    }
    case 'boneClash':
      return sentence(pen, 'boneClash', {
        stated: names.bone(message.args.stated),
        implied: names.bone(message.args.implied),
      });
    case 'classFits': {
      const { claim, injury } = message.args;
      const values = { injury: names.injury(injury), region: region(message.args.region) };
      return hedged(clause(pen, 'classFits', values), claim.status, reader);
    }
    case 'classOpen': {
      const { injuries } = message.args;
      const key = injuries.length === 0 ? 'classOpen.none' : injuries.length === 1 ? 'classOpen.one' : 'classOpen';
      return sentence(pen, key, { region: region(message.args.region), injuries: list(injuries.map(names.injury)) });
    }
    case 'computedClass':
      return hedged(computedClassClause(pen, message.args), message.args.claim.status, reader);
    case 'placeAgainstClass':
      return sentence(pen, 'placeAgainstClass', {
        stated: region(message.args.stated),
        injury: names.injury(message.args.injury),
        expected: region(message.args.expected),
      });

    case 'mechanismUsual':
      return sentence(pen, 'mechanismUsual', {
        mechanisms: listRuns(
          message.args.mechanisms.map(names.mechanism),
          pen.reader === 'patient' ? PARTS.or : PARTS.and,
          PARTS.nothing,
        ),
      });
    case 'modelMissing':
      return sentence(pen, `modelMissing.${message.args.model}`);

    case 'optionsUsual':
      return sentence(pen, 'optionsUsual', {
        options: joined(
          message.args.options.flatMap((id, i) => [{ text: i === 0 ? '' : '; ' }, { text: names.option(id) }]),
        ),
      });
    case 'trialArms': {
      const { arms, design } = message.args;
      const source = arms[0] === undefined ? '' : sourceName(content, arms[0].source);
      const people = joinedWords(arms.map((arm) => LEVEL_PEOPLE[arm.level]));
      return sentence(pen, 'trialArms', {
        source,
        design: DESIGN_WORDS[design],
        people,
        arms: armsRuns(content, arms, reader),
      });
    }
    case 'studiesDisagree':
      return sentence(pen, 'studiesDisagree', {
        apart: comparisonsRuns(content, message.args.apart, reader),
        alike: comparisonsRuns(content, message.args.alike, reader),
      });

    case 'backNotCounted': {
      const { sport, work } = message.args;
      return sentence(pen, 'backNotCounted', {
        what: PARTS[sport && work ? 'counted.both' : sport ? 'counted.sport' : 'counted.work'],
      });
    }
    case 'lookAgain':
      return sentence(pen, 'lookAgain', { weeks: pen.number(formatWeeks(message.args.weeks)) });
    case 'brokenAgain': {
      const { claim, on } = message.args;
      const key = ofJoint ? 'brokenAgain.joint' : 'brokenAgain';
      return thenOf('brokenAgain', hedged(clause(pen, key, { date: formatDate(on) }), claim.status, reader), claim);
    }
    case 'healsSlowly': {
      const { claim, healing, on } = message.args;
      const key = `healsSlowly.${healing}${ofJoint ? '.joint' : ''}` as const;
      return thenOf('healsSlowly', hedged(clause(pen, key, { date: formatDate(on) }), claim.status, reader), claim);
    }
    case 'backRange': {
      const { given, option, endpoint, weeks, people, arms } = message.args;
      const apart = byLevelRuns(pen, arms);
      const values = {
        option: names.option(option),
        endpoint: countedIn(endpoint, arms),
        groups: groupsOfPeople(content, arms, apart.length > 0, reader),
        weeks: pen.number(formatWeeks(weeks)),
        people: people === null ? '' : peopleRuns(pen, people, PARTS.singlePeople),
        levels: reader === 'study' ? weeksOfWhom(pen, arms) : apart,
        arms: list(arms.map((arm) => sourceName(content, arm.source))),
      };
      const centre = centreOf(arms);
      const range = clause(pen, centre === 'mean' ? 'backRange' : `backRange.${centre}`, values);
      // Level by level it is a long one for a patient already: there "by study" says that they are of more than one kind.
      const note = reader === 'patient' && apart.length > 0 ? '' : mixedNote(reader, arms);
      const one = after(conditional(range, given, reader), `.${note}`);
      const told =
        reader === 'patient'
          ? joined([
              ...one,
              { text: whoTheyWere(content, arms) },
              ...(people === null ? [] : peopleRuns(pen, people, PARTS.quickest)),
            ])
          : one;
      const key = ofJoint ? 'backRange.openJoint' : 'backRange.open';
      return message.args.classOpen ? joined([...told, { text: ' ' }, ...sentence(pen, key)]) : told;
    }
    case 'backDates': {
      const { given, from, start, weeks, endpoint, earliest, latest, counted } = message.args;
      const values = {
        people: levelNames(counted),
        first: firstCentre(reader, counted),
        start: startWord(from),
        startDate: formatDate(start),
        weeks: formatWeeks(weeks),
        earliest: formatDate(earliest),
        latest: formatDate(latest),
        endpoint: ENDPOINT_WORDS[endpoint],
      };
      return after(conditional(clause(pen, 'backDates', values), given, reader), '.');
    }
    case 'stageUsual':
      return usualWeeksRuns(pen, message.args);
    case 'followUpWeek': {
      const { claim, of, week, from } = message.args;
      const told = hedged(clauseOf(content, of, reader, ofJoint), claim.status, reader);
      const when = sentence(pen, 'followUpWeek', { week: String(week.value), start: startWord(from) });
      return joined([...told, { text: ' ' }, ...when]);
    }
    case 'forecastMissed':
      return sentence(pen, 'forecastMissed', {
        forecast: centredWeeks(reader, message.args.centre, quantity(pen, message.args.forecast)),
        actual: timeRuns(message.args.actual, reader),
        population: peopleOfStudy(content, message.args.actual.study, reader),
      });
  }
};

/** A what-if supposes; it neither reports nor infers, and so takes no hedge and no condition of the case. */
const supposed = (message: Message): Message =>
  'given' in message.args ? ({ ...message, args: { ...message.args, given: 'none' } } as Message) : message;

const stampOf = (message: Message): Sentence['stamp'] => {
  if (message.id === 'contradiction') return 'contradiction';
  return 'claim' in message.args ? message.args.claim.status : null;
};

/** As it stands by itself. */
export const wordAlone = (content: Content, explanation: Explanation, finding: Finding, reader: Reader): Sentence => {
  const mark = weakestMark(finding);
  const number = (text: string): Run => (mark === null ? { text } : { text, mark });
  const message = finding.whatIf ? supposed(finding.message) : finding.message;
  const runs = runsFor({ content, explanation, reader, number, whatIf: finding.whatIf }, message);
  return {
    finding: finding.id,
    runs: joined([{ text: finding.whatIf ? PIECES.whatIf : '' }, ...runs]),
    stamp: finding.whatIf ? null : stampOf(finding.message),
    whatIf: finding.whatIf,
  };
};

/** As it stands among the others of its question: the first figure of others opens with what these cannot say of this age. */
export const wordFinding = (content: Content, explanation: Explanation, finding: Finding, reader: Reader): Sentence => {
  const alone = wordAlone(content, explanation, finding, reader);
  return { ...alone, runs: joined([{ text: ofThisAge(content, explanation, finding, reader) }, ...alone.runs]) };
};
