/**
 * Reading grade of English text, Flesch-Kincaid: 0.39 words/sentence + 11.8 syllables/word - 15.59.
 * Source: Kincaid, Fishburne, Rogers, Chissom 1975, Naval Technical Training Command, Research Branch Report 8-75.
 * Syllables are counted by the library `syllable`.
 */
import { syllable } from 'syllable';

export const sentencesOf = (text: string): string[] =>
  text
    .split(/(?<=[.!?])\s+/)
    .map((s) => s.trim())
    .filter((s) => /[A-Za-z]/.test(s));

export const wordsOf = (text: string): string[] => text.match(/[A-Za-z0-9][A-Za-z0-9'’-]*/g) ?? [];

export interface Reading {
  readonly words: number;
  readonly sentences: number;
  readonly grade: number;
}

/** Throws RangeError for text without words. */
export const readingOf = (text: string): Reading => {
  const words = wordsOf(text);
  const sentences = sentencesOf(text).length;
  if (words.length === 0 || sentences === 0) throw new RangeError('no words to grade');
  const syllables = words.reduce((sum, w) => sum + Math.max(1, syllable(w)), 0);
  const grade = 0.39 * (words.length / sentences) + 11.8 * (syllables / words.length) - 15.59;
  return { words: words.length, sentences, grade };
};
