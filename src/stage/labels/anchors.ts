/** Where on a bone its leader may end: visible points of it, the best first. mm, foot frame. */
import type { BoneId } from '../../ids';
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../units';
import { firstSeen } from '../draw/pick';
import type { BoneRange, PlateMesh } from '../draw/plate-mesh';

/** Direction to the eye in the foot's frame. */
export type Eye = Vec3;

/** Looked at round a point, to see whether it lies on the rim. */
const DIRECTIONS = 4;
const TRIES = 14;
/** Enough to step aside for a leader that passes close by. */
const MOST = 5;
/** Points nearer to each other than this share of the bone's radius are one choice. */
const APART = 0.22;

const at = (a: Float32Array, v: number): Vec3 => [a[3 * v] ?? 0, a[3 * v + 1] ?? 0, a[3 * v + 2] ?? 0];

export const isSeen = (mesh: PlateMesh, bone: BoneId, p: Vec3, eye: Eye): boolean => {
  const hit = firstSeen(mesh, p, eye);
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

/** Directions all round, across the line of sight. */
const around = (eye: Eye): readonly Vec3[] => {
  const right = normalize(cross(Math.abs(eye[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0], eye));
  const up = cross(eye, right);
  return Array.from({ length: DIRECTIONS }, (_, i) => {
    const turn = (2 * Math.PI * i) / DIRECTIONS;
    return add(scale(right, Math.cos(turn)), scale(up, Math.sin(turn)));
  });
};

/** All of a dot there lies on the bone: one on the rim might mean its neighbour. */
const isClear = (mesh: PlateMesh, bone: BoneId, p: Vec3, eye: Eye, clearMm: number): boolean =>
  around(eye).every((way) => firstSeen(mesh, add(p, scale(way, clearMm)), eye)?.bone === bone);

export interface AnchorWish {
  /** Where the leader ended in the frame before. */
  readonly previous: Vec3 | undefined;
  /** The best liked point lies before this one, which may be inside the bone. */
  readonly middle: Vec3;
  /** How much of the bone should be seen around a point, mm. */
  readonly clearMm: number;
  /** Whether the leader may end there, as far as the picture is concerned. */
  readonly suits: (p: Vec3) => boolean;
}

/**
 * Up to five points that suit; none when the bone is hidden. The point of the frame before comes first while it is seen, so that
 * leaders do not hop; else what the eye meets in front of the middle. Points on the rim of what is seen come last.
 */
export const anchorsOf = (
  mesh: PlateMesh,
  range: BoneRange,
  eye: Eye,
  { previous, middle, clearMm, suits }: AnchorWish,
): readonly Vec3[] => {
  const clear: Vec3[] = [];
  const rim: Vec3[] = [];
  const isApart = (from: readonly Vec3[], p: Vec3): boolean =>
    from.every((q) => length(subtract(p, q)) > APART * range.radiusMm);
  const take = (p: Vec3): void => {
    if (!suits(p) || !isApart(clear, p)) return;
    // A point on the rim does not keep a clear one beside it out.
    if (isClear(mesh, range.bone, p, eye, clearMm)) clear.push(p);
    else if (isApart(rim, p)) rim.push(p);
  };
  if (previous !== undefined && isSeen(mesh, range.bone, previous, eye)) take(previous);
  const ahead = firstSeen(mesh, middle, eye);
  if (ahead?.bone === range.bone) take(ahead.point);
  for (const p of facing(mesh, range, middle, eye, suits)) {
    if (clear.length >= MOST) break;
    if (isSeen(mesh, range.bone, p, eye)) take(p);
  }
  return [...clear, ...rim].slice(0, MOST);
};
