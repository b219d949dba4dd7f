/** The canal along a tubular bone: its width, its height and the cortex round it, for tables and for what lies in it. mm. */
import type { BoneId } from '../../ids';
import type { Vec3 } from '../../units';
import { fromBone } from '../bone-axis';
import type { Foot } from '../types';
import { cutSurface } from './border';
import type { Sides } from './known';
import { largest, openBone } from './open';
import { fromPlane } from './plane';
import { integralsOf, type Loop2, momentsOf, type Point2 } from './polygon';
import { extentOf } from './samples';
import type { InsideOfShape, Wall } from './schema';

export interface CanalStation {
  /** From the proximal end along the bone's axis, and the same over its length. */
  readonly sMm: number;
  readonly share: number;
  /** Null where the bone is cortex all through. */
  readonly canal: {
    /** Extents of the border between cortex and what lies inside it. */
    readonly acrossMm: number;
    readonly upDownMm: number;
    readonly centre: Vec3;
    /** Cortex as cut, where the border lies farthest to each side. */
    readonly cortexMm: Sides;
  } | null;
}

export interface CanalOfBone {
  readonly stations: readonly CanalStation[];
  /** The narrowest station of the tube, from metaphysis to neck, by the smaller of width and height; null when the canal is closed somewhere. */
  readonly isthmus: CanalStation | null;
}

const STATIONS = 37;
/** Nearer the tips a cut across the axis meets no tube. */
const TIP_SHARE = 0.05;

const awayFrom = (loop: Loop2, [a, b]: Point2): number => {
  let nearest = Number.POSITIVE_INFINITY;
  loop.forEach(([a0, b0], i) => {
    const [a1, b1] = loop[(i + 1) % loop.length] ?? [a0, b0];
    const [da, db] = [a1 - a0, b1 - b0];
    const t = Math.min(1, Math.max(0, ((a - a0) * da + (b - b0) * db) / (da * da + db * db)));
    nearest = Math.min(nearest, Math.hypot(a0 + t * da - a, b0 + t * db - b));
  });
  return nearest;
};

/** Cortex in the cut, where the border reaches farthest in a direction. */
const cortexTowards = (inner: Loop2, outer: Loop2, [da, db]: Point2): number => {
  const farthest = inner.reduce((p, q) => (q[0] * da + q[1] * db > p[0] * da + p[1] * db ? q : p));
  return awayFrom(outer, farthest);
};

/** Throws RangeError for a bone that is no tube. */
export const canalOf = (foot: Foot, bone: BoneId, shape: InsideOfShape, wall: Wall = 'usual'): CanalOfBone => {
  const open = openBone(foot, bone, shape, wall);
  const { known } = open;
  if (!known.isTube) throw new RangeError(`${bone} has no canal`);
  const { axis } = open.surface;
  const stationAt = (share: number): CanalStation => {
    const sMm = share * axis.lengthMm;
    const cut = cutSurface(open.surface, open.wall, open.size, fromBone(axis, sMm), axis.axis);
    const [outer, inner] = [largest(cut?.outer ?? []), largest(cut?.inner ?? [])];
    if (!cut || !outer || !inner) return { sMm, share, canal: null };
    const { centroid } = momentsOf(integralsOf([inner]));
    const cortex = (direction: Point2): number => cortexTowards(inner, outer, direction);
    const [up, across] = [extentOf([inner], 0), extentOf([inner], 1)];
    return {
      sMm,
      share,
      canal: {
        acrossMm: across[1] - across[0],
        upDownMm: up[1] - up[0],
        centre: fromPlane(cut.axes, centroid),
        cortexMm: {
          dorsal: cortex([1, 0]),
          plantar: cortex([-1, 0]),
          lateral: cortex([0, 1]),
          medial: cortex([0, -1]),
        },
      },
    };
  };
  const step = (1 - 2 * TIP_SHARE) / (STATIONS - 1);
  const stations = Array.from({ length: STATIONS }, (_, i) => stationAt(TIP_SHARE + i * step));
  const place = (name: string): number => known.stations.find((s) => s.name === name)?.at ?? 0;
  const [from, to] = [place('metaphysis'), place('neck')];
  const shaft = stations.filter((s) => s.share >= from && s.share <= to);
  const narrow = ({ canal }: CanalStation): number => (canal ? Math.min(canal.acrossMm, canal.upDownMm) : 0);
  const isthmus = shaft.reduce<CanalStation | null>((a, b) => (a === null || narrow(b) < narrow(a) ? b : a), null);
  return { stations, isthmus: isthmus?.canal ? isthmus : null };
};
