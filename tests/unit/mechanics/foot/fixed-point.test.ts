/** The next guess at what leads back to itself: exact where the way is straight, and no worse than a plain step where nothing is known. */
import { expect, test } from 'vitest';
import { type Guess, nextGuess } from '../../../../src/mechanics/foot/fixed-point';

const ONES = new Float64Array([1, 1, 1]);
/** Leads from x to M x + c, whose fixed point is (1, 2, 3). */
const M = [
  [0.5, 0.2, 0],
  [-0.3, 0.6, 0.1],
  [0, 0.1, -0.7],
] as const;
const FIXED = [1, 2, 3];
const leads = (x: Float64Array): Float64Array =>
  Float64Array.from(M, (row, i) =>
    row.reduce((sum, m, j) => sum + m * ((x[j] as number) - (FIXED[j] as number)), FIXED[i] as number),
  );
const guessAt = (at: Float64Array): Guess => ({ at, off: leads(at).map((x, i) => x - (at[i] as number)) });

test('with one pass known it goes where that led', () => {
  const start = guessAt(new Float64Array([5, -4, 1]));
  expect(nextGuess([start], ONES)).toEqual(leads(start.at));
});

test('of three numbers on a straight way four passes say all', () => {
  let tried: Guess[] = [guessAt(new Float64Array([5, -4, 1]))];
  for (let pass = 0; pass < 3; pass++) tried = [...tried, guessAt(nextGuess(tried, ONES))];
  nextGuess(tried, ONES).forEach((x, i) => {
    expect(x).toBeCloseTo(FIXED[i] as number, 9);
  });
  // Plain steps would be far away still.
  let plain: Float64Array = new Float64Array([5, -4, 1]);
  for (let pass = 0; pass < 4; pass++) plain = leads(plain);
  expect(Math.abs((plain[0] as number) - 1)).toBeGreaterThan(0.1);
});

test('passes that tell the same are left out', () => {
  const one = guessAt(new Float64Array([5, -4, 1]));
  expect(nextGuess([one, one, one], ONES)).toEqual(leads(one.at));
});

test('what does not count does not steer', () => {
  const [a, b] = [guessAt(new Float64Array([5, -4, 1])), guessAt(new Float64Array([3, 0, 2]))];
  const strange = { at: b.at, off: Float64Array.from(b.off, (x, i) => (i === 2 ? 1e6 : x)) };
  const weights = new Float64Array([1, 1, 0]);
  const [got, told] = [nextGuess([a, strange], weights), nextGuess([a, b], weights)];
  expect(got.slice(0, 2)).toEqual(told.slice(0, 2));
});
