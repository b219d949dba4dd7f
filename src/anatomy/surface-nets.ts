/**
 * A closed triangle surface around the negative part of a sampled field (naive surface nets: one vertex a cell that the
 * surface crosses, at the mean of the crossings of its edges). Counter-clockwise seen from outside.
 */
import type { Vec3 } from '../units';
import type { Box, Field } from './field';
import type { Mesh } from './types';

export interface Grid {
  readonly origin: Vec3;
  readonly step: number;
  readonly size: readonly [number, number, number];
  readonly values: Float32Array;
}

/** Samples a field over a box with a margin, so that the surface closes inside the grid. */
export const sampleGrid = (field: Field, box: Box, step: number): Grid => {
  const margin = 3 * step;
  const size = [0, 1, 2].map((k) => Math.ceil(((box.max[k] ?? 0) - (box.min[k] ?? 0) + 2 * margin) / step) + 1);
  const [nx = 2, ny = 2, nz = 2] = size;
  const origin: Vec3 = [box.min[0] - margin, box.min[1] - margin, box.min[2] - margin];
  const values = new Float32Array(nx * ny * nz).fill(Number.NaN);
  const BLOCK = 5;
  const at = (i: number, j: number, k: number): number =>
    field(origin[0] + i * step, origin[1] + j * step, origin[2] + k * step);
  for (let k0 = 0; k0 < nz; k0 += BLOCK)
    for (let j0 = 0; j0 < ny; j0 += BLOCK)
      for (let i0 = 0; i0 < nx; i0 += BLOCK) {
        const middle = at(i0 + 2, j0 + 2, k0 + 2);
        const far = Math.abs(middle) > 1.8 * step * 5;
        for (let k = k0; k < Math.min(nz, k0 + BLOCK); k++)
          for (let j = j0; j < Math.min(ny, j0 + BLOCK); j++)
            for (let i = i0; i < Math.min(nx, i0 + BLOCK); i++)
              values[i + nx * (j + ny * k)] = far ? middle : at(i, j, k);
      }
  return { origin, step, size: [nx, ny, nz], values };
};

/** Binomial blur (1 2 1) / 4 along each direction: rounds every crease a little. */
export const blur = (grid: Grid, passes: number): Grid => {
  const [nx, ny, nz] = grid.size;
  let from = grid.values;
  for (let pass = 0; pass < passes; pass++) {
    for (const [stride, n] of [
      [1, nx],
      [nx, ny],
      [nx * ny, nz],
    ] as const) {
      const to = new Float32Array(from);
      for (let block = 0; block < from.length; block += stride * n) {
        for (let i = block + stride; i < block + stride * (n - 1); i++) {
          to[i] = ((from[i - stride] ?? 0) + 2 * (from[i] ?? 0) + (from[i + stride] ?? 0)) / 4;
        }
      }
      from = to;
    }
  }
  return { ...grid, values: from };
};

/** The twelve edges of a cell as pairs of corners; corner bits: 1 = x, 2 = y, 4 = z. */
const EDGES = [
  [0, 1],
  [2, 3],
  [4, 5],
  [6, 7],
  [0, 2],
  [1, 3],
  [4, 6],
  [5, 7],
  [0, 4],
  [1, 5],
  [2, 6],
  [3, 7],
] as const;

export const surfaceNets = (grid: Grid): Mesh => {
  const [nx, ny, nz] = grid.size;
  const { values, origin, step } = grid;
  const cellVertex = new Int32Array(nx * ny * nz).fill(-1);
  const positions: number[] = [];
  const offsets = [0, 1, 2, 3, 4, 5, 6, 7].map((c) => (c & 1) + nx * (((c >> 1) & 1) + ny * ((c >> 2) & 1)));
  for (let k = 0; k + 1 < nz; k++)
    for (let j = 0; j + 1 < ny; j++)
      for (let i = 0; i + 1 < nx; i++) {
        const base = i + nx * (j + ny * k);
        let inside = 0;
        for (let c = 0; c < 8; c++) if ((values[base + (offsets[c] ?? 0)] ?? 0) < 0) inside++;
        if (inside === 0 || inside === 8) continue;
        let [sx, sy, sz, count] = [0, 0, 0, 0];
        for (const [a, b] of EDGES) {
          const va = values[base + (offsets[a] ?? 0)] ?? 0;
          const vb = values[base + (offsets[b] ?? 0)] ?? 0;
          if (va < 0 === vb < 0) continue;
          const t = va / (va - vb);
          sx += (a & 1) + t * ((b & 1) - (a & 1));
          sy += ((a >> 1) & 1) + t * (((b >> 1) & 1) - ((a >> 1) & 1));
          sz += ((a >> 2) & 1) + t * (((b >> 2) & 1) - ((a >> 2) & 1));
          count++;
        }
        cellVertex[base] = positions.length / 3;
        positions.push(
          origin[0] + step * (i + sx / count),
          origin[1] + step * (j + sy / count),
          origin[2] + step * (k + sz / count),
        );
      }
  return { positions: new Float32Array(positions), indices: new Uint32Array(faces(grid, cellVertex)) };
};

/** One quad, as two triangles, around every grid edge that the surface crosses. */
const faces = (grid: Grid, cellVertex: Int32Array): number[] => {
  const [nx, ny, nz] = grid.size;
  const indices: number[] = [];
  const strides = [1, nx, nx * ny];
  for (let k = 1; k + 1 < nz; k++)
    for (let j = 1; j + 1 < ny; j++)
      for (let i = 1; i + 1 < nx; i++) {
        const base = i + nx * (j + ny * k);
        const here = (grid.values[base] ?? 0) < 0;
        for (let axis = 0; axis < 3; axis++) {
          const there = (grid.values[base + (strides[axis] ?? 0)] ?? 0) < 0;
          if (here === there) continue;
          const s = strides[(axis + 1) % 3] ?? 0;
          const t = strides[(axis + 2) % 3] ?? 0;
          const [a, b, c, d] = [base - s - t, base - t, base, base - s].map((q) => cellVertex[q] ?? -1);
          if (a === undefined || b === undefined || c === undefined || d === undefined) continue;
          indices.push(...(here ? [a, b, c, a, c, d] : [a, c, b, a, d, c]));
        }
      }
  return indices;
};
