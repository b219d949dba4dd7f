/** Members with known answers, made directly from outlines: bars for the reference tests of the beam. mm, N, MPa. */
import type { Point2 } from '../../src/anatomy/inside/polygon';
import { type Canal, type Station, sectionOf } from '../../src/mechanics';
import { heldBy, type MemberLoads, type PointLoad } from '../../src/mechanics/forces';
import { stationsOf } from '../../src/mechanics/stations';

/** Regular polygon on an ellipse with the ellipse's own area: its second moments differ by about (2 pi / n)^4 / 60. */
export const ellipse = (semiDorsal: number, semiLateral: number, n = 720): Point2[] => {
  const step = (2 * Math.PI) / n;
  const k = Math.sqrt(step / Math.sin(step));
  return Array.from({ length: n }, (_, i) => [
    k * semiDorsal * Math.cos(i * step),
    k * semiLateral * Math.sin(i * step),
  ]);
};

export const rectangle = (dorsal: number, lateral: number): Point2[] => [
  [-dorsal / 2, -lateral / 2],
  [-dorsal / 2, lateral / 2],
  [dorsal / 2, lateral / 2],
  [dorsal / 2, -lateral / 2],
];

export interface Member {
  readonly lengthMm: number;
  readonly outline: (sMm: number) => Point2[];
  readonly canal?: Canal;
  readonly count?: number;
}

export const membersStations = (m: Member, loads: MemberLoads): Station[] => {
  const count = m.count ?? 240;
  const sections = Array.from({ length: count + 1 }, (_, i) => {
    const sMm = (m.lengthMm * i) / count;
    const points = m.outline(sMm);
    return { outline: { sMm, points, depthMm: 0 }, section: sectionOf(points, m.canal ?? null) };
  });
  return stationsOf(sections, loads, () => false);
};

export const push = (sMm: number, load: Partial<PointLoad>): MemberLoads => ({
  points: [{ sMm, at: [0, 0], alongN: 0, dorsalN: 0, lateralN: 0, ...load }],
  spread: null,
});

export const even = (lengthMm: number, dorsalPerMm: number): MemberLoads => ({
  points: [],
  spread: {
    fromMm: 0,
    toMm: lengthMm,
    at: [0, 0],
    along: 0,
    dorsal: { mean: dorsalPerMm, slope: 0 },
    lateral: { mean: 0, slope: 0 },
    twist: 0,
  },
});

export { heldBy };
