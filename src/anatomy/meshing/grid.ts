/**
 * A field sampled on a regular grid, rounded a little, and read again between its points. mm. The rounded grid and not the field is
 * the surface of a bone: everything that looks for the surface later looks here.
 */
import type { Vec3 } from '../../units';
import type { Box, Field } from '../field';

export interface Grid {
  readonly origin: Vec3;
  readonly step: number;
  readonly size: readonly [number, number, number];
  readonly values: Float32Array;
}

/** A field that can say what it is near a place: cheaper there, the same within the ball. */
export type LocalField = (centre: Vec3, radius: number) => { readonly middle: number; readonly near: () => Field };

/** A field that is the same everywhere it is asked for. */
export const everywhere =
  (field: Field): LocalField =>
  ([x, y, z]) => ({ middle: field(x, y, z), near: () => field });

/** Grid points of a block and of its parts, each way. */
const BLOCK = 4;
const PART = 2;
/** No field here changes faster than this, mm a mm (ellipsoids near their centres are the worst). */
export const STEEPEST = 1.3;
/** Grid points that the rounding reaches. */
const REACH = 2;

/** From the middle of a cube of so many grid points a side to its corners, steps. */
const radiusOf = (points: number): number => ((points - 1) / 2) * Math.sqrt(3);

/**
 * Samples a field over a box with a margin, so that the surface closes inside the grid. Blocks far from it, and parts of near blocks,
 * keep the value of their middle.
 */
export const sampleGrid = (local: LocalField, box: Box, step: number): Grid => {
  const margin = 3 * step;
  const size = [0, 1, 2].map((k) => {
    const points = Math.ceil(((box.max[k] ?? 0) - (box.min[k] ?? 0) + 2 * margin) / step) + 1;
    return PART * Math.ceil(points / PART);
  });
  const [nx = 2, ny = 2, nz = 2] = size;
  const origin: Vec3 = [box.min[0] - margin, box.min[1] - margin, box.min[2] - margin];
  const values = new Float32Array(nx * ny * nz);
  const place = (k: 0 | 1 | 2, i: number): number => origin[k] + i * step;
  const isFar = (middle: number, points: number): boolean =>
    Math.abs(middle) > STEEPEST * step * (radiusOf(points) + REACH);
  const fill = (i0: number, j0: number, k0: number, points: number, value: Field | number): void => {
    for (let k = k0; k < Math.min(nz, k0 + points); k++)
      for (let j = j0; j < Math.min(ny, j0 + points); j++)
        for (let i = i0; i < Math.min(nx, i0 + points); i++)
          values[i + nx * (j + ny * k)] =
            typeof value === 'number' ? value : value(place(0, i), place(1, j), place(2, k));
  };
  const half = (BLOCK - 1) / 2;
  const halfPart = (PART - 1) / 2;
  for (let k0 = 0; k0 < nz; k0 += BLOCK)
    for (let j0 = 0; j0 < ny; j0 += BLOCK)
      for (let i0 = 0; i0 < nx; i0 += BLOCK) {
        const { middle, near } = local(
          [place(0, i0 + half), place(1, j0 + half), place(2, k0 + half)],
          step * radiusOf(BLOCK),
        );
        if (isFar(middle, BLOCK)) {
          fill(i0, j0, k0, BLOCK, middle);
          continue;
        }
        const field = near();
        for (let k = k0; k < Math.min(nz, k0 + BLOCK); k += PART)
          for (let j = j0; j < Math.min(ny, j0 + BLOCK); j += PART)
            for (let i = i0; i < Math.min(nx, i0 + BLOCK); i += PART) {
              const here = field(place(0, i + halfPart), place(1, j + halfPart), place(2, k + halfPart));
              fill(i, j, k, PART, isFar(here, PART) ? here : field);
            }
      }
  return { origin, step, size: [nx, ny, nz], values };
};

