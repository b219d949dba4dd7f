/**
 * A bone filled with cells: columns of the ground cut into layers, so that the borders of its parts and a break lie between layers and
 * never within one. Neighbours are the 26 around a cell; a break takes away every way across it.
 */
import { fromBone } from '../anatomy';
import type { Vec3 } from '../units';
import type { Ground } from './ground';

export interface Grid {
  readonly ground: Ground;
  readonly count: number;
  /** Of each cell: layer, column, station of its middle, thickness of its layer. */
  readonly layer: Int32Array;
  readonly column: Int32Array;
  readonly sMm: Float64Array;
  readonly thickMm: Float64Array;
  /** Cell at layer * columns + column; -1 outside. */
  readonly cellAt: Int32Array;
  readonly layers: number;
  /** Where each layer begins, and the end of the last. */
  readonly edges: readonly number[];
}

const layerEdges = (lengthMm: number, borders: readonly number[], stepMm: number): readonly number[] => {
  const cuts = [...new Set([0, ...borders.filter((b) => b > 0 && b < lengthMm), lengthMm])].sort((a, b) => a - b);
  const edges: number[] = [0];
  for (let c = 1; c < cuts.length; c++) {
    const [from, to] = [cuts[c - 1] ?? 0, cuts[c] ?? 0];
    const pieces = Math.ceil((to - from) / stepMm);
    for (let k = 1; k < pieces; k++) edges.push(from + ((to - from) * k) / pieces);
    // As given, to the last digit: a break is found by its station.
    edges.push(to);
  }
  return edges;
};

const isIn = (spans: readonly number[], s: number): boolean => {
  let crossed = 0;
  while (crossed < spans.length && (spans[crossed] ?? 0) <= s) crossed++;
  return crossed % 2 === 1;
};

/** Visits the up to 26 neighbours of a cell that no break at the beginning of layer `cut` parts from it. */
export const eachNeighbour = (
  grid: Grid,
  cell: number,
  cut: number | null,
  visit: (neighbour: number, di: number, dj: number, dk: number) => void,
): void => {
  const { wide, high } = grid.ground;
  const k = grid.layer[cell] ?? 0;
  const column = grid.column[cell] ?? 0;
  const i = column % wide;
  const j = (column - i) / wide;
  for (let dk = -1; dk <= 1; dk++) {
    const layer = k + dk;
    if (layer < 0 || layer >= grid.layers) continue;
    if (cut !== null && layer < cut !== k < cut) continue;
    for (let dj = -1; dj <= 1; dj++) {
      if (j + dj < 0 || j + dj >= high) continue;
      for (let di = -1; di <= 1; di++) {
        if (i + di < 0 || i + di >= wide || (dk === 0 && dj === 0 && di === 0)) continue;
        const other = grid.cellAt[layer * wide * high + (j + dj) * wide + i + di] ?? -1;
        if (other >= 0) visit(other, di, dj, dk);
      }
    }
  }
};

/** Cells in one piece with each other, by number; `open` says which cells can be passed. -1 where they cannot. */
export const piecesOf = (grid: Grid, cut: number | null, open: (cell: number) => boolean): Int32Array => {
  const piece = new Int32Array(grid.count).fill(-1);
  let number = 0;
  for (let start = 0; start < grid.count; start++) {
    if (piece[start] !== -1 || !open(start)) continue;
    const stack = [start];
    piece[start] = number;
    for (let cell = stack.pop(); cell !== undefined; cell = stack.pop())
      eachNeighbour(grid, cell, cut, (next) => {
        if (piece[next] !== -1 || !open(next)) return;
        piece[next] = number;
        stack.push(next);
      });
    number++;
  }
  return piece;
};

const filled = (ground: Ground, edges: readonly number[], keep: (at: number) => boolean): Grid => {
  const columns = ground.wide * ground.high;
  const layers = edges.length - 1;
  const cellAt = new Int32Array(layers * columns).fill(-1);
  const [layer, column, sMm, thickMm]: [number[], number[], number[], number[]] = [[], [], [], []];
  for (let k = 0; k < layers; k++) {
    const [from, to] = [edges[k] ?? 0, edges[k + 1] ?? 0];
    for (let c = 0; c < columns; c++) {
      if (!isIn(ground.spans[c] ?? [], (from + to) / 2) || !keep(k * columns + c)) continue;
      cellAt[k * columns + c] = layer.length;
      layer.push(k);
      column.push(c);
      sMm.push((from + to) / 2);
      thickMm.push(to - from);
    }
  }
  return {
    ground,
    count: layer.length,
    layer: Int32Array.from(layer),
    column: Int32Array.from(column),
    sMm: Float64Array.from(sMm),
    thickMm: Float64Array.from(thickMm),
    cellAt,
    layers,
    edges,
  };
};

/** `borders`: stations that must lie between layers. Crumbs that touch the bone's largest piece nowhere are left out. */
export const gridOf = (ground: Ground, borders: readonly number[]): Grid => {
  const edges = layerEdges(ground.axis.lengthMm, borders, ground.stepMm);
  const grid = filled(ground, edges, () => true);
  const piece = piecesOf(grid, null, () => true);
  const sizes = new Map<number, number>();
  for (const p of piece) sizes.set(p, (sizes.get(p) ?? 0) + 1);
  if (sizes.size <= 1) return grid;
  const [largest] = [...sizes].sort((a, b) => b[1] - a[1])[0] ?? [0];
  return filled(ground, edges, (at) => piece[grid.cellAt[at] ?? -1] === largest);
};

/** The layer that begins at a station; null where none does. */
export const layerFrom = (grid: Grid, sMm: number): number | null => {
  const at = grid.edges.indexOf(sMm);
  return at <= 0 || at >= grid.layers ? null : at;
};

/** Middle of a cell in the frame of the foot. */
export const middleOf = (grid: Grid, cell: number): Vec3 => {
  const { axis, first, stepMm, wide } = grid.ground;
  const column = grid.column[cell] ?? 0;
  const i = column % wide;
  return fromBone(axis, grid.sMm[cell] ?? 0, first[1] + ((column - i) / wide) * stepMm, first[0] + i * stepMm);
};

/** Cells with a side that faces the outside. */
export const surfaceOf = (grid: Grid): readonly number[] => {
  const { wide, high } = grid.ground;
  const columns = wide * high;
  const isInside = (layer: number, j: number, i: number): boolean =>
    layer >= 0 &&
    layer < grid.layers &&
    j >= 0 &&
    j < high &&
    i >= 0 &&
    i < wide &&
    (grid.cellAt[layer * columns + j * wide + i] ?? -1) >= 0;
  return Array.from({ length: grid.count }, (_, cell) => cell).filter((cell) => {
    const k = grid.layer[cell] ?? 0;
    const column = grid.column[cell] ?? 0;
    const i = column % wide;
    const j = (column - i) / wide;
    return !(
      isInside(k - 1, j, i) &&
      isInside(k + 1, j, i) &&
      isInside(k, j - 1, i) &&
      isInside(k, j + 1, i) &&
      isInside(k, j, i - 1) &&
      isInside(k, j, i + 1)
    );
  });
};
