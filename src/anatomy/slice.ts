/**
 * Plane through a closed mesh: the closed loops in which it cuts the surface. A vertex that lies on the plane counts as lying on
 * its positive side (the plane is moved by less than anything), so that every cut triangle gives exactly one stretch and every
 * loop closes. Loops run so that the solid lies on their left, seen against the normal: outer loops counter-clockwise, holes
 * clockwise. mm, foot frame.
 */
import { dot, normalize, subtract, type Vec3 } from '../units';
import { vertexOf } from './mesh';
import type { Mesh } from './types';

/** Two crossings nearer than this are one point, mm. */
const SAME = 1e-7;

const edgeKey = (a: number, b: number, count: number): number => (a < b ? a * count + b : b * count + a);

const same = (a: Vec3, b: Vec3): boolean =>
  Math.abs(a[0] - b[0]) < SAME && Math.abs(a[1] - b[1]) < SAME && Math.abs(a[2] - b[2]) < SAME;

/** Throws RangeError when the mesh is not closed where the plane meets it. */
export const sliceMesh = (mesh: Mesh, planePoint: Vec3, planeNormal: Vec3): Vec3[][] => {
  const normal = normalize(planeNormal);
  const count = mesh.positions.length / 3;
  const height = new Float64Array(count);
  for (let i = 0; i < count; i++) height[i] = dot(subtract(vertexOf(mesh, i), planePoint), normal);

  const crossing = (a: number, b: number): Vec3 => {
    // From the lower vertex number, so that both triangles of an edge get the same point.
    const [i, j] = a < b ? [a, b] : [b, a];
    const [hi, hj] = [height[i] ?? 0, height[j] ?? 0];
    const t = hi / (hi - hj);
    const [p, q] = [vertexOf(mesh, i), vertexOf(mesh, j)];
    return [p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1]), p[2] + t * (q[2] - p[2])];
  };

  const next = new Map<number, number>();
  const points = new Map<number, Vec3>();
  for (let t = 0; t < mesh.indices.length; t += 3) {
    let [from, to] = [-1, -1];
    for (let e = 0; e < 3; e++) {
      const a = mesh.indices[t + e] ?? 0;
      const b = mesh.indices[t + ((e + 1) % 3)] ?? 0;
      const [up, down] = [(height[a] ?? 0) >= 0, (height[b] ?? 0) >= 0];
      if (up === down) continue;
      const key = edgeKey(a, b, count);
      points.set(key, crossing(a, b));
      // Walking round a triangle, the edge that leaves the upper side starts the stretch of an outer loop.
      if (up) from = key;
      else to = key;
    }
    if (from >= 0) {
      if (next.has(from)) throw new RangeError('sliceMesh: two triangles run the same way along one edge');
      next.set(from, to);
    }
  }

  const loops: Vec3[][] = [];
  while (next.size > 0) {
    const [start] = next.keys();
    const loop: Vec3[] = [];
    for (let key = start; key !== undefined; ) {
      const following = next.get(key);
      if (following === undefined) throw new RangeError('sliceMesh: the mesh is not closed');
      next.delete(key);
      const p = points.get(key);
      const last = loop.at(-1);
      if (p && !(last && same(last, p))) loop.push(p);
      key = following;
      if (key === start) break;
    }
    const [first] = loop;
    const last = loop.at(-1);
    if (first && last && loop.length > 1 && same(first, last)) loop.pop();
    if (loop.length >= 3) loops.push(loop);
  }
  return loops;
};
