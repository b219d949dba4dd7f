/**
 * What is drawn by hand on the foot while explaining. A point is kept on its facet and not in space: every foot has the same
 * facets, so that a stroke goes along when the foot is turned, held in another way or given another shape. Pure; mm, foot frame.
 */
import { add, cross, dot, scale, subtract, type Vec3 } from '../../units';
import { firstHit } from '../draw/pick';
import type { PlateMesh } from '../draw/plate-mesh';
import type { Shape } from '../overlay/shapes';
import type { Point } from '../types';

export interface PenPoint {
  /** First loose vertex of the facet. */
  readonly facet: number;
  /** Shares of its three corners. */
  readonly shares: Vec3;
}
/** One movement of the hand; it may leave the bone and come back, which makes two pieces. */
export type PenStroke = readonly (readonly PenPoint[])[];

const corner = (mesh: PlateMesh, v: number): Vec3 => [
  mesh.positions[3 * v] ?? 0,
  mesh.positions[3 * v + 1] ?? 0,
  mesh.positions[3 * v + 2] ?? 0,
];

/** The point of the foot that a ray meets first, or null. */
export const penPointAt = (mesh: PlateMesh, from: Vec3, along: Vec3): PenPoint | null => {
  const hit = firstHit(mesh, from, along);
  if (hit === null) return null;
  const [a, b, c] = [0, 1, 2].map((k) => corner(mesh, hit.facet + k)) as [Vec3, Vec3, Vec3];
  const n = cross(subtract(b, a), subtract(c, a));
  const whole = dot(n, n);
  const share = (p: Vec3, q: Vec3): number => dot(cross(subtract(q, p), subtract(hit.point, p)), n) / whole;
  const [forA, forB] = [share(b, c), share(c, a)];
  return { facet: hit.facet, shares: [forA, forB, 1 - forA - forB] };
};

export const placeOf = (mesh: PlateMesh, { facet, shares }: PenPoint): Vec3 =>
  [0, 1, 2].reduce<Vec3>((sum, k) => add(sum, scale(corner(mesh, facet + k), shares[k] ?? 0)), [0, 0, 0]);

/** Its facet looks towards the eye. */
const faces = (mesh: PlateMesh, { facet }: PenPoint, eye: Vec3): boolean =>
  dot([mesh.normals[3 * facet] ?? 0, mesh.normals[3 * facet + 1] ?? 0, mesh.normals[3 * facet + 2] ?? 0], eye) > 0;

const WIDTH_PX = 3;
const CASING_PX = 6;

/** The strokes as they lie in the picture; what has turned away from the eye is left out. */
export const penShapes = (
  strokes: readonly PenStroke[],
  mesh: PlateMesh,
  toScreen: (p: Vec3) => Point,
  eye: Vec3,
): Shape[] =>
  strokes.flat().flatMap((piece): Shape[] => {
    const runs: Point[][] = [];
    let open = false;
    for (const point of piece) {
      const seen = faces(mesh, point, eye);
      if (seen && !open) runs.push([]);
      if (seen) runs.at(-1)?.push(toScreen(placeOf(mesh, point)));
      open = seen;
    }
    return runs
      .filter((run) => run.length > 1)
      .map((points) => ({ kind: 'line', points, colour: 'here', width: WIDTH_PX, casing: CASING_PX }));
  });
