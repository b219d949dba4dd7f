/** A triangle surface made ready for asking how far points lie from it. mm. Flat numbers: asked for ten thousands of times. */
import type { Mesh } from '../types';

export interface Nearest {
  distanceMm: number;
  /** Dot product of the asked direction with the nearest triangle's outward normal. */
  facing: number;
  /** The point lies inside the closed surface. */
  inside: boolean;
}

export interface SurfaceIndex {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Nearest point of the surface within `reach`, or null. (nx, ny, nz): the direction to compare with. */
  readonly nearest: (
    x: number,
    y: number,
    z: number,
    nx: number,
    ny: number,
    nz: number,
    reach: number,
  ) => Nearest | null;
}

/** Squared distance from p to a triangle and the barycentric region does not matter here (Ericson, Real-Time Collision Detection, 5.1.5). */
const squaredDistance = (p: Float64Array, o: number, x: number, y: number, z: number): number => {
  const n = (k: number): number => p[o + k] as number;
  const [abx, aby, abz] = [n(3) - n(0), n(4) - n(1), n(5) - n(2)];
  const [acx, acy, acz] = [n(6) - n(0), n(7) - n(1), n(8) - n(2)];
  const [apx, apy, apz] = [x - n(0), y - n(1), z - n(2)];
  const d1 = abx * apx + aby * apy + abz * apz;
  const d2 = acx * apx + acy * apy + acz * apz;
  const at = (s: number, t: number): number => {
    const [dx, dy, dz] = [apx - s * abx - t * acx, apy - s * aby - t * acy, apz - s * abz - t * acz];
    return dx * dx + dy * dy + dz * dz;
  };
  if (d1 <= 0 && d2 <= 0) return at(0, 0);
  const [bpx, bpy, bpz] = [x - n(3), y - n(4), z - n(5)];
  const d3 = abx * bpx + aby * bpy + abz * bpz;
  const d4 = acx * bpx + acy * bpy + acz * bpz;
  if (d3 >= 0 && d4 <= d3) return at(1, 0);
  const vc = d1 * d4 - d3 * d2;
  if (vc <= 0 && d1 >= 0 && d3 <= 0) return at(d1 / (d1 - d3), 0);
  const [cpx, cpy, cpz] = [x - n(6), y - n(7), z - n(8)];
  const d5 = abx * cpx + aby * cpy + abz * cpz;
  const d6 = acx * cpx + acy * cpy + acz * cpz;
  if (d6 >= 0 && d5 <= d6) return at(0, 1);
  const vb = d5 * d2 - d1 * d6;
  if (vb <= 0 && d2 >= 0 && d6 <= 0) return at(0, d2 / (d2 - d6));
  const va = d3 * d6 - d5 * d4;
  if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
    const w = (d4 - d3) / (d4 - d3 + (d5 - d6));
    return at(1 - w, w);
  }
  const denominator = 1 / (va + vb + vc);
  return at(vb * denominator, vc * denominator);
};

/** Solid angle of a triangle seen from a point, over 4 pi (Van Oosterom A, Strackee J, IEEE Trans Biomed Eng 1983;30:125-126). */
const winding = (p: Float64Array, count: number, x: number, y: number, z: number): number => {
  let sum = 0;
  for (let o = 0; o < 9 * count; o += 9) {
    const n = (k: number): number => p[o + k] as number;
    const [ax, ay, az] = [n(0) - x, n(1) - y, n(2) - z];
    const [bx, by, bz] = [n(3) - x, n(4) - y, n(5) - z];
    const [cx, cy, cz] = [n(6) - x, n(7) - y, n(8) - z];
    const [la, lb, lc] = [Math.hypot(ax, ay, az), Math.hypot(bx, by, bz), Math.hypot(cx, cy, cz)];
    const det = ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx);
    const below =
      la * lb * lc +
      (ax * bx + ay * by + az * bz) * lc +
      (bx * cx + by * cy + bz * cz) * la +
      (cx * ax + cy * ay + cz * az) * lb;
    sum += 2 * Math.atan2(det, below);
  }
  return sum / (4 * Math.PI);
};

export const surfaceIndex = (mesh: Mesh): SurfaceIndex => {
  const count = mesh.indices.length / 3;
  const p = new Float64Array(9 * count);
  const normals = new Float64Array(3 * count);
  const boxes = new Float64Array(6 * count);
  const low = new Float64Array(3).fill(Number.POSITIVE_INFINITY);
  const high = new Float64Array(3).fill(Number.NEGATIVE_INFINITY);
  for (let t = 0; t < count; t++) {
    for (let e = 0; e < 3; e++)
      for (let k = 0; k < 3; k++) p[9 * t + 3 * e + k] = mesh.positions[3 * (mesh.indices[3 * t + e] ?? 0) + k] ?? 0;
    const n = (k: number): number => p[9 * t + k] as number;
    const [ux, uy, uz] = [n(3) - n(0), n(4) - n(1), n(5) - n(2)];
    const [vx, vy, vz] = [n(6) - n(0), n(7) - n(1), n(8) - n(2)];
    const [wx, wy, wz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const l = Math.hypot(wx, wy, wz) || 1;
    normals.set([wx / l, wy / l, wz / l], 3 * t);
    for (let k = 0; k < 3; k++) {
      const [least, most] = [Math.min(n(k), n(3 + k), n(6 + k)), Math.max(n(k), n(3 + k), n(6 + k))];
      boxes[6 * t + k] = least;
      boxes[6 * t + 3 + k] = most;
      low[k] = Math.min(low[k] as number, least);
      high[k] = Math.max(high[k] as number, most);
    }
  }
  return {
    low,
    high,
    nearest: (x, y, z, nx, ny, nz, reach) => {
      let best = reach * reach;
      let found = -1;
      for (let t = 0; t < count; t++) {
        const o = 6 * t;
        const dx = Math.max((boxes[o] as number) - x, 0, x - (boxes[o + 3] as number));
        const dy = Math.max((boxes[o + 1] as number) - y, 0, y - (boxes[o + 4] as number));
        const dz = Math.max((boxes[o + 2] as number) - z, 0, z - (boxes[o + 5] as number));
        if (dx * dx + dy * dy + dz * dz >= best) continue;
        const d = squaredDistance(p, 9 * t, x, y, z);
        if (d < best) {
          best = d;
          found = t;
        }
      }
      if (found < 0) return null;
      const [mx, my, mz] = [
        normals[3 * found] as number,
        normals[3 * found + 1] as number,
        normals[3 * found + 2] as number,
      ];
      const o = 9 * found;
      // On the outer side of the nearest facet: outside, but at edges the sign can mislead, so that "inside" is looked at again.
      const side = mx * (x - (p[o] as number)) + my * (y - (p[o + 1] as number)) + mz * (z - (p[o + 2] as number));
      const inside = side < 0 && winding(p, count, x, y, z) > 0.5;
      return { distanceMm: Math.sqrt(best), facing: nx * mx + ny * my + nz * mz, inside };
    },
  };
};
