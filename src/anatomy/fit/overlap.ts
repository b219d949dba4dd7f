/**
 * How deep two closed surfaces lie in each other, mm. Whether they do at all is exact: two such surfaces meet only where an edge of
 * one goes through a triangle of the other, or one lies wholly inside. The depth is that of the deepest of many points.
 */
import type { Mesh } from '../types';
import { samplesOf, WIDTH } from './samples';
import type { SurfaceIndex } from './surface-index';

/** Points on surfaces that overlap lie this far apart, so that the depth told is short of the true one by less, mm. */
const SPACING = 0.4;
/** Nothing lies deeper in a bone than this, mm. */
const REACH = 60;

type Point = readonly [x: number, y: number, z: number];

const insideBox = ([x, y, z]: Point, { low, high }: SurfaceIndex): boolean =>
  x >= low[0] && x <= high[0] && y >= low[1] && y <= high[1] && z >= low[2] && z <= high[2];

/** How deep a point lies in a surface; 0 outside. */
const depthAt = (p: Point, into: SurfaceIndex): number => {
  if (!insideBox(p, into)) return 0;
  const hit = into.nearest(...p, REACH);
  return hit?.inside ? hit.distanceMm : 0;
};

/** The greatest depth of the middles of the pieces that a surface cuts another's edges into: above 0 wherever the two meet. */
const depthOfEdges = (mesh: Mesh, into: SurfaceIndex): number => {
  const corner = (i: number): Point => [
    mesh.positions[3 * i] ?? 0,
    mesh.positions[3 * i + 1] ?? 0,
    mesh.positions[3 * i + 2] ?? 0,
  ];
  let deepest = 0;
  for (let i = 0; i < mesh.indices.length; i++) {
    const [from, to] = [mesh.indices[i] ?? 0, mesh.indices[i % 3 === 2 ? i - 2 : i + 1] ?? 0];
    // Every edge of a closed surface runs both ways.
    if (from > to) continue;
    const [[x, y, z], b] = [corner(from), corner(to)];
    const [dx, dy, dz] = [b[0] - x, b[1] - y, b[2] - z];
    const stops = [0, ...into.crossings(x, y, z, dx, dy, dz).sort((s, t) => s - t), 1];
    if (stops.length === 2 && !insideBox(b, into)) continue;
    for (let n = 1; n < stops.length; n++) {
      const s = ((stops[n - 1] as number) + (stops[n] as number)) / 2;
      deepest = Math.max(deepest, depthAt([x + s * dx, y + s * dy, z + s * dz], into));
    }
  }
  return deepest;
};

const depthOfSurface = (mesh: Mesh, into: SurfaceIndex): number => {
  const samples = samplesOf(mesh, SPACING);
  let deepest = 0;
  for (let o = 0; o < samples.length; o += WIDTH) {
    deepest = Math.max(
      deepest,
      depthAt([samples[o] as number, samples[o + 1] as number, samples[o + 2] as number], into),
    );
  }
  return deepest;
};

export interface Solid {
  readonly mesh: Mesh;
  readonly index: SurfaceIndex;
}

/** 0 where the two do not overlap. */
export const overlapDepth = (a: Solid, b: Solid): number => {
  const edges = Math.max(depthOfEdges(a.mesh, b.index), depthOfEdges(b.mesh, a.index));
  if (edges === 0) return 0;
  return Math.max(edges, depthOfSurface(a.mesh, b.index), depthOfSurface(b.mesh, a.index));
};
