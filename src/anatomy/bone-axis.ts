/**
 * The long axis of a bone and places along it. The axis is the first principal axis of the solid (uniform density) through its
 * centroid, the one along which bone lengths are measured; it depends on the shape and not on the triangles. mm, foot frame.
 */
import type { BoneId } from '../ids';
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../units';
import { keptByBone } from './kept';
import { meshCentroid, principalExtents, verticesOf } from './mesh';
import type { BoneAxis, Foot, Mesh } from './types';

const DORSAL: Vec3 = [0, 1, 0];

/** Throws RangeError for a bone the foot does not have. */
export const meshOf = (foot: Foot, bone: BoneId): Mesh => {
  const mesh = foot.bones.get(bone);
  if (!mesh) throw new RangeError(`this foot has no ${bone}`);
  return mesh;
};

/** The long axis of a bone of the foot. */
export const boneAxis = keptByBone((foot, bone): BoneAxis => {
  const mesh = meshOf(foot, bone);
  const { axis } = principalExtents(mesh);
  const dorsal = normalize(subtract(DORSAL, scale(axis, dot(DORSAL, axis))));
  const lateral = foot.side === 'right' ? cross(axis, dorsal) : cross(dorsal, axis);
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const p of verticesOf(mesh)) {
    const s = dot(p, axis);
    low = Math.min(low, s);
    high = Math.max(high, s);
  }
  const centroid = meshCentroid(mesh);
  const origin = add(centroid, scale(axis, low - dot(centroid, axis)));
  return { origin, axis, dorsal, lateral, lengthMm: high - low };
});

/** Distance of p from the proximal end of the bone, along its axis. */
export const stationOf = (axis: BoneAxis, p: Vec3): number =>
  (p[0] - axis.origin[0]) * axis.axis[0] +
  (p[1] - axis.origin[1]) * axis.axis[1] +
  (p[2] - axis.origin[2]) * axis.axis[2];

/** A point in the bone's own frame: along, dorsal and lateral of the axis. */
export const inBone = (axis: BoneAxis, p: Vec3): { sMm: number; dorsalMm: number; lateralMm: number } => {
  const d = subtract(p, axis.origin);
  return { sMm: dot(d, axis.axis), dorsalMm: dot(d, axis.dorsal), lateralMm: dot(d, axis.lateral) };
};

/** The point of the foot at a station, `dorsalMm` and `lateralMm` off the axis. */
export const fromBone = (axis: BoneAxis, sMm: number, dorsalMm = 0, lateralMm = 0): Vec3 =>
  add(axis.origin, add(scale(axis.axis, sMm), add(scale(axis.dorsal, dorsalMm), scale(axis.lateral, lateralMm))));
