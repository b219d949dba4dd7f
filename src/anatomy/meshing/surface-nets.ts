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

/** Signs of the four corners of a cell that lie at its lower x, a bit each: y, then z. */
const signsAt = (values: Float32Array, base: number, nx: number, slab: number): number =>
  ((values[base] as number) < 0 ? 1 : 0) |
  ((values[base + nx] as number) < 0 ? 2 : 0) |
  ((values[base + slab] as number) < 0 ? 4 : 0) |
  ((values[base + slab + nx] as number) < 0 ? 8 : 0);

/** The first corners of the cells that the surface crosses, in the order of the grid. */
const crossedCells = ({ size, values, step }: Grid): number[] => {
  const [nx, ny, nz] = size;
  const far = FAR * step;
  const crossed: number[] = [];
  for (let k = 0; k + 1 < nz; k++)
    for (let j = 0; j + 1 < ny; j++) {
      const row = nx * (j + ny * k);
      let low = signsAt(values, row, nx, nx * ny);
      for (let base = row; base < row + nx - 1; base++) {
        const high = signsAt(values, base + 1, nx, nx * ny);
        const uniform = low === high && (low === 0 || low === 15);
        low = high;
        if (!uniform && Math.abs(values[base] as number) <= far) crossed.push(base);
      }
    }
  return crossed;
};

export const surfaceNets = (grid: Grid): Mesh => {
  const [nx, ny] = grid.size;
  const { values, origin, step } = grid;
  const crossed = crossedCells(grid);
  const positions = new Float32Array(3 * crossed.length);
  const offsets = Int32Array.from(
    [0, 1, 2, 3, 4, 5, 6, 7],
    (c) => (c & 1) + nx * (((c >> 1) & 1) + ny * ((c >> 2) & 1)),
  );
  for (let v = 0; v < crossed.length; v++) {
    const base = crossed[v] as number;
    let sx = 0;
    let sy = 0;
    let sz = 0;
    let count = 0;
    for (let e = 0; e < EDGES.length; e += 2) {
      const a = EDGES[e] as number;
      const b = EDGES[e + 1] as number;
      const va = values[base + (offsets[a] as number)] as number;
      const vb = values[base + (offsets[b] as number)] as number;
      if (va < 0 === vb < 0) continue;
      const t = va / (va - vb);
      sx += (a & 1) + t * ((b & 1) - (a & 1));
      sy += ((a >> 1) & 1) + t * (((b >> 1) & 1) - ((a >> 1) & 1));
      sz += ((a >> 2) & 1) + t * (((b >> 2) & 1) - ((a >> 2) & 1));
      count++;
    }
    positions[3 * v] = origin[0] + step * ((base % nx) + sx / count);
    positions[3 * v + 1] = origin[1] + step * ((Math.floor(base / nx) % ny) + sy / count);
    positions[3 * v + 2] = origin[2] + step * (Math.floor(base / (nx * ny)) + sz / count);
  }
  return { positions, indices: new Uint32Array(faces(grid, crossed)) };
};

/** One quad, as two triangles, around every grid edge that the surface crosses: such an edge starts at a crossed cell's first corner. */
const faces = ({ size, values }: Grid, crossed: readonly number[]): number[] => {
  const [nx, ny, nz] = size;
  const indices: number[] = [];
  const vertexOfCell = new Int32Array(nx * ny * nz);
  for (let v = 0; v < crossed.length; v++) vertexOfCell[crossed[v] as number] = v;
  const strides = Int32Array.of(1, nx, nx * ny, 1, nx);
  for (const base of crossed) {
    const here = (values[base] as number) < 0;
    for (let axis = 0; axis < 3; axis++) {
      if (here === (values[base + (strides[axis] as number)] as number) < 0) continue;
      const s = strides[axis + 1] as number;
      const t = strides[axis + 2] as number;
      const a = vertexOfCell[base - s - t] as number;
      const b = vertexOfCell[base - t] as number;
      const c = vertexOfCell[base] as number;
      const d = vertexOfCell[base - s] as number;
      if (here) indices.push(a, b, c, a, c, d);
      else indices.push(a, c, b, a, d, c);
    }
  }
  return indices;
};
