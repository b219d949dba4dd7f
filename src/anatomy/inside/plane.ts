/**
 * The axes in which a cut is described. `up` is the bone's dorsal direction as it lies in the plane, or, where the plane lies flat
 * under it, the bone's long axis; `across` is at right angles to it, towards the outer side or, where the plane does not reach
 * that way, towards the toes. The origin is the foot of the perpendicular from the proximal end of the bone's axis, so that a cut
 * across the axis has the coordinates dorsal and lateral of it. Mirror images have mirrored axes and the same coordinates.
 */
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../units';
import type { BoneAxis } from '../types';
import type { Point2 } from './polygon';

export interface CutAxes {
  readonly origin: Vec3;
  readonly up: Vec3;
  readonly across: Vec3;
  /** Unit normal of the plane. */
  readonly normal: Vec3;
}

/** Below this a direction's share in the plane is too small to orient anything by. */
const LEAST = 0.3;

const within = (v: Vec3, normal: Vec3): Vec3 => subtract(v, scale(normal, dot(v, normal)));

export const cutAxes = (axis: BoneAxis, planePoint: Vec3, planeNormal: Vec3): CutAxes => {
  const normal = normalize(planeNormal);
  const dorsal = within(axis.dorsal, normal);
  const up = normalize(length(dorsal) > LEAST ? dorsal : within(axis.axis, normal));
  const side = cross(normal, up);
  const outwards = dot(side, axis.lateral);
  const turned = Math.abs(outwards) > LEAST ? outwards : dot(side, axis.axis);
  const across = turned < 0 ? scale(side, -1) : side;
  const origin = add(axis.origin, scale(normal, dot(subtract(planePoint, axis.origin), normal)));
  return { origin, up, across, normal };
};

export const toPlane = (axes: CutAxes, p: Vec3): Point2 => {
  const d = subtract(p, axes.origin);
  return [dot(d, axes.up), dot(d, axes.across)];
};

export const fromPlane = (axes: CutAxes, [up, across]: Point2): Vec3 =>
  add(axes.origin, add(scale(axes.up, up), scale(axes.across, across)));

/** True when turning from `up` to `across` runs counter-clockwise seen against the normal. */
export const isRightHanded = (axes: CutAxes): boolean => dot(cross(axes.up, axes.across), axes.normal) > 0;
