/**
 * Territories by the nearest way inside the bone: every cell goes to the vessel whose entry is nearest to it through cells
 * (Dijkstra 1959 from many sources at once). This takes it that the nearest entry feeds; nobody has measured flow.
 */
import FlatQueue from 'flatqueue';
import { eachNeighbour, type Grid } from './grid';

/** Cells at which one vessel goes in. */
export interface Seeds {
  readonly cells: readonly number[];
}

/** Number of the vessel that each cell belongs to; -1 where none reaches. Of equals the earlier one. */
export const territoriesOf = (
  grid: Grid,
  seeds: readonly Seeds[],
  cut: number | null,
  open: (cell: number) => boolean,
): Int16Array => {
  const owner = new Int16Array(grid.count).fill(-1);
  const way = new Float64Array(grid.count).fill(Number.POSITIVE_INFINITY);
  const queue = new FlatQueue<number>();
  seeds.forEach(({ cells }, vessel) => {
    for (const cell of cells) {
      if (!open(cell) || way[cell] === 0) continue;
      way[cell] = 0;
      owner[cell] = vessel;
      queue.push(cell, 0);
    }
  });
  const { stepMm } = grid.ground;
  for (let d = queue.peekValue(), cell = queue.pop(); cell !== undefined; d = queue.peekValue(), cell = queue.pop()) {
    const here = d ?? 0;
    if (here > (way[cell] ?? 0)) continue;
    const s = grid.sMm[cell] ?? 0;
    const mine = owner[cell] ?? -1;
    eachNeighbour(grid, cell, cut, (next, di, dj) => {
      if (!open(next)) return;
      const there = here + Math.hypot((grid.sMm[next] ?? 0) - s, di * stepMm, dj * stepMm);
      if (there >= (way[next] ?? 0)) return;
      way[next] = there;
      owner[next] = mine;
      queue.push(next, there);
    });
  }
  return owner;
};
