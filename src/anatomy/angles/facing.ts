/**
 * Where two bones face each other: the parts of either surface that lie near the other with the other's surface looking back at
 * them, as the joints of the measured table were found. It says where a joint line ends on a film. mm, foot frame.
 */
import type { BoneId } from '../../ids';
import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, meshOf } from '../bone-axis';
import { vertexOf } from '../mesh';
import type { Foot, Mesh } from '../types';
import { cutUp } from './patches';

/** How far apart surfaces of one joint may be, as shares of the calcaneus' length (3.2 and 1.6 mm of 80). */
const REACH = 0.04;
const PAST_NEAREST = 0.02;
/** Cosine between the normals below which two surfaces look at each other. */
const OPPOSED = -0.55;

interface Triangle {
  readonly corners: readonly [Vec3, Vec3, Vec3];
  readonly normal: Vec3;
  /** A ball that holds the triangle. */
  readonly centre: Vec3;
  readonly radius: number;
}

const trianglesOf = (mesh: Mesh): Triangle[] =>
  Array.from({ length: mesh.indices.length / 3 }, (_, t) => {
    const corners = [0, 1, 2].map((k) => vertexOf(mesh, mesh.indices[3 * t + k] ?? 0)) as [Vec3, Vec3, Vec3];
    const out = cross(subtract(corners[1], corners[0]), subtract(corners[2], corners[0]));
    const centre = scale(add(add(corners[0], corners[1]), corners[2]), 1 / 3);
    return {
      corners,
      normal: scale(out, 1 / (length(out) || 1)),
      centre,
      radius: Math.max(...corners.map((p) => length(subtract(p, centre)))),
    };
  });

const onEdge = (p: Vec3, a: Vec3, b: Vec3): number => {
  const along = subtract(b, a);
  const t = dot(subtract(p, a), along) / (dot(along, along) || 1);
  return length(subtract(p, add(a, scale(along, Math.min(1, Math.max(0, t))))));
};

const distanceTo = (p: Vec3, { corners: [a, b, c], normal }: Triangle): number => {
  const inside = (from: Vec3, to: Vec3): boolean => dot(cross(subtract(to, from), subtract(p, from)), normal) >= 0;
  if (inside(a, b) && inside(b, c) && inside(c, a)) return Math.abs(dot(subtract(p, a), normal));
  return Math.min(onEdge(p, a, b), onEdge(p, b, c), onEdge(p, c, a));
};

interface Near {
  readonly at: Vec3;
  readonly gap: number;
}

const apart = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The parts of one triangle that look at `others`, all within `reach`. */
const nearOn = (own: Triangle, others: readonly Triangle[], reach: number): Near[] => {
  const close = others
    .map((t) => ({ t, off: apart(t.centre, own.centre) }))
    .filter(({ t, off }) => off < t.radius + own.radius + reach)
    .sort((a, b) => a.off - b.off)
    .map(({ t }) => t);
  if (!close.some((t) => dot(t.normal, own.normal) < OPPOSED)) return [];
  return cutUp(...own.corners).flatMap((at) => {
    let gap = reach;
    let back: Triangle | null = null;
    for (const t of close) {
      if (apart(t.centre, at) - t.radius >= gap) continue;
      const d = distanceTo(at, t);
      if (d < gap) [gap, back] = [d, t];
    }
    return back && dot(back.normal, own.normal) < OPPOSED ? [{ at, gap }] : [];
  });
};

const nearTo = (mesh: Mesh, other: Mesh, reach: number): Near[] => {
  const others = trianglesOf(other);
  return trianglesOf(mesh).flatMap((own) => nearOn(own, others, reach));
};

/** The facing points of both bones, first bone's first. Empty where the bones do not meet. */
export const facingPoints = (
  foot: Foot,
  first: BoneId,
  second: BoneId,
): readonly [readonly Vec3[], readonly Vec3[]] => {
  const heel = boneAxis(foot, 'calcaneus').lengthMm;
  const [a, b] = [meshOf(foot, first), meshOf(foot, second)];
  const both = [nearTo(a, b, 2 * REACH * heel), nearTo(b, a, 2 * REACH * heel)] as const;
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
