/** From a bone's field to its surfaces: sampled once, rounded, and from the same dense surface cut into few facets or into many. */
import type { Box } from '../field';
import type { Mesh } from '../types';
import { type Grid, type GridField, gridField, type LocalField, rounded, sampleGrid } from './grid';
import { repaired } from './repair';
import { largestPiece, simplify } from './simplify';
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

/** The surface with about so many triangles. Await `prepareAnatomy` before. */
export const cutInto = (s: Sampled, triangles: number): Mesh => repaired(simplify(s.dense, triangles), s.field);
