/**
 * From what people know to the injuries it can mean, with why, and with what tells the first few apart. Pure; the same content and
 * the same words give the same answer.
 */
import { apartOf } from './apart';
import { hitsIn } from './hits';
import { meaningsOf } from './meanings';
import { marksSpoken, negationIn, type Stance } from './negation';
import { type FindContent, phrasesOf, subjectsOf } from './phrases';
import { codesTyped } from './read-code';
import { codeReasons, deniedIn, notReasons, type Reason, tapReasons, wordReasons } from './reasons';
import { lexiconOf } from './terms';
import type { Candidate, Found, Matched, Sought } from './types';

/** One word that meets a name, a bone and a place was still said once: after the first its further meanings count for this much. */
const SAID_BEFORE = 0.2;
/** What was only asked speaks less plainly than what was said. */
const ASKED = 0.5;
/** Of the best score: what less speaks for is left out. */
const LEAST_SHARE = 0.3;
/** Less than this is chance likeness of letters. */
const LEAST_SCORE = 0.3;
/** How many of the first are told apart. */
const TOLD_APART = 6;
/** Longer texts are cut: a search is a sentence or two. */
const MOST_SIGNS = 600;

/** What did not happen moves a candidate down and not off the list: a moment is easily forgotten. A name or a place that is denied does. */
const isMild = ({ matched }: Reason): boolean => matched.by === 'event' || matched.by === 'words';

/** The strongest first. */
const summed = (reasons: readonly Reason[]): { readonly score: number; readonly matched: readonly Matched[] } => {
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
  const stancesOf = negationIn(content.findWords, lexicon);
  const meaning = meaningsOf(content, subjects, lexicon);
  return (sought) => {
    const typed = sought.words.slice(0, MOST_SIGNS).normalize('NFC');
    const { known: codes, unknown: unknownCodes, rest } = codesTyped(typed, content.codes);
    const text = marksSpoken(rest);
    const words = lexicon.wordsOf(text);
    const stances = stancesOf(text, words);
    const terms = words
      .map((word, i) => ({ ...word, stance: stances.of[i] }))
      .filter(({ filler }) => !filler)
      .map((term, place) => ({ ...term, place }));
    const inStance = (wanted: Stance) => hitsOf(terms.filter(({ stance }) => stance === wanted));
    const [said, asked, not] = [inStance('said'), inStance('asked'), inStance('not')];
    const denied = deniedIn(not.hits, stances.denied);
    const scored = subjects
      .map((subject, index) => {
        const met = ({ hits }: typeof said) => wordReasons(subject, index, hits, meaning);
        const byNot = notReasons(content.findWords, denied, index, meaning);
        const forIt = summed([
          ...codeReasons(subject, content.codes, codes),
          ...tapReasons(subject, sought),
          ...met(said),
          ...byNot.matched,
        ]);
        const onlyAsked = summed(met(asked));
        const against = [...met(not), ...byNot.against];
        const fits = forIt.score + ASKED * onlyAsked.score - summed(against.filter((each) => !isMild(each))).score;
        const candidate: Candidate = {
          ref: subject.ref,
          score: Math.max(LEAST_SCORE, fits - summed(against.filter(isMild)).score),
          matched: forIt.matched,
          asked: onlyAsked.matched,
          against: summed(against).matched,
        };
        return { candidate, fits };
      })
      // Sorting keeps the order of content among equals.
      .sort((a, b) => b.candidate.score - a.candidate.score);
    const least = Math.max(LEAST_SCORE, LEAST_SHARE * (scored[0]?.candidate.score ?? 0));
    const candidates = scored.filter(({ fits }) => fits >= least).map(({ candidate }) => candidate);
    const first = candidates.slice(0, TOLD_APART).map(({ ref }) => ref);
    const spansOf = (wanted: Stance) => stances.spans.filter(({ stance }) => stance === wanted).map(({ text: t }) => t);
    return {
      candidates,
      apart: apartOf(subjects, first),
      unknown: [...said.unknown, ...asked.unknown, ...not.unknown],
      unknownCodes,
      denied: spansOf('not'),
      asked: spansOf('asked'),
    };
  };
};
