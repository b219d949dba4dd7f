import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lineAt } from '../../../src/telling';

const lines = [{ startSecond: 0 }, { startSecond: 5.6 }, { startSecond: 12 }];

it.each([
  [-1, 0],
  [0, 0],
  [5.59, 0],
  [5.6, 1],
  [11.9, 1],
  [12, 2],
  [999, 2],
])('at %d s it is line %i', (second, line) => {
  expect(lineAt(lines, second)).toBe(line);
});

it('without lines there is none', () => {
  expect(lineAt([], 3)).toBe(-1);
});

it('goes forward with time, and begins with the first', () => {
  const starts = fc.uniqueArray(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(
      starts,
      fc.double({ min: 0, max: 250, noNaN: true }),
      fc.double({ min: 0, max: 50, noNaN: true }),
      (all, t, more) => {
        const sorted = all.toSorted((a, b) => a - b).map((startSecond) => ({ startSecond }));
        expect(lineAt(sorted, t + more)).toBeGreaterThanOrEqual(lineAt(sorted, t));
        const line = lineAt(sorted, t);
        if (t >= (sorted[0]?.startSecond ?? 0)) expect(sorted[line]?.startSecond).toBeLessThanOrEqual(t);
        expect(sorted[line + 1]?.startSecond ?? Infinity).toBeGreaterThan(line === 0 ? -1 : t);
      },
    ),
  );
});
