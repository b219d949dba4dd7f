/** The cortex of one bone: its thickness on each side at each share of the bone's length. */
import { type CortexFigure, type CortexStation, type CortexTube, placeOf, thicknessOf, type Wall } from './schema';

/** Thickness of the cortex on each side, mm. */
export interface Sides {
  readonly dorsal: number;
  readonly plantar: number;
  readonly medial: number;
  readonly lateral: number;
}

/** The cortex of a bone at a share of its length. */
export type WallOfBone = (share: number) => Sides;

/** The walls that leave a measured canal: dorsal and plantar, medial and lateral. */
export interface CanalWall {
  readonly upDownMm: number;
  readonly acrossMm: number;
}

const even = (mm: number): Sides => ({ dorsal: mm, plantar: mm, medial: mm, lateral: mm });
const between = (a: Sides, b: Sides, t: number): Sides => ({
  dorsal: a.dorsal + t * (b.dorsal - a.dorsal),
  plantar: a.plantar + t * (b.plantar - a.plantar),
  medial: a.medial + t * (b.medial - a.medial),
  lateral: a.lateral + t * (b.lateral - a.lateral),
});

/** A shell of the same thickness everywhere. */
export const evenWall = (figure: CortexFigure, wall: Wall, size: number): WallOfBone => {
  const sides = even(thicknessOf(figure, wall) * size);
  return () => sides;
};

const tabled = ({ cortex }: CortexStation, wall: Wall, size: number): Sides | null => {
  if (cortex === 'fromCanal') return null;
  if ('band' in cortex) return even(thicknessOf(cortex, wall) * size);
  return {
    dorsal: thicknessOf(cortex.dorsal, wall) * size,
    plantar: thicknessOf(cortex.plantar, wall) * size,
    medial: thicknessOf(cortex.medial, wall) * size,
    lateral: thicknessOf(cortex.lateral, wall) * size,
  };
};

const valuesOf = (s: Sides): number[] => [s.dorsal, s.plantar, s.medial, s.lateral];

/** The thinnest cortex that the tube's own figures give anywhere, mm: no wall is made thinner to fit a canal. */
export const thinnestTabled = (tube: CortexTube, wall: Wall, size: number): number =>
  Math.min(...tube.stations.flatMap((s) => valuesOf(tabled(s, wall, size) ?? even(Number.POSITIVE_INFINITY))));

/** Cortex along a tube; `size` is the foot's over the reference foot's. Even between stations, constant beyond the last ones. */
export const tubeWall = (tube: CortexTube, wall: Wall, size: number, canalWall: CanalWall | null): WallOfBone => {
  const fromCanal: Sides = {
    dorsal: canalWall?.upDownMm ?? 0,
    plantar: canalWall?.upDownMm ?? 0,
    medial: canalWall?.acrossMm ?? 0,
    lateral: canalWall?.acrossMm ?? 0,
  };
  const stations = tube.stations.map((s) => ({
    at: placeOf(s, wall),
    sides: tabled(s, wall, size) ?? fromCanal,
  }));
  return (share) => {
    const after = stations.findIndex((s) => s.at >= share);
    const [a, b] = [stations[after - 1], stations[after]];
    if (!b) return stations.at(-1)?.sides ?? fromCanal;
    if (!a) return b.sides;
    return between(a.sides, b.sides, (share - a.at) / (b.at - a.at));
  };
};
