/** The foot as a graph: bones, and which bones meet at a joint with cartilage. From content; nothing here is known by heart. */
import type { Bone, Content } from '../content/schema';
import type { BoneId } from '../ids';

export interface BoneGraph {
  readonly bones: readonly Bone[];
  readonly bone: (id: BoneId) => Bone;
  /** Bones that meet this one at an articular joint, heel to toe. */
  readonly neighbours: (id: BoneId) => readonly BoneId[];
  /** Joined in any way, cartilage or not: never a fair wrong answer. */
  readonly joined: (a: BoneId, b: BoneId) => boolean;
}

export const graphOf = (content: Pick<Content, 'bones' | 'joints'>): BoneGraph => {
  const bones = [...content.bones].sort((a, b) => a.order - b.order);
  const byId = new Map(bones.map((bone) => [bone.id, bone]));
  const meets = new Map<BoneId, Set<BoneId>>(bones.map((bone) => [bone.id, new Set()]));
  const pairs = new Set<string>();
  for (const joint of content.joints) {
    const [a, b] = joint.bones;
    if (a === undefined || b === undefined) continue;
    pairs.add(`${a} ${b}`).add(`${b} ${a}`);
    if (!joint.articular) continue;
    meets.get(a)?.add(b);
    meets.get(b)?.add(a);
  }
  const bone = (id: BoneId): Bone => {
    const found = byId.get(id);
    if (found === undefined) throw new Error(`graphOf: content has no bone ${id}`);
    return found;
  };
  return {
    bones,
    bone,
    neighbours: (id) => bones.filter((other) => meets.get(id)?.has(other.id)).map((other) => other.id),
    joined: (a, b) => pairs.has(`${a} ${b}`),
  };
};

/**
 * Rows of the foot, heel to toe: 0 hindfoot, 1 navicular and cuboid, 2 cuneiforms, 3 metatarsals, 4 to 6 phalanges. Null for
 * the sesamoids, which lie under a row and not in one.
 */
export const rowOf = (id: BoneId): number | null => {
  if (id === 'calcaneus' || id === 'talus') return 0;
  if (id === 'navicular' || id === 'cuboid') return 1;
  if (id.startsWith('cuneiform')) return 2;
  if (id.startsWith('metatarsal')) return 3;
  if (id.startsWith('phalanxProximal')) return 4;
  if (id.startsWith('phalanxMiddle')) return 5;
  if (id.startsWith('phalanxDistal')) return 6;
  return null;
};

/** Every way from the hindfoot to the end of a toe over joints, always to a further row: each has one order, heel to toe. */
export const chainsOf = (graph: BoneGraph): readonly (readonly BoneId[])[] => {
  const onwards = (chain: readonly BoneId[]): readonly (readonly BoneId[])[] => {
    const last = chain[chain.length - 1];
    const row = last === undefined ? null : rowOf(last);
    if (last === undefined || row === null) return [];
    const next = graph.neighbours(last).filter((id) => (rowOf(id) ?? -1) > row);
    return next.length === 0 ? [chain] : next.flatMap((id) => onwards([...chain, id]));
  };
  return graph.bones.filter((bone) => rowOf(bone.id) === 0).flatMap((bone) => onwards([bone.id]));
};
