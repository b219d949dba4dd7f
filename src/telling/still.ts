/** The words in the pixels of a still: title, side, status, source, and that it shows nobody. Where they stand: `still-layout.ts`. */
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { QuestionId } from '../ids';
import { questionTitle } from '../wording';
import { demoLineOf, loadStatusLineOf, sideLineOf, statusLineOf, whatIfLineOf } from './frame-lines';
import { TELLING_PHRASES as P } from './phrases';
import { sourcesLine } from './sources-line';
import { STILL_SOURCE_LETTERS } from './still-layout';

export interface Still {
  readonly question: QuestionId;
  readonly title: string;
  readonly sideLine: string;
  /** Status of the case, then whether it is invented or a what-if. */
  readonly statusLine: string;
  readonly sourceLine: string;
  readonly illustrationLine: string;
}

/** A still rests on the one sentence of its question and on whatever is drawn. */
const restsOn = (explanation: Explanation, question: QuestionId) =>
  explanation.questions
    .filter((q) => q.id === question)
    .flatMap((q) => q.findings.filter((finding) => finding.depth === 'sentence' || finding.shows.length > 0))
    .flatMap((finding) => finding.basis.sources.flatMap(({ source }) => source ?? []));

export const stillOf = (content: Content, explanation: Explanation, question: QuestionId): Still => ({
  question,
  title: questionTitle(content, question),
  sideLine: sideLineOf(explanation),
  statusLine: [
    question === 'how' ? loadStatusLineOf(explanation) : statusLineOf(explanation),
    whatIfLineOf(explanation),
    demoLineOf(explanation),
  ]
    .filter((line) => line !== null)
    .join('. '),
  sourceLine: sourcesLine(content, [...new Set(restsOn(explanation, question))], STILL_SOURCE_LETTERS),
  illustrationLine: P.illustration,
});
