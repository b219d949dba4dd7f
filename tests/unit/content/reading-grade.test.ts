import { expect, test } from 'vitest';
import { readingOf } from '../../tools/reading-grade';

test('a sentence counted by hand: 6 words, 6 syllables, 1 sentence', () => {
  const { words, sentences, grade } = readingOf('The cat sat on the mat.');
  expect({ words, sentences }).toEqual({ words: 6, sentences: 1 });
  expect(grade).toBeCloseTo(0.39 * 6 + 11.8 * 1 - 15.59, 10);
});

test('trade language is graded far above plain language', () => {
  const plain = readingOf('The bone is broken near its base. It can be slow to heal.').grade;
  const trade = readingOf(
    'Metaphyseal-diaphyseal fractures demonstrate considerable predisposition towards nonunion.',
  ).grade;
  expect(plain).toBeLessThan(5);
  expect(trade).toBeGreaterThan(15);
});

test('nothing to grade is an error', () => {
  expect(() => readingOf(' … ')).toThrow(RangeError);
});
