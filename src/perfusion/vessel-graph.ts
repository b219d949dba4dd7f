/**
 * Vessels as a graph: nodes are named vessels, edges run from parent to child, and end edges go into a bone at a place of its surface,
 * over a part of it, or everywhere as a net. Whatever is cut off from every vessel that comes from the leg feeds nothing.
 */
import { type BoneId, type RegionId, type VesselEdgeId, type VesselId, vesselEdge } from '../ids';

/** Where a vessel goes into a bone: a part or place of it; null: a net on all of its surface. */
export interface VesselEnd {
  readonly bone: BoneId;
  readonly at: RegionId | null;
}

export interface VesselNode {
  readonly id: VesselId;
  /** Vessels that it comes from; none: it comes down the leg. */
  readonly from: readonly { readonly vessel: VesselId }[];
  readonly ends: readonly VesselEnd[];
  /** Parts of which a source that was read names it the main feeder. */
  readonly said: readonly { readonly region: RegionId }[];
}

/** Vessels that blood still reaches when some edges are gone. */
export const reachedVessels = (
  vessels: readonly VesselNode[],
  gone: ReadonlySet<VesselEdgeId>,
): ReadonlySet<VesselId> => {
  const reached = new Set(vessels.filter((v) => v.from.length === 0).map((v) => v.id));
  const children = new Map<VesselId, VesselId[]>();
  for (const v of vessels)
    for (const { vessel } of v.from)
      if (!gone.has(vesselEdge(vessel, v.id))) children.set(vessel, [...(children.get(vessel) ?? []), v.id]);
  // A set that grows while it is walked: each vessel once, so that rings end.
  for (const id of reached) for (const child of children.get(id) ?? []) reached.add(child);
  return reached;
};

export interface LiveEnd {
  readonly vessel: VesselId;
  readonly at: RegionId | null;
}

/** Ends in one bone that blood still reaches, in the order of the records. */
export const endsIn = (
  bone: BoneId,
  vessels: readonly VesselNode[],
  gone: ReadonlySet<VesselEdgeId>,
): readonly LiveEnd[] => {
  const reached = reachedVessels(vessels, gone);
  return vessels.flatMap((v) =>
    reached.has(v.id)
      ? v.ends
          .filter((e) => e.bone === bone && !gone.has(vesselEdge(v.id, e.at ?? e.bone)))
          .map(({ at }) => ({ vessel: v.id, at }))
      : [],
  );
};
