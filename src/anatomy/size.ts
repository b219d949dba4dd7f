/** How large a foot is. */
import type { Shape } from './shape';
import type { FootParameters } from './types';

/** Size against the reference foot. Throws RangeError for what is no foot. */
export const scaleOf = (shape: Shape, parameters: FootParameters): number => {
  const k = parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  if (!(k > 0.3 && k < 3)) throw new RangeError(`H of ${parameters.heelToSecondHeadMm} mm is not a foot`);
  return k;
};
