/** Which bone a ray meets first, and where: spheres first, then triangles. mm, foot frame. Pure. */
import type { BoneId } from '../../ids';
import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../units';
import type { PlateMesh } from './plate-mesh';

export interface Hit {
  readonly bone: BoneId;
  readonly point: Vec3;
  /** First loose vertex of the triangle. */
  readonly facet: number;
  readonly distanceMm: number;
}

const at = (a: Float32Array, v: number): Vec3 => [a[3 * v] ?? 0, a[3 * v + 1] ?? 0, a[3 * v + 2] ?? 0];

/** Distance along the ray to the triangle from its outer side, or null (Moeller and Trumbore, J Graph Tools 1997;2(1):21-28). */
const meets = (from: Vec3, along: Vec3, a: Vec3, b: Vec3, c: Vec3): number | null => {
  const e1 = subtract(b, a);
  const e2 = subtract(c, a);
  const p = cross(along, e2);
  const det = dot(e1, p);
  if (det < 1e-12) return null;
  const s = subtract(from, a);
  const u = dot(s, p) / det;
  if (u < 0 || u > 1) return null;
  const q = cross(s, e1);
  const v = dot(along, q) / det;
  if (v < 0 || u + v > 1) return null;
  const t = dot(e2, q) / det;
  return t > 0 ? t : null;
};

/** Far enough to stand before every bone of the largest foot. */
const FAR_MM = 600;

/** What an eye in that direction meets on its way to a point, which may be the point itself. */
export const firstSeen = (mesh: PlateMesh, p: Vec3, eye: Vec3): Hit | null =>
  firstHit(mesh, add(p, scale(eye, FAR_MM)), scale(eye, -1));

export const firstHit = (mesh: PlateMesh, from: Vec3, along: Vec3): Hit | null => {
  let best: { bone: BoneId; t: number; facet: number } | null = null;
  for (const range of mesh.ranges) {
    const toCentre = subtract(range.centre, from);
    const t0 = dot(toCentre, along);
    if (length(subtract(toCentre, scale(along, t0))) > range.radiusMm) continue;
    if (best !== null && t0 - range.radiusMm > best.t) continue;
    for (let v = range.start; v < range.start + range.count; v += 3) {
      const t = meets(from, along, at(mesh.positions, v), at(mesh.positions, v + 1), at(mesh.positions, v + 2));
      if (t !== null && (best === null || t < best.t)) best = { bone: range.bone, t, facet: v };
    }
  }
  if (best === null) return null;
  const { bone, t, facet } = best;
  return { bone, point: add(from, scale(along, t)), facet, distanceMm: t };
};
