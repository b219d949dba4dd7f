/**
 * From what people know to the injuries it can mean, with why, and with what tells the first few apart. Pure; the same content and
 * the same words give the same answer.
 */
import { apartOf } from './apart';
import { hitsIn } from './hits';
import { meaningsOf } from './meanings';
import { marksSpoken, negationIn, type Stance } from './negation';
import { type FindContent, phrasesOf, subjectsOf } from './phrases';
import { codesJoined, codesTyped } from './read-code';
import { codeReasons, deniedIn, notReasons, type Reason, tapReasons, wordReasons } from './reasons';
import { lexiconOf, raysInFigures } from './terms';
import type { Candidate, Found, Matched, Sought } from './types';

/** One word that meets a name, a bone and a place was still said once: after the first its further meanings count for this much. */
const SAID_BEFORE = 0.2;
/** What was only asked speaks less plainly than what was said. */
const ASKED = 0.5;
/** What was so at an earlier time is no present finding: it is listed, and goes behind what was only asked. */
const EARLIER = 0.3;
/** Of what speaks against by what did not happen. */
const MILD = 0.5;
/** Of the best score: what less speaks for is left out. */
const LEAST_SHARE = 0.3;
/** Less than this is chance likeness of letters. */
const LEAST_SCORE = 0.3;
/** How many of the first are told apart. */
const TOLD_APART = 6;
/** Longer texts are cut: a search is a sentence or two. */
const MOST_SIGNS = 600;

/**
 * What did not happen orders the list and takes nothing off it, for a moment is easily forgotten; it makes a list only where nothing
 * else is known. A name or a place that is denied does take off.
 */
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
  // A code that belongs to no subject leads nowhere, and is told as unknown.
  const codesInUse = content.codes
    .map((code) => ({ ...code, ofGrowing: subjects.some(({ codeOfGrowing }) => codeOfGrowing === code.id) }))
    .filter(({ id, ofGrowing }) => ofGrowing || subjects.some(({ codes }) => codes.includes(id)));
  const hitsOf = hitsIn(phrasesOf(content, subjects, lexicon), lexicon);
  const stancesOf = negationIn(content, lexicon);
  const meaning = meaningsOf(content, subjects, lexicon);
  return (sought) => {
    const typed = sought.words.slice(0, MOST_SIGNS).normalize('NFC');
    const { known: codes, unknown: unknownCodes, rest } = codesTyped(codesJoined(typed, codesInUse), codesInUse);
    const text = marksSpoken(raysInFigures(rest));
    const words = lexicon.wordsOf(text);
    const stances = stancesOf(text, words);
    const terms = words
      .map((word, i) => ({ ...word, stance: stances.of[i] }))
      .filter(({ filler }) => !filler)
      .map((term, place) => ({ ...term, place }));
    const inStance = (wanted: Stance) => hitsOf(terms.filter(({ stance }) => stance === wanted));
    const [said, asked, earlier, not] = [inStance('said'), inStance('asked'), inStance('earlier'), inStance('not')];
    // No Jones fracture says nothing against a pseudo-Jones.
    const notHits = not.hits.filter(({ phrase, whole }) => whole || phrase.of.by !== 'name');
    const denied = deniedIn(not.hits, stances.denied);
    const scored = subjects
      .map((subject, index) => {
        const met = (hits: typeof said.hits) => wordReasons(subject, index, hits, meaning);
        const byNot = notReasons(content.findWords, denied, index, meaning);
        const reasons = [...codeReasons(subject, codesInUse, codes), ...tapReasons(subject, sought), ...met(said.hits)];
        const [forIt, onlyAsked] = [summed([...reasons, ...byNot.matched]), summed(met(asked.hits))];
        const ofOld = summed(met(earlier.hits));
        const lessPlain = ASKED * onlyAsked.score + EARLIER * ofOld.score;
        const against = [...met(notHits), ...byNot.against];
        const named = summed(against.filter((each) => !isMild(each))).score;
        const mild = summed(against.filter(isMild)).score;
        const candidate: Candidate = {
          ref: subject.ref,
          score: Math.max(LEAST_SCORE, forIt.score + lessPlain - named - MILD * mild),
          matched: forIt.matched,
          asked: onlyAsked.matched,
          earlier: ofOld.matched,
          against: summed(against).matched,
        };
        return { candidate, fits: summed(reasons).score + lessPlain - named };
      })
      // Sorting keeps the order of content among equals.
      .sort((a, b) => b.candidate.score - a.candidate.score);
    const best = Math.max(...scored.map(({ fits }) => fits));
    const listed =
      best < LEAST_SCORE
        ? scored.filter(({ candidate }) => candidate.score > LEAST_SCORE)
        : scored.filter(({ fits }) => fits >= Math.max(LEAST_SCORE, LEAST_SHARE * best));
    const candidates = listed.map(({ candidate }) => candidate);
    const first = candidates.slice(0, TOLD_APART).map(({ ref }) => ref);
    const spansOf = (wanted: Stance) => stances.spans.filter(({ stance }) => stance === wanted).map(({ text: t }) => t);
    return {
      candidates,
      apart: apartOf(subjects, first),
      unknown: [...said.unknown, ...asked.unknown, ...earlier.unknown, ...not.unknown],
      unknownCodes,
      denied: spansOf('not'),
      asked: spansOf('asked'),
      earlier: spansOf('earlier'),
    };
  };
};
