/** What can be found by typing: bones, the five questions, injuries, the pages, the sides to look from, wordings and looks. Pure. */
import type { Content } from '../../content/schema';
import { type BoneId, type CardId, QUESTION_IDS, type QuestionId, READERS, type Reader } from '../../ids';
import { THEMES, type Theme, VIEWS, type ViewId } from '../../session/types';
import { boneName, bonesInOrder } from '../note/BoneList';
import { PAGES, type Page } from '../places';
import type { Say } from '../words';
import { nameFor } from './names';

export type Act =
  | { readonly do: 'bone'; readonly bone: BoneId }
  | { readonly do: 'question'; readonly question: QuestionId }
  | { readonly do: 'page'; readonly page: Page }
  /** An injury told in short. */
  | { readonly do: 'card'; readonly card: CardId }
  /** These words, among the injuries. */
  | { readonly do: 'seek'; readonly words: string }
  | { readonly do: 'view'; readonly view: ViewId }
  | { readonly do: 'reader'; readonly reader: Reader }
  | { readonly do: 'look'; readonly theme: Theme };

export interface Entry {
  readonly key: string;
  readonly text: string;
  /** What sort of thing it is, in a word. */
  readonly sort: string;
  /** Other names it is found by. */
  readonly also: readonly string[];
  readonly act: Act;
}

const PAGE_WORDS: Readonly<Record<Page, string>> = {
  start: 'find.start',
  explain: 'bar.explain',
  new: 'panel.new',
  known: 'panel.known',
  say: 'bar.say',
  hand: 'bar.hand',
  ask: 'bar.ask',
  show: 'bar.show',
  walk: 'walk.begin',
  sources: 'evidence.title',
  rule: 'rule.title',
  find: 'seek.page',
};

export const entriesOf = (content: Content, reader: Reader, say: Say): readonly Entry[] => [
  ...QUESTION_IDS.map((question) => ({
    key: `question ${question}`,
    text: say(`question.${question}`),
    sort: say('find.question'),
    also: [],
    act: { do: 'question', question } as const,
  })),
  ...bonesInOrder(content).map((bone) => ({
    key: `bone ${bone.id}`,
    text: boneName(bone, reader),
    sort: say('find.bone'),
    also: [bone.term, bone.plain, bone.latin, ...bone.synonyms],
    act: { do: 'bone', bone: bone.id } as const,
  })),
  ...content.injuries.map((injury) => ({
    key: `injury ${injury.id}`,
    text: nameFor(injury, reader),
    sort: say('seek.sort'),
    also: [injury.term, injury.plain, ...injury.synonyms],
    act: { do: 'seek', words: nameFor(injury, reader) } as const,
  })),
  ...content.cards.map((card) => ({
    key: `card ${card.id}`,
    text: nameFor(card, reader),
    sort: say('seek.short'),
    also: [card.term, card.plain, ...card.synonyms],
    act: { do: 'card', card: card.id } as const,
  })),
  // The rule is for those who learn or speak: a patient's screen has no way to it.
  ...PAGES.filter((page) => page !== 'rule' || reader !== 'patient').map((page) => ({
    key: `page ${page}`,
    text: say(PAGE_WORDS[page]),
    sort: say('find.page'),
    also: [],
    act: { do: 'page', page } as const,
  })),
  ...VIEWS.map((view) => ({
    key: `view ${view}`,
    text: say(`stage.view.${view}`),
    sort: say('find.view'),
    also: [],
    act: { do: 'view', view } as const,
  })),
  ...READERS.map((each) => ({
    key: `reader ${each}`,
    text: say(`reader.${each}`),
    sort: say('reader.label'),
    also: [],
    act: { do: 'reader', reader: each } as const,
  })),
  ...THEMES.map((theme) => ({
    key: `look ${theme}`,
    text: say(`theme.${theme}`),
    sort: say('panel.look'),
    also: [],
    act: { do: 'look', theme } as const,
  })),
];

/** Last, whatever was typed: a name that is not listed may still be words for an injury. */
export const seekEntry = (words: string, say: Say): readonly Entry[] =>
  words.trim() === ''
    ? []
    : [
        {
          key: 'seek',
          text: say('seek.dialog', { words: words.trim() }),
          sort: say('find.page'),
          also: [],
          act: { do: 'seek', words: words.trim() },
        },
      ];

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Diacritic}/gu, '')
    .toLowerCase();
const wordsOf = (text: string): readonly string[] =>
  plain(text)
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '');

/** 0: its name begins so; 1: words of its name do; 2: of another name; null: none. Every typed word must begin a word. */
const rankOf = (entry: Entry, typed: string): number | null => {
  const parts = wordsOf(typed);
  const holds = (name: string): boolean => {
    const words = wordsOf(name);
    return parts.every((part) => words.some((word) => word.startsWith(part)));
  };
  if (plain(entry.text).startsWith(plain(typed).trim())) return 0;
  if (holds(entry.text)) return 1;
  return [...entry.also, `${entry.sort} ${entry.text}`].some(holds) ? 2 : null;
};

/** The best first, at most `most` of them; of equal ones in the order given. */
export const found = (entries: readonly Entry[], typed: string, most = 8): readonly Entry[] =>
  typed.trim() === ''
    ? entries.slice(0, most)
    : entries
        .map((entry) => ({ entry, rank: rankOf(entry, typed) }))
        .filter((each): each is { entry: Entry; rank: number } => each.rank !== null)
        .sort((a, b) => a.rank - b.rank)
        .slice(0, most)
        .map(({ entry }) => entry);
