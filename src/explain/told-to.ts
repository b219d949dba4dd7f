/**
 * Whom a finding is told. A patient is told what answers a patient's questions: what is broken and how surely, what may be done
 * today, what comes next and when, what is dangerous, who decides. What was found besides is for whoever tells or learns: where
 * parts of the drawing begin, single trials and clinics, sizes of factors, what is known already of the person who reads. Signs of
 * danger are cautions and never pass here.
 */
import { READERS, type Reader } from '../ids';
import type { ClaimValue, MessageId, MessageOf, TextAddress } from './messages';
import { confirmed, isApart, ownCounts } from './own-counts';
import { tagOf } from './resolve';
import { isSecond } from './second-treatment';
import { mayGrow, type Situation } from './situation';
import { recordOf, troubleCounts } from './trouble-counts';
import type { Finding } from './types';

const OTHERS: readonly Reader[] = READERS.filter((reader) => reader !== 'patient');

/** Of use to whoever tells or learns alone. */
const FOR_OTHERS: ReadonlySet<MessageId> = new Set<MessageId>([
  'neighbours',
  'zoneBorder',
  'breakDrawn',
  'attachedHere',
  'trialArms',
  'stageSheet',
  'factorEffect',
  'factorWaits',
  'factorsDisagree',
  'forecastMissed',
  // A patient's is the next check, with its week.
  'stageAtReview',
]);
const TEXTS_FOR_OTHERS: ReadonlySet<TextAddress['kind']> = new Set<TextAddress['kind']>([
  'factorLimit',
  'factorAgainst',
]);

/** Weeks of groups until a point is reached: none hold where the bone broke again, does not heal as hoped, or is not treated as it began. */
const OF_FIRST_HEALING: readonly MessageId[] = [
  'backRange',
  'backDepends',
  'backClasses',
  'backClassNotStated',
  'backNotCounted',
  'backDates',
  'backSooner',
  'backHarm',
  'forecastNot',
];
/** All figures of groups of people: they were grown. */
const OF_GROWN: readonly MessageId[] = [
  ...OF_FIRST_HEALING,
  'backNoRange',
  'troubleCount',
  'troubleRange',
  'troublesNotCounted',
  'studiesDisagree',
];

/** The person who reads knows it, or it only sets up a drawing. */
const KNOWN_TO_PATIENTS: ReadonlySet<string> = new Set([
  'activity',
  'level',
  'massKg',
  'heightCm',
  'footShape',
  'ageBand',
]);
/** Not stated, it leaves no question that a patient has to ask. */
const NOT_MISSED: ReadonlySet<string> = new Set(['direction', 'mechanism']);

/** The space between the bones of a joint, once it is said how far they have moved apart. */
const isSameShift = ({ facts: { displacement } }: Situation, { subject, value }: ClaimValue): boolean =>
  subject === 'measure' &&
  value.what === 'diastasis' &&
  displacement.state === 'stated' &&
  displacement.value.displaced &&
  displacement.value.mm === value.value;

/** The class is settled, so that what else it could be, and how it is found, is behind the person. */
const isFound = ({ injury, given }: Situation): boolean =>
  injury !== null && !injury.whatIf && tagOf(injury).status === 'confirmed' && given !== 'contradiction';

/** Of the treatment that is in force, or, while none is settled, of every usual one. */
const isOwnOption = ({ known: { option, brokenAgain } }: Situation, of: string): boolean =>
  !confirmed(option) || brokenAgain !== null || option?.value === of;

/** Weeks or odds hang on the class: then it is told, else it says once more where the break is. */
const isCountedInClasses = ({ context, injury }: Situation): boolean =>
  context.content.studies.some(
    ({ injuries, classes }) => classes !== undefined && injuries.some((id) => id === injury?.value),
  );

const isOfText = (s: Situation, at: TextAddress): boolean => {
  if (TEXTS_FOR_OTHERS.has(at.kind)) return false;
  switch (at.kind) {
    // The class says it again, with what is broken there.
    case 'bone':
      return s.injury === null;
    case 'tellApart':
      return !isFound(s);
    case 'injuryNotSeen':
      return !(isFound(s) && s.injuryRecord?.notSeen[at.index]?.untilFound === true);
    // "You put no weight on it", said of another's treatment, would be read as one's own order.
    case 'option':
    case 'optionBurden':
      return isOwnOption(s, at.option);
    default:
      return true;
  }
};

