/** Names of the regions of the fifth metatarsal, as in content/regions.yaml, and of the facets of every bone. */
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
  aponeurosis: region('mt5-footprint-fascia'),
  foramen: region('mt5-foramen-nutrient'),
} as const;

const MT5_FACETS: Partial<Record<BoneId, RegionId>> = {
  cuboid: region('mt5-facet-cuboid'),
  metatarsal4: region('mt5-facet-mt4'),
};

/** `talus-facet-calcaneus-posterior`: bone, neighbour, and the joint's own word where a pair of bones meets twice. */
export const facetId = (joint: JointId, bone: BoneId, other: BoneId): RegionId => {
  const known = bone === 'metatarsal5' ? MT5_FACETS[other] : undefined;
  if (known) return known;
  const words = joint.split('-').filter((w) => w !== bone && w !== other);
  return region([bone, 'facet', other, ...words].join('-'));
};
