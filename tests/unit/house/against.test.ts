/** The helper that holds our numbers against the outside has to be able to fail. */
import { expect, test } from 'vitest';
import { mismatch } from '../../tools/against';

test.each([
  ['equal within tolerance', { expected: 10, got: 10.05, tolerance: 0.1, why: 'printed to one digit' }, true],
  ['just outside', { expected: 10, got: 10.11, tolerance: 0.1, why: 'printed to one digit' }, false],
  ['a tolerance without a reason', { expected: 10, got: 10, tolerance: 0.1 }, false],
  ['a number without a tolerance', { expected: 10, got: 10 }, false],
  ['not a number', { expected: 10, got: Number.NaN, tolerance: 1e9, why: 'any' }, false],
  ['the same words', { expected: 'a', got: 'a' }, true],
  ['other words', { expected: 'a', got: 'b' }, false],
])('%s', (_, comparison, holds) => {
  expect(mismatch(comparison) === null).toBe(holds);
});
