/**
 * Stress is never told of a person in megapascals: all of it is a multiple of the same bone's largest pull in the reference task, in
 * the same person and foot. Strain is that multiple too, for bone is taken as equally stiff all along.
 */
import type { ExplainedLoads } from '../../explain/types';
import { LEAST_REFERENCE_MPA } from '../../mechanics/foot/types';

/** @param referenceMPa largest pull of the bone in the reference task. Null where that is no measure. */
export const multipleOf = (mpa: number, referenceMPa: number): number | null =>
  referenceMPa < LEAST_REFERENCE_MPA ? null : mpa / referenceMPa;

/** The word for what stress is told as a multiple of. */
export const measureWord = ({ ranksOnly }: Pick<ExplainedLoads, 'ranksOnly'>): 'measure.most' | 'measure.reference' =>
  ranksOnly ? 'measure.most' : 'measure.reference';

/** Zero has no sign, and two figures are enough. */
export const short = (value: number): string =>
  value
    .toFixed(Math.abs(value) < 9.95 ? 1 : 0)
    .replace(/^-(0(?:\.0)?)$/, '$1')
    .replace('-', '−');

/** A change of so many percent, with its sign. */
export const signedPercent = (ratio: number): string => {
  const percent = Math.round(100 * (ratio - 1));
  return percent === 0 ? '0' : `${percent > 0 ? '+' : '−'}${Math.abs(percent)}`;
};
