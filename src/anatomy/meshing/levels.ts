/** From a bone's field to its surfaces: sampled once, rounded, and from the same dense surface cut into few facets or into many. */
import type { Box } from '../field';
import type { Mesh } from '../types';
import { coarsened } from './coarsen';
import { type Grid, type GridField, gridField, type LocalField, rounded, sampleGrid } from './grid';
import type { Weight } from './quadrics';
import { evened, leastAngle, repaired } from './repair';
import { crossesItself } from './self-crossing';
import { closedWith, largestPiece } from './simplify';
import { surfaceNets } from './surface-nets';

/** Passes of the blur that rounds creases. */
const BLUR = 2;

export interface Sampled {
  readonly field: GridField;
  /** The dense surface, a vertex in every cell that it crosses. */
  readonly dense: Mesh;
}

const gridOf = (local: LocalField, box: Box, step: number): Grid => rounded(sampleGrid(local, box, step), BLUR);

/** The rounded surface of a bone as something to look for points on. */
export const surfaceOf = (local: LocalField, box: Box, step: number): GridField => gridField(gridOf(local, box, step));

export const sampled = (local: LocalField, box: Box, step: number): Sampled => {
  const grid = gridOf(local, box, step);
  return { field: gridField(grid), dense: largestPiece(surfaceNets(grid)) };
};

/** No corner of a triangle is narrower than this, rad. */
const LEAST_ANGLE = (6 * Math.PI) / 180;
/** So many triangles less are asked for at most. */
const MOST_LESS = 16;
/** The middle of no facet lies further off the surface than this, mm: the simplifier now and then cuts off a whole ledge. */
const FARTHEST = 2.4;

/** Triangles that a plain simplifier leaves for the choice of what counts: it is twenty times as fast, and so many lie on the bone. */
const MIDDLE = 1400;

const closed = (dense: Mesh, triangles: number): Mesh => {
  const mesh = closedWith(dense, triangles);
  if (mesh === null) throw new Error(`no closed surface with about ${triangles} triangles`);
  return mesh;
};

/** How far off the surface the middle of a facet lies at most, mm. */
const farthest = ({ positions, indices }: Mesh, { value }: GridField): number => {
  let most = 0;
  for (let t = 0; t < indices.length; t += 3) {
    const middle = (k: number): number =>
      ((positions[3 * (indices[t] as number) + k] as number) +
        (positions[3 * (indices[t + 1] as number) + k] as number) +
        (positions[3 * (indices[t + 2] as number) + k] as number)) /
      3;
    most = Math.max(most, Math.abs(value(middle(0), middle(1), middle(2))));
  }
  return most;
};

/**
 * The surface with about so many triangles, closed, nowhere through itself, without slivers, nowhere far from the bone: a few less are
 * asked for where the first try is not, and the nearest is taken where none is near enough. `weight`: few triangles, more of them where
 * it counts; null: many, spread evenly. Await `prepareAnatomy` before. Throws Error when no try is good, which only a change of content
 * can bring about.
 */
export const cutInto = (s: Sampled, triangles: number, weight: Weight | null): Mesh => {
  const middle = weight === null || s.dense.indices.length <= 3 * MIDDLE ? s.dense : closed(s.dense, MIDDLE);
  const tried = (count: number): Mesh =>
    weight === null ? evened(closed(s.dense, count), s.field) : repaired(coarsened(middle, count, weight), s.field);
  let best: { readonly mesh: Mesh; readonly off: number } | null = null;
  for (let less = 0; less <= MOST_LESS; less += 2) {
    const mesh = tried(triangles - less);
    if (!(leastAngle(mesh) > LEAST_ANGLE) || crossesItself(mesh)) continue;
    const off = farthest(mesh, s.field);
    if (best === null || off < best.off) best = { mesh, off };
    if (off < FARTHEST) break;
  }
  if (best === null) throw new Error(`no good surface with about ${triangles} triangles`);
  return best.mesh;
};
