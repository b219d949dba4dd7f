/** Which candidates are shown at once, and which wait folded away. */
import type { Candidate } from './types';

/** As many as are taken in at a glance. */
const AT_A_GLANCE = 6;
/** Of the score of the last at a glance: an injury told in full that has as much fits hardly less. */
const HARDLY_LESS = 0.75;

export interface Shown {
  readonly inSight: readonly Candidate[];
  readonly folded: readonly Candidate[];
}

/** Equal or nearly equal scores do not decide what is seen: an injury told in full is not folded away behind short cards. */
export const inSightOf = (candidates: readonly Candidate[]): Shown => {
  const least = HARDLY_LESS * (candidates[AT_A_GLANCE - 1]?.score ?? 0);
  const isShown = ({ ref, score }: Candidate, i: number): boolean =>
    i < AT_A_GLANCE || (ref.is === 'injury' && score >= least);
  return {
    inSight: candidates.filter(isShown),
    folded: candidates.filter((each, i) => !isShown(each, i)),
  };
};
