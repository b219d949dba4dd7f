/**
 * The outline of a bone in the lateral view, in the bone's own directions: along its long axis as the view shows it, and across
 * that. Places found by these directions stay the same places when the bone turns in the view. mm, foot frame.
 */
import type { BoneId } from '../../ids';
import { dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, meshOf } from '../bone-axis';
import { verticesOf } from '../mesh';
import type { Foot } from '../types';
import type { Segment } from './angle';

/** A vertex of the bone and where it lies: share of the bone's length in the view, 0 behind. */
interface OutlinePoint {
  readonly at: Vec3;
  readonly share: number;
}

export interface Outline {
  /** Unit, in the view: forwards along the bone, and across it to the dorsal side. */
  readonly along: Vec3;
  readonly up: Vec3;
  readonly points: readonly OutlinePoint[];
  /** Hindmost and foremost station along `along`. */
  readonly reach: readonly [number, number];
}

/** A quarter turn in the view, from forwards to dorsal. */
const quarterTurn = ([, y, z]: Vec3): Vec3 => [0, z, -y];

export const outlineOf = (foot: Foot, bone: BoneId): Outline => {
  const { axis } = boneAxis(foot, bone);
  const along = normalize([0, axis[1], axis[2]]);
  const vertices = verticesOf(meshOf(foot, bone));
  const stations = vertices.map((p) => dot(p, along));
  const reach = [Math.min(...stations), Math.max(...stations)] as const;
  return {
    along,
    up: quarterTurn(along),
    points: vertices.map((at, i) => ({ at, share: ((stations[i] ?? 0) - reach[0]) / (reach[1] - reach[0]) })),
    reach,
  };
};

export const between = (outline: Outline, from: number, to: number): readonly OutlinePoint[] =>
  outline.points.filter(({ share }) => share >= from && share <= to);

const farthest = (points: readonly OutlinePoint[], towards: Vec3): Vec3 => {
  const [first, ...rest] = points;
  if (!first) throw new RangeError('no part of the bone lies there');
  return rest.reduce((far, p) => (dot(p.at, towards) > dot(far.at, towards) ? p : far), first).at;
};

/** Square to a line in the view, on the side of `side`. */
export const squareTo = ([a, b]: Segment, side: Vec3): Vec3 => {
  const normal = normalize(quarterTurn(subtract(b, a)));
  return dot(normal, side) < 0 ? scale(normal, -1) : normal;
};

/** Rounds of laying the ruler on again; it lies still after two or three. */
const ROUNDS = 8;

/** A ruler laid in the view on two parts of the outline from the side `side`: the points it touches. */
export const rulerOn = (back: readonly OutlinePoint[], front: readonly OutlinePoint[], side: Vec3): Segment => {
  let line: Segment = [farthest(back, side), farthest(front, side)];
  for (let i = 0; i < ROUNDS; i++) {
    const out = squareTo(line, side);
    line = [farthest(back, out), farthest(front, out)];
  }
  return line;
};
