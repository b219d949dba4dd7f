/**
 * Places on a bone's surface: told on the reference foot as scanned (region-schema.ts), found on the foot at hand, whatever its
 * shape, pose, side and number of facets. Directions go along with the bone; a place is where a straight way leaves the surface.
 */
import type { BoneId } from '../ids';
import { add, dot, normalize, scale, subtract, type Vec3 } from '../units';
import { boneAxis, fromBone, inBone, meshOf } from './bone-axis';
import { meshCentroid } from './mesh';
import type { Place } from './region-schema';
import { sliceMesh } from './slice';
import { moveDirection, STILL } from './stance/motion';
import type { BoneAxis, Foot, Mesh } from './types';
import { zonesOf } from './zones';

/** A direction of the reference foot as it lies on the foot at hand once the bone has been moved there. */
export const carried = (foot: Foot, bone: BoneId, d: Vec3): Vec3 => {
  const [x, y, z] = moveDirection(foot.reference.motions.get(bone) ?? STILL, d);
  return foot.side === 'left' ? [-x, y, z] : [x, y, z];
};

/** What a length told in the rules is multiplied with on this bone. */
export const scaleOn = (foot: Foot, bone: BoneId): number => {
  const told = foot.reference.regions.lengths[bone];
  return told ? boneAxis(foot, bone).lengthMm / told.mm : foot.reference.scale;
};

/** The first point at which a straight way from `from` leaves the solid. Null when it never does: the way misses the bone. */
export const exitOf = (mesh: Mesh, from: Vec3, way: Vec3): Vec3 | null => {
  const [dx, dy, dz] = normalize(way);
  const { positions: at, indices } = mesh;
  let nearest = Number.POSITIVE_INFINITY;
  // Some thousand triangles for each of a hundred places: in numbers, without a vector for every corner.
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [3 * (indices[t] as number), 3 * (indices[t + 1] as number), 3 * (indices[t + 2] as number)];
    const [ax, ay, az] = [at[a] as number, at[a + 1] as number, at[a + 2] as number];
    const [bx, by, bz] = [(at[b] as number) - ax, (at[b + 1] as number) - ay, (at[b + 2] as number) - az];
    const [cx, cy, cz] = [(at[c] as number) - ax, (at[c + 1] as number) - ay, (at[c + 2] as number) - az];
    const [px, py, pz] = [dy * cz - dz * cy, dz * cx - dx * cz, dx * cy - dy * cx];
    // Positive where the way runs against the outward normal, that is, into the solid.
    const into = bx * px + by * py + bz * pz;
    if (into >= 0) continue;
    const [sx, sy, sz] = [from[0] - ax, from[1] - ay, from[2] - az];
    const u = (sx * px + sy * py + sz * pz) / into;
    if (u < -1e-9 || u > 1 + 1e-9) continue;
    const [qx, qy, qz] = [sy * bz - sz * by, sz * bx - sx * bz, sx * by - sy * bx];
    const v = (dx * qx + dy * qy + dz * qz) / into;
    if (v < -1e-9 || u + v > 1 + 1e-9) continue;
    const along = (cx * qx + cy * qy + cz * qz) / into;
    if (along > 1e-9) nearest = Math.min(nearest, along);
  }
  return Number.isFinite(nearest) ? add(from, scale([dx, dy, dz], nearest)) : null;
};

/** Centroid of the largest loop in which the plane at a station cuts a bone. */
export const sectionMiddle = (foot: Foot, bone: BoneId, axis: BoneAxis, sMm: number): Vec3 => {
  let [best, middle]: [number, Vec3 | null] = [0, null];
  for (const loop of sliceMesh(meshOf(foot, bone), fromBone(axis, sMm), axis.axis)) {
    const points = loop.map((p) => inBone(axis, p));
    let [area, d, l] = [0, 0, 0];
    points.forEach((p, i) => {
      const q = points[(i + 1) % points.length] ?? p;
      const part = p.dorsalMm * q.lateralMm - q.dorsalMm * p.lateralMm;
      area += part / 2;
      d += ((p.dorsalMm + q.dorsalMm) * part) / 6;
      l += ((p.lateralMm + q.lateralMm) * part) / 6;
    });
    if (Math.abs(area) > best) [best, middle] = [Math.abs(area), fromBone(axis, sMm, d / area, l / area)];
  }
  if (middle === null) throw new RangeError(`${bone} has no section at ${sMm} mm`);
  return middle;
};

const fromJoint = (foot: Foot, bone: BoneId, id: string, into: number): Vec3 => {
  const joint = [...foot.joints.values()].find((j) => j.id === id);
  if (!joint || (joint.first !== bone && joint.second !== bone))
    throw new RangeError(`${id} is not a joint of ${bone}`);
  return add(joint.centre, scale(joint.normal, joint.first === bone ? -into : into));
};

/** Where the way of a place starts. Throws RangeError for a joint that is not the bone's. */
const startOf = (foot: Foot, bone: BoneId, from: Place['from']): Vec3 => {
  const k = scaleOn(foot, bone);
  if ('station' in from || 'zone1' in from) {
    const axis = boneAxis(foot, bone);
    const s =
      'station' in from ? from.station * axis.lengthMm : from.zone1 * (zonesOf(foot)[0]?.toMm ?? 0) + from.plus * k;
    return sectionMiddle(foot, bone, axis, s);
  }
  const shift = scale(carried(foot, bone, from.shift), k);
  return 'joint' in from
    ? add(fromJoint(foot, bone, from.joint, from.into * k), shift)
    : add(meshCentroid(meshOf(foot, bone)), shift);
};

/** Along the section where the start is one, so that the place keeps its station. */
const wayOf = (foot: Foot, bone: BoneId, { from, towards }: Place): Vec3 => {
  const way = carried(foot, bone, towards);
  if (!('station' in from || 'zone1' in from)) return normalize(way);
  const { axis } = boneAxis(foot, bone);
  return normalize(subtract(way, scale(axis, dot(way, axis))));
};

/**
 * The place on the surface, and the way that led to it (unit, outwards). Where an unusual shape leaves the start outside the bone
 * and the way misses it, the way goes out from the middle of the bone. Throws RangeError when that misses too.
 */
export const placeOn = (foot: Foot, bone: BoneId, place: Place): { readonly at: Vec3; readonly out: Vec3 } => {
  const mesh = meshOf(foot, bone);
  const out = wayOf(foot, bone, place);
  const at = exitOf(mesh, startOf(foot, bone, place.from), out) ?? exitOf(mesh, meshCentroid(mesh), out);
  if (at === null) throw new RangeError(`a way of ${bone} never leaves it`);
  return { at, out };
};
