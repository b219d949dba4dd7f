import fc from 'fast-check';
import { expect, it } from 'vitest';
import { wrapped } from '../../../src/pages/back/wrapped';

it.each([
  ['until sport', 20, ['until sport']],
  ['until sport, screw in the canal', 12, ['until sport,', 'screw in the', 'canal']],
  ['intramedullary', 5, ['intramedullary']],
])('%s in lines of %i', (text, most, lines) => {
  expect(wrapped(text, most)).toEqual(lines);
});

it('loses no word, and no line of several words is too long', () => {
  const text = fc
    .array(fc.stringMatching(/^[a-z,]{1,14}$/), { minLength: 1, maxLength: 20 })
    .map((words) => words.join(' '));
  fc.assert(
    fc.property(text, fc.integer({ min: 1, max: 40 }), (t, most) => {
      const lines = wrapped(t, most);
      expect(lines.join(' ')).toBe(t);
      for (const line of lines) if (line.includes(' ')) expect(line.length).toBeLessThanOrEqual(most);
    }),
  );
});