/** Binomial blur (1 2 1) / 4 along each direction: rounds every crease a little. */
const blurred = (grid: Grid, passes: number): Float32Array => {
  const [nx, ny, nz] = grid.size;
  let from = grid.values;
  let to: Float32Array = new Float32Array(from.length);
  const lines = [
    [1, nx],
    [nx, ny],
    [nx * ny, nz],
  ] as const;
  for (let pass = 0; pass < passes; pass++) {
    for (const [stride, n] of lines) {
      to.set(from);
      for (let block = 0; block < from.length; block += stride * n) {
        const end = block + stride * (n - 1);
        for (let i = block + stride; i < end; i++) {
          to[i] = ((from[i - stride] as number) + 2 * (from[i] as number) + (from[i + stride] as number)) / 4;
        }
      }
      if (from === grid.values) from = new Float32Array(from.length);
      [from, to] = [to, from];
    }
  }
  return from;
};

/** Width of the band of cells that a shift of the level can touch, steps. */
const BAND = 1.5;

/**
 * Rounds a grid. The blur eats convex ends and thin shafts; the level is shifted until as much is inside as before, so that a
 * bone keeps its volume.
 */
export const rounded = (grid: Grid, passes: number): Grid => {
  const values = blurred(grid, passes);
  const { step } = grid;
  const share = (d: number): number => Math.min(1, Math.max(0, 0.5 - d / step));
  const band: number[] = [];
  let want = 0;
  for (let i = 0; i < values.length; i++) {
    const [before, after] = [grid.values[i] as number, values[i] as number];
    if (Math.min(Math.abs(before), Math.abs(after)) > BAND * step) continue;
    band.push(i);
    want += share(before);
  }
  // Newton's way: as many cells as change with the level tell how far it must go.
  let level = 0;
  for (let n = 0; n < 4; n++) {
    let [inside, changing] = [0, 0];
    for (const i of band) {
      const s = share((values[i] as number) - level);
      inside += s;
      if (s > 0 && s < 1) changing++;
    }
    level += (step * (want - inside)) / Math.max(1, changing);
  }
  for (let i = 0; i < values.length; i++) values[i] = (values[i] as number) - level;
  return { ...grid, values };
};

/** Reads a grid between its points (trilinear) with its gradient. Outside the grid: the value at its border. */
export interface GridField {
  readonly value: Field;
  /** Writes the gradient and returns the value. */
  readonly look: (x: number, y: number, z: number, gradient: Float64Array) => number;
}

export const gridField = ({ origin, step, size, values }: Grid): GridField => {
  const [nx, ny, nz] = size;
  const slab = nx * ny;
  const look = (x: number, y: number, z: number, gradient: Float64Array): number => {
    const gx = Math.min(nx - 1.001, Math.max(0, (x - origin[0]) / step));
    const gy = Math.min(ny - 1.001, Math.max(0, (y - origin[1]) / step));
    const gz = Math.min(nz - 1.001, Math.max(0, (z - origin[2]) / step));
    const [i, j, k] = [Math.floor(gx), Math.floor(gy), Math.floor(gz)];
    const [u, w, t] = [gx - i, gy - j, gz - k];
    const o = i + nx * j + slab * k;
    const at = (d: number): number => values[o + d] as number;
    const [a, b, c, d] = [at(0), at(1), at(nx), at(nx + 1)];
    const [e, f, g, h] = [at(slab), at(slab + 1), at(slab + nx), at(slab + nx + 1)];
    const [ab, cd, ef, gh] = [a + (b - a) * u, c + (d - c) * u, e + (f - e) * u, g + (h - g) * u];
    const [low, high] = [ab + (cd - ab) * w, ef + (gh - ef) * w];
    const dx0 = b - a + (d - c - (b - a)) * w;
    const dx1 = f - e + (h - g - (f - e)) * w;
    gradient[0] = (dx0 + (dx1 - dx0) * t) / step;
    gradient[1] = (cd - ab + (gh - ef - (cd - ab)) * t) / step;
    gradient[2] = (high - low) / step;
    return low + (high - low) * t;
  };
  const unused = new Float64Array(3);
  return { value: (x, y, z) => look(x, y, z, unused), look };
};
