/**
 * Where two bones face each other: the parts of either surface that lie near the other with the other's surface looking back at
 * them, as the joints of the measured table were found. It says where a joint line ends on a film. mm, foot frame.
 */

import type { BoneId } from '../../ids';
import { add, dot, scale, type Vec3 } from '../../units';
import { boneAxis, meshOf } from '../bone-axis';
import { type SurfaceIndex, surfaceIndex } from '../fit/surface-index';
import type { Foot, Mesh } from '../types';
import { patchesOf } from './patches';

/** How far apart surfaces of one joint may be, as shares of the calcaneus' length (3.2 and 1.6 mm of 80). */
const REACH = 0.04;
const PAST_NEAREST = 0.02;
/** Cosine between the outward directions below which two surfaces look at each other. */
const OPPOSED = -0.55;

interface Near {
  readonly at: Vec3;
  readonly gap: number;
}

/** The parts of a surface that look at another one within reach. */
const nearTo = (mesh: Mesh, { low, high, nearest }: SurfaceIndex, reach: number): Near[] =>
  patchesOf(mesh).flatMap(({ at, normal }) => {
    const [x, y, z] = at;
    if (x < low[0] - reach || y < low[1] - reach || z < low[2] - reach) return [];
    if (x > high[0] + reach || y > high[1] + reach || z > high[2] + reach) return [];
    const hit = nearest(x, y, z, reach);
    if (hit === null) return [];
    // Where the bones press into each other the way to the point leads inwards.
    const outward = hit.inside ? scale(hit.way, -1) : hit.way;
    return dot(outward, normal) < OPPOSED ? [{ at, gap: hit.distanceMm }] : [];
  });

/** The facing points of both bones, first bone's first. Empty where the bones do not meet. */
export const facingPoints = (
  foot: Foot,
  first: BoneId,
  second: BoneId,
): readonly [readonly Vec3[], readonly Vec3[]] => {
  const heel = boneAxis(foot, 'calcaneus').lengthMm;
  const [a, b] = [meshOf(foot, first), meshOf(foot, second)];
  const reach = 2 * REACH * heel;
  const both = [nearTo(a, surfaceIndex(b), reach), nearTo(b, surfaceIndex(a), reach)] as const;
  const nearest = Math.min(...both.flat().map(({ gap }) => gap));
  const limit = Math.max(REACH * heel, nearest + PAST_NEAREST * heel);
  const kept = (side: readonly Near[]): Vec3[] => side.filter(({ gap }) => gap < limit).map(({ at }) => at);
  return [kept(both[0]), kept(both[1])];
};

/** The end of a joint line towards a direction: half-way between the outermost facing points of the two bones. */
export const jointEnd = (foot: Foot, first: BoneId, second: BoneId, towards: Vec3): Vec3 => {
  const [a, b] = facingPoints(foot, first, second).map((points) =>
    points.reduce<Vec3 | null>((out, p) => (out && dot(out, towards) >= dot(p, towards) ? out : p), null),
  );
  if (!a || !b) throw new RangeError(`${first} and ${second} do not face each other`);
  return scale(add(a, b), 0.5);
};
