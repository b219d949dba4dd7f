/**
 * The outline of a bone in the lateral view, in the bone's own directions: along its long axis as the view shows it, and up across
 * that. Places found by these directions stay the same places when the bone turns in the view. mm, foot frame.
 */
import type { BoneId } from '../../ids';
import { add, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, meshOf } from '../bone-axis';
import { verticesOf } from '../mesh';
import type { Foot } from '../types';
import type { Segment } from './angle';

/** A vertex of the bone and where it lies: share of the bone's length in the view, 0 behind. */
export interface OutlinePoint {
  readonly at: Vec3;
  readonly share: number;
}

export interface Outline {
  readonly along: Vec3;
  readonly up: Vec3;
  readonly points: readonly OutlinePoint[];
  /** Stations of the hindmost and foremost vertex along `along`. */
  readonly reach: readonly [number, number];
}

export const outlineOf = (foot: Foot, bone: BoneId): Outline => {
  const { axis } = boneAxis(foot, bone);
  const along = normalize([0, axis[1], axis[2]]);
  const vertices = verticesOf(meshOf(foot, bone));
  const stations = vertices.map((p) => dot(p, along));
  const reach = [Math.min(...stations), Math.max(...stations)] as const;
  return {
    along,
    up: [0, along[2], -along[1]],
    points: vertices.map((at, i) => ({ at, share: ((stations[i] ?? 0) - reach[0]) / (reach[1] - reach[0]) })),
    reach,
  };
};

export const farthest = (points: readonly OutlinePoint[], towards: Vec3): Vec3 => {
  const [first, ...rest] = points;
  if (!first) throw new RangeError('no part of the bone lies there');
  return rest.reduce((far, p) => (dot(p.at, towards) > dot(far.at, towards) ? p : far), first).at;
};

/** Across a line in the lateral view, on the side of `side`. */
const across = ([a, b]: Segment, side: Vec3): Vec3 => {
  const [, dy, dz] = subtract(b, a);
  const normal = normalize([0, dz, -dy]);
  return dot(normal, side) < 0 ? scale(normal, -1) : normal;
};

/** Rounds of laying the ruler on again; it lies still after two or three. */
const ROUNDS = 8;

/** A ruler laid in the view on two parts of the outline from the side `side`: the points it touches. */
export const rulerOn = (back: readonly OutlinePoint[], front: readonly OutlinePoint[], side: Vec3): Segment => {
  let line: Segment = [farthest(back, side), farthest(front, side)];
  for (let i = 0; i < ROUNDS; i++) {
    const out = across(line, side);
    line = [farthest(back, out), farthest(front, out)];
  }
  return line;
};

/** The line from a point that touches a part of the outline from the side `side`: the point touched. */
export const touchFrom = (from: Vec3, part: readonly OutlinePoint[], side: Vec3): Vec3 => {
  let touched = farthest(part, side);
  for (let i = 0; i < ROUNDS; i++) touched = farthest(part, across([from, touched], side));
  return touched;
};

export const between = (outline: Outline, from: number, to: number): readonly OutlinePoint[] =>
  outline.points.filter(({ share }) => share >= from && share <= to);

/** A unit direction in the view between two others: `share` of the way from one to the other along the chord. */
export const towards = (a: Vec3, b: Vec3, share: number): Vec3 => normalize(add(scale(a, 1 - share), scale(b, share)));
