/**
 * How much wider an interval gets because the spread between studies is itself known from few of them: Student's t with one degree
 * of freedom less than studies in place of the normal (Hartung, Knapp, Sidik and Jonkman, as described and tried by IntHout,
 * Ioannidis & Borm 2014, BMC Med Res Methodol 14:25, abstract read). Their factor on the standard error is never taken below one
 * (modified form, advised for few studies: BMC Med Res Methodol 2015, DOI 10.1186/s12874-015-0091-1, abstract read); with the
 * between-study variance of Paule and Mandel it is one or less, so that the quantile is all that changes. For one more person or
 * study the same degrees of freedom are taken; one less again is used too (Higgins, Thompson & Spiegelhalter 2009, from memory),
 * which for three studies has no finite spread.
 */
import { betaQuantile } from './beta';
import { normalQuantile } from './distributions';

/** Intervals of ours hold eighty of 100. */
const UPPER = 0.9;

/** Value of Student's t below which `share` (above a half) lies: t squared over t squared plus freedom is a beta. */
export const tQuantile = (share: number, freedom: number): number => {
  const x = betaQuantile(2 * (1 - share), freedom / 2, 1 / 2);
  return Math.sqrt((freedom * (1 - x)) / x);
};

/** By how much an eighty-of-100 interval from so many studies is wider than the normal would have it. Throws RangeError below two. */
export const widerBy = (studies: number): number => {
  if (!(studies >= 2)) throw new RangeError(`no spread between ${studies} studies`);
  return tQuantile(UPPER, studies - 1) / normalQuantile(UPPER);
};
