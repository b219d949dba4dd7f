/** The canal of a bone as the places a rod must pass, up to where it closes. mm. */
import { boneAxis, inBone } from '../../anatomy';
import { canalOf, type InsideOfShape, type Wall } from '../../anatomy/inside';
import type { Foot } from '../../anatomy/types';
import type { BoneId } from '../../ids';
import type { CanalPlace } from './rod';

/** Places from the base on; a station without a canal ends them. Spongy bone of the base counts as room. */
export const canalPlacesOf = (foot: Foot, bone: BoneId, shape: InsideOfShape, wall: Wall): CanalPlace[] => {
  const axis = boneAxis(foot, bone);
  const { stations } = canalOf(foot, bone, shape, wall);
  const closed = stations.findIndex((s) => s.canal === null);
  return (closed < 0 ? stations : stations.slice(0, closed)).flatMap(({ sMm, canal }): CanalPlace[] => {
    if (!canal) return [];
    const { dorsalMm, lateralMm } = inBone(axis, canal.centre);
    return [{ sMm, dorsalMm, lateralMm, upDownMm: canal.upDownMm, acrossMm: canal.acrossMm }];
  });
};
