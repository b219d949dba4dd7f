/** What each line of content/find-words.yaml means for each candidate, 0 to 1; worked out once. */
import type { FindWord } from '../../content/schema';
import type { BoneId } from '../../ids';
import { type FindContent, type Subject, speaksOf } from './phrases';
import type { Lexicon } from './terms';

type Terms = readonly string[];

/** Whether a text of content holds all words of one line. */
const holds = (lines: readonly Terms[], text: ReadonlySet<string>): boolean =>
  lines.some((line) => line.length > 0 && line.every((term) => text.has(term)));

/** A place means its bones before single parts of others; where it names parts only, these. */
const placeFor = ({ bones }: FindContent, word: FindWord, subject: Subject): number => {
  const groups = new Set<string>(word.groups);
  const here = (id: BoneId): boolean =>
    word.bones.includes(id) || bones.some((bone) => bone.id === id && groups.has(bone.group));
  const [first, ...others] = subject.bones;
  if (first !== undefined && here(first)) return 1;
  if (subject.regions.some((region) => word.regions.includes(region)))
    return word.bones.length + word.groups.length === 0 ? 1 : 0.8;
  return others.some(here) ? 0.5 : 0;
};

export type Meaning = (word: string, subject: number) => number;

export const meaningsOf = (content: FindContent, subjects: readonly Subject[], lexicon: Lexicon): Meaning => {
  const termsIn = (text: string): Terms => lexicon.termsOf(text).map((term) => term.text);
  const texts = subjects.map(({ names, findBy }) => [...names, ...findBy].map((text) => new Set(termsIn(text))));
  const own = new Map(
    content.findWords
      .filter((word) => speaksOf(word) !== null)
      .map((word) => {
        const lines = word.words.map(termsIn);
        const meant = ({ mechanisms }: Subject, index: number): boolean =>
          word.mechanisms.some((id) => mechanisms.includes(id)) ||
          texts[index]?.some((text) => holds(lines, text)) === true;
        const values = subjects.map((subject, index) =>
          word.is === 'place' ? placeFor(content, word, subject) : Number(meant(subject, index)),
        );
        return [word.id, { values, covers: word.covers }] as const;
      }),
  );
  const value = (word: string, subject: number): number => own.get(word)?.values[subject] ?? 0;
  return (word, subject) =>
    Math.max(value(word, subject), ...(own.get(word)?.covers ?? []).map((each) => value(each, subject)));
};
