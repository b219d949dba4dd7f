/**
 * How deep a point of a plane lies in a bone: its distance from the nearest surface less the cortex there. The distance is the
 * one in space, so that a slanting cut shows its cortex as much thicker as it really cuts it, a cut along the bone ends under the
 * joint surfaces, and two cuts agree wherever they cross. Zero on the border between cortex and canal or spongy bone.
 */
import { cross, dot, length, scale, subtract, type Vec3 } from '../../units';
import { vertexOf } from '../mesh';
import { type CutAxes, toPlane } from './plane';
import type { Point2 } from './polygon';
import type { Surface } from './surface';
import { cortexUnder, sidesAt, thickestBetween, type WallOfBone } from './wall';

/** A triangle of the surface near the plane, in the plane's coordinates; the third is the height over it. */
export interface Facet {
  readonly corner: Vec3;
  readonly ab: Vec3;
  readonly ac: Vec3;
  readonly abab: number;
  readonly abac: number;
  readonly acac: number;
  readonly normal: Vec3;
  /** Share of the bone's length and outward direction at the three corners. */
  readonly shares: Vec3;
  readonly outwards: readonly [Vec3, Vec3, Vec3];
  readonly thickestMm: number;
  /** Box in the plane that the facet can be felt in. */
  readonly from: Point2;
  readonly to: Point2;
}

/** The facets that can be felt in the plane, to `beyondMm` past the cortex under them. */
export const facetsNear = (
  { mesh, shares, outwards }: Surface,
  wall: WallOfBone,
  axes: CutAxes,
  beyondMm: number,
): Facet[] => {
  const places = shares.map((_, i): Vec3 => {
    const p = vertexOf(mesh, i);
    const [up, across] = toPlane(axes, p);
    return [up, across, dot(subtract(p, axes.origin), axes.normal)];
  });
  const facets: Facet[] = [];
  // Most facets lie farther from the plane than any cortex of the bone is thick.
  const farthest = thickestBetween(wall, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY) + beyondMm;
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [i, j, k] = [mesh.indices[t] ?? 0, mesh.indices[t + 1] ?? 0, mesh.indices[t + 2] ?? 0];
    const [a, b, c] = [places[i], places[j], places[k]];
    const [na, nb, nc] = [outwards[i], outwards[j], outwards[k]];
    if (!a || !b || !c || !na || !nb || !nc) continue;
    if (Math.min(a[2], b[2], c[2]) > farthest || Math.max(a[2], b[2], c[2]) < -farthest) continue;
    const along: Vec3 = [shares[i] ?? 0, shares[j] ?? 0, shares[k] ?? 0];
    const thickestMm = thickestBetween(wall, Math.min(...along), Math.max(...along));
    const reach = thickestMm + beyondMm;
    const low = (n: 0 | 1 | 2): number => Math.min(a[n], b[n], c[n]) - reach;
    const high = (n: 0 | 1 | 2): number => Math.max(a[n], b[n], c[n]) + reach;
    if (low(2) > 0 || high(2) < 0) continue;
    const [ab, ac] = [subtract(b, a), subtract(c, a)];
    const across = cross(ab, ac);
    const size = length(across);
    if (size === 0) continue;
    facets.push({
      corner: a,
      ab,
      ac,
      abab: dot(ab, ab),
      abac: dot(ab, ac),
      acac: dot(ac, ac),
      normal: scale(across, 1 / size),
      shares: along,
      outwards: [na, nb, nc],
      thickestMm,
      from: [low(0), low(1)],
      to: [high(0), high(1)],
    });
  }
  return facets;
};

/**
 * Depth under one facet, mm; `least` when it is certainly not smaller than that. The nearest point of a triangle by the region of
 * its plane (Ericson, Real-Time Collision Detection, from memory), written without vectors: it runs some 100 000 times a cut.
 */
export const depthUnder = (facet: Facet, wall: WallOfBone, up: number, across: number, least: number): number => {
  const { corner, ab, ac, normal, abab, abac, acac } = facet;
  const [x, y, z] = [up - corner[0], across - corner[1], -corner[2]];
  // Nothing of the facet is nearer than the plane it lies in.
  if (Math.abs(normal[0] * x + normal[1] * y + normal[2] * z) - facet.thickestMm >= least) return least;
  const d1 = ab[0] * x + ab[1] * y + ab[2] * z;
  const d2 = ac[0] * x + ac[1] * y + ac[2] * z;
  const [d3, d4, d5, d6] = [d1 - abab, d2 - abac, d1 - abac, d2 - acac];
  const [va, vb, vc] = [d3 * d6 - d5 * d4, d5 * d2 - d1 * d6, d1 * d4 - d3 * d2];
  let [v, w] = [0, 0];
  if (d1 <= 0 && d2 <= 0) [v, w] = [0, 0];
  else if (d3 >= 0 && d4 <= d3) [v, w] = [1, 0];
  else if (d6 >= 0 && d5 <= d6) [v, w] = [0, 1];
  else if (vc <= 0 && d1 >= 0 && d3 <= 0) v = d1 / (d1 - d3);
  else if (vb <= 0 && d2 >= 0 && d6 <= 0) w = d2 / (d2 - d6);
  else if (va <= 0 && d4 >= d3 && d5 >= d6) {
    w = (d4 - d3) / (d4 - d3 + d5 - d6);
    v = 1 - w;
  } else {
    v = vb / (va + vb + vc);
    w = vc / (va + vb + vc);
  }
  const [rx, ry, rz] = [x - v * ab[0] - w * ac[0], y - v * ab[1] - w * ac[1], z - v * ab[2] - w * ac[2]];
  const away = Math.sqrt(rx * rx + ry * ry + rz * rz);
  if (away - facet.thickestMm >= least) return least;
  const u = 1 - v - w;
  const [na, nb, nc] = facet.outwards;
  const cortex = cortexUnder(
    sidesAt(wall, u * facet.shares[0] + v * facet.shares[1] + w * facet.shares[2]),
    u * na[0] + v * nb[0] + w * nc[0],
    u * na[1] + v * nb[1] + w * nc[1],
    u * na[2] + v * nb[2] + w * nc[2],
  );
  const depth = away - cortex;
  return Math.min(depth, least);
};
