/**
 * The lines of a picture of a surface: contours (edges between a facet that looks at the eye and one that looks away), drawn thick, and
 * ridges (edges over which the surface turns by more than RIDGE_DEG), drawn thin. Lines behind a surface are left out.
 */
import type { Mesh } from '../../anatomy';
import { cross, dot, length, radians, scale, subtract, type Vec3 } from '../../units';

export const INK = { none: 0, ridge: 1, contour: 2 } as const;
/** The angle from which the plate of the app draws a ridge. */
const RIDGE_DEG = 26;
/** A line this much behind what is painted still counts as on it: pixels of the fine raster. */
const SLACK = 2.5;

/** What a view has painted so far: depth towards the eye in pixels of the raster, n by n, and the lines over it. */
export interface Raster {
  readonly n: number;
  readonly depth: Float32Array;
  readonly ink: Uint8Array;
}

interface Line {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly ink: number;
}

/** Edges of a closed surface that are lines; points in raster coordinates: right, down, towards the eye. */
export const linesOf = (mesh: Mesh, points: readonly Vec3[]): Line[] => {
  const at = (i: number): Vec3 => points[mesh.indices[i] ?? 0] ?? [0, 0, 0];
  const normals: Vec3[] = [];
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const n = cross(subtract(at(t + 1), at(t)), subtract(at(t + 2), at(t)));
    normals.push(scale(n, 1 / (length(n) || 1)));
  }
  const beside = new Map<string, number>();
  const lines: Line[] = [];
  const sharp = Math.cos(radians(RIDGE_DEG));
  for (let i = 0; i < mesh.indices.length; i++) {
    const next = i % 3 === 2 ? i - 2 : i + 1;
    const [a, b] = [mesh.indices[i] ?? 0, mesh.indices[next] ?? 0];
    const other = beside.get(`${b} ${a}`);
    if (other === undefined) {
      beside.set(`${a} ${b}`, Math.floor(i / 3));
      continue;
    }
    const [n, m] = [normals[Math.floor(i / 3)], normals[other]];
    if (!n || !m) continue;
    // Rows run down the page, which turns the surface inside out: facets that look at the eye have a normal away from it.
    const [seen, seenToo] = [n[2] < 0, m[2] < 0];
    if (seen !== seenToo) lines.push({ from: at(i), to: at(next), ink: INK.contour });
    else if (seen && dot(n, m) < sharp) lines.push({ from: at(i), to: at(next), ink: INK.ridge });
  }
  return lines;
};

const hidden = ({ n, depth }: Raster, column: number, row: number, z: number): boolean => {
  for (let y = Math.max(0, row - 1); y <= Math.min(n - 1, row + 1); y++)
    for (let x = Math.max(0, column - 1); x <= Math.min(n - 1, column + 1); x++)
      if (z + SLACK >= (depth[y * n + x] as number)) return false;
  return true;
};

/** Draws lines into the raster, `width` pixels of the raster wide for contours and one for ridges. */
export const drawLines = (raster: Raster, lines: readonly Line[], width: number): void => {
  const { n, ink } = raster;
  for (const { from, to, ink: kind } of lines) {
    const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1])));
    const [before, after] = kind === INK.contour ? [Math.floor((width - 1) / 2), Math.ceil((width - 1) / 2)] : [0, 0];
    for (let s = 0; s <= steps; s++) {
      const [x, y, z] = [0, 1, 2].map(
        (k) => (from[k] ?? 0) + (((to[k] ?? 0) - (from[k] ?? 0)) * s) / steps,
      ) as unknown as Vec3;
      const [column, row] = [Math.round(x), Math.round(y)];
      if (hidden(raster, column, row, z)) continue;
      for (let v = Math.max(0, row - before); v <= Math.min(n - 1, row + after); v++)
        for (let u = Math.max(0, column - before); u <= Math.min(n - 1, column + after); u++) {
          const k = v * n + u;
          ink[k] = Math.max(ink[k] as number, kind);
        }
    }
  }
};
