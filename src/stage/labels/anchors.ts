/** Where on a bone its leader ends: a visible point near the middle of what is seen of it. mm, foot frame. */
import type { BoneId } from '../../ids';
import { add, dot, length, scale, subtract, type Vec3 } from '../../units';
import { firstHit } from '../draw/pick';
import type { BoneRange, PlateMesh } from '../draw/plate-mesh';

/** Direction to the eye in the foot's frame. */
export type Eye = Vec3;

const FAR_MM = 600;
const TRIES = 6;

const at = (a: Float32Array, v: number): Vec3 => [a[3 * v] ?? 0, a[3 * v + 1] ?? 0, a[3 * v + 2] ?? 0];

const isSeen = (mesh: PlateMesh, bone: BoneId, p: Vec3, eye: Eye): boolean => {
  const hit = firstHit(mesh, add(p, scale(eye, FAR_MM)), scale(eye, -1));
  return hit !== null && hit.bone === bone && length(subtract(hit.point, p)) < 0.5;
};

const freshAnchor = (mesh: PlateMesh, range: BoneRange, middle: Vec3, eye: Eye): Vec3 | null => {
  // What the eye meets in front of the middle; the facets' own middles only where another bone or a hollow is in the way.
  const ahead = firstHit(mesh, add(middle, scale(eye, FAR_MM)), scale(eye, -1));
  if (ahead?.bone === range.bone) return ahead.point;
  const faces: { p: Vec3; off: number }[] = [];
  for (let v = range.start; v < range.start + range.count; v += 3) {
    if (dot(at(mesh.normals, v), eye) < 0.25) continue;
    const p = scale(add(add(at(mesh.positions, v), at(mesh.positions, v + 1)), at(mesh.positions, v + 2)), 1 / 3);
    const d = subtract(p, middle);
    faces.push({ p, off: length(subtract(d, scale(eye, dot(d, eye)))) });
  }
  faces.sort((a, b) => a.off - b.off);
  // From the middle outwards, in strides, so that a bone half hidden is tried out to its rim.
  const stride = Math.max(1, Math.floor(faces.length / TRIES));
  for (let i = 0; i < faces.length; i += stride) {
    const face = faces[i];
    if (face !== undefined && isSeen(mesh, range.bone, face.p, eye)) return face.p;
  }
  return null;
};

/** Keeps the previous point while it is seen, so that leaders do not hop. Bones that are hidden are left out. */
export const anchorsOf = (
  mesh: PlateMesh,
  bones: readonly BoneId[],
  eye: Eye,
  previous: ReadonlyMap<BoneId, Vec3>,
  /** A bone whose leader should end near another point than its middle. */
  about: { readonly bone: BoneId; readonly point: Vec3 } | null,
): Map<BoneId, Vec3> => {
  const out = new Map<BoneId, Vec3>();
  for (const bone of bones) {
    const range = mesh.ranges.find((r) => r.bone === bone);
    if (range === undefined) continue;
    const old = previous.get(bone);
    const anchor =
      old !== undefined && isSeen(mesh, bone, old, eye)
        ? old
        : freshAnchor(mesh, range, about?.bone === bone ? about.point : range.centre, eye);
    if (anchor !== null) out.set(bone, anchor);
  }
  return out;
};
