/**
 * A forecast as people of 100: the one place where its shares become whole people, so that sentence, table, squares and what was
 * kept say the same number. Arithmetic alone: screens take it without what makes a forecast.
 *
 * Trouble is what speaks against the way everybody hopes for: a healing problem on the way, or never back. It is told as one number
 * because the two take from each other: the longer somebody is not back, the more of those left are people who never are, so that
 * after a year the share with a problem falls again while things only got worse. Their sum never falls (`notThereAt`: the uneventful
 * way has the earlier time), and neither does its part that is never back.
 *
 * Each of the two is rounded by itself, and what lies between is their difference. Rounding three shares to a sum of 100 by their
 * remainders would let the sum of two fall by one person while both shares rise.
 */
import type { Forecast } from './types';

/** Sums to 100: uneventful, problem, notBack. `trouble` is the last two together. */
export interface OfHundred {
  readonly uneventful: number;
  readonly trouble: number;
  readonly problem: number;
  readonly notBack: number;
}

/** Share that does not go the uneventful way. Summed, not taken from one: small shares keep their digits. */
export const troubleOf = ({ branches: [, problem, notReturned] }: Pick<Forecast, 'branches'>): number =>
  problem.chance + notReturned.chance;

/** A small share is never told as nobody, nor nearly all as all. */
export const peopleOf = (share: number): number => {
  const people = Math.round(100 * share);
  if (share > 0 && share < 1) return Math.min(99, Math.max(1, people));
  return people;
};

export const hundredOf = (forecast: Pick<Forecast, 'branches'>): OfHundred => {
  const [uneventful, problem, notReturned] = forecast.branches;
  const some = (share: number): number => (share > 0 ? 1 : 0);
  const notBack = Math.min(peopleOf(notReturned.chance), 100 - some(uneventful.chance) - some(problem.chance));
  // Of two ways that both can happen, each is one person at least.
  const least = notBack + some(problem.chance);
  // With the uneventful way closed it is all of them, whatever the last bit of a sum says.
  const trouble = uneventful.chance === 0 ? 100 : Math.min(99, Math.max(peopleOf(troubleOf(forecast)), least));
  return { uneventful: 100 - trouble, trouble, problem: trouble - notBack, notBack };
};
