/**
 * What of a text is said to be so, what not to be so, what was only asked, and what was so at an earlier time. Words that say so stand in content/find-words.yaml; how
 * far each reaches is decided in reach.ts, after the rule of Chapman 2001 (J Biomed Inform 34:301, from memory): on to the end of the
 * clause or the next word of that kind. Anything it takes wrongly is shown to who typed it.
 */
import type { FindWord } from '../../content/schema';
import { cuesIn, cutOf, type Met } from './cues';
import type { FindContent } from './phrases';
import { type Marks, reachIn } from './reach';
import type { Lexicon, Word } from './terms';

export type Stance = 'said' | 'not' | 'asked' | 'earlier';

/** Words that stand together in one stance, as typed. */
export interface Span {
  readonly stance: Exclude<Stance, 'said'>;
  readonly text: string;
}

export interface Stances {
  /** Of each word; null for a word that only negates, asks or tells of old. */
  readonly of: readonly (Stance | null)[];
  readonly spans: readonly Span[];
  /** Events that are said not to have been by words that hold nothing else: "no injury". */
  readonly denied: readonly { readonly word: string; readonly said: string }[];
}

const marksOf = ({ findWords, bones, regions }: FindContent, { wordsOf, termsOf }: Lexicon): Marks => {
  const all = (...wanted: readonly FindWord['is'][]): ReadonlySet<string> =>
    new Set(
      findWords
        .filter(({ is }) => wanted.includes(is))
        .flatMap(({ words }) => words.flatMap((line) => wordsOf(line).map(({ text }) => text))),
    );
  const named = [
    ...bones.flatMap(({ term, plain, synonyms }) => [term, plain, ...synonyms]),
    ...regions.flatMap(({ term, plain }) => [term, plain]),
    ...findWords.flatMap(({ is, words }) => (is === 'place' ? words : [])),
  ];
  return {
    ends: all('clause end', 'hurting'),
    degree: all('degree'),
    alone: all('alone'),
    hurting: all('hurting'),
    goesWith: all('goes with'),
    finding: all('finding'),
    healed: all('healed'),
    imaging: all('imaging'),
    shows: all('shows'),
    places: new Set(named.flatMap((text) => termsOf(text).map((term) => term.text))),
    events: all('event'),
  };
};

const isWithin = (i: number, [first, end]: readonly [number, number]): boolean => i >= first && i < end;
const denies = ({ cue }: Met): boolean => (cue.is === 'not' && cue.says === null) || cue.is === 'asked';

export const negationIn = (
  content: FindContent,
  lexicon: Lexicon,
): ((text: string, words: readonly Word[]) => Stances) => {
  const marks = marksOf(content, lexicon);
  const cuesOf = cuesIn(content.findWords, lexicon, marks.ends);
  return (text, words) => {
    const cut = cutOf(text, words);
    const met = cuesOf(cut);
    const reach = reachIn(cut, met, marks);
    const of: (Stance | null)[] = words.map(() => 'said');
    const spans: Span[] = [];
    const denied: Stances['denied'][number][] = [];
    const reached = (by: Met): readonly number[] => words.flatMap((_, i) => (isWithin(i, reach.of(by)) ? [i] : []));
    // "No previous fracture" denies what would be of old.
    const taken = new Set(met.flatMap((each) => (denies(each) ? reached(each) : [])));
    for (const each of met) {
      const { cue, from, to } = each;
      if (cue.is === 'no negation') continue;
      of.fill(null, from, to);
      if (cue.is === 'earlier' && taken.has(from)) continue;
      if (cue.says !== null) {
        const said = words[to - 1]?.said ?? '';
        denied.push({ word: cue.says, said });
        spans.push({ stance: cue.is, text: said });
        continue;
      }
      const [first, end] = reach.of(each);
      if (cue.is === 'not' && reach.takenBack(first, Math.max(end, to))) continue;
      if (cue.is === 'earlier' && (!reach.names(first, end) || reach.isHowItCame(first, end))) continue;
      of.fill(cue.is, first, end);
      const own = words.slice(first, end);
      const telling = own.filter((word) => !word.filler || marks.degree.has(word.text) || marks.alone.has(word.text));
      const [a, b] = [(telling[0] ?? own[0])?.start, (telling.at(-1) ?? own.at(-1))?.end];
      if (a !== undefined && b !== undefined) spans.push({ stance: cue.is, text: text.slice(a, b) });
    }
    return { of, spans, denied };
  };
};

const MARK_BEFORE = /(?<=^|[\s(])\?+\s*(?=[\p{L}\p{N}])/gu;
const MARK_BEHIND = /(?<=[\p{L}\p{N}])\?+/gu;

/**
 * A question mark before a word, as reports have it, is a word that asks; directly behind one it asks for what stands before it. The
 * words that are put for it are among those of content that ask.
 */
export const marksSpoken = (text: string): string =>
  text.replace(MARK_BEHIND, ' in question.').replace(MARK_BEFORE, 'query ');
