/** Everything a search can meet: names, words to find by, bones, parts, places and events, each with the candidates it speaks for. */
import { regionsOfCard } from '../../content/look-up';
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
  /** The first is the one it is told of; none: all of its bones. */
  readonly regions: readonly RegionId[];
  readonly codes: readonly CodeId[];
  /** The code that a break through a growth plate of its bone has. */
  readonly codeOfGrowing: CodeId | null;
  readonly tellApart: Card['tellApart'];
  readonly mechanisms: readonly string[];
}

/** A class that is a place, such as a zone, is as good as a name; one that is a figure or a grade is said of many injuries. */
const classesOf = ({ classification }: Injury): { readonly names: string[]; readonly words: string[] } => {
  const isPlace = ({ rules }: Injury['classification'][number]): boolean =>
    rules?.some(({ by }) => by === 'place') === true;
  return {
    names: classification.filter(isPlace).map(({ term }) => term),
    words: classification.flatMap((each) => (isPlace(each) ? [each.scheme] : [each.scheme, each.term])),
  };
};

const ofInjury = (injury: Injury): Subject => ({
  ref: { is: 'injury', id: injury.id },
  names: [injury.term, ...injury.synonyms, ...classesOf(injury).names],
  findBy: [...new Set([...injury.findBy, injury.plain, ...classesOf(injury).words])],
  bones: [injury.bone, ...injury.alsoBones],
  regions: [injury.region, ...injury.alsoRegions],
  codes: injury.codes,
  codeOfGrowing: injury.codeOfGrowing ?? null,
  tellApart: injury.tellApart,
  mechanisms: injury.mechanisms,
});
const ofCard = (card: Card): Subject => ({
  ref: { is: 'card', id: card.id },
  names: [card.term, ...card.synonyms],
  findBy: [...card.findBy, card.plain],
  bones: card.bones,
  regions: regionsOfCard(card),
  codes: card.codes,
  codeOfGrowing: null,
  tellApart: card.tellApart,
  mechanisms: [],
});
export const subjectsOf = ({ injuries, cards }: FindContent): readonly Subject[] => [
  ...injuries.map(ofInjury),
  ...cards.map(ofCard),
];

/** What a line of content/find-words.yaml speaks of; null where it is about words only. */
export const speaksOf = ({ is }: FindWord): 'place' | 'event' | 'who' | null =>
  is === 'place' || is === 'event' || is === 'who' ? is : null;

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
  const parts = new Set(subjects.flatMap(({ regions }) => regions));
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
      const by = speaksOf(word);
      return by === null ? [] : word.words.map((text) => phrase({ by, word }, text));
    }),
  ].filter(({ terms }) => terms.length > 0);
};
