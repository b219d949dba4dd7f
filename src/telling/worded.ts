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
  'howUnknown',
  'whyUnknown',
  'optionsUnknown',
  'backUnknown',
  'backNoRange',
]);

export const saysUnknown = (finding: Finding): boolean =>
  NOT_KNOWN.has(finding.message.id) || finding.confidence.level === 'unknown';

/** One step of the way back, or what belongs to a step. Told one by one, out of their list, steps would mislead. */
export const isOfAStage = ({ message }: Finding): boolean =>
  message.id === 'stageUsual' || (message.id === 'contentText' && message.args.at.kind.startsWith('stage'));
