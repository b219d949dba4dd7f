/** The largest stress along a member, where beam theory may state it. */
import type { Peak } from './types';

/** What a peak is read from. */
export interface Stressed {
  readonly sMm: number;
  readonly tensionMPa: number;
  readonly compressionMPa: number;
  readonly outsideBeamTheory: boolean;
}
export type Stress = 'tensionMPa' | 'compressionMPa';

/**
 * Largest stress among the stations inside beam theory; among all, when theory holds nowhere. At the edge: a station outside theory
 * carries more still. Throws RangeError for a member without stations.
 */
export const peakOf = (stations: readonly Stressed[], stress: Stress): Peak => {
  const inside = stations.filter((s) => !s.outsideBeamTheory);
  const pool = inside.length > 0 ? inside : stations;
  const [first] = pool;
  if (!first) throw new RangeError('a member without stations has no peak');
  const peak = pool.reduce((a, b) => (Math.abs(b[stress]) > Math.abs(a[stress]) ? b : a), first);
  const more = stations.some((s) => s.outsideBeamTheory && Math.abs(s[stress]) > Math.abs(peak[stress]));
  return { sMm: peak.sMm, mpa: peak[stress], atEdgeOfTheory: inside.length === 0 || more };
};
