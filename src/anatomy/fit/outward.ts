/**
 * Which side of a closed surface a point lies on is told by the outward direction at the nearest place of it. At an edge that is the
 * sum of both triangles' normals, at a corner the sum of all around it weighted by their angles there (Baerentzen JA, Aanaes H, IEEE
 * Trans Vis Comput Graph 2005;11:243-253, from memory): the normal of any one triangle can be wrong in a narrow groove.
 */
import type { Mesh } from '../types';
import { FEATURE } from './triangle';

/** Three numbers for each of the seven places of a triangle (FEATURE), unit length, triangle after triangle. */
export const PLACES = 7;

const between = (ux: number, uy: number, uz: number, vx: number, vy: number, vz: number): number =>
  Math.atan2(Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx), ux * vx + uy * vy + uz * vz);

/** `corners`: nine numbers a triangle. */
export const outwardOf = (mesh: Mesh, corners: Float64Array): Float64Array => {
  const count = mesh.indices.length / 3;
  const out = new Float64Array(3 * PLACES * count);
  const atCorner = new Float64Array(mesh.positions.length);
  const atEdge = new Map<number, [number, number, number]>();
  const vertices = mesh.positions.length / 3;
  const edgeKey = (t: number, e: number): number => {
    const [i, j] = [mesh.indices[3 * t + e] ?? 0, mesh.indices[3 * t + ((e + 1) % 3)] ?? 0];
    return i < j ? i * vertices + j : j * vertices + i;
  };
  const put = (t: number, place: number, x: number, y: number, z: number): void => {
    const long = Math.hypot(x, y, z) || 1;
    out.set([x / long, y / long, z / long], 3 * (PLACES * t + place));
  };
  for (let t = 0; t < count; t++) {
    const at = (e: number, k: number): number => corners[9 * t + 3 * (e % 3) + k] as number;
    const way = (from: number, to: number): [number, number, number] => [
      at(to, 0) - at(from, 0),
      at(to, 1) - at(from, 1),
      at(to, 2) - at(from, 2),
    ];
    const [[ux, uy, uz], [vx, vy, vz]] = [way(0, 1), way(0, 2)];
    put(t, FEATURE.face, uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
    const n = out.subarray(3 * PLACES * t, 3 * PLACES * t + 3);
    for (let e = 0; e < 3; e++) {
      const angle = between(...way(e, e + 1), ...way(e, e + 2));
      const corner = 3 * (mesh.indices[3 * t + e] ?? 0);
      const edge = atEdge.get(edgeKey(t, e)) ?? [0, 0, 0];
      for (let k = 0; k < 3; k++) {
        atCorner[corner + k] = (atCorner[corner + k] as number) + angle * (n[k] as number);
        edge[k] = (edge[k] as number) + (n[k] as number);
      }
      atEdge.set(edgeKey(t, e), edge);
    }
  }
  for (let t = 0; t < count; t++)
    for (let e = 0; e < 3; e++) {
      const corner = 3 * (mesh.indices[3 * t + e] ?? 0);
      put(t, FEATURE.a + e, ...([0, 1, 2].map((k) => atCorner[corner + k] as number) as [number, number, number]));
      put(t, FEATURE.ab + e, ...(atEdge.get(edgeKey(t, e)) ?? [0, 0, 0]));
    }
  return out;
};
