/**
 * The side to draw. Two claims that disagree stay a contradiction in words; the foot is drawn on the side that alone is
 * confirmed, so that a rumour cannot turn a picture against a scan.
 */
import type { Facts } from '../cases/schema';
import type { Explanation } from './types';

export const drawnSide = ({ side }: Pick<Facts, 'side'>): Explanation['side'] => {
  if (side.state === 'stated') return { state: 'stated', side: side.value, status: side.status };
  if (side.state === 'notStated') return { state: 'notStated' };
  const confirmed = side.values.filter((value) => value.status === 'confirmed');
  const [only, ...others] = confirmed;
  const denied = side.ruledOut.some((claim) => claim.value === only?.value);
  return only !== undefined && others.length === 0 && !denied
    ? { state: 'stated', side: only.value, status: 'confirmed' }
    : { state: 'contradiction' };
};
