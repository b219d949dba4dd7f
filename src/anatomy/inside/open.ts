/** A bone of a foot made ready for cutting: its surface, and its cortex resolved on this very bone. */
import type { BoneId } from '../../ids';
import { boneAxis, fromBone, meshOf } from '../bone-axis';
import type { Foot } from '../types';
import { cutSurface } from './border';
import { type KnownBone, type KnownCanal, knownOf } from './known';
import { integralsOf, type Loop2 } from './polygon';
import { extentOf } from './samples';
import type { InsideOfShape, Wall } from './schema';
import { type Surface, surfaceOf } from './surface';
import { type CanalWall, thinnestKnown, type WallOfBone, wallOf } from './wall';

export interface OpenBone {
  readonly surface: Surface;
  readonly wall: WallOfBone;
  /** Size of the foot over that of the reference foot. */
  readonly size: number;
  readonly known: KnownBone;
}

/** The largest of several loops. */
export const largest = <T extends Loop2>(loops: readonly T[]): T | null =>
  loops.reduce<T | null>((a, b) => (a === null || integralsOf([b]).area > integralsOf([a]).area ? b : a), null);

const spread = (loop: Loop2, i: 0 | 1): number => {
  const [low, high] = extentOf([loop], i);
  return high - low;
};

/** Rounds of fitting: each takes the error of the canal down to a half or less. */
const ROUNDS = 8;

/** A canal is a hole in a bone: one of no width, or as wide as the bone, is a mistake in the figures and makes no numbers. */
const refuseCanal = (bone: BoneId, { at, upDownMm, acrossMm }: KnownCanal, size: number, outer: Loop2 | null): void => {
  const where = `${bone} at ${Math.round(at * 100)} % of its length`;
  if (!(upDownMm > 0 && acrossMm > 0))
    throw new RangeError(`${where}: a canal needs widths above 0 mm, not ${upDownMm} and ${acrossMm}`);
  if (outer === null) throw new RangeError(`${where}: the foot has no bone there to put a canal in`);
  const [high, wide] = [spread(outer, 0), spread(outer, 1)];
  if (size * upDownMm >= high || size * acrossMm >= wide) {
    const mm = [size * upDownMm, size * acrossMm, high, wide].map((value) => value.toFixed(1));
    throw new RangeError(`${where}: a canal of ${mm[0]} by ${mm[1]} mm does not fit a bone of ${mm[2]} by ${mm[3]} mm`);
  }
};

/**
 * The wall that leaves a canal of the measured width where it was measured, up-down and across: found by cutting there, and as
 * thick on one side as on the other, because nothing was read about that. Where the bone is too slender for the canal the wall
 * keeps the thinnest cortex that the figures know.
 */
const canalWallOf = (bone: BoneId, surface: Surface, known: KnownBone, size: number): CanalWall | null => {
  const { canal } = known;
  if (!canal) return null;
  const least = thinnestKnown(known, size);
  const { axis } = surface;
  const place = fromBone(axis, canal.at * axis.lengthMm);
  let found: CanalWall = { upDownMm: least, acrossMm: least };
  for (let round = 0; round < ROUNDS; round++) {
    const cut = cutSurface(surface, wallOf(known, size, found), size, place, axis.axis);
    if (round === 0) refuseCanal(bone, canal, size, largest(cut?.outer ?? []));
    const inner = largest(cut?.inner ?? []);
    if (!inner) return found;
    found = {
      upDownMm: Math.max(least, found.upDownMm + (spread(inner, 0) - size * canal.upDownMm) / 2),
      acrossMm: Math.max(least, found.acrossMm + (spread(inner, 1) - size * canal.acrossMm) / 2),
    };
  }
  return found;
};

/** Throws RangeError for a bone that the foot does not have, and for a canal of no width or wider than its bone. */
export const openBone = (foot: Foot, bone: BoneId, { scale, inside }: InsideOfShape, wall: Wall): OpenBone => {
  const surface = surfaceOf(meshOf(foot, bone), boneAxis(foot, bone));
  const size = foot.parameters.heelToSecondHeadMm / scale.referenceHMm;
  const known = knownOf(inside, bone, wall);
  return { surface, size, known, wall: wallOf(known, size, canalWallOf(bone, surface, known, size)) };
};
