/**
 * The beta distribution, from a library (stdlib). By itself, because it weighs 40 kB (gzip): only what makes rates loads it,
 * not what reads a forecast.
 */
import quantile from '@stdlib/stats-base-dists-beta-quantile';

/** Value below which `share` of a beta distribution lies. */
export const betaQuantile = (share: number, alpha: number, beta: number): number => quantile(share, alpha, beta);
