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
export interface LocalField {
  readonly value: Field;
  /** For more balls within this one. */
  readonly near: (centre: Vec3, radius: number) => LocalField;
  /** For many points. */
  readonly often: (centre: Vec3, radius: number) => Field;
}

/** A field that is the same everywhere it is asked for. */
export const everywhere = (field: Field): LocalField => {
  const local: LocalField = { value: field, near: () => local, often: () => field };
  return local;
};

/** Grid points of a region, of its blocks and of their parts, each way. */
const REGION = 8;
const BLOCK = 4;
const PART = 2;
/** No field here changes faster than this, mm a mm (ellipsoids near their centres are the worst). */
export const STEEPEST = 1.3;
/** Grid points that the rounding reaches. */
const REACH = 2;
/** A whole region is left out only where nothing of it can be read later: its blocks further off than they must be. */
const REGION_REACH = 6;

/** From the middle of a cube of so many grid points a side to its corners, steps. */
const radiusOf = (points: number): number => ((points - 1) / 2) * Math.sqrt(3);

/**
 * Samples a field over a box with a margin, so that the surface closes inside the grid. Regions and blocks far from it, and parts of
 * near blocks, keep the value of their middle.
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
  const middleOf = ([i, j, k]: Vec3, points: number): Vec3 => {
    const half = (points - 1) / 2;
    return [place(0, i + half), place(1, j + half), place(2, k + half)];
  };
  const isFar = (middle: number, points: number, reach: number): boolean =>
    Math.abs(middle) > STEEPEST * step * (radiusOf(points) + reach);
  const fill = ([i0, j0, k0]: Vec3, points: number, value: Field | number): void => {
    for (let k = k0; k < Math.min(nz, k0 + points); k++)
      for (let j = j0; j < Math.min(ny, j0 + points); j++)
        for (let i = i0; i < Math.min(nx, i0 + points); i++)
          values[i + nx * (j + ny * k)] =
            typeof value === 'number' ? value : value(place(0, i), place(1, j), place(2, k));
  };
  /** Every cube of so many points a side among the points from a corner on, as far as the grid goes. */
  const cubes = (corner: Vec3, points: number, cube: number, each: (corner: Vec3) => void): void => {
    for (let k = corner[2]; k < Math.min(nz, corner[2] + points); k += cube)
      for (let j = corner[1]; j < Math.min(ny, corner[1] + points); j += cube)
        for (let i = corner[0]; i < Math.min(nx, corner[0] + points); i += cube) each([i, j, k]);
  };
  cubes([0, 0, 0], Math.max(nx, ny, nz), REGION, (region) => {
    const centre = middleOf(region, REGION);
    const about = local.value(...centre);
    if (isFar(about, REGION, REGION_REACH)) return fill(region, REGION, about);
    const here = local.near(centre, step * radiusOf(REGION));
    cubes(region, REGION, BLOCK, (block) => {
      const middle = middleOf(block, BLOCK);
      const value = here.value(...middle);
      if (isFar(value, BLOCK, REACH)) return fill(block, BLOCK, value);
      const field = here.often(middle, step * radiusOf(BLOCK));
      cubes(block, BLOCK, PART, (part) => {
        const inPart = field(...middleOf(part, PART));
        fill(part, PART, isFar(inPart, PART, REACH) ? inPart : field);
      });
    });
  });
  return { origin, step, size: [nx, ny, nz], values };
};

/** Writes the means (1 2 1) / 4 of a run of numbers, a stride apart: a function of its own, so that it is compiled soon. */
const blurRun = (from: Float32Array, to: Float32Array, start: number, end: number, stride: number): void => {
  for (let i = start; i < end; i++)
    to[i] = ((from[i - stride] as number) + 2 * (from[i] as number) + (from[i + stride] as number)) / 4;
};

/** Binomial blur along each direction, so many times: rounds every crease a little. The border of the grid stays. */
const blurred = ({ size, values }: Grid, passes: number): Float32Array => {
  const [nx, ny, nz] = size;
  let from = new Float32Array(values);
  let to = new Float32Array(values);
  for (let pass = 0; pass < passes; pass++)
    for (const stride of [1, nx, nx * ny]) {
      for (let k = 1; k + 1 < nz; k++)
        for (let j = 1; j + 1 < ny; j++) {
          const row = nx * (j + ny * k);
          blurRun(from, to, row + 1, row + nx - 1, stride);
        }
      [from, to] = [to, from];
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
