/** A bone as it is in a foot of another length, before it is scaled to it: its facets keep their distances from the other bones. mm. */
import type { SkeletonId } from '../ids';
import { add, cross, normalize, scale, subtract, type Vec3 } from '../units';
import { eased } from './eased';
import type { JointSurface } from './joint-surface';
import { vertexOf, verticesOf } from './mesh';
import type { Shape } from './shape';
import { scaleOf } from './size';
import { drawnTogether, isSameSize, standingSurfaces } from './spacing';
import { inverse, movePoint, STILL } from './stance/motion';
import { motionsOf } from './stance/stance';
import type { FootParameters, Mesh } from './types';

/** What lies as near to a joint's surface, not past its rim by more, is a facet's nearest part and is looked after. */
const NEAREST = 1.2;
const PAST = 1;
/** A triangle with no corner nearer to the facet than this has no such part. */
const AWAY = 5;
const ROUNDS = 3;

/** Corners, middles of edges and the middle of a triangle, as shares of its corners. */
const PLACES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [0.5, 0.5, 0],
  [0, 0.5, 0.5],
  [0.5, 0, 0.5],
  [1 / 3, 1 / 3, 1 / 3],
];

interface Place {
  readonly corners: readonly [number, number, number];
  readonly shares: Vec3;
  /** It is not to lie further beyond the bone's own side than this. */
  readonly most: number;
}

const placeAt = (points: readonly Vec3[], [a, b, c]: Place['corners'], [p, q, r]: Vec3): Vec3 =>
  add(add(scale(points[a] as Vec3, p), scale(points[b] as Vec3, q)), scale(points[c] as Vec3, r));

const nearestPlaces = (
  mesh: Mesh,
  points: readonly Vec3[],
  { stand }: JointSurface,
  sign: number,
  k: number,
): Place[] => {
  const stands = points.map(stand);
  const near = (i: number): boolean => {
    const at = stands[i];
    return at !== undefined && Math.abs(at.side) < AWAY && at.past < AWAY;
  };
  const places: Place[] = [];
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const corners = [...mesh.indices.subarray(t, t + 3)] as [number, number, number];
    if (!corners.some(near)) continue;
    for (const shares of PLACES) {
      const { side, past } = stand(placeAt(points, corners, shares));
      if (past <= PAST && Math.abs(side) < NEAREST) places.push({ corners, shares, most: (sign * side) / k });
    }
  }
  return places;
};

/**
 * Takes corners back where a facet's nearest part came nearer than it is to be: a triangle across a hollow misses it by more in a
 * longer foot, and where joints meet none has all that it asks for.
 */
const takeBack = (
  mesh: Mesh,
  before: readonly Vec3[],
  now: Vec3[],
  surface: JointSurface,
  sign: number,
  k: number,
): void => {
  const { stand } = surface;
  const places = nearestPlaces(mesh, before, surface, sign, k);
  for (let round = 0; round < ROUNDS; round++) {
    const back = new Map<number, number>();
    for (const { corners, shares, most } of places) {
      const off = sign * stand(placeAt(now, corners, shares)).side - most;
      if (off <= 0) continue;
      corners.forEach((corner, e) => {
        if ((shares[e] ?? 0) > 0) back.set(corner, Math.max(back.get(corner) ?? 0, off));
      });
    }
    for (const [corner, off] of back) {
      const p = now[corner] as Vec3;
      now[corner] = add(p, scale(stand(p).way, -sign * off));
    }
  }
};

/** Half of what the turn of a normal is told from, mm. */
const STEP = 0.5;

const turnedNormal = (move: (p: Vec3) => Vec3, p: Vec3, n: Vec3): Vec3 => {
  const u = normalize(cross(n, Math.abs(n[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0]));
  const along = (way: Vec3): Vec3 => subtract(move(add(p, scale(way, STEP))), move(add(p, scale(way, -STEP))));
  return normalize(cross(along(u), along(cross(n, u))));
};

const flat = (points: readonly Vec3[]): Float32Array => Float32Array.from(points.flat());

/** `mesh`: the bone of a foot of this shape in its own frame, as long as the reference foot. */
export const spaced = (shape: Shape, parameters: FootParameters, bone: SkeletonId, mesh: Mesh): Mesh => {
  const k = scaleOf(shape, parameters);
  if (isSameSize(k)) return mesh;
  const there = motionsOf(shape, parameters, 'standing').get(bone) ?? STILL;
  const home = inverse(there);
  const surfaces = standingSurfaces(shape, parameters);
  const move = drawnTogether(surfaces, k);
  const before = verticesOf(mesh).map((p) => movePoint(there, p));
  const now = before.map(move);
  for (const surface of surfaces) {
    const { first, second } = surface.shape;
    if (first === bone || second === bone) takeBack(mesh, before, now, surface, first === bone ? 1 : -1, k);
  }
  eased(mesh, before, now);
  const moved: Mesh = { positions: flat(now.map((p) => movePoint(home, p))), indices: mesh.indices };
  if (mesh.normals === undefined) return moved;
  const normals = verticesOf({ positions: mesh.normals, indices: mesh.indices });
  const turn = (p: Vec3): Vec3 => movePoint(home, move(movePoint(there, p)));
  return { ...moved, normals: flat(normals.map((n, i) => turnedNormal(turn, vertexOf(mesh, i), n))) };
};
