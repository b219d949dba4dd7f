/** The cortex of one bone of one foot: its thickness on each side at each share of the bone's length, mm. */
import { evenSides, type KnownBone, type Sides } from './known';

/** The cortex at stations along a bone, from its proximal end; even between them, constant beyond the last ones. */
export type WallOfBone = readonly { readonly at: number; readonly sides: Sides }[];

/** The walls that leave a measured canal: dorsal and plantar, medial and lateral. */
export interface CanalWall {
  readonly upDownMm: number;
  readonly acrossMm: number;
}

const between = (a: Sides, b: Sides, t: number): Sides => ({
  dorsal: a.dorsal + t * (b.dorsal - a.dorsal),
  plantar: a.plantar + t * (b.plantar - a.plantar),
  medial: a.medial + t * (b.medial - a.medial),
  lateral: a.lateral + t * (b.lateral - a.lateral),
});
const scaled = (s: Sides, size: number): Sides => between(evenSides(0), s, size);
const valuesOf = (s: Sides): number[] => [s.dorsal, s.plantar, s.medial, s.lateral];

/** The thinnest cortex that the figures of a bone give anywhere, mm: no wall is made thinner to fit a canal. */
export const thinnestKnown = ({ stations }: KnownBone, size: number): number =>
  size * Math.min(...stations.flatMap((s) => (s.sides ? valuesOf(s.sides) : [])));

/** `size` is the foot's over the reference foot's. */
export const wallOf = ({ stations }: KnownBone, size: number, canalWall: CanalWall | null): WallOfBone => {
  const fromCanal: Sides = {
    dorsal: canalWall?.upDownMm ?? 0,
    plantar: canalWall?.upDownMm ?? 0,
    medial: canalWall?.acrossMm ?? 0,
    lateral: canalWall?.acrossMm ?? 0,
  };
  return stations.map(({ at, sides }) => ({ at, sides: sides ? scaled(sides, size) : fromCanal }));
};

export const sidesAt = (wall: WallOfBone, share: number): Sides => {
  const after = wall.findIndex((s) => s.at >= share);
  const [a, b] = [wall[after - 1], wall[after] ?? wall.at(-1)];
  if (!b) throw new RangeError('a wall without stations');
  return a && after > 0 ? between(a.sides, b.sides, (share - a.at) / (b.at - a.at)) : b.sides;
};

/** No cortex between two shares of the length is thicker, mm. */
export const thickestBetween = (wall: WallOfBone, from: number, to: number): number => {
  const inside = wall.filter((s) => s.at > from && s.at < to).map((s) => s.sides);
  return Math.max(...[sidesAt(wall, from), ...inside, sidesAt(wall, to)].flatMap(valuesOf));
};

/** Cortex under a surface that looks `outward` (dorsal, lateral, along): of the sides it looks to, each by the square of its share. */
export const cortexUnder = (sides: Sides, dorsal: number, lateral: number, along: number): number => {
  const mean = (sides.dorsal + sides.plantar + sides.medial + sides.lateral) / 4;
  const upDown = dorsal > 0 ? sides.dorsal : sides.plantar;
  const across = lateral > 0 ? sides.lateral : sides.medial;
  const [dd, ll, aa] = [dorsal * dorsal, lateral * lateral, along * along];
  return (dd * upDown + ll * across + aa * mean) / (dd + ll + aa);
};
