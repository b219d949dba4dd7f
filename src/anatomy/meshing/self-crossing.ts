/**
 * Whether a closed surface goes through itself: an edge of one triangle through another that has no corner of that edge, or two
 * triangles with a side in common folded on each other. mm.
 */
import { cross, dot, length, subtract, type Vec3 } from '../../units';
import { crossingOfTriangle } from '../fit/triangle';
import { vertexOf } from '../mesh';
import type { Mesh } from '../types';

/** Corners of every triangle in a row, and its box: low and high, three numbers each. */
const unfolded = ({ positions, indices }: Mesh): { readonly corners: Float64Array; readonly boxes: Float64Array } => {
  const corners = new Float64Array(3 * indices.length);
  for (let i = 0; i < indices.length; i++)
    for (let k = 0; k < 3; k++) corners[3 * i + k] = positions[3 * (indices[i] as number) + k] as number;
  const boxes = new Float64Array(2 * indices.length);
  for (let t = 0; 3 * t < indices.length; t++)
    for (let k = 0; k < 3; k++) {
      const [a, b, c] = [
        corners[9 * t + k] as number,
        corners[9 * t + 3 + k] as number,
        corners[9 * t + 6 + k] as number,
      ];
      boxes[6 * t + k] = Math.min(a, b, c);
      boxes[6 * t + 3 + k] = Math.max(a, b, c);
    }
  return { corners, boxes };
};

/** Neighbours that turn further than this lie on each other. */
const FOLDED_COS = Math.cos((177 * Math.PI) / 180);

const isFolded = (mesh: Mesh): boolean => {
  const { indices } = mesh;
  const corner = (i: number): Vec3 => vertexOf(mesh, indices[i] as number);
  const normals = Array.from({ length: indices.length / 3 }, (_, t): Vec3 => {
    const a = corner(3 * t);
    return cross(subtract(corner(3 * t + 1), a), subtract(corner(3 * t + 2), a));
  });
  const count = mesh.positions.length / 3;
  const edges = new Map<number, number>();
  indices.forEach((a, i) => {
    edges.set(a * count + (indices[i % 3 === 2 ? i - 2 : i + 1] as number), Math.floor(i / 3));
  });
  return [...edges].some(([key, t]) => {
    const other = edges.get((key % count) * count + Math.floor(key / count));
    if (other === undefined || other < t) return false;
    const [m, n] = [normals[t] as Vec3, normals[other] as Vec3];
    return dot(m, n) < FOLDED_COS * length(m) * length(n);
  });
};

export const crossesItself = (mesh: Mesh): boolean => {
  if (isFolded(mesh)) return true;
  const { indices } = mesh;
  const { corners, boxes } = unfolded(mesh);
  const [from, way] = [new Float64Array(3), new Float64Array(3)];
  const outsideOf = (t: number): boolean => {
    for (let k = 0; k < 3; k++) {
      const [a, b] = [from[k] as number, (from[k] as number) + (way[k] as number)];
      if (Math.max(a, b) < (boxes[6 * t + k] as number) || Math.min(a, b) > (boxes[6 * t + 3 + k] as number))
        return true;
    }
    return false;
  };
  for (let i = 0; i < indices.length; i++) {
    const next = i % 3 === 2 ? i - 2 : i + 1;
    const [a, b] = [indices[i] as number, indices[next] as number];
    // Every edge of a closed surface runs both ways.
    if (a > b) continue;
    for (let k = 0; k < 3; k++) {
      from[k] = corners[3 * i + k] as number;
      way[k] = (corners[3 * next + k] as number) - (from[k] as number);
    }
    for (let t = 0; 3 * t < indices.length; t++) {
      if (outsideOf(t)) continue;
      const [p, q, r] = [indices[3 * t], indices[3 * t + 1], indices[3 * t + 2]];
      if (p === a || q === a || r === a || p === b || q === b || r === b) continue;
      const [x, y, z] = [from[0] as number, from[1] as number, from[2] as number];
      const [dx, dy, dz] = [way[0] as number, way[1] as number, way[2] as number];
      if (crossingOfTriangle(corners, 9 * t, x, y, z, dx, dy, dz) !== null) return true;
    }
  }
  return false;
};
