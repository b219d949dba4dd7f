/** Which bones get a label, and in which words: the bone in question, what it meets, and a few landmarks to find it by. Pure. */
import type { Foot } from '../../anatomy/types';
import type { BoneId, Reader } from '../../ids';
import type { Content } from '../types';

export interface BoneLabel {
  readonly bone: BoneId;
  readonly text: string;
  /** Latin, for study, where there is room. */
  readonly second: string | null;
  readonly priority: number;
}

/** Seen from anywhere these tell heel from toe and inner from outer. */
const LANDMARKS: readonly BoneId[] = ['calcaneus', 'talus', 'metatarsal1', 'phalanxDistal1', 'navicular'];

const MOST: Readonly<Record<Reader, { readonly wide: number; readonly narrow: number }>> = {
  patient: { wide: 4, narrow: 3 },
  broadcast: { wide: 5, narrow: 3 },
  study: { wide: 9, narrow: 5 },
};

/** Of many bones a few stand for all. */
const MOST_ALSO = 3;

/** The way of the load and its numbers take room, and are what the question is of. */
const BESIDE_PATH = { wide: 5, narrow: 2 } as const;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const neighboursOf = (foot: Foot, bone: BoneId): BoneId[] => [
  ...new Set(
    [...foot.joints.values()].flatMap(({ first, second }) =>
      first === bone ? [second] : second === bone ? [first] : [],
    ),
  ),
];

export const boneLabels = (
  foot: Foot,
  content: Content,
  /** `also`: further bones that the words are about. */
  seen: { readonly chosen: BoneId | null; readonly selected: BoneId | null; readonly also?: readonly BoneId[] },
  reader: Reader,
  /** `path`: the way of the load is drawn. */
  room: { readonly narrow: boolean; readonly latin: boolean; readonly path: boolean },
): BoneLabel[] => {
  const order: BoneId[] = [];
  const want = (bones: readonly BoneId[]): void => {
    for (const bone of bones) if (!order.includes(bone)) order.push(bone);
  };
  want([seen.selected, seen.chosen].filter((bone) => bone !== null));
  const [near] = order;
  want((seen.also ?? []).slice(0, MOST_ALSO));
  const width = room.narrow ? 'narrow' : 'wide';
  const most = Math.min(MOST[reader][width], room.path ? BESIDE_PATH[width] : Number.POSITIVE_INFINITY);
  // At least one landmark stays among the few: the heel is where people start.
  want(['calcaneus']);
  if (near !== undefined) want(neighboursOf(foot, near));
  want(LANDMARKS);
  return order.slice(0, most).flatMap((bone, i) => {
    const record = content.bones.find(({ id }) => id === bone);
    if (record === undefined) return [];
    return [
      {
        bone,
        text: capital(reader === 'study' ? record.term : record.plain),
        second: reader === 'study' && room.latin ? capital(record.latin) : null,
        priority: 100 - i,
      },
    ];
  });
};
