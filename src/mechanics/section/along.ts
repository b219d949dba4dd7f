/**
 * Sections of a bone along its axis: outer contour from the mesh on the stage, cortex and canal from content/anatomy/inside.yaml
 * at the middle or one end of its bands. Nothing here knows a load: the sections are there before any stress is. Coordinates
 * dorsal and lateral of the bone's axis, mm, the same for left and right feet; stations from the bone's proximal end.
 */
import { fromBone } from '../../anatomy';
import { type InsideOfShape, openBone, type Wall } from '../../anatomy/inside';
import { cutSurface } from '../../anatomy/inside/border';
import { integralsOf, type Loop2 } from '../../anatomy/inside/polygon';
import type { Foot } from '../../anatomy/types';
import type { BoneId } from '../../ids';
import type { SectionProperties } from '../types';
import { isInside } from './figure';
import { sectionOf } from './properties';

export interface SectionCut {
  readonly sMm: number;
  readonly outline: Loop2;
  /** What the cortex encloses; empty where the bone is cortex all through. */
  readonly canals: readonly Loop2[];
  /** Greatest extent, in whatever direction. */
  readonly depthMm: number;
}

export interface SectionStation extends SectionCut {
  readonly section: SectionProperties;
}

/** The first and last cut stay this far inside the bone's tips, where a plane still meets a full section. */
const TIP_SHARE = 0.02;

/** So many shares of a bone's length, evenly from tip to tip. */
export const evenShares = (count: number): number[] =>
  Array.from({ length: count }, (_, i) => TIP_SHARE + ((1 - 2 * TIP_SHARE) * i) / (count - 1));

/** The two corners of an outline farthest from each other are so far apart. */
const greatestExtentOf = (loop: Loop2): number =>
  loop.reduce((most, p, i) => {
    for (const q of loop.slice(0, i)) most = Math.max(most, Math.hypot(p[0] - q[0], p[1] - q[1]));
    return most;
  }, 0);

/**
 * The bone cut at shares of its length: the largest loop and what lies in it. Throws RangeError for a bone that the foot does not
 * have or a share at which a plane misses it.
 */
export const cutsAlong = (
  foot: Foot,
  bone: BoneId,
  shape: InsideOfShape,
  wall: Wall,
  shares: readonly number[],
): SectionCut[] => {
  const open = openBone(foot, bone, shape, wall);
  const { axis } = open.surface;
  return shares.map((share) => {
    const sMm = share * axis.lengthMm;
    const cut = cutSurface(open.surface, open.wall, open.size, fromBone(axis, sMm), axis.axis);
    const outline = (cut?.outer ?? []).reduce<Loop2>(
      (a, b) => (integralsOf([b]).area > integralsOf([a]).area ? b : a),
      [],
    );
    if (!cut || outline.length === 0) throw new RangeError(`${bone} has no section at ${share} of its length`);
    const canals = cut.inner.filter(([p]) => p !== undefined && isInside(outline, p));
    return { sMm, outline, canals, depthMm: greatestExtentOf(outline) };
  });
};

/** The same with what each section is worth. Throws SectionError where a cut is no section. */
export const sectionsAlong = (
  foot: Foot,
  bone: BoneId,
  shape: InsideOfShape,
  wall: Wall,
  shares: readonly number[],
): SectionStation[] =>
  cutsAlong(foot, bone, shape, wall, shares).map((cut) => ({ ...cut, section: sectionOf(cut.outline, cut.canals) }));
