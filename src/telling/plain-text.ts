/**
 * What a text that is read from top to bottom carries of all that a reader is told. Beside a picture a line may speak of the picture;
 * in a list of steps that open and close each step has its exercises. A patient who reads a text has neither: what is drawn is left to
 * the picture, and of a step that has not opened yet stand its name, its weeks, what it is, what opens the next and what sends back.
 * What a step allows is told once it is open, so that nobody hops in week two. Pure.
 */
import type { MessageId, TextAddress } from '../explain/messages';
import type { Explanation, Finding } from '../explain/types';
import type { Reader, StageId } from '../ids';

/** They explain what is drawn: the frame and its loads, feeders on the bone, screws and soles in the model. */
const OF_THE_PICTURE: ReadonlySet<MessageId> = new Set<MessageId>([
  'modelApplies',
  'modelMissing',
  'loadPull',
  'loadRatio',
  'loadSide',
  'loadMostOfFive',
  'pullAgrees',
  'pullDisagrees',
  'pullUnsure',
  'pullSilent',
  'pullPending',
  'beamLeavesOut',
  'outsideBeam',
  'contributor',
  'oneStep',
  'loadForces',
  'loadSensitivity',
  'loadFlagged',
  'loadUnknown',
  'loadFails',
  'loadPending',
  'otherEdge',
  'repeatedLoad',
  'fedBy',
  'feedingBorder',
  'breakLeaves',
  'support',
  'supportStandIn',
  'supportPending',
  'screwShare',
  'screwBridge',
  'screwLength',
  'screwNotModelled',
  'stageLoad',
  'stageLoadPending',
  'stageNoLoad',
]);
const TEXTS_OF_THE_PICTURE: ReadonlySet<TextAddress['kind']> = new Set<TextAddress['kind']>([
  'activity',
  'attachment',
  'optionTakes',
  'supply',
]);

/** What a step allows: told of the step that is open. */
const OF_THE_OPEN_STEP: ReadonlySet<TextAddress['kind']> = new Set<TextAddress['kind']>([
  'stageAids',
  'stageExercise',
  'weightPractice',
  'daily',
  'returnTest',
  'returnNorm',
]);

const STEP = /^back\.stage\.(\d+)\./;

/** The step that is open as far as is known, by its number; null where nobody knows it. */
const openStep = (findings: readonly Finding[]): number | null => {
  const here = findings.flatMap(({ message }): readonly StageId[] =>
    message.id === 'nextCheck' ? [message.args.stage] : [],
  )[0];
  return (
    findings.flatMap(({ message }) =>
      message.id === 'stageUsual' && message.args.stage === here ? [message.args.number] : [],
    )[0] ?? null
  );
};

const isOfLaterStep = ({ id, message }: Finding, open: number | null): boolean => {
  const number = STEP.exec(id)?.[1];
  if (number === undefined || Number(number) === open) return false;
  if (message.id === 'stageToday' || message.id === 'stageOvershoot') return true;
  return message.id === 'contentText' && OF_THE_OPEN_STEP.has(message.args.at.kind);
};

const isOfPicture = ({ message }: Finding): boolean =>
  OF_THE_PICTURE.has(message.id) || (message.id === 'contentText' && TEXTS_OF_THE_PICTURE.has(message.args.at.kind));

/** Ids of what stands in a text for this reader. */
export const inText = (explanation: Explanation, reader: Reader): ReadonlySet<string> => {
  const all = explanation.questions.flatMap(({ findings }) => findings);
  const open = openStep(all);
  return new Set(
    all
      .filter(
        (each) =>
          reader !== 'patient' || each.depth === 'sentence' || !(isOfPicture(each) || isOfLaterStep(each, open)),
      )
      .map(({ id }) => id),
  );
};
