import { describe, expect, test } from 'vitest';
import type { Norm } from '../../../src/anatomy/angles/schema';
import { readContent } from '../../../src/cli/read-content';
import { normText, valueText } from '../../../src/pages/foot/norm-text';
import { makeSay } from '../../../src/pages/words';

const say = makeSay(readContent().words);
const norm = (figures: object): Norm => ({ of: 'adults', source: 'a book', how: 'read', ...figures });

describe('usual values in words', () => {
  test.each([
    ['an upper limit', { high: 15 }, 'deg', 'below 15 degrees'],
    ['an upper limit with a decimal', { high: 8.7 }, 'deg', 'below 8.7 degrees'],
    ['a lower limit', { low: 3 }, 'deg', 'above 3 degrees'],
    ['a range', { low: -4, high: 4 }, 'deg', '-4 degrees to 4 degrees'],
    ['a mean with its spread', { mean: 20.9, sd: 3.4 }, 'deg', '20.9 degrees on average, spread (SD) 3.4 degrees'],
    [
      'a whole spread beside a mean with a decimal',
      { mean: 132.8, sd: 4 },
      'deg',
      '132.8 degrees on average, spread (SD) 4.0 degrees',
    ],
    ['a whole mean', { mean: 21 }, 'deg', '21 degrees on average'],
    ['a share in whole per cent', { mean: 0.27, sd: 0.03 }, 'share', '27 % on average, spread (SD) 3 %'],
    ['a share with a decimal', { mean: -0.1554 }, 'share', '-15.5 % on average'],
    ['a length', { mean: 0.94, sd: 2.71 }, 'mm', '0.9 mm on average, spread (SD) 2.7 mm'],
  ] as const)('%s', (_, figures, unit, text) => {
    expect(normText(say, norm(figures), unit, true)).toBe(text);
  });

  test('a spread is for those who read it', () => {
    expect(normText(say, norm({ mean: 20.9, sd: 3.4 }), 'deg', false)).toBe('20.9 degrees on average');
  });

  test('a norm without a figure is a mistake of the content', () => {
    expect(() => normText(say, norm({}), 'deg', true)).toThrow(RangeError);
  });
});

test.each([
  [15.5, 'deg', '16 degrees'],
  [-0.3, 'deg', '0 degrees'],
  [-1.26, 'mm', '-1.3 mm'],
  [0.271, 'share', '27 %'],
] as const)('a value of %s %s is written %s', (value, unit, text) => {
  expect(valueText(say, value, unit)).toBe(text);
});
