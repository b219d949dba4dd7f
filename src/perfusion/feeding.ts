/**
 * Which vessels feed which part of a bone, and what a break and cut vessels leave. Territories are computed: every spot goes to the
 * nearest entry by way inside the bone (spread.ts). A break across the bone takes away every way across it; a cut takes an edge of the
 * graph of vessels away, and what hangs on it alone. Words, never a flow: nobody has measured how much each feeder carries.
 *
 * Which feeder is the main one follows from room: the territory that takes most of the part. Where a source that was read names the
 * main feeder of a part, the source wins, since those who injected the vessels saw them and our rule is an assumption.
 */
import type { Zone } from '../anatomy/types';
import type { BoneId, RegionId, VesselEdgeId, VesselId } from '../ids';
import { bordersOf } from './borders';
import { type BonePlaces, cellsAtOn, type Entering, enteringOf } from './entries';
import { type Grid, gridOf, layerFrom, piecesOf } from './grid';
import type { Ground } from './ground';
import { territoriesOf } from './spread';
import type { FedPart, FeedingState, FeedingTable } from './types';
import { endsIn, type LiveEnd, type VesselNode } from './vessel-graph';

export interface FeedingInput {
  readonly bone: BoneId;
  readonly ground: Ground;
  readonly places: BonePlaces;
  readonly vessels: readonly VesselNode[];
  /** Edges that this person's pattern of vessels lacks, and parts without vessels inside. */
  readonly lacking: ReadonlySet<VesselEdgeId>;
  readonly bare: readonly RegionId[];
  /** Edges that the injury or an operation took away. */
  readonly cuts: ReadonlySet<VesselEdgeId>;
  /** A source says that the bone's territories join without a border. */
  readonly joined: boolean;
  /** Station of a break across the bone. */
  readonly breakMm: number | null;
}

/**
 * Shares of a part's volume. A vessel with a fifth of it is one of the part's own feeders; with less it only reaches over a border. It
 * counts as reaching a part when it reaches half. One that comes over a border is named from a twentieth on.
 */
const OWN = 0.2;
const REACHES = 0.5;
const NAMED = 0.05;

type Piece = Pick<Zone, 'fromMm' | 'toMm'> & { readonly region: RegionId | null };

/** Zones as parts, the one with the break in two. A break on a border or off the bone splits none. */
const piecesBy = (zones: readonly Piece[], breakMm: number | null): readonly Piece[] =>
  zones.flatMap(({ region, fromMm, toMm }) =>
    breakMm !== null && breakMm > fromMm && breakMm < toMm
      ? [
          { region, fromMm, toMm: breakMm },
          { region, fromMm: breakMm, toMm },
        ]
      : [{ region, fromMm, toMm }],
  );

/** Everything worked out once for one table. */
interface Worked {
  readonly grid: Grid;
  readonly bare: Uint8Array;
  readonly whole: readonly Entering[];
  /** Territories of the whole bone, as numbers in `whole`; of what is left, as numbers in `left`. */
  readonly owner: Int16Array;
  readonly left: readonly Entering[];
  readonly next: Int16Array;
  /** Connected pieces of what is left, and the pieces into which each vessel that is left goes in. */
  readonly piece: Int32Array;
  readonly into: ReadonlyMap<VesselId, ReadonlySet<number>>;
  readonly nets: { readonly whole: readonly VesselId[]; readonly left: readonly VesselId[] };
}

const netsIn = (ends: readonly LiveEnd[]): readonly VesselId[] =>
  ends.filter(({ at }) => at === null).map(({ vessel }) => vessel);

/** A break through the hole by which a vessel goes in takes the vessel from both sides. */
const brokenThrough = (
  { regions }: BonePlaces,
  at: RegionId | null,
  breakMm: number | null,
  ground: Ground,
): boolean => {
  const hole = regions.find(({ id, kind }) => id === at && kind === 'foramen');
  if (hole === undefined || breakMm === null) return false;
  const [x, y, z] = hole.centre;
  const { origin, axis } = ground.axis;
  const s = (x - origin[0]) * axis[0] + (y - origin[1]) * axis[1] + (z - origin[2]) * axis[2];
  return Math.abs(s - breakMm) < HOLE_MM;
};
/** Half the width of the hole of a nutrient artery, drawn as 2 mm. */
const HOLE_MM = 1;

const work = (input: FeedingInput): Worked => {
  const { ground, places, bare: without, breakMm } = input;
  const stations = places.zones.flatMap(({ fromMm, toMm }) => [fromMm, toMm]);
  const grid = gridOf(ground, breakMm === null ? stations : [...stations, breakMm]);
  const cut = breakMm === null ? null : layerFrom(grid, breakMm);
  const bare = new Uint8Array(grid.count);
  for (const zone of places.zones.filter(({ region }) => without.includes(region)))
    for (let c = 0; c < grid.count; c++) {
      const s = grid.sMm[c] ?? 0;
      if (s >= zone.fromMm && s < zone.toMm) bare[c] = 1;
    }
  const open = (cell: number): boolean => bare[cell] === 0;
  const cellsAt = cellsAtOn(grid, places);
  const before = endsIn(input.bone, input.vessels, input.lacking);
  const after = endsIn(input.bone, input.vessels, new Set([...input.lacking, ...input.cuts])).filter(
    ({ at }) => !brokenThrough(places, at, breakMm, ground),
  );
  const [whole, left] = [before, after].map((ends) => enteringOf(places, ends, cellsAt)) as [
    readonly Entering[],
    readonly Entering[],
  ];
  const owner = territoriesOf(grid, whole, null, open);
  const same = cut === null && before.length === after.length;
  const piece = piecesOf(grid, cut, open);
  return {
    grid,
    bare,
    whole,
    left,
    owner,
    next: same ? owner : territoriesOf(grid, left, cut, open),
    piece,
    into: new Map(left.map(({ vessel, cells }) => [vessel, new Set(cells.filter(open).map((c) => piece[c] ?? -1))])),
    nets: { whole: netsIn(before), left: netsIn(after) },
  };
};

