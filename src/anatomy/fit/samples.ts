/** Points spread over a surface, so that what is asked of every place of it can be asked of them. mm, mm2. */
import type { Mesh } from '../types';

/** Seven numbers a point: where it lies, the outward unit direction of its triangle, and the area it stands for. */
export const WIDTH = 7;

/** Points not farther apart than `spacingMm`: the middles of small triangles that each triangle is cut into. */
export const samplesOf = (mesh: Mesh, spacingMm: number): Float64Array => {
  const out: number[] = [];
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const at = (e: number, k: number): number => mesh.positions[3 * (mesh.indices[t + e] ?? 0) + k] ?? 0;
    const [ax, ay, az] = [at(0, 0), at(0, 1), at(0, 2)];
    const [ux, uy, uz] = [at(1, 0) - ax, at(1, 1) - ay, at(1, 2) - az];
    const [vx, vy, vz] = [at(2, 0) - ax, at(2, 1) - ay, at(2, 2) - az];
    const [wx, wy, wz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const twice = Math.hypot(wx, wy, wz) || 1e-9;
    const longest = Math.max(Math.hypot(ux, uy, uz), Math.hypot(vx, vy, vz), Math.hypot(vx - ux, vy - uy, vz - uz));
    const cuts = Math.max(1, Math.ceil(longest / spacingMm));
    const area = twice / 2 / (cuts * cuts);
    const put = (s: number, r: number): void => {
      out.push(ax + s * ux + r * vx, ay + s * uy + r * vy, az + s * uz + r * vz);
      out.push(wx / twice, wy / twice, wz / twice, area);
    };
    for (let i = 0; i < cuts; i++)
      for (let j = 0; j < cuts - i; j++) {
        put((i + 1 / 3) / cuts, (j + 1 / 3) / cuts);
        if (j < cuts - i - 1) put((i + 2 / 3) / cuts, (j + 2 / 3) / cuts);
      }
  }
  return Float64Array.from(out);
};
