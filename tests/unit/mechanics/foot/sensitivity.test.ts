/** What an answer hangs on, told from chance: unrelated figures are not named, one that drives the answer is. */
import { expect, test } from 'vitest';
import { chanceFloor, type DrawnFigure, sensitivityOf } from '../../../../src/mechanics/foot/sensitivity';
import { seededRandom } from '../../../../src/units';

const [FIGURES, DRAWS] = [72, 100];

const drawn = (seed: number): { readonly figures: readonly DrawnFigure[]; readonly noise: readonly number[] } => {
  const random = seededRandom(seed);
  const row = () => Array.from({ length: DRAWS }, random);
  return { figures: Array.from({ length: FIGURES }, (_, i) => ({ figure: `f${i}`, shares: row() })), noise: row() };
};
const named = (figures: readonly DrawnFigure[], ratios: readonly number[]): readonly string[] =>
  sensitivityOf(figures, ratios)
    .filter(({ standsOut }) => standsOut)
    .map(({ figure }) => figure);

test('the floor is z²/(n − 1) at five in a hundred over all figures: no larger for one figure than the textbook has it', () => {
  // 1.96 squared over 99.
  expect(chanceFloor(1, 100)).toBeCloseTo(3.8415 / 99, 4);
  expect(chanceFloor(FIGURES, DRAWS)).toBeCloseTo(0.116, 3);
  expect([chanceFloor(0, 100), chanceFloor(5, 1)]).toEqual([1, 1]);
});

test('of 72 unrelated figures the largest passes the floor in about five of a hundred ensembles, and hardly one is named', () => {
  const found = Array.from({ length: 150 }, (_, seed) => {
    const { figures, noise } = drawn(seed + 1);
    return sensitivityOf(figures, noise);
  });
  const floor = chanceFloor(FIGURES, DRAWS);
  const over = found.filter(([first]) => (first?.share ?? 1) > floor).length;
  // Seven or eight expected; three standard deviations are eight.
  expect(over).toBeGreaterThan(0);
  expect(over).toBeLessThan(16);
  expect(found.filter((all) => all.some(({ standsOut }) => standsOut)).length).toBeLessThan(6);
});

test('a figure that drives the answer is named first by every seed', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const { figures, noise } = drawn(seed);
    const ratios = noise.map((x, i) => x + 2 * (figures[7]?.shares[i] ?? 0));
    expect(named(figures, ratios)[0]).toBe('f7');
  }
});

test('one that drives it up in half the draws and down in the other is not', () => {
  const { figures, noise } = drawn(3);
  const flipped = noise.map((x, i) => 0.05 * x + (i < 50 ? 1 : -1) * (figures[7]?.shares[i] ?? 0));
  expect(named(figures, flipped)).not.toContain('f7');
  // In the first half alone it is strong enough to pass over all draws.
  const half = noise.map((x, i) => 0.05 * x + (i < 50 ? (figures[7]?.shares[i] ?? 0) : 0.5));
  const found = sensitivityOf(figures, half).find(({ figure }) => figure === 'f7');
  expect(found?.share).toBeGreaterThan(chanceFloor(FIGURES, DRAWS));
  expect(found?.standsOut).toBe(false);
});
