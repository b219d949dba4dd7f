/** From sections and loads to stations: internal forces by equilibrium, then the stress field and its extremes. */
import { internalForcesAt, type MemberLoads } from './forces';
import type { MemberSection } from './member';
import { extremesOf, fieldOf } from './stress';
import type { Peak, Station } from './types';

export const stationsOf = (
  sections: readonly MemberSection[],
  loads: MemberLoads,
  outsideBeamTheory: (sMm: number) => boolean,
): Station[] =>
  sections.map(({ outline, section }) => {
    const forces = internalForcesAt(loads, outline.sMm, section.centroidMm);
    const field = fieldOf(section, forces.axialN, forces.bendingUpDownNmm, forces.bendingSidewaysNmm);
    return {
      sMm: outline.sMm,
      ...forces,
      section,
      ...extremesOf(section, outline.points, field),
      field,
      outsideBeamTheory: outsideBeamTheory(outline.sMm),
    };
  });

export type Stress = 'tensionMPa' | 'compressionMPa';

export interface PeakPlace {
  readonly sMm: number;
  readonly mpa: number;
  readonly atEdgeOfTheory: boolean;
}

/**
 * Largest stress among the stations inside beam theory; among all, when theory holds nowhere. At the edge: a station outside theory
 * carries more still.
 */
export const peakOf = (stations: readonly Station[], stress: Stress): PeakPlace => {
  const inside = stations.filter((s) => !s.outsideBeamTheory);
  const pool = inside.length > 0 ? inside : stations;
  const [first] = pool;
  if (!first) throw new RangeError('a member without stations has no peak');
  const peak = pool.reduce((a, b) => (Math.abs(b[stress]) > Math.abs(a[stress]) ? b : a), first);
  const more = stations.some((s) => s.outsideBeamTheory && Math.abs(s[stress]) > Math.abs(peak[stress]));
  const atEdgeOfTheory = inside.length === 0 || more;
  return { sMm: peak.sMm, mpa: peak[stress], atEdgeOfTheory };
};

/** The peak of the base run with the band that the other runs open round it. */
export const peakWithBand = (base: readonly Station[], runs: readonly (readonly Station[])[], stress: Stress): Peak => {
  const peak = peakOf(base, stress);
  const all = [peak, ...runs.map((run) => peakOf(run, stress))];
  const band = (pick: (p: PeakPlace) => number): readonly [number, number] => [
    Math.min(...all.map(pick)),
    Math.max(...all.map(pick)),
  ];
  return { ...peak, lowHighMPa: band((p) => p.mpa), sLowHighMm: band((p) => p.sMm) };
};
