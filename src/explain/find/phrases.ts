/** Everything a search can meet: names, words to find by, bones, parts, places and events, each with the candidates it speaks for. */
import type { Card, Content, FindWord, Injury } from '../../content/schema';
import type { BoneId, CodeId, RegionId } from '../../ids';
import type { Lexicon } from './terms';
import type { CandidateRef } from './types';

export type FindContent = Pick<Content, 'bones' | 'regions' | 'injuries' | 'cards' | 'codes' | 'findWords'>;

/** An injury or a card as a search sees it. Full injuries first, then cards, each in the order of content. */
export interface Subject {
  readonly ref: CandidateRef;
  readonly names: readonly string[];
  readonly findBy: readonly string[];
  /** The first is the one it is told of. */
  readonly bones: readonly BoneId[];
  readonly region: RegionId | null;
  readonly codes: readonly CodeId[];
  readonly tellApart: Card['tellApart'];
  readonly mechanisms: readonly string[];
}

const ofInjury = (injury: Injury): Subject => ({
  ref: { is: 'injury', id: injury.id },
  names: [injury.term, ...injury.synonyms, ...injury.classification.map(({ term }) => term)],
  findBy: [...injury.findBy, injury.plain],
  bones: [injury.bone, ...injury.alsoBones],
  region: injury.region,
  codes: injury.codes,
  tellApart: injury.tellApart,
  mechanisms: injury.mechanisms,
});
const ofCard = (card: Card): Subject => ({
  ref: { is: 'card', id: card.id },
  names: [card.term, ...card.synonyms],
  findBy: [...card.findBy, card.plain],
  bones: card.bones,
  region: card.region,
  codes: card.codes,
  tellApart: card.tellApart,
  mechanisms: [],
});
export const subjectsOf = ({ injuries, cards }: FindContent): readonly Subject[] => [
  ...injuries.map(ofInjury),
  ...cards.map(ofCard),
];

export type PhraseOf =
  | { readonly by: 'name' | 'words'; readonly subject: number; readonly text: string }
  | { readonly by: 'bone'; readonly bone: BoneId }
  | { readonly by: 'part'; readonly region: RegionId }
  | { readonly by: 'place' | 'event' | 'who'; readonly word: FindWord };

export interface Phrase {
  readonly of: PhraseOf;
  /** Each once. */
  readonly terms: readonly string[];
}

export const phrasesOf = (
  content: FindContent,
  subjects: readonly Subject[],
  { termsOf }: Lexicon,
): readonly Phrase[] => {
  const phrase = (of: PhraseOf, text: string): Phrase => ({
    of,
    terms: [...new Set(termsOf(text).map((t) => t.text))],
  });
  const parts = new Set(subjects.map(({ region }) => region));
  return [
    ...subjects.flatMap(({ names, findBy }, subject) => [
      ...names.map((text) => phrase({ by: 'name', subject, text }, text)),
      ...findBy.map((text) => phrase({ by: 'words', subject, text }, text)),
    ]),
    ...content.bones.flatMap((bone) =>
      [bone.term, bone.plain, bone.latin, ...bone.synonyms].map((text) => phrase({ by: 'bone', bone: bone.id }, text)),
    ),
    ...content.regions
      .filter(({ id }) => parts.has(id))
      .flatMap(({ id, term, plain }) => [term, plain].map((text) => phrase({ by: 'part', region: id }, text))),
    ...content.findWords.flatMap((word) => {
      const { is } = word;
      return is === 'same' || is === 'filler' ? [] : word.words.map((text) => phrase({ by: is, word }, text));
    }),
  ].filter(({ terms }) => terms.length > 0);
};

/**
 * What a line of find-words means for a candidate, 0 to 1. A place means its bones before single parts of others; where it names
 * parts only, these.
 */
export const meaningFor = (
  content: Pick<FindContent, 'bones'>,
  word: FindWord,
  subject: Subject,
  said: (text: string) => boolean,
): number => {
  if (word.is === 'place') {
    const groups = new Set<string>(word.groups);
    const here = (id: BoneId): boolean =>
      word.bones.includes(id) || content.bones.some((bone) => bone.id === id && groups.has(bone.group));
    const [first, ...others] = subject.bones;
    if (first !== undefined && here(first)) return 1;
    const part = subject.region !== null && word.regions.includes(subject.region);
    if (part) return word.bones.length + word.groups.length === 0 ? 1 : 0.8;
    return others.some(here) ? 0.5 : 0;
  }
  if (word.mechanisms.some((id) => subject.mechanisms.includes(id))) return 1;
  return [...subject.names, ...subject.findBy].some(said) ? 1 : 0;
};
