/**
 * How deep a point of a plane lies in a bone: its distance from the nearest surface less the cortex there. The distance is the
 * one in space, so that a slanting cut shows its cortex as much thicker as it really cuts it, a cut along the bone ends under the
 * joint surfaces, and two cuts agree wherever they cross. Zero on the border between cortex and canal or spongy bone.
 */
import { cross, dot, length, normalize, subtract, type Vec3 } from '../../units';
import { vertexOf } from '../mesh';
import type { BoneAxis, Mesh } from '../types';
import { type CutAxes, toPlane } from './plane';
import type { Point2 } from './polygon';
import type { Sides, WallOfBone } from './wall';

/** A corner of the surface: its place in the plane's coordinates (last: height over the plane), its share of the length, and the outward direction in the bone's own (dorsal, lateral, along). */
interface Corner {
  readonly at: Vec3;
  readonly share: number;
  readonly outward: Vec3;
}

export interface Facet {
  readonly corners: readonly [Corner, Corner, Corner];
  /** Unit normal of the flat facet in the plane's coordinates, and its distance from the origin. */
  readonly normal: Vec3;
  readonly offsetMm: number;
  /** Box in the plane that the facet can be felt in. */
  readonly from: Point2;
  readonly to: Point2;
}

/** Directions of the surface at its vertices: mean of the triangles around, by area. */
const outwardsOf = (mesh: Mesh, axis: BoneAxis): Vec3[] => {
  const sums = Array.from({ length: mesh.positions.length / 3 }, (): [number, number, number] => [0, 0, 0]);
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [i, j, k] = [mesh.indices[t] ?? 0, mesh.indices[t + 1] ?? 0, mesh.indices[t + 2] ?? 0];
    const a = vertexOf(mesh, i);
    const n = cross(subtract(vertexOf(mesh, j), a), subtract(vertexOf(mesh, k), a));
    for (const v of [i, j, k]) {
      const sum = sums[v];
      if (!sum) continue;
      sum[0] += dot(n, axis.dorsal);
      sum[1] += dot(n, axis.lateral);
      sum[2] += dot(n, axis.axis);
    }
  }
  return sums.map((sum) => (length(sum) > 0 ? normalize(sum) : [0, 0, 1]));
};

/** The surface of a bone, made ready to be cut many times. */
export interface Surface {
  readonly mesh: Mesh;
  readonly axis: BoneAxis;
  readonly outwards: readonly Vec3[];
}

export const surfaceOf = (mesh: Mesh, axis: BoneAxis): Surface => ({ mesh, axis, outwards: outwardsOf(mesh, axis) });

/** The facets within `reachMm` of the plane. */
export const facetsNear = ({ mesh, axis, outwards }: Surface, axes: CutAxes, reachMm: number): Facet[] => {
  const corners = outwards.map((outward, i): Corner => {
    const p = vertexOf(mesh, i);
    const [up, across] = toPlane(axes, p);
    const share = dot(subtract(p, axis.origin), axis.axis) / axis.lengthMm;
    return { at: [up, across, dot(subtract(p, axes.origin), axes.normal)], share, outward };
  });
  const facets: Facet[] = [];
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((e) => corners[mesh.indices[t + e] ?? 0]);
    if (!a || !b || !c) continue;
    const ends = ([0, 1, 2] as const).map((i) => {
      const values = [a.at[i], b.at[i], c.at[i]];
      return [Math.min(...values) - reachMm, Math.max(...values) + reachMm] as const;
    });
    const [up, across, height] = ends;
    if (!up || !across || !height || height[0] > 0 || height[1] < 0) continue;
    const flat = cross(subtract(b.at, a.at), subtract(c.at, a.at));
    if (length(flat) === 0) continue;
    const normal = normalize(flat);
    facets.push({
      corners: [a, b, c],
      normal,
      offsetMm: dot(normal, a.at),
      from: [up[0], across[0]],
      to: [up[1], across[1]],
    });
  }
  return facets;
};

/** Weights of the corners at the point of a triangle nearest to p (Ericson, Real-Time Collision Detection, from memory). */
const nearest = (p: Vec3, a: Vec3, b: Vec3, c: Vec3): Vec3 => {
  const [ab, ac, ap] = [subtract(b, a), subtract(c, a), subtract(p, a)];
  const [d1, d2] = [dot(ab, ap), dot(ac, ap)];
  if (d1 <= 0 && d2 <= 0) return [1, 0, 0];
  const bp = subtract(p, b);
  const [d3, d4] = [dot(ab, bp), dot(ac, bp)];
  if (d3 >= 0 && d4 <= d3) return [0, 1, 0];
  const vc = d1 * d4 - d3 * d2;
  if (vc <= 0 && d1 >= 0 && d3 <= 0) {
    const t = d1 / (d1 - d3);
    return [1 - t, t, 0];
  }
  const cp = subtract(p, c);
  const [d5, d6] = [dot(ab, cp), dot(ac, cp)];
  if (d6 >= 0 && d5 <= d6) return [0, 0, 1];
  const vb = d5 * d2 - d1 * d6;
  if (vb <= 0 && d2 >= 0 && d6 <= 0) {
    const t = d2 / (d2 - d6);
    return [1 - t, 0, t];
  }
  const va = d3 * d6 - d5 * d4;
  if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
    const t = (d4 - d3) / (d4 - d3 + (d5 - d6));
    return [0, 1 - t, t];
  }
  const sum = va + vb + vc;
  return [va / sum, vb / sum, vc / sum];
};

/** Cortex under a surface that looks `outward`: that of the sides it looks to, each by the square of its share. */
const cortexUnder = (sides: Sides, [dorsal, lateral, along]: Vec3): number => {
  const mean = (sides.dorsal + sides.plantar + sides.medial + sides.lateral) / 4;
  const upDown = dorsal > 0 ? sides.dorsal : sides.plantar;
  const across = lateral > 0 ? sides.lateral : sides.medial;
  const all = dorsal * dorsal + lateral * lateral + along * along;
  return all === 0 ? mean : (dorsal * dorsal * upDown + lateral * lateral * across + along * along * mean) / all;
};

/** Depth under one facet, mm; `least` when it is certainly not smaller than that. */
export const depthUnder = (facet: Facet, [up, across]: Point2, wall: WallOfBone, least: number): number => {
  // The facet is nowhere nearer than the plane it lies in.
  const { normal, offsetMm } = facet;
  if (Math.abs(normal[0] * up + normal[1] * across - offsetMm) - wall.thickestMm >= least) return least;
  const [a, b, c] = facet.corners;
  const w = nearest([up, across, 0], a.at, b.at, c.at);
  const mix = (i: 0 | 1 | 2, of: 'at' | 'outward'): number => w[0] * a[of][i] + w[1] * b[of][i] + w[2] * c[of][i];
  const away = Math.hypot(mix(0, 'at') - up, mix(1, 'at') - across, mix(2, 'at'));
  if (away - wall.thickestMm >= least) return least;
  const share = w[0] * a.share + w[1] * b.share + w[2] * c.share;
  const outward: Vec3 = [mix(0, 'outward'), mix(1, 'outward'), mix(2, 'outward')];
  return Math.min(least, away - cortexUnder(wall.sidesAt(share), outward));
};
