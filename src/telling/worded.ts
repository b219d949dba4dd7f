/** A finding in one reader's words, and what every telling asks of it: does it say that something is not known? */
import type { Caution, Content } from '../content/schema';
import type { Explanation, Finding } from '../explain/types';
import type { QuestionId, Reader } from '../ids';
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

export type CautionKind = Caution['kind'];

/** The cautions that apply to this injury and treatment, to this reader. A caution without injuries or options applies to all. */
export const cautionsOf = (
  content: Pick<Content, 'cautions'>,
  explanation: Pick<Explanation, 'injury' | 'option'>,
  reader: Reader,
  kind: CautionKind,
): readonly Caution[] =>
  content.cautions.filter(
    (caution) =>
      caution.kind === kind &&
      (caution.readers.length === 0 || caution.readers.includes(reader)) &&
      (caution.injuries.length === 0 || caution.injuries.some((injury) => injury === explanation.injury)) &&
      (caution.options.length === 0 || caution.options.some((option) => option === explanation.option)),
  );
