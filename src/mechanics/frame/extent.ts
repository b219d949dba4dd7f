/** How large a frame is: the diagonal of the box round its nodes and the places where segments of its members meet. */
import type { ReadFrame } from './schema';

export const extentOf = ({ nodes, members }: ReadFrame): number => {
  const low = [0, 0, 0].fill(Number.POSITIVE_INFINITY);
  const high = [0, 0, 0].fill(Number.NEGATIVE_INFINITY);
  const take = (place: readonly number[]): void => {
    place.forEach((value, d) => {
      low[d] = Math.min(low[d] as number, value);
      high[d] = Math.max(high[d] as number, value);
    });
  };
  for (const { xyz } of nodes) take(xyz);
  for (const { segments } of members) for (const { to } of segments ?? []) if (to !== undefined) take(to);
  return Math.hypot(...high.map((value, d) => value - (low[d] as number)));
};
