/**
 * Which figures a ratio hangs on: the squared rank correlation of each with the ratio over the draws, and whether that is more than
 * chance would show. Of some seventy figures one always comes first, whatever the seed.
 */
import normalQuantile from '@stdlib/stats-base-dists-normal-quantile';
import { rankCorrelation } from './draws';
import type { FigureShare } from './types';

/** Chance, in a world where no figure matters, that any of them all is named nevertheless (chosen). */
const FAMILY_LEVEL = 0.05;

/**
 * Squared rank correlation that the largest of `figures` unrelated figures passes in 5 of 100 ensembles of `draws` draws: without a
 * relation r·√(n − 1) is close to standard normal (from memory), and the level, two-sided, is split evenly among the figures
 * (Bonferroni): z²/(n − 1) with z at 1 − 0.05/(2·figures). Some 0.11 for 70 figures and 100 draws.
 */
export const chanceFloor = (figures: number, draws: number): number =>
  figures === 0 || draws < 2 ? 1 : normalQuantile(1 - FAMILY_LEVEL / (2 * figures), 0, 1) ** 2 / (draws - 1);

/** One figure over the draws: where in its band each draw has it. */
export interface DrawnFigure {
  readonly figure: string;
  readonly shares: readonly number[];
}

/**
 * The largest first. A figure stands out above the floor of all draws, if it is above it in either half of them too, with one sign: a
 * ranking that its own second half does not repeat is none.
 */
export const sensitivityOf = (figures: readonly DrawnFigure[], ratios: readonly number[]): readonly FigureShare[] => {
  const floor = chanceFloor(figures.length, ratios.length);
  const half = Math.floor(ratios.length / 2);
  return figures
    .map(({ figure, shares }): FigureShare => {
      const over = (from: number, to: number): number =>
        rankCorrelation(shares.slice(from, to), ratios.slice(from, to));
      const all = over(0, ratios.length);
      const parts = [all, over(0, half), over(half, ratios.length)];
      const standsOut = parts.every((r) => r ** 2 > floor && Math.sign(r) === Math.sign(all));
      return { figure, share: all ** 2, standsOut };
    })
    .sort((a, b) => b.share - a.share);
};
