/**
 * A closed triangle surface around the negative part of a sampled field (naive surface nets: one vertex a cell that the
 * surface crosses, at the mean of the crossings of its edges). Counter-clockwise seen from outside.
 */
import type { Mesh } from '../types';
import type { Grid } from './grid';

/** A corner this many steps off is not beside the surface, even where a cut falls off steeply beyond a facet's rim. */
const FAR = 8;

/** The twelve edges of a cell, two corners each; corner bits: 1 = x, 2 = y, 4 = z. Flat: walked for every cell. */
const EDGES = Uint8Array.of(0, 1, 2, 3, 4, 5, 6, 7, 0, 2, 1, 3, 4, 6, 5, 7, 0, 4, 1, 5, 2, 6, 3, 7);

export const surfaceNets = (grid: Grid): Mesh => {
  const [nx, ny, nz] = grid.size;
  const { values, origin, step } = grid;
  const cellVertex = new Int32Array(nx * ny * nz).fill(-1);
  const positions: number[] = [];
  const far = FAR * step;
  const offsets = Int32Array.from(
    [0, 1, 2, 3, 4, 5, 6, 7],
    (c) => (c & 1) + nx * (((c >> 1) & 1) + ny * ((c >> 2) & 1)),
  );
  for (let k = 0; k + 1 < nz; k++)
    for (let j = 0; j + 1 < ny; j++)
      for (let i = 0; i + 1 < nx; i++) {
        const base = i + nx * (j + ny * k);
        if (Math.abs(values[base] as number) > far) continue;
        let inside = 0;
        for (let c = 0; c < 8; c++) if ((values[base + (offsets[c] as number)] as number) < 0) inside++;
        if (inside === 0 || inside === 8) continue;
        let [sx, sy, sz, count] = [0, 0, 0, 0];
        for (let e = 0; e < EDGES.length; e += 2) {
          const [a, b] = [EDGES[e] as number, EDGES[e + 1] as number];
          const va = values[base + (offsets[a] as number)] as number;
          const vb = values[base + (offsets[b] as number)] as number;
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
  const far = FAR * grid.step;
  for (let k = 1; k + 1 < nz; k++)
    for (let j = 1; j + 1 < ny; j++)
      for (let i = 1; i + 1 < nx; i++) {
        const base = i + nx * (j + ny * k);
        const value = grid.values[base] as number;
        if (Math.abs(value) > far) continue;
        const here = value < 0;
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
