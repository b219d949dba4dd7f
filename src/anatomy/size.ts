/** How large a foot is, and whether it is one that was checked. */
import { FORM_BOUNDS } from './parameters';
import type { Shape } from './shape';
import type { FootParameters } from './types';

/** Size against the reference foot. Throws RangeError for what is no foot. */
export const scaleOf = (shape: Shape, parameters: FootParameters): number => {
  const k = parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  if (!(k > 0.3 && k < 3)) throw new RangeError(`H of ${parameters.heelToSecondHeadMm} mm is not a foot`);
  return k;
};

/** Throws RangeError for a measure that is no number or lies outside the bounds inside which feet are looked at. */
export const checkForm = (parameters: FootParameters): void => {
  for (const [measure, [low, high]] of Object.entries(FORM_BOUNDS)) {
    const value: unknown = parameters[measure as keyof typeof FORM_BOUNDS];
    if (typeof value !== 'number' || !(value >= low && value <= high))
      throw new RangeError(`a foot with ${measure} ${value}: ${low} to ${high} are known`);
  }
};