/** One count of each trouble, of people treated alike as far as was counted, once the treatment is settled; where they differ their range. */
const isOwnCount = (s: Situation, { trouble, from, option, type }: MessageOf<'troubleCount'>['args']): boolean => {
  const { injury, known, context } = s;
  const record = context.content.troubles.find(({ id }) => id === trouble);
  if (known.option === null || !confirmed(known.option) || injury === null || record === undefined) return true;
  const counts = ownCounts(context.content, record, injury.value, known.option.value);
  const [own] = counts;
  return (
    !isApart(counts) &&
    own !== undefined &&
    recordOf(own) === recordOf({ from }) &&
    own.option === option &&
    own.type === type
  );
};

/** None of the lesser trouble beside some of another in the same people: those it befell are counted there. */
const isNoneBesideSome = (s: Situation, { percent, from }: MessageOf<'troubleCount'>['args']): boolean => {
  const { injury, context } = s;
  if (percent > 0 || injury === null) return false;
  return context.content.troubles.some((trouble) =>
    troubleCounts(context.content, trouble, { injury: injury.value }).some(
      (each) => recordOf(each) === recordOf({ from }) && each.percent > 0,
    ),
  );
};

/** Matches and stages are for people who play or perform for others. */
const playsForOthers = ({ known: { level } }: Situation): boolean =>
  level === null || level.value === 'professional' || level.value === 'competitive';

/** Weeks that do not hold are told to nobody who would pass them on as this person's: they stay for study. */
const isNotHeld = (s: Situation, id: MessageId): boolean =>
  (s.known.brokenAgain !== null || s.known.healsBadly !== null || isSecond(s)) && OF_FIRST_HEALING.includes(id);

const isForPatients = (s: Situation, { message, depth }: Finding): boolean => {
  if (mayGrow(s) && OF_GROWN.includes(message.id)) return false;
  if (depth === 'sentence') return true;
  if (FOR_OTHERS.has(message.id)) return false;
  switch (message.id) {
    case 'contentText':
      return isOfText(s, message.args.at);
    case 'claimStated': {
      const { subject } = message.args.of;
      return !(
        KNOWN_TO_PATIENTS.has(subject) ||
        (subject === 'place' && depth === 'more') ||
        isSameShift(s, message.args.of)
      );
    }
    case 'notStated':
      return !NOT_MISSED.has(message.args.subject);
    case 'troubleCount':
      return isOwnCount(s, message.args) && !isNoneBesideSome(s, message.args);
    case 'backClassNotStated':
      return !confirmed(s.known.option) || message.args.ranges.some(({ option }) => option === s.known.option?.value);
    // Beside weeks of other treatments, which say already that the others have none.
    case 'backNoRange':
      return false;
    case 'computedClass':
      // Its criteria say the rest, but for what follows from pieces that moved apart: why is said here alone.
      return message.args.byDisplacement || isCountedInClasses(s);
    // Until one is settled they stand one by one, each with what it is.
    case 'optionsUsual':
      return confirmed(s.known.option);
    case 'studiesDisagree':
      return !confirmed(s.known.option);
    case 'lookAgain':
      return !isFound(s);
    case 'sourcesDisagree':
      return s.context.content.contradictions.some(
        ({ id, toPatients }) => id === message.args.contradiction && toPatients,
      );
    case 'backRange':
    case 'backSooner':
      return playsForOthers(s) || !['match play', 'performance'].includes(message.args.endpoint);
    case 'reviewPoints':
    case 'reviewMove':
      return message.args.says === 'notThere' || (message.id === 'reviewMove' && message.args.says === 'healing');
    default:
      return true;
  }
};

/** The finding as it is, or kept from patients. A count of one's own treatment is told even where the first few are of others. */
export const toldTo = (s: Situation, finding: Finding): Finding => {
  const { message, readers = READERS } = finding;
  if (isNotHeld(s, message.id)) return { ...finding, readers: readers.filter((reader) => reader === 'study') };
  if (!isForPatients(s, finding)) return { ...finding, readers: readers.filter((reader) => OTHERS.includes(reader)) };
  const isOwn = message.id === 'troubleCount' && confirmed(s.known.option) && !readers.includes('patient');
  return isOwn ? { ...finding, readers: ['patient', ...readers] } : finding;
};
