/**
 * From what people know to the injuries it can mean, with why, and with what tells the first few apart. Pure; the same content and
 * the same words give the same answer.
 */
import type { FindWord } from '../../content/schema';
import { apartOf } from './apart';
import { hitsIn } from './hits';
import { type FindContent, meaningFor, phrasesOf, subjectsOf } from './phrases';
import { codesTyped, readCode } from './read-code';
import { codeReasons, type Reason, tapReasons, wordReasons } from './reasons';
import { type Lexicon, lexiconOf } from './terms';
import type { Candidate, Found, Sought } from './types';

/** One word that meets a name, a bone and a place was still said once: after the first its further meanings count for this much. */
const SAID_BEFORE = 0.2;
/** Of the best score: what less speaks for is left out. */
const LEAST_SHARE = 0.3;
/** Less than this is chance likeness of letters. */
const LEAST_SCORE = 0.3;
/** How many of the first are told apart. */
const TOLD_APART = 6;
/** Longer texts are cut: a search is a sentence or two. */
const MOST_SIGNS = 600;

/** Whether a text of content holds all words of one line. */
const holds = ({ words }: FindWord, { termsOf }: Lexicon): ((text: string) => boolean) => {
  const lines = words.map((line) => termsOf(line).map(({ text }) => text)).filter((line) => line.length > 0);
  return (text) => {
    const own = new Set(termsOf(text).map((term) => term.text));
    return lines.some((line) => line.every((term) => own.has(term)));
  };
};

/** The strongest first. */
const summed = (reasons: readonly Reason[]): Pick<Candidate, 'score' | 'matched'> => {
  const used = new Set<number>();
  const strongest = [...reasons].filter(({ score }) => score > 0).sort((a, b) => b.score - a.score);
  const score = strongest.reduce((sum, { score: own, at }) => {
    const said = [...at].filter((i) => used.has(i)).length;
    for (const i of at) used.add(i);
    return sum + own * (at.size === 0 ? 1 : 1 - (1 - SAID_BEFORE) * (said / at.size));
  }, 0);
  return { score, matched: strongest.map(({ matched }) => matched) };
};

/** Reads the content once; what it gives back answers searches. */
export const finderOf = (content: FindContent): ((sought: Sought) => Found) => {
  const lexicon = lexiconOf(content.findWords);
  const subjects = subjectsOf(content);
  const hitsOf = hitsIn(phrasesOf(content, subjects, lexicon), lexicon);
  const meanings = new Map(
    content.findWords
      .filter(({ is }) => is !== 'same' && is !== 'filler')
      .map((word) => {
        const said = holds(word, lexicon);
        return [word.id, subjects.map((subject) => meaningFor(content, word, subject, said))] as const;
      }),
  );
  return (sought) => {
    const words = sought.words.slice(0, MOST_SIGNS);
    const codes = codesTyped(words).filter((each) => content.codes.some((code) => readCode(code, each) !== null));
    const { hits, unknown } = hitsOf(codes.reduce((left, code) => left.replace(code, ' '), words));
    const scored = subjects
      .map((subject, index): Candidate => {
        const meaning = (word: string): number => meanings.get(word)?.[index] ?? 0;
        return {
          ref: subject.ref,
          ...summed([
            ...codeReasons(subject, content.codes, codes),
            ...tapReasons(subject, sought),
            ...wordReasons(subject, index, hits, meaning),
          ]),
        };
      })
      // Sorting keeps the order of content among equals.
      .sort((a, b) => b.score - a.score);
    const least = Math.max(LEAST_SCORE, LEAST_SHARE * (scored[0]?.score ?? 0));
    const candidates = scored.filter(({ score }) => score >= least);
    const first = candidates.slice(0, TOLD_APART).map(({ ref }) => ref);
    return { candidates, apart: apartOf(subjects, first), unknown };
  };
};
