import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakLines } from '../../../src/render/text-block';

const measure = (text: string): number => text.length * 10;

describe('lines on a still', () => {
  it('lose no word', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/)), fc.integer({ min: 40, max: 400 }), (words, width) => {
        expect(breakLines(words.join(' '), width, measure).join(' ')).toBe(words.join(' '));
      }),
    );
  });

  it('are no wider than the box unless one word is', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/)), fc.integer({ min: 120, max: 400 }), (words, width) => {
        for (const line of breakLines(words.join(' '), width, measure))
          expect(measure(line)).toBeLessThanOrEqual(width);
      }),
    );
  });
});
