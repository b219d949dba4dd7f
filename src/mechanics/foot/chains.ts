/**
 * The metatarsals' chains, kept in the bone's own standing axes: a pose carries a bone as one piece, so that all poses and forms of
 * one draw of the figures share a chain, and turning it is a tenth of the work of making it. mm, N, rad.
 */
import type { SkeletonId } from '../../ids';
import type { Vec3 } from '../../units';
import type { FootMarks } from './landmarks';
import type { Placing } from './placing';
import type { RayWalls } from './ray-sections';

interface Kept {
  readonly marks: FootMarks;
  readonly chains: Map<string, Float64Array>;
}
const keptChains = new WeakMap<RayWalls, Kept>();

/** Of one ray: up to four pieces a draw, for the hundred that are kept of some two hundred draws put in the press. */
const MOST_KEPT = 2000;

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** How a bone stands turned: 3 x 3 row-major, standing axes to axes of the pose. */
export const turnOf = (placing: Placing, bone: SkeletonId): Float64Array => {
  const turn = new Float64Array(9);
  AXES.forEach((axis, j) => {
    placing.direction(bone, axis).forEach((x, i) => {
      turn[3 * i + j] = x;
    });
  });
  return turn;
};

/** `block` (12 x 12 row-major, two nodes) of the standing bone on the turned one. */
export const turned = (block: Float64Array, turn: Float64Array): Float64Array => {
  const [a, b, c, d, e, f, g, h, k] = Array.from(turn) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const half = new Float64Array(144);
  for (let row = 0; row < 144; row += 36)
    for (let j = 0; j < 12; j++) {
      const at = row + j;
      const [x, y, z] = [block[at] as number, block[at + 12] as number, block[at + 24] as number];
      half[at] = a * x + b * y + c * z;
      half[at + 12] = d * x + e * y + f * z;
      half[at + 24] = g * x + h * y + k * z;
    }
  const full = new Float64Array(144);
  for (let at = 0; at < 144; at += 3) {
    const [x, y, z] = [half[at] as number, half[at + 1] as number, half[at + 2] as number];
    full[at] = a * x + b * y + c * z;
    full[at + 1] = d * x + e * y + f * z;
    full[at + 2] = g * x + h * y + k * z;
  }
  return full;
};

/** A chain of the standing bone: made when it is not kept under `key`, which names all else that it follows from. */
export const chainKept = (walls: RayWalls, marks: FootMarks, key: string, make: () => Float64Array): Float64Array => {
  const before = keptChains.get(walls);
  const kept = before?.marks === marks ? before : { marks, chains: new Map<string, Float64Array>() };
  keptChains.set(walls, kept);
  const known = kept.chains.get(key);
  if (known) return known;
  const made = make();
  if (kept.chains.size >= MOST_KEPT) kept.chains.clear();
  kept.chains.set(key, made);
  return made;
};
