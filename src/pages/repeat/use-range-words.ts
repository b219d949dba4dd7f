/** A range of ratios in words: one number when its ends read alike. */
import type { Ranged } from '../../mechanics/repetition';
import { useWords } from '../context';
import { shortNumber } from './wear';

/** `bare`: without its unit, for a table whose head says it. */
export const useRangeWords = (bare = false): ((range: Ranged) => string) => {
  const say = useWords();
  return ({ low, high }) => {
    const [from, to] = [shortNumber(low), shortNumber(high)];
    if (bare) return from === to ? from : say('repeat.range', { low: from, high: to });
    if (from === to && from === '1') return say('repeat.alike');
    return from === to ? say('repeat.times', { value: from }) : say('repeat.timesRange', { low: from, high: to });
  };
};
