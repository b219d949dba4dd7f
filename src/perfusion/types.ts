/** What a vessel's loss leaves: four words, never a flow figure. */
import type { BoneId, RegionId, VesselId } from '../ids';

/**
 * asBefore: its main feeder still reaches it (a lost secondary feeder shows in `remaining`). mainCut: main lost, another of its own
 * feeders remains. borderOnly: what remains all comes from a bordering territory. none: nothing we know of reaches it.
 */
export const FEEDING_STATES = ['asBefore', 'mainCut', 'borderOnly', 'none'] as const;
export type FeedingState = (typeof FEEDING_STATES)[number];

export interface FedPart {
  readonly region: RegionId;
  readonly fromMm: number;
  readonly toMm: number;
  /** Feeders when the bone is whole, main feeder first. */
  readonly feeders: readonly VesselId[];
  /** Feeders that still reach the part. */
  readonly remaining: readonly VesselId[];
  readonly state: FeedingState;
}

export interface FeedingTable {
  readonly bone: BoneId;
  readonly parts: readonly FedPart[];
  /** Station of the border between two territories, and its drawn half width; null when the bone has none we know of. */
  readonly borderMm: { readonly sMm: number; readonly halfWidthMm: number } | null;
}
