/**
 * Whether two shares differ by more than chance. Wilson's interval for one share; for their difference the two intervals are
 * put together by squares (Newcombe 1998, Stat Med 17:873-890, method 10). Printed intervals take the place of Wilson's where
 * a study pooled others and printed them.
 */
import { wilsonInterval } from '../recovery';

export interface Share {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Two-sided 95 % of the normal distribution. */
const Z95 = 1.959963984540054;

/** Wilson score interval. `count` may be a fraction when only a percentage was printed. */
export const wilson = (count: number, of: number): Share => ({ value: count / of, ...wilsonInterval(count, of, Z95) });

/** First less second, with its interval. */
export const differenceOf = (a: Share, b: Share): Share => {
  const value = a.value - b.value;
  return {
    value,
    low: value - Math.hypot(a.value - a.low, b.high - b.value),
    high: value + Math.hypot(a.high - a.value, b.value - b.low),
  };
};
