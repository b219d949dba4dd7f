/** Where vessels go in, as cells: a part of a bone all over its bare surface, a place of it at the cells beneath. */
import type { Region, Zone } from '../anatomy/types';
import type { RegionId, VesselId } from '../ids';
import { dot, subtract } from '../units';
import { type Grid, middleOf, surfaceOf } from './grid';
import type { Seeds } from './spread';
import type { LiveEnd } from './vessel-graph';

/** What of a foot one bone's feeding asks for. */
export interface BonePlaces {
  readonly zones: readonly Zone[];
  /** Regions of this bone. */
  readonly regions: readonly Region[];
}

/** Surface cells of a part; none under cartilage, for no vessel goes in there. */
const overPart = (grid: Grid, surface: readonly number[], zone: Zone, facets: readonly Region[]): readonly number[] =>
  surface.filter((cell) => {
    const s = grid.sMm[cell] ?? 0;
    if (s < zone.fromMm || s >= zone.toMm) return false;
    const p = middleOf(grid, cell);
    return !facets.some((f) => f.contains(p));
  });

/** The surface cell nearest to the middle of a place, and those within it. */
const atPlace = (grid: Grid, surface: readonly number[], place: Region): readonly number[] => {
  let [nearest, least] = [-1, Number.POSITIVE_INFINITY];
  const cells: number[] = [];
  for (const cell of surface) {
    const p = middleOf(grid, cell);
    const off = subtract(p, place.centre);
    const square = dot(off, off);
    if (square < least) [nearest, least] = [cell, square];
    if (place.contains(p)) cells.push(cell);
  }
  return nearest < 0 ? cells : [...new Set([nearest, ...cells])];
};

/** Cells of one entry, by its name. The function throws RangeError for a place that the bone does not have. */
export const cellsAtOn = (grid: Grid, places: BonePlaces): ((at: RegionId) => readonly number[]) => {
  const surface = surfaceOf(grid);
  const facets = places.regions.filter(({ kind }) => kind === 'facet');
  const known = new Map<RegionId, readonly number[]>();
  return (at) => {
    const kept = known.get(at);
    if (kept !== undefined) return kept;
    const zone = places.zones.find((z) => z.region === at);
    const region = places.regions.find(({ id }) => id === at);
    if (zone === undefined && region === undefined) throw new RangeError(`the bone has no place ${at} for a vessel`);
    const cells =
      zone !== undefined
        ? overPart(grid, surface, zone, facets)
        : region === undefined
          ? []
          : atPlace(grid, surface, region);
    known.set(at, cells);
    return cells;
  };
};

export interface Entering extends Seeds {
  readonly vessel: VesselId;
  /** Parts that it enters all over. */
  readonly over: readonly RegionId[];
}

/** One for each vessel that goes into the bone at a place, in the order given: all its entries together. */
export const enteringOf = (
  places: BonePlaces,
  ends: readonly LiveEnd[],
  cellsAt: (at: RegionId) => readonly number[],
): readonly Entering[] => {
  const byVessel = new Map<VesselId, { cells: number[]; over: RegionId[] }>();
  for (const { vessel, at } of ends) {
    if (at === null) continue;
    const known = byVessel.get(vessel) ?? { cells: [], over: [] };
    known.cells.push(...cellsAt(at));
    if (places.zones.some((z) => z.region === at)) known.over.push(at);
    byVessel.set(vessel, known);
  }
  return [...byVessel].map(([vessel, { cells, over }]) => ({ vessel, cells, over }));
};
