/** Names of the regions of the fifth metatarsal, tip to head. Facet regions are named after bone and neighbour: `facetId`. */
import { type BoneId, idOf, type JointId, type RegionId } from '../ids';

const region = (name: string) => idOf<RegionId>(name);

export const MT5 = {
  zone1: region('mt5-zone-1'),
  zone2: region('mt5-zone-2'),
  zone3: region('mt5-zone-3'),
  shaft: region('mt5-shaft'),
  head: region('mt5-head'),
  brevis: region('mt5-footprint-brevis'),
  tertius: region('mt5-footprint-tertius'),
  aponeurosis: region('mt5-footprint-aponeurosis'),
  foramen: region('mt5-foramen'),
  /** Where metaphyseal vessels enter base and tuberosity, where capital vessels enter the head, where the periosteal net enters. */
  baseEntries: region('mt5-base-entries'),
  headEntries: region('mt5-head-entries'),
  surfaceEntries: region('mt5-surface-entries'),
} as const;

/** `metatarsal5-facet-metatarsal4`; a pair of bones that meets twice keeps the joint's own word behind it. */
export const facetId = (joint: JointId, bone: BoneId, other: BoneId): RegionId => {
  const words = joint.split('-').filter((w) => w !== bone && w !== other);
  return region([bone, 'facet', other, ...words].join('-'));
};