/** Cells of a part; of one too thin to hold any, those of the nearest layer that has some. */
const cellsIn = ({ grid }: Worked, { fromMm, toMm }: Piece): readonly number[] => {
  const middle = (fromMm + toMm) / 2;
  const own: number[] = [];
  let [near, off]: [number[], number] = [[], Number.POSITIVE_INFINITY];
  for (let c = 0; c < grid.count; c++) {
    const s = grid.sMm[c] ?? 0;
    if (s >= fromMm && s < toMm) own.push(c);
    const away = Math.abs(s - middle);
    if (away < off) [near, off] = [[c], away];
    else if (away === off) near.push(c);
  }
  return own.length > 0 ? own : near;
};

const sharesOf = (
  cells: readonly number[],
  grid: Grid,
  names: readonly VesselId[],
  owner: Int16Array,
): FedPart['territories'] => {
  const volumes = new Map<VesselId, number>();
  let all = 0;
  for (const c of cells) {
    const thick = grid.thickMm[c] ?? 0;
    all += thick;
    const vessel = names[owner[c] ?? -1];
    if (vessel !== undefined) volumes.set(vessel, (volumes.get(vessel) ?? 0) + thick);
  }
  return [...volumes].map(([vessel, v]) => ({ vessel, share: v / all })).sort((a, b) => b.share - a.share);
};

/** Where several are named the main feeders, losing one of them is losing main supply. */
const stateOf = (
  main: readonly VesselId[],
  ownLeft: readonly VesselId[],
  nets: readonly VesselId[],
  anybody: boolean,
): FeedingState => {
  if (ownLeft.length > 0) return main.every((v) => ownLeft.includes(v)) ? 'asBefore' : 'mainCut';
  return nets.length > 0 || anybody ? 'borderOnly' : 'none';
};

const partOf = (input: FeedingInput, worked: Worked, part: Piece): FedPart => {
  const { grid, whole, left, owner, next, piece, into, nets } = worked;
  const cells = cellsIn(worked, part);
  const thick = (list: readonly number[]): number => list.reduce((sum, c) => sum + (grid.thickMm[c] ?? 0), 0);
  const all = thick(cells);
  const reaches = (vessel: VesselId): boolean => {
    const pieces = into.get(vessel);
    if (pieces === undefined) return false;
    if (part.region !== null && left.some((e) => e.vessel === vessel && e.over.includes(part.region as RegionId)))
      return true;
    return thick(cells.filter((c) => pieces.has(piece[c] ?? -1))) >= REACHES * all;
  };
  const names = whole.map(({ vessel }) => vessel);
  const territories = sharesOf(cells, grid, names, owner);
  const own = territories.filter(({ share }) => share >= OWN).map(({ vessel }) => vessel);
  const said = input.vessels
    .filter((v) => names.includes(v.id) && v.said.some(({ region }) => region === part.region))
    .map(({ id }) => id);
  const main = said.length > 0 ? said : own.slice(0, 1);
  const feeders = [...new Set([...main, ...own, ...nets.whole])];
  const ownLeft = [...new Set([...main, ...own])].filter(reaches);
  const anybody = left.some(({ vessel }) => reaches(vessel));
  const taken =
    ownLeft.length > 0
      ? []
      : sharesOf(
          cells,
          grid,
          left.map(({ vessel }) => vessel),
          next,
        );
  const kept = cells.filter((c) => {
    const vessel = names[owner[c] ?? -1];
    return vessel !== undefined && into.get(vessel)?.has(piece[c] ?? -1);
  });
  return {
    ...part,
    main,
    mainBy: said.length > 0 ? 'source' : 'territory',
    feeders,
    territories,
    remaining: [...ownLeft, ...nets.left],
    fromBorder: taken.filter(({ share }) => share >= NAMED).map(({ vessel }) => vessel),
    keeps: all === 0 ? 0 : thick(kept) / all,
    state: stateOf(main, ownLeft, nets.left, anybody),
  };
};

/** Borders of the whole bone: a break does not move them, nor do the layers that a break asks for. */
const bordersIn = ({ grid, owner, whole }: Worked): FeedingTable['borders'] =>
  bordersOf(
    grid,
    owner,
    whole.map(({ vessel }) => vessel),
  );

/** `known`: the borders of the same bone, where they were found before. */
export const feedingOf = (input: FeedingInput, known?: FeedingTable['borders']): FeedingTable => {
  const worked = work(input);
  const { lengthMm } = input.ground.axis;
  const zones: readonly Piece[] =
    input.places.zones.length > 0 ? input.places.zones : [{ region: null, fromMm: 0, toMm: lengthMm }];
  const parts = piecesBy(zones, input.breakMm).map((part) => partOf(input, worked, part));
  const borders =
    known ?? (input.joined ? [] : bordersIn(input.breakMm === null ? worked : work({ ...input, breakMm: null })));
  return { bone: input.bone, parts, borders };
};
