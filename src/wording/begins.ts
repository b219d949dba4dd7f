/** The end of a bone from which lengths along it are told: a long bone begins behind, the navicular lies across the foot. */
import type { BoneId, Reader } from '../ids';
import { BEGINS_AT } from './en/lists';

const HINDFOOT: ReadonlySet<BoneId> = new Set<BoneId>(['calcaneus', 'talus']);

export const beginsAt = (bone: BoneId | null, reader: Reader): string => {
  const end =
    bone === 'navicular'
      ? 'across'
      : bone === 'metatarsal5'
        ? 'tuberosity'
        : bone !== null && HINDFOOT.has(bone)
          ? 'hindfoot'
          : 'long';
  return BEGINS_AT[end][reader];
};
