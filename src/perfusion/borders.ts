/**
 * Where territories meet. A border is told by a station only where it lies across the bone: its middle by area, and half the stretch
 * that eight tenths of it take. A border that runs along the bone, or round an entry, has no station and is left out.
 */
import type { VesselId } from '../ids';
import { eachNeighbour, type Grid } from './grid';
import type { FeedingBorder } from './types';

/**
 * Most that half a border may stretch, of the bone's length; least of a territory that has to lie on its own side; and least of the
 * bone's section that the border has to take.
 */
const ACROSS = { stretch: 0.12, ownSide: 0.8, section: 1 } as const;

type Faces = { sMm: number; area: number }[];

/** Faces between two territories, by the numbers of both. */
const facesOf = (grid: Grid, owner: Int16Array): ReadonlyMap<string, Faces> => {
  const found = new Map<string, Faces>();
  const { stepMm } = grid.ground;
  for (let cell = 0; cell < grid.count; cell++)
    eachNeighbour(grid, cell, null, (next, di, dj, dk) => {
      const [a, b] = [owner[cell] ?? -1, owner[next] ?? -1];
      if (next < cell || a === b || a < 0 || b < 0 || Math.abs(di) + Math.abs(dj) + Math.abs(dk) !== 1) return;
      const key = a < b ? `${a} ${b}` : `${b} ${a}`;
      const faces = found.get(key) ?? [];
      found.set(key, faces);
      const [s, thick] = [grid.sMm[cell] ?? 0, grid.thickMm[cell] ?? 0];
      faces.push(
        dk === 0
          ? { sMm: s, area: stepMm * thick }
          : { sMm: grid.edges[grid.layer[next] ?? 0] ?? s, area: stepMm ** 2 },
      );
    });
  return found;
};

const quantile = (sorted: Faces, share: number): number => {
  const all = sorted.reduce((sum, { area }) => sum + area, 0);
  let sum = 0;
  for (const { sMm, area } of sorted) {
    sum += area;
    if (sum >= share * all) return sMm;
  }
  return sorted.at(-1)?.sMm ?? 0;
};

/** Share of a territory's volume that lies before a station. */
const before = (grid: Grid, owner: Int16Array, vessel: number, sMm: number): number => {
  let [all, part] = [0, 0];
  for (let cell = 0; cell < grid.count; cell++) {
    if (owner[cell] !== vessel) continue;
    all += grid.thickMm[cell] ?? 0;
    if ((grid.sMm[cell] ?? 0) < sMm) part += grid.thickMm[cell] ?? 0;
  }
  return all === 0 ? 0 : part / all;
};

/** Area of the bone across its axis, at the layer of a station. */
const sectionAt = (grid: Grid, sMm: number): number => {
  const next = grid.edges.findIndex((edge) => edge > sMm);
  const layer = (next === -1 ? grid.layers : next) - 1;
  return grid.layer.reduce((cells, k) => cells + Number(k === layer), 0) * grid.ground.stepMm ** 2;
};

export const bordersOf = (grid: Grid, owner: Int16Array, vessels: readonly VesselId[]): readonly FeedingBorder[] =>
  [...facesOf(grid, owner)]
    .flatMap(([key, faces]): FeedingBorder[] => {
      const sorted = faces.sort((p, q) => p.sMm - q.sMm);
      const area = sorted.reduce((sum, f) => sum + f.area, 0);
      const sMm = sorted.reduce((sum, f) => sum + f.sMm * f.area, 0) / area;
      const halfWidthMm = (quantile(sorted, 0.9) - quantile(sorted, 0.1)) / 2;
      if (halfWidthMm > ACROSS.stretch * grid.ground.axis.lengthMm) return [];
      if (area < ACROSS.section * sectionAt(grid, sMm)) return [];
      const [a = 0, b = 0] = key.split(' ').map(Number);
      const [shareA, shareB] = [before(grid, owner, a, sMm), before(grid, owner, b, sMm)];
      const [near, far] = shareA > shareB ? [a, b] : [b, a];
      if (Math.max(shareA, shareB) < ACROSS.ownSide || 1 - Math.min(shareA, shareB) < ACROSS.ownSide) return [];
      const [first, second] = [vessels[near], vessels[far]];
      return first === undefined || second === undefined ? [] : [{ between: [first, second], sMm, halfWidthMm }];
    })
    .sort((p, q) => p.sMm - q.sMm);
