/** What a vessel's loss leaves: four words, never a flow figure. */
import type { BoneId, RegionId, VesselId } from '../ids';

/**
 * asBefore: its main feeder still reaches it (a lost secondary feeder shows in `remaining`). mainCut: main lost, another of its own
 * feeders remains. borderOnly: what remains all comes from a bordering territory or a net on the surface. none: nothing we know of
 * reaches it.
 */
export const FEEDING_STATES = ['asBefore', 'mainCut', 'borderOnly', 'none'] as const;
export type FeedingState = (typeof FEEDING_STATES)[number];

export interface FedPart {
  /** Null: the whole bone, where the content names no parts of it. */
  readonly region: RegionId | null;
  readonly fromMm: number;
  readonly toMm: number;
  /** Main feeder when the bone is whole: the one whose territory is the largest here, or those that a source names. */
  readonly main: readonly VesselId[];
  readonly mainBy: 'territory' | 'source';
  /** Feeders when the bone is whole, main feeder first, nets last. */
  readonly feeders: readonly VesselId[];
  /** Share of the part's volume that lies in each one's territory: room, never flow. Largest first. */
  readonly territories: readonly { readonly vessel: VesselId; readonly share: number }[];
  /** Feeders that still reach the part. */
  readonly remaining: readonly VesselId[];
  /** Vessels of bordering territories that come next where no feeder inside the bone is left. */
  readonly fromBorder: readonly VesselId[];
  /** Share of its volume that its own vessel still reaches. */
  readonly keeps: number;
  readonly state: FeedingState;
}

/** Where two territories meet in a surface that lies across the bone. */
export interface FeedingBorder {
  /** From the beginning of the bone on. */
  readonly between: readonly [VesselId, VesselId];
  /** Station of its middle, and half the stretch that eight tenths of it take. */
  readonly sMm: number;
  readonly halfWidthMm: number;
}

export interface FeedingTable {
  readonly bone: BoneId;
  readonly parts: readonly FedPart[];
  /** Borders that lie across the bone, in order along it; others have no station and are not listed. */
  readonly borders: readonly FeedingBorder[];
}
