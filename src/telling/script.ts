/**
 * The spoken script: whole broadcast sentences of `src/wording`, chosen to fit a length, each tied to its finding. Every length
 * opens by saying that nobody here has examined the person and ends with at least one thing that is not known.
 */
import type { Caution, Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import { cautionsFor } from '../wording';
import { doNotSayOf } from './do-not-say';
import { demoLineOf, isWhatIf, sideLineOf, statusLineOf, whatIfLineOf } from './frame-lines';
import { TELLING_PHRASES as P } from './phrases';
import { RATE, type ScriptSeconds } from './script-fit';
import { type TimedLines, timedLines } from './script-lines';
import { isForSpeech, saysUnknown } from './worded';
import { wordedFindings } from './worded-findings';

export interface ScriptOptions {
  readonly seconds: ScriptSeconds;
  /** 100 to 220, usually 150. */
  readonly wordsPerMinute?: number;
}

export interface Script extends TimedLines {
  readonly seconds: ScriptSeconds;
  readonly wordsPerMinute: number;
  readonly doNotSay: readonly string[];
  readonly sideLine: string;
  readonly caseLine: string;
  readonly demoLine: string | null;
  readonly whatIfLine: string | null;
  /** The opening as spoken: nobody here has examined the person. */
  readonly disclaimer: string;
}

export const scriptOf = (content: Content, explanation: Explanation, options: ScriptOptions): Script => {
  const { seconds, wordsPerMinute = RATE.usual } = options;
  const cautions = cautionsFor(content, explanation, 'broadcast');
  const texts = (of: readonly Caution[]) => of.map((caution) => caution.what.broadcast);
  const worded = wordedFindings(content, explanation, 'broadcast').filter(({ finding }) => isForSpeech(finding));
  /** A finding that is told opens with it already. */
  const isTold = ({ what }: Caution): boolean =>
    worded.some(({ finding, text }) => !saysUnknown(finding) && text.startsWith(what.broadcast));
  const timed = timedLines(
    {
      worded,
      // Written for broadcast alone: that nobody here has examined the person.
      openings: texts(cautions.filter((c) => c.kind === 'disclaimer' && c.readers.join() === 'broadcast')),
      limits: cautions

        .filter((c) => c.kind === 'limit' && !isTold(c))
        // What is said of this person's age comes before what is said of everybody.
        .toSorted((a, b) => b.ages.length - a.ages.length)
        .map((c) => ({ text: c.what.broadcast, mark: c.evidence.mark })),
      whatIf: isWhatIf(explanation),
    },
    seconds,
    wordsPerMinute,
  );
  return {
    seconds,
    wordsPerMinute,
    ...timed,
    doNotSay: doNotSayOf(content, explanation),
    sideLine: sideLineOf(explanation),
    caseLine: statusLineOf(explanation),
    demoLine: demoLineOf(explanation),
    whatIfLine: whatIfLineOf(explanation),
    disclaimer: timed.lines.find((line) => line.kind === 'opening')?.text ?? P['script.opening'],
  };
};
