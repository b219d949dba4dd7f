/** A bone of a foot made ready for cutting: its surface, and its cortex resolved on this very bone. */
import type { BoneId } from '../../ids';
import { boneAxis, fromBone, meshOf } from '../bone-axis';
import type { Foot } from '../types';
import { cutSurface } from './border';
import { integralsOf, type Loop2 } from './polygon';
import { extentOf } from './samples';
import { type CortexTube, type InsideOfShape, type Wall, widthOf } from './schema';
import { type Surface, surfaceOf } from './surface';
import { type CanalWall, evenWall, thinnestTabled, tubeWall, type WallOfBone } from './wall';

export interface OpenBone {
  readonly surface: Surface;
  readonly wall: WallOfBone;
  /** Size of the foot over that of the reference foot. */
  readonly size: number;
  /** Null for a bone that is no tube. */
  readonly tube: CortexTube | null;
}

/** The largest of several loops. */
export const largest = <T extends Loop2>(loops: readonly T[]): T | null =>
  loops.reduce<T | null>((a, b) => (a === null || integralsOf([b]).area > integralsOf([a]).area ? b : a), null);

const spread = (loop: Loop2, i: 0 | 1): number => {
  const [low, high] = extentOf([loop], i);
  return high - low;
};

/** Rounds of fitting: each takes the error of the canal down to a tenth or less. */
const ROUNDS = 6;

/**
 * The wall that leaves a canal of the measured width where it was measured, up-down and across: found by cutting there, and as
 * thick on one side as on the other, because nothing was read about that. Where the bone is too slender for the canal the wall
 * keeps the thinnest cortex that the figures know.
 */
const canalWallOf = (surface: Surface, tube: CortexTube, wall: Wall, size: number): CanalWall | null => {
  const { canal } = tube;
  if (!canal) return null;
  const wanted = { upDownMm: widthOf(canal.upDown, wall) * size, acrossMm: widthOf(canal.across, wall) * size };
  const least = thinnestTabled(tube, wall, size);
  const { axis } = surface;
  const place = fromBone(axis, canal.at * axis.lengthMm);
  let found: CanalWall = { upDownMm: least, acrossMm: least };
  for (let round = 0; round < ROUNDS; round++) {
    const cut = cutSurface(surface, tubeWall(tube, wall, size, found), size, place, axis.axis);
    const inner = largest(cut?.inner ?? []);
    if (!inner) return found;
    found = {
      upDownMm: Math.max(least, found.upDownMm + (spread(inner, 0) - wanted.upDownMm) / 2),
      acrossMm: Math.max(least, found.acrossMm + (spread(inner, 1) - wanted.acrossMm) / 2),
    };
  }
  return found;
};

/** Throws RangeError for a bone that the foot does not have. */
export const openBone = (foot: Foot, bone: BoneId, { scale, inside }: InsideOfShape, wall: Wall): OpenBone => {
  const surface = surfaceOf(meshOf(foot, bone), boneAxis(foot, bone));
  const size = foot.parameters.heelToSecondHeadMm / scale.referenceHMm;
  const shell = inside.shells.find((s) => s.bone === bone);
  if (shell) return { surface, size, tube: null, wall: evenWall(shell.cortex, wall, size) };
  const tube = inside.tubes.find((t) => t.bone === bone);
  if (!tube) throw new RangeError(`nothing is known of the inside of ${bone}`);
  const along = tubeWall(tube, wall, size, canalWallOf(surface, tube, wall, size));
  return { surface, size, tube, wall: along };
};
