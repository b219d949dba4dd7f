/**
 * Which vessels feed which part of a bone, and what a break leaves. A break between the place where a vessel enters and a part it
 * feeds cuts that feeder for that part. A vessel that enters over a whole zone has entries on both sides of a break in it; a net on
 * the surface enters everywhere. Words, never a flow: nobody has measured how much each feeder carries.
 */
import type { Zone } from '../anatomy/types';
import type { BoneId, RegionId, VesselId } from '../ids';
import type { FedPart, FeedingState, FeedingTable } from './types';

export interface VesselLike {
  readonly id: VesselId;
  readonly bone: BoneId;
  /** Region where it enters the bone. */
  readonly enters: RegionId;
  readonly feeds: readonly { readonly region: RegionId; readonly main: boolean }[];
  /** A net on the bone's surface that enters everywhere: no break cuts it off. */
  readonly net?: boolean | undefined;
}

type Span = readonly [fromMm: number, toMm: number];

const feeds = (vessel: VesselLike, region: RegionId) => vessel.feeds.find((f) => f.region === region);

/** Comes over a border: a surface net, or a vessel whose own territory is elsewhere and that is not the main one here. */
const fromBorder = (vessel: VesselLike, region: RegionId): boolean =>
  !feeds(vessel, region)?.main && (vessel.net === true || vessel.feeds.some((f) => f.main));

/** Does the vessel still reach the part: is some of its entry on the part's side of the break. */
const reaches = (entry: Span, part: Span, breakMm: number): boolean =>
  part[1] <= breakMm ? entry[0] < breakMm : entry[1] > breakMm;

const stateOf = (region: RegionId, all: readonly VesselLike[], remaining: readonly VesselLike[]): FeedingState => {
  const isMain = (v: VesselLike) => feeds(v, region)?.main === true;
  const lostMain = all.some(isMain) && !remaining.some(isMain);
  if (remaining.length === 0) return 'none';
  if (!lostMain) return 'asBefore';
  return remaining.every((v) => fromBorder(v, region)) ? 'borderOnly' : 'mainCut';
};

/** Zones as parts, the one with the break in two. A break on a border or off the bone splits none. */
const partsOf = (zones: readonly Zone[], breakMm: number | null): { region: RegionId; span: Span }[] =>
  zones.flatMap(({ region, fromMm, toMm }) =>
    breakMm !== null && breakMm > fromMm && breakMm < toMm
      ? [
          { region, span: [fromMm, breakMm] as const },
          { region, span: [breakMm, toMm] as const },
        ]
      : [{ region, span: [fromMm, toMm] as const }],
  );

/** Where two inner territories overlap: the stretch of the parts that a neighbour's main vessel feeds as well. Drawn, not measured. */
const borderOf = (zones: readonly Zone[], vessels: readonly VesselLike[]): FeedingTable['borderMm'] => {
  const shared = zones.filter(({ region }) => {
    const inner = vessels.filter((v) => !v.net && feeds(v, region));
    return inner.some((v) => feeds(v, region)?.main) && inner.some((v) => fromBorder(v, region));
  });
  const [first] = shared;
  if (!first) return null;
  return { sMm: (first.fromMm + first.toMm) / 2, halfWidthMm: (first.toMm - first.fromMm) / 2 };
};

/**
 * `zones` tile the bone; `breakAt` null is the whole bone; `entryStation` gives the place along the bone of an entry that is no
 * zone (a foramen). A break exactly through such an entry cuts it for both sides.
 */
export const feedingOf = (
  zones: readonly Zone[],
  vessels: readonly VesselLike[],
  breakAt: { readonly sMm: number } | null,
  entryStation: (region: RegionId) => number,
): FeedingTable => {
  const breakMm = breakAt?.sMm ?? null;
  const entryOf = (vessel: VesselLike): Span => {
    const zone = zones.find((z) => z.region === vessel.enters);
    if (zone) return [zone.fromMm, zone.toMm];
    const s = entryStation(vessel.enters);
    return [s, s];
  };
  const parts = partsOf(zones, breakMm).map(({ region, span }): FedPart => {
    const all = vessels
      .filter((v) => feeds(v, region))
      .sort((a, b) => Number(feeds(b, region)?.main) - Number(feeds(a, region)?.main));
    const remaining = all.filter((v) => v.net || breakMm === null || reaches(entryOf(v), span, breakMm));
    return {
      region,
      fromMm: span[0],
      toMm: span[1],
      feeders: all.map((v) => v.id),
      remaining: remaining.map((v) => v.id),
      state: breakMm === null ? 'asBefore' : stateOf(region, all, remaining),
    };
  });
  return { bone: vessels[0]?.bone ?? 'metatarsal5', parts, borderMm: borderOf(zones, vessels) };
};
