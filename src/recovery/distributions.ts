/**
 * Normal and log-normal distributions, from a library (stdlib). Nothing here is of our own but the logarithm: weeks are
 * log-normal when ln weeks is normal. Survival is taken from the upper tail itself, not as one less the rest, so that ratios of
 * small survivals keep their digits (to about 37 standard deviations).
 */
import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import type { TimeFit } from './types';

/** Value below which `share` (0 to 1) of the standard normal distribution lies. */
export const normalQuantile = (share: number): number => normalQuantileOf(share, 0, 1);

const deviate = ({ mu, sigma }: TimeFit, week: number): number => (Math.log(week) - mu) / sigma;

/** Share of people there by the end of a week; 0 at week 0 and before. */
export const shareBy = (fit: TimeFit, week: number): number => (week > 0 ? normalCdf(deviate(fit, week), 0, 1) : 0);

/** Share of people not there yet at a week; 1 at week 0 and before. */
export const shareAfter = (fit: TimeFit, week: number): number => (week > 0 ? normalCdf(-deviate(fit, week), 0, 1) : 1);

/** Week by which `share` (0 to 1) of the people are there. */
export const weekBy = ({ mu, sigma }: TimeFit, share: number): number => Math.exp(mu + sigma * normalQuantile(share));
