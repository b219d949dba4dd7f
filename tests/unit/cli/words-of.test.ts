import { describe, expect, it } from 'vitest';
import { wordsText } from '../../../src/cli/words-of';

describe('the list of words', () => {
  it('is one line a text, place and text parted by a tab, whatever the text holds', () => {
    const text = wordsText([
      { where: 'a/b', text: 'One\n  two\tthree ' },
      { where: 'c', text: 'Four' },
    ]);
    expect(text).toBe('a/b\tOne two three\nc\tFour\n');
  });
});
