/**
 * The spoken script: whole broadcast sentences of `src/wording`, chosen to fit a length, each tied to its finding. Every length
 * opens by saying that nobody here has examined the person and ends with at least one thing that is not known.
 */
import type { Caution, Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import { cautionsFor, tellsOfGroups, wordAlone } from '../wording';
import { doNotSayOf } from './do-not-say';
import { demoLineOf, isWhatIf, sideLineOf, statusLineOf, whatIfLineOf } from './frame-lines';
import { TELLING_PHRASES as P } from './phrases';
import { RATE, type ScriptSeconds } from './script-fit';
import { type TimedLines, timedLines } from './script-lines';
import { isForSpeech } from './worded';
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
  const worded = wordedFindings(content, explanation, 'broadcast', wordAlone).filter(({ finding }) =>
    isForSpeech(finding),
  );
  const limitOf = ({ what, evidence }: Caution) => ({ text: what.broadcast, mark: evidence.mark });
  const limits = cautions.filter(({ kind }) => kind === 'limit');
  const timed = timedLines(
    {
      worded,
      // Written for broadcast alone: that nobody here has examined the person.
      openings: texts(cautions.filter((c) => c.kind === 'disclaimer' && c.readers.join() === 'broadcast')),
      limits: limits.filter(({ ages }) => ages.length === 0).map(limitOf),
      ofAge: limits.filter(({ ages }) => ages.length > 0).map(limitOf),
      ofOthers: new Set(worded.flatMap(({ finding }) => (tellsOfGroups(content, finding) ? finding.id : []))),
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
