/**
 * What of a text is said to be so, what not to be so, and what was only asked. Words that say so stand in content/find-words.yaml; how
 * far each reaches is decided here, after the rule of Chapman 2001 (J Biomed Inform 34:301, from memory): on to the end of the clause
 * or the next word of that kind. Anything it takes wrongly is shown to who typed it.
 */
import type { FindWord } from '../../content/schema';
import type { Lexicon, Word } from './terms';

export type Stance = 'said' | 'not' | 'asked';

/** Words that stand together in one stance, as typed. */
export interface Span {
  readonly stance: Exclude<Stance, 'said'>;
  readonly text: string;
}

export interface Stances {
  /** Of each word; null for a word that only negates or asks. */
  readonly of: readonly (Stance | null)[];
  readonly spans: readonly Span[];
  /** Events that are said not to have been by words that hold nothing else: "no injury". */
  readonly denied: readonly { readonly word: string; readonly said: string }[];
}

type CueKind = 'not' | 'asked' | 'no negation';
interface Cue {
  readonly is: CueKind;
  readonly texts: readonly string[];
  readonly behind: boolean;
  readonly says: string | null;
}
interface Met {
  readonly cue: Cue;
  readonly from: number;
  readonly to: number;
}

/** Between two words: the clause goes on, a comma stands there, or it ends. */
type Gap = 'none' | 'comma' | 'end';

/** A part of a list is short: what is longer begins something new. */
const MOST_IN_LIST = 3;
/** "No significant displacement": the word of degree stands among the first. */
const DEGREE_WITHIN = 3;
const JOINS: ReadonlySet<string> = new Set(['or', 'nor']);

const isCue = (is: FindWord['is']): is is CueKind => is === 'not' || is === 'asked' || is === 'no negation';

const gapsOf = (text: string, words: readonly Word[]): readonly Gap[] =>
  words.map((word, i) => {
    const between = text.slice(word.end, words[i + 1]?.start ?? text.length);
    if (i === words.length - 1 || /[.;:!?\n()[\]]|\s[-–—]+\s/.test(between)) return 'end';
    return between.includes(',') ? 'comma' : 'none';
  });

const SPOKEN_MARK = /(?<=^|[\s(])\?+\s*(?=[\p{L}\p{N}])/gu;

export const negationIn = (
  content: readonly FindWord[],
  { wordsOf }: Lexicon,
): ((text: string, words: readonly Word[]) => Stances) => {
  const textsOf = (line: string): readonly string[] => wordsOf(line).map(({ text }) => text);
  const cues: readonly Cue[] = content
    .flatMap(({ is, words, behind, says }) =>
      isCue(is) ? words.map((line) => ({ is, texts: textsOf(line), behind, says: says ?? null })) : [],
    )
    .sort((a, b) => b.texts.length - a.texts.length);
  const all = (wanted: FindWord['is']): ReadonlySet<string> =>
    new Set(content.filter(({ is }) => is === wanted).flatMap(({ words }) => words.flatMap(textsOf)));
  const [ends, degrees] = [all('clause end'), all('degree')];

  return (text, words) => {
    const gaps = gapsOf(text, words);
    const textAt = (i: number): string => words[i]?.text ?? '';
    const endsAt = (i: number): boolean => i >= words.length || ends.has(textAt(i));

    const cueAt = (i: number): Cue | undefined =>
      cues.find(({ texts, says }) => {
        const last = i + texts.length - 1;
        if (!texts.every((each, k) => each === textAt(i + k) && (k === 0 || gaps[i + k - 1] === 'none'))) return false;
        return says === null || gaps[last] !== 'none' || endsAt(last + 1);
      });
    const met: Met[] = [];
    for (let i = 0; i < words.length; i++) {
      const cue = cueAt(i);
      if (cue === undefined) continue;
      met.push({ cue, from: i, to: i + cue.texts.length });
      i += cue.texts.length - 1;
    }
    const starts = new Set(met.filter(({ cue }) => cue.is !== 'no negation').map(({ from }) => from));

    /** After a comma a list goes on where a short part follows, and the list has an "or" or a "nor". */
    const listGoesOn = (after: number): boolean => {
      let part = 0;
      for (let i = after; i < words.length && !starts.has(i); i++) {
        if (JOINS.has(textAt(i))) return true;
        if (ends.has(textAt(i)) || ++part > MOST_IN_LIST || gaps[i] === 'end') return false;
        if (gaps[i] === 'comma') part = 0;
      }
      return false;
    };
    /** Past the last word that a cue reaches, of which `from` is the next word. */
    const reachAhead = (from: number): number => {
      if (gaps[from - 1] !== 'none') return from;
      for (let i = from; i < words.length; i++) {
        if (starts.has(i) || (i > from && ends.has(textAt(i)))) return i;
        // "Without displacement of the fifth": the bone is meant all the same.
        if (degrees.has(textAt(i)) && i - from < DEGREE_WITHIN && !JOINS.has(textAt(i + 1))) return i + 1;
        if (gaps[i] === 'end' || (gaps[i] === 'comma' && !listGoesOn(i + 1))) return i + 1;
      }
      return words.length;
    };
    const reachBack = (to: number): number => {
      let from = to;
      const taken = new Set(met.flatMap((each) => (each.to <= to ? [each.to - 1] : [])));
      while (from > 0 && gaps[from - 1] === 'none' && !ends.has(textAt(from - 1)) && !taken.has(from - 1)) from -= 1;
      return from;
    };

    const of: (Stance | null)[] = words.map(() => 'said');
    const spans: Span[] = [];
    const denied: Stances['denied'][number][] = [];
    for (const { cue, from, to } of met) {
      if (cue.is === 'no negation') continue;
      of.fill(null, from, to);
      if (cue.says !== null) {
        const said = words[to - 1]?.said ?? '';
        denied.push({ word: cue.says, said });
        spans.push({ stance: cue.is, text: said });
        continue;
      }
      const [first, end] = cue.behind ? [reachBack(from), from] : [to, reachAhead(to)];
      of.fill(cue.is, first, end);
      const own = words.slice(first, end);
      const telling = own.filter((word) => !word.filler || degrees.has(word.text));
      const [a, b] = [(telling[0] ?? own[0])?.start, (telling.at(-1) ?? own.at(-1))?.end];
      if (a !== undefined && b !== undefined) spans.push({ stance: cue.is, text: text.slice(a, b) });
    }
    return { of, spans, denied };
  };
};

/** A question mark before a word, as reports have it, is a word that asks. */
export const marksSpoken = (text: string): string => text.replace(SPOKEN_MARK, 'query ');
