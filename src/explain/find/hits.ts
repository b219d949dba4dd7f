/** Which phrases of the content the typed words meet, how much of each, and which words nobody here knows. */
import type { Phrase } from './phrases';
import { type Lexicon, nearestIn, type Term } from './terms';

export interface Hit {
  readonly phrase: Phrase;
  /** Places of the typed words in the search. */
  readonly at: ReadonlySet<number>;
  readonly said: string;
  /** How much of the phrase was said, rare words counting for more: 0 to 1. */
  readonly cover: number;
  readonly words: number;
  /** Nothing of the phrase is missing; of a place or an event, one after the other as well: "ankle, outer edge" is no outer ankle. */
  readonly whole: boolean;
}

/** A word of the search, and its place among those that tell something apart. */
export interface Placed extends Term {
  readonly place: number;
}

export interface Hits {
  readonly hits: readonly Hit[];
  readonly unknown: readonly string[];
}

/** A pair of words that were written apart, such as lis frank, has at least so many letters. */
const LEAST_JOINED = 6;
/** Each of two words that were written as one. */
const LEAST_SPLIT = 4;
/** And means its word as written, or but for one slip. */
const SURELY = 0.7;

interface Met {
  readonly quality: number;
  readonly at: readonly number[];
  readonly said: string;
}

const isInside = (a: ReadonlySet<number>, b: ReadonlySet<number>): boolean =>
  a.size < b.size && [...a].every((i) => b.has(i));

/** Phrases of which nothing is missing and that name a thing: what lies within one is not meant. The big toe is not the toes. */
const namesAThing = ({ phrase, whole }: Hit): boolean => phrase.of.by !== 'words' && whole;

/** A place that was said in full is that place, and no piece of a longer name of a bone: "midfoot" is no outer midfoot bone. */
const isMerePlace = ({ phrase, whole, at }: Hit, places: readonly Hit[]): boolean =>
  phrase.of.by === 'bone' && !whole && places.some((place) => [...at].every((i) => place.at.has(i)));

/** In the order of the phrase, with at most one other word between. */
const isInRow = (at: readonly number[]): boolean =>
  at.every((place, i) => i === 0 || place >= (at[i - 1] ?? place)) && (at.at(-1) ?? 0) - (at[0] ?? 0) <= at.length;

/** What it gives back takes words of one stance: a word that is said and one that is denied make no phrase together. */
export const hitsIn = (phrases: readonly Phrase[], { fillers }: Lexicon): ((terms: readonly Placed[]) => Hits) => {
  const withTerm = new Map<string, Phrase[]>();
  for (const phrase of phrases)
    for (const term of phrase.terms) withTerm.set(term, [...(withTerm.get(term) ?? []), phrase]);
  const nearest = nearestIn(new Set([...withTerm.keys(), ...fillers]));
  const rarity = (term: string): number => Math.log(1 + phrases.length / (withTerm.get(term)?.length ?? 1));

  const pairAt = (terms: readonly Placed[], i: number): Term | null => {
    const [one, other] = [terms[i], terms[i + 1]];
    if (one === undefined || other?.place !== one.place + 1 || (withTerm.has(one.text) && withTerm.has(other.text)))
      return null;
    const text = one.text + other.text;
    const known = text.length >= LEAST_JOINED && nearest(text).some(({ quality }) => quality > SURELY);
    return known ? { text, said: `${one.said} ${other.said}` } : null;
  };

  const hitOf = ([phrase, met]: readonly [Phrase, ReadonlyMap<string, Met>]): Hit => {
    const all = phrase.terms.reduce((sum, term) => sum + rarity(term), 0);
    const got = [...met].reduce((sum, [term, { quality }]) => sum + quality * rarity(term), 0);
    const inOrder = [...met.values()].sort((a, b) => (a.at[0] ?? 0) - (b.at[0] ?? 0));
    return {
      phrase,
      at: new Set(inOrder.flatMap(({ at }) => at)),
      said: [...new Set(inOrder.map(({ said }) => said))].join(' '),
      cover: got / all,
      words: met.size,
      whole:
        met.size === phrase.terms.length &&
        (!('word' in phrase.of) || isInRow(phrase.terms.map((term) => met.get(term)?.at[0] ?? 0))),
    };
  };

  const isKnown = (text: string): boolean => withTerm.has(text) || fillers.has(text);
  /** "Marchfracture": two known words written as one, where no known word is near it. The second stands half a place behind. */
  const apart = (term: Placed): readonly Placed[] => {
    if (isKnown(term.text) || nearest(term.text).length > 0) return [term];
    for (let i = LEAST_SPLIT; i <= term.text.length - LEAST_SPLIT; i++) {
      const halves = [term.text.slice(0, i), term.text.slice(i)];
      if (halves.every(isKnown) && halves.some((text) => withTerm.has(text)))
        return halves.flatMap((text, k) => (fillers.has(text) ? [] : [{ ...term, text, place: term.place + k / 2 }]));
    }
    return [term];
  };

  return (typed) => {
    const terms = typed.flatMap(apart);
    const met = new Map<Phrase, Map<string, Met>>();
    const known = new Set<number>();
    const meet = ({ text: typed, said }: Term, at: readonly number[]): void => {
      const near = nearest(typed);
      if (near.length > 0) for (const i of at) known.add(i);
      for (const { term, quality } of near)
        for (const phrase of withTerm.get(term) ?? []) {
          const own = met.get(phrase) ?? new Map<string, Met>();
          if ((own.get(term)?.quality ?? 0) < quality) own.set(term, { quality, at, said });
          met.set(phrase, own);
        }
    };
    terms.forEach((term, i) => {
      const pair = pairAt(terms, i);
      if (pair !== null) meet(pair, [term.place, term.place + 1]);
      meet(term, [term.place]);
    });
    const all = [...met].map(hitOf);
    const things = all.filter(namesAThing);
    const places = things.filter(({ phrase }) => phrase.of.by === 'place');
    return {
      hits: all.filter((hit) => !things.some(({ at }) => isInside(hit.at, at)) && !isMerePlace(hit, places)),
      unknown: terms.filter(({ text, place }) => !known.has(place) && !/^\d+$/.test(text)).map(({ said }) => said),
    };
  };
};
