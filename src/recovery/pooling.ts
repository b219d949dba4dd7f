/**
 * Several studies put together, allowing that they differ. On ln weeks: people of one study spread by `within` (pooled over the
 * studies by degrees of freedom), the middles of the studies by `between` beyond chance (Paule & Mandel 1982, J Res Natl Bur
 * Stand 87:377, as solved by DerSimonian & Kacker 2007, Contemp Clin Trials 28:105). One more person of one more study spreads
 * by both, and by how surely the common middle is known; the latter two are widened for few studies (`few-studies.ts`).
 */
import type { Endpoint } from '../ids';
import type { OneEndpoint } from './arms';
import { widerBy } from './few-studies';
import type { FittedArm, TimeFit } from './types';

export const LEAST_ARMS = 3;

export interface Pool {
  /** Common middle of ln weeks, and its standard error. */
  readonly mu: number;
  readonly error: number;
  /** How many studies tell it. */
  readonly studies: number;
  /** Standard deviations of ln weeks between people of a study, and between studies. */
  readonly within: number;
  readonly between: number;
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Weighted middle of `values`, weights one over (variance + between). */
const middleOf = (values: readonly number[], variances: readonly number[], between: number) => {
  const weights = variances.map((v) => 1 / (v + between));
  const total = sum(weights);
  const mu = sum(values.map((y, i) => y * (weights[i] ?? 0))) / total;
  return { mu, total, weights };
};

const MOST_STEPS = 200;

/**
 * Between-study variance with which the weighted sum of squares is what chance would give, k - 1; 0 when it is below that
 * already. The sum falls and is convex in the variance, so Newton's steps from 0 rise to the answer and never pass it.
 */
export const betweenVariance = (values: readonly number[], variances: readonly number[]): number => {
  let between = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    const { mu, weights } = middleOf(values, variances, between);
    const squares = values.map((y, i) => (weights[i] ?? 0) * (y - mu) ** 2);
    const excess = sum(squares) - (values.length - 1);
    const next = between + excess / sum(squares.map((s, i) => s * (weights[i] ?? 0)));
    if (!(excess > 0) || next <= between) break;
    between = next;
  }
  return between;
};

/** Throws RangeError for fewer than three arms and for arms of two endpoints. */
export const poolOf = <E extends Endpoint>(
  arms: readonly FittedArm<E>[] & ([OneEndpoint<E>] extends [never] ? never : unknown),
): Pool => {
  const list: readonly FittedArm<E>[] = arms;
  if (list.length < LEAST_ARMS) throw new RangeError(`no curve from fewer than ${LEAST_ARMS} arms: got ${list.length}`);
  if (list.some((a) => a.endpoint !== list[0]?.endpoint))
    throw new RangeError('poolOf: arms count to different endpoints');
  const freedom = sum(list.map((a) => a.n - 1));
  const withinVariance = sum(list.map((a) => (a.n - 1) * a.fit.sigma ** 2)) / freedom;
  const middles = list.map((a) => a.fit.mu);
  const variances = list.map((a) => withinVariance / a.n);
  const betweenVar = betweenVariance(middles, variances);
  const { mu, total } = middleOf(middles, variances, betweenVar);
  return {
    mu,
    error: Math.sqrt(1 / total),
    studies: new Set(list.map(({ source }) => source)).size,
    within: Math.sqrt(withinVariance),
    between: Math.sqrt(betweenVar),
  };
};

/**
 * What lies between studies, and how surely their middle is known, as few studies tell it: the normal that has the tenth and the
 * ninetieth of 100 people where Student's t has them.
 */
const apart = ({ studies, between, error }: Pool): number => widerBy(studies) * Math.hypot(between, error);

/** For one more person of one more study. */
export const personOf = (pool: Pool): TimeFit => ({ mu: pool.mu, sigma: Math.hypot(pool.within, apart(pool)) });

/** For the middle that one more study of n people would find. */
export const middleOfStudy = (pool: Pool, n: number): TimeFit => ({
  mu: pool.mu,
  sigma: Math.hypot(pool.within / Math.sqrt(n), apart(pool)),
});
