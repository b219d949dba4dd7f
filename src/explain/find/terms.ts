/**
 * Single words: cut from a text, brought to one form (5th and fifth), those that tell nothing apart left out, and the known words that
 * a mistyped one can mean. What is near is found by the library `minisearch`; how near counts as meant is decided here.
 */
import MiniSearch, { type SearchOptions } from 'minisearch';
import type { FindWord } from '../../content/schema';

export interface Term {
  /** In the one form of content. */
  readonly text: string;
  /** As typed. */
  readonly said: string;
}

/** A word of a text, where it stands there, and whether it tells nothing apart. */
export interface Word extends Term {
  readonly start: number;
  readonly end: number;
  readonly filler: boolean;
}

/** How surely a typed word means a known one: 1 as written, less for a beginning, less still for a slip. */
export interface Near {
  readonly term: string;
  readonly quality: number;
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Letters and figures in a row are a word; so is what content writes with a space or a hyphen and means as one, as "x-ray". */
const cutter = (joined: readonly string[]): ((text: string) => readonly Omit<Word, 'filler'>[]) => {
  const longest = [...joined].sort((a, b) => b.length - a.length).map(escaped);
  const own = longest.length === 0 ? '' : `(?<![\\p{L}\\p{N}])(?:${longest.join('|')})(?![\\p{L}\\p{N}])|`;
  const pattern = new RegExp(`${own}[\\p{L}\\p{M}\\p{N}]+`, 'giu');
  return (text) =>
    [...text.matchAll(pattern)].map(({ 0: said, index: start }) => ({
      said,
      text: said.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase(),
      start,
      end: start + said.length,
    }));
};

export interface Lexicon {
  /** Every word of a text, in one form. */
  readonly wordsOf: (text: string) => readonly Word[];
  /** Those of them that tell something apart. */
  readonly termsOf: (text: string) => readonly Term[];
  readonly fillers: ReadonlySet<string>;
}

export const lexiconOf = (words: readonly FindWord[]): Lexicon => {
  const same = new Map(
    words
      .filter(({ is }) => is === 'same')
      .flatMap(({ plain, words: others }) => others.map((other) => [other, plain])),
  );
  const cut = cutter([...same].flat().filter((text) => /[ -]/.test(text)));
  const fillers = new Set(words.filter(({ is }) => is === 'filler').flatMap(({ words: list }) => list));
  const wordsOf = (text: string): readonly Word[] =>
    cut(text).map((word) => {
      const one = same.get(word.text) ?? word.text;
      return { ...word, text: one, filler: fillers.has(one) };
    });
  return { fillers, wordsOf, termsOf: (text) => wordsOf(text).filter(({ filler }) => !filler) };
};

/** Letters that a plural adds: with more, ball would be ballet. */
const ENDING = 1;
const LEAST_BEGINNING = 3;
const QUALITY = { ending: 0.9, beginning: 0.6, oneSlip: 0.75, twoSlips: 0.5 } as const;
/** A slip in a short word makes another word of it. */
const LEAST_FOR = { oneSlip: 4, twoSlips: 5 } as const;

type Index = MiniSearch<{ readonly id: string }>;
export type Nearest = (text: string) => readonly Near[];

/**
 * The nearest of the known words: those as written, else those that begin so, else those one slip away, else two. Words that tell
 * nothing apart are known too, so that a slip in one of them is not taken for something else.
 */
export const nearestIn = (known: ReadonlySet<string>): Nearest => {
  const indexOf = (terms: readonly string[]): Index => {
    const index: Index = new MiniSearch({ fields: ['id'], tokenize: (text) => [text], processTerm: (term) => term });
    index.addAll(terms.map((id) => ({ id })));
    return index;
  };
  const all = indexOf([...known]);
  // Two slips are looked for among words of the same first letter only: it is rarely mistyped, and the search is many times quicker.
  const byLetter = new Map<string, Index>();
  const ofLetter = (letter: string): Index => {
    const index = byLetter.get(letter) ?? indexOf([...known].filter((term) => term.startsWith(letter)));
    byLetter.set(letter, index);
    return index;
  };
  const ask = (text: string, options: SearchOptions, index = all): string[] =>
    index.search(text, options).map(({ id }) => String(id));
  const like = (terms: readonly string[], quality: number): Near[] => terms.map((term) => ({ term, quality }));
  return (text) => {
    const begun = text.length < LEAST_BEGINNING ? [] : ask(text, { prefix: true }).filter((term) => term !== text);
    const isEnding = (term: string): boolean => term.length - text.length <= ENDING;
    if (known.has(text)) return [{ term: text, quality: 1 }, ...like(begun.filter(isEnding), QUALITY.ending)];
    if (begun.length > 0)
      return begun.map((term) => ({ term, quality: isEnding(term) ? QUALITY.ending : QUALITY.beginning }));
    const oneOff = text.length < LEAST_FOR.oneSlip ? [] : ask(text, { fuzzy: 1 });
    if (oneOff.length > 0) return like(oneOff, QUALITY.oneSlip);
    if (text.length < LEAST_FOR.twoSlips) return [];
    return like(ask(text, { fuzzy: 2 }, ofLetter(text.charAt(0))), QUALITY.twoSlips);
  };
};

const ROMAN = ['I', 'II', 'III', 'IV', 'V'];
const ONE = '(?:I{1,3}|IV|V|i{2,3}|iv|v)';
const ROMANS = String.raw`${ONE}(?:\s*[-–,/&]\s*${ONE})*`;
const BONE = '(?:[Mm][Tt]|[Mm]etatars(?:als?|ale|us))';
/** "The metatarsal I broke" is no first metatarsal: a lone I behind it stands at an end, or before a part. */
const BEHIND = new RegExp(
  String.raw`\b(${BONE}\s+)(${ROMANS})(?![\p{L}\p{N}])(?!(?<=\sI)\s+(?!base|shaft|head|neck|fracture|fx)\p{L})`,
  'gu',
);
const BEFORE = new RegExp(String.raw`(?<![\p{L}\p{N}])(${ROMANS})(\.?\s+${BONE}\b)`, 'gu');
const inFigures = (romans: string): string =>
  romans.replace(/[IV]+/gi, (each) => String(ROMAN.indexOf(each.toUpperCase()) + 1));

/** Roman figures beside a metatarsal are its number. Elsewhere they are a type, a stage, or the one who speaks. */
export const raysInFigures = (text: string): string =>
  text
    .replace(BEHIND, (_, bone: string, romans: string) => bone + inFigures(romans))
    .replace(BEFORE, (_, romans: string, bone: string) => inFigures(romans) + bone.replace('.', ''));
