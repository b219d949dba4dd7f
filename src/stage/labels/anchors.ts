/** Where on a bone its leader may end: visible points of it, the best first. mm, foot frame. */
import type { BoneId } from '../../ids';
import { add, dot, length, scale, subtract, type Vec3 } from '../../units';
import { firstHit } from '../draw/pick';
import type { BoneRange, PlateMesh } from '../draw/plate-mesh';

/** Direction to the eye in the foot's frame. */
export type Eye = Vec3;

const FAR_MM = 600;
const TRIES = 14;
/** Enough to step aside for a leader that passes close by. */
const MOST = 5;
/** Points nearer to each other than this share of the bone's radius are one choice. */
const APART = 0.22;

const at = (a: Float32Array, v: number): Vec3 => [a[3 * v] ?? 0, a[3 * v + 1] ?? 0, a[3 * v + 2] ?? 0];

export const isSeen = (mesh: PlateMesh, bone: BoneId, p: Vec3, eye: Eye): boolean => {
  const hit = firstHit(mesh, add(p, scale(eye, FAR_MM)), scale(eye, -1));
  return hit !== null && hit.bone === bone && length(subtract(hit.point, p)) < 0.5;
};

/** Middles of the facets that face the eye, from the middle of the bone outwards, in strides that reach its rim. */
const facing = (mesh: PlateMesh, range: BoneRange, middle: Vec3, eye: Eye, suits: (p: Vec3) => boolean): Vec3[] => {
  const faces: { p: Vec3; off: number }[] = [];
  for (let v = range.start; v < range.start + range.count; v += 3) {
    if (dot(at(mesh.normals, v), eye) < 0.25) continue;
    const p = scale(add(add(at(mesh.positions, v), at(mesh.positions, v + 1)), at(mesh.positions, v + 2)), 1 / 3);
    if (!suits(p)) continue;
    const d = subtract(p, middle);
    faces.push({ p, off: length(subtract(d, scale(eye, dot(d, eye)))) });
  }
  faces.sort((a, b) => a.off - b.off);
  const stride = Math.max(1, Math.floor(faces.length / TRIES));
  return faces.filter((_, i) => i % stride === 0).map(({ p }) => p);
};

export interface AnchorWish {
  /** Where the leader ended in the frame before. */
  readonly previous: Vec3 | undefined;
  /** The best liked point lies before this one, which may be inside the bone. */
  readonly middle: Vec3;
  /** Whether the leader may end there, as far as the picture is concerned. */
  readonly suits: (p: Vec3) => boolean;
}

/**
 * Up to five points that suit; none when the bone is hidden. The point of the frame before comes first while it is seen, so that
 * leaders do not hop; else what the eye meets in front of the middle.
 */
export const anchorsOf = (
  mesh: PlateMesh,
  range: BoneRange,
  eye: Eye,
  { previous, middle, suits }: AnchorWish,
): readonly Vec3[] => {
  const out: Vec3[] = [];
  const take = (p: Vec3): void => {
    if (suits(p) && out.every((q) => length(subtract(p, q)) > APART * range.radiusMm)) out.push(p);
  };
  if (previous !== undefined && isSeen(mesh, range.bone, previous, eye)) take(previous);
  const ahead = firstHit(mesh, add(middle, scale(eye, FAR_MM)), scale(eye, -1));
  if (ahead?.bone === range.bone) take(ahead.point);
  for (const p of facing(mesh, range, middle, eye, suits)) {
    if (out.length >= MOST) break;
    if (isSeen(mesh, range.bone, p, eye)) take(p);
  }
  return out;
};
