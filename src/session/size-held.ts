/**
 * Before the bands of a value nobody knows whether a size may be stated, and a number that the next second takes back is none. So until
 * they come a size is told only where the last bands of the same bone in the same task allowed one.
 */
import type { Explanation } from '../explain/types';

const sameAsked = (a: Explanation, b: Explanation): boolean =>
  a.caseId === b.caseId && a.bone === b.bone && a.loads?.activity === b.loads?.activity;

/** @param before the last explanation that had bands. */
export const sizeHeld = (explanation: Explanation, before: Explanation | null): Explanation => {
  const { loads } = explanation;
  if (!loads || loads.bands) return explanation;
  const last = before !== null && sameAsked(before, explanation) ? before.loads : null;
  const ranksOnly = loads.ranksOnly || last?.ranksOnly !== false;
  const forcesRank = loads.forcesRank || last?.forcesRank !== false;
  if (ranksOnly === loads.ranksOnly && forcesRank === loads.forcesRank) return explanation;
  const referenceMPa = ranksOnly ? loads.told.tables.map(({ peakTension }) => peakTension.mpa) : loads.referenceMPa;
  return { ...explanation, loads: { ...loads, ranksOnly, forcesRank, referenceMPa } };
};
