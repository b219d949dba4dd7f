/** A bone cut anywhere: what is seen on the cut face, and what it is worth as a section. mm, foot frame. */
import type { BoneId } from '../../ids';
import { add, scale, type Vec3 } from '../../units';
import type { Foot } from '../types';
import { cutSurface, type PlaneCut } from './border';
import { type OpenBone, openBone } from './open';
import { type CutAxes, fromPlane, isRightHanded } from './plane';
import { type Integrals, integralsOf, momentsOf, NOTHING, type Point2, principalOf, without } from './polygon';
import type { InsideOfShape, Wall } from './schema';

/** Area and second moments of one part of a section, exact for its polygons, about its own centroid. */
export interface AreaMoments {
  readonly areaMm2: number;
  readonly centroid: Vec3;
  /** The same, along `up` and `across` of the cut from its origin. */
  readonly centroidMm: Point2;
  /** Second moment about the axis `across`: bending in the direction `up`. */
  readonly iAcrossMm4: number;
  /** Second moment about the axis `up`: bending in the direction `across`. */
  readonly iUpMm4: number;
  readonly iProductMm4: number;
  readonly principal: {
    readonly largestMm4: number;
    readonly smallestMm4: number;
    /** Unit direction in which the part spreads most: the one in which it is hardest to bend. */
    readonly stiffest: Vec3;
  };
}

export interface BoneCut {
  readonly axes: CutAxes;
  /** Loops run counter-clockwise seen against the normal, holes clockwise. */
  readonly outer: readonly (readonly Vec3[])[];
  /** Border of canal or spongy bone, in the same sense; empty where the bone is too slender to have one. */
  readonly inner: readonly (readonly Vec3[])[];
  readonly properties: {
    readonly outer: AreaMoments;
    readonly cortex: AreaMoments;
    readonly inner: AreaMoments | null;
  };
}

const partOf = (axes: CutAxes, figure: Integrals): AreaMoments => {
  const moments = momentsOf(figure);
  const { most, least, along } = principalOf(moments);
  return {
    areaMm2: moments.area,
    centroid: fromPlane(axes, moments.centroid),
    centroidMm: moments.centroid,
    iAcrossMm4: moments.aa,
    iUpMm4: moments.bb,
    iProductMm4: moments.ab,
    principal: {
      largestMm4: most,
      smallestMm4: least,
      stiffest: add(scale(axes.up, along[0]), scale(axes.across, along[1])),
    },
  };
};

const finish = ({ axes, outer, inner }: PlaneCut): BoneCut => {
  const outerSums = integralsOf(outer);
  const innerSums = inner.length > 0 ? integralsOf(inner) : NOTHING;
  const turned = isRightHanded(axes) ? inner : inner.map((loop) => loop.toReversed());
  const inSpace = (loops: readonly (readonly Point2[])[]): Vec3[][] =>
    loops.map((loop) => loop.map((p) => fromPlane(axes, p)));
  return {
    axes,
    outer: inSpace(outer),
    inner: inSpace(turned),
    properties: {
      outer: partOf(axes, outerSums),
      cortex: partOf(axes, without(outerSums, innerSums)),
      inner: innerSums.area > 0 ? partOf(axes, innerSums) : null,
    },
  };
};

/** The same for a bone opened once and cut many times. */
export const cutOpenBone = ({ surface, wall, size }: OpenBone, planePoint: Vec3, planeNormal: Vec3): BoneCut | null => {
  const cut = cutSurface(surface, wall, size, planePoint, planeNormal);
  return cut && finish(cut);
};

/**
 * Cut of a bone by the plane through `planePoint` across `planeNormal`, its cortex at one end or the middle of the bands of
 * content/anatomy/inside.yaml. Null where the plane misses the bone. Throws RangeError for a bone that the foot does not have.
 */
export const cutBone = (
  foot: Foot,
  bone: BoneId,
  planePoint: Vec3,
  planeNormal: Vec3,
  shape: InsideOfShape,
  wall: Wall = 'usual',
): BoneCut | null => cutOpenBone(openBone(foot, bone, shape, wall), planePoint, planeNormal);
