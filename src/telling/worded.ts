/** A finding in one reader's words, and what every telling asks of it: does it say that something is not known? */
import type { Finding } from '../explain/types';
import type { QuestionId } from '../ids';
import type { Sentence } from '../wording/types';

export interface Worded {
  readonly finding: Finding;
  readonly question: QuestionId;
  readonly sentence: Sentence;
  readonly text: string;
}

/** Messages that say that something is not known, whatever their confidence. */
const NOT_KNOWN: ReadonlySet<string> = new Set<Finding['message']['id']>([
  'notStated',
  'contradiction',
  'nothingLocated',
  'boneClash',
  'placeAgainstClass',
  'gapAgainstWord',
  'measureOfOther',
  'howUnknown',
  'whyUnknown',
  'optionsUnknown',
  'backUnknown',
  'backClash',
  'backNoRange',
]);

export const saysUnknown = (finding: Finding): boolean =>
  NOT_KNOWN.has(finding.message.id) || finding.confidence.level === 'unknown';

/** Which foot, which bone, which kind, and whether it moved apart. */
const OF_THE_INJURY: ReadonlySet<string> = new Set(['side', 'bone', 'place', 'injury', 'displacement', 'measure']);
const CLASHES: ReadonlySet<string> = new Set<Finding['message']['id']>([
  'boneClash',
  'placeAgainstClass',
  'gapAgainstWord',
]);
/** Whether it tells that reports disagree on what the injury is: left out, one of them would pass for what is known. */
export const isDispute = ({ message }: Finding): boolean =>
  CLASHES.has(message.id) || (message.id === 'contradiction' && OF_THE_INJURY.has(message.args.subject));

/** Whether one finding tells what another would say again: spoken one after the other, listeners hear it twice. */
export const tellsToo = ({ message: by }: Finding, { message: of }: Finding): boolean => {
  switch (by.id) {
    case 'mechanismUsual':
      return of.id === 'notStated' && of.args.subject === 'mechanism';
    case 'backDepends':
      return of.id === 'backNoRange' && by.args.own !== null;
    case 'brokenAgain':
    case 'healsSlowly':
      return (
        (of.id === 'claimStated' || of.id === 'followUpWeek') &&
        of.args.of.subject === 'followUp' &&
        of.args.claim.claims.some((id) => by.args.claim.claims.includes(id))
      );
    default:
      return false;
  }
};

/** Texts that stand in the list of the stages. */
const OF_A_STAGE: ReadonlySet<string> = new Set([
  'weightPractice',
  'daily',
  'returnTest',
  'returnNorm',
  'cautionFigure',
]);

/**
 * Not what the picture shows by default; and no step of the way back: told one by one, out of their list, steps would mislead;
 * and no day of return: weeks only, as "what not to say" asks; and no count of a trouble that was not read.
 */
export const isForSpeech = ({ message, basis }: Finding): boolean =>
  message.id !== 'sideDefault' &&
  !message.id.startsWith('stage') &&
  message.id !== 'backDates' &&
  // Where a part begins is a figure: spoken only where its border was read.
  !(message.id === 'zoneBorder' && basis.sources.some(({ mark }) => mark === 'weak' || mark === 'from memory')) &&
  message.id !== 'modelApplies' &&
  message.id !== 'modelMissing' &&
  !(message.id === 'troubleCount' && message.args.mark !== 'seen') &&
  !(message.id === 'contentText' && ['factor', 'optionBurden', 'activity'].includes(message.args.at.kind)) &&
  // Its name says it already.
  !(message.id === 'contentText' && message.args.at.kind === 'option' && message.args.at.part === 'what') &&
  !(message.id === 'contentText' && (message.args.at.kind.startsWith('stage') || OF_A_STAGE.has(message.args.at.kind)));
