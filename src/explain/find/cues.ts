/** The words of a text that say that something is not so or was so of old, or only ask, and where its clauses end. */
import type { FindWord } from '../../content/schema';
import type { Lexicon, Word } from './terms';

type CueKind = 'not' | 'asked' | 'earlier' | 'no negation';
export interface Cue {
  readonly is: CueKind;
  readonly texts: readonly string[];
  readonly behind: boolean;
  readonly says: string | null;
  readonly binds: FindWord['binds'] | null;
}
/** A cue, and the words of the text that are it. */
export interface Met {
  readonly cue: Cue;
  readonly from: number;
  readonly to: number;
}

/** Between two words: nothing, a hyphen that makes one of them, a comma, or the end of the clause. */
export type Gap = 'none' | 'hyphen' | 'comma' | 'end';
export const goesOn = (gap: Gap | undefined): boolean => gap === 'none' || gap === 'hyphen';

/** A text cut into words. */
export interface Cut {
  readonly words: readonly Word[];
  readonly gaps: readonly Gap[];
  /** After which words a colon stands: "ruled out: ..." is said of what follows, "...: negative" of what stands before. */
  readonly colons: ReadonlySet<number>;
  readonly textAt: (i: number) => string;
}

export const cutOf = (text: string, words: readonly Word[]): Cut => ({
  words,
  gaps: words.map((word, i) => {
    const between = text.slice(word.end, words[i + 1]?.start ?? text.length);
    if (i === words.length - 1 || /[.;:!?\n()[\]]|\s[-–—]+\s/.test(between)) return 'end';
    if (between.includes(',')) return 'comma';
    return /^[-‐‑]$/.test(between) ? 'hyphen' : 'none';
  }),
  colons: new Set(
    words.flatMap((word, i) => (/^\s*:/.test(text.slice(word.end, words[i + 1]?.start ?? word.end)) ? [i] : [])),
  ),
  textAt: (i) => words[i]?.text ?? '',
});

const isCue = (is: FindWord['is']): is is CueKind =>
  is === 'not' || is === 'asked' || is === 'earlier' || is === 'no negation';

/** `ends`: words at which a clause ends; a cue that says something by itself has to stand before one, or at the end. */
export const cuesIn = (
  content: readonly FindWord[],
  { wordsOf }: Lexicon,
  ends: ReadonlySet<string>,
): ((cut: Cut) => readonly Met[]) => {
  const cues: readonly Cue[] = content
    .flatMap(({ is, words, behind, says, binds }) =>
      isCue(is)
        ? words.map((line) => ({
            is,
            texts: wordsOf(line).map(({ text }) => text),
            behind,
            says: says ?? null,
            binds: binds ?? null,
          }))
        : [],
    )
    .sort((a, b) => b.texts.length - a.texts.length);
  return ({ words, gaps, colons, textAt }) => {
    const cueAt = (i: number): Cue | undefined =>
      cues.find(({ texts, says, binds }) => {
        const next = i + texts.length;
        if (!texts.every((each, k) => each === textAt(i + k) && (k === 0 || goesOn(gaps[i + k - 1])))) return false;
        if (binds === 'colon' && !(colons.has(i - 1) && gaps[next - 1] === 'end')) return false;
        return says === null || !goesOn(gaps[next - 1]) || next >= words.length || ends.has(textAt(next));
      });
    const met: Met[] = [];
    for (let i = 0; i < words.length; i++) {
      const cue = cueAt(i);
      if (cue === undefined) continue;
      met.push({ cue, from: i, to: i + cue.texts.length });
      i += cue.texts.length - 1;
    }
    return met;
  };
};
