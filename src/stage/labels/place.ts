/**
 * Labels at rest: places in the margins (layout.ts), and for every label that one of its bone's visible points which keeps leaders
 * clear of foreign dots and texts off dots. Pure; CSS px.
 */
import type { Point } from '../types';
import { type LabelBox, type LabelItem, layout, type PlacedLabel } from './layout';

export interface LabelWish extends Omit<LabelItem, 'anchor'> {
  /** Where its leader may end; the first is the best liked. */
  readonly anchors: readonly Point[];
}

export interface Placing {
  readonly placed: readonly PlacedLabel[];
  /** Index of the anchor chosen for each label. */
  readonly chosen: ReadonlyMap<string, number>;
  /** Ids for which there was no room, the most important first. */
  readonly left: readonly string[];
}

/** From the middle of a dot to a foreign leader: its radius, its casing, and air. */
export const CLEAR_PX = 7;
const ROUNDS = 6;

const toSegment = ([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const way = dx * dx + dy * dy;
  const t = way === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / way));
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
};

/** How near the leader of one label passes to the dot of another. */
export const leaderToDot = (leader: PlacedLabel, dot: PlacedLabel): number => {
  const [edge, elbow, end] = leader.leader;
  return Math.min(toSegment(dot.leader[2], edge, elbow), toSegment(dot.leader[2], elbow, end));
};

type Conflict = readonly [leader: string, dot: string];

const conflictsIn = (placed: readonly PlacedLabel[]): readonly Conflict[] =>
  placed.flatMap((a) =>
    placed.flatMap((b): Conflict[] => (a !== b && leaderToDot(a, b) < CLEAR_PX ? [[a.id, b.id]] : [])),
  );

export const placeLabels = (
  wishes: readonly LabelWish[],
  box: LabelBox,
  previous: readonly PlacedLabel[] = [],
): Placing => {
  const byId = new Map(wishes.map((wish) => [wish.id, wish]));
  const tried = (chosen: ReadonlyMap<string, number>): readonly PlacedLabel[] =>
    layout(
      wishes.flatMap(({ anchors, ...item }): LabelItem[] => {
        const anchor = anchors[chosen.get(item.id) ?? 0];
        return anchor === undefined ? [] : [{ ...item, anchor }];
      }),
      box,
      previous,
    );
  let chosen = new Map(wishes.map(({ id }) => [id, 0]));
  let placed = tried(chosen);
  let conflicts = conflictsIn(placed);
  for (let round = 0; round < ROUNDS && conflicts.length > 0; round += 1) {
    const better = stepAside(conflicts, byId, chosen, placed.length, tried);
    if (better === null) break;
    ({ chosen, placed, conflicts } = better);
  }
  const there = new Set(placed.map(({ id }) => id));
  const left = wishes
    .filter(({ id }) => !there.has(id))
    .sort((a, b) => b.priority - a.priority)
    .map(({ id }) => id);
  return { placed, chosen, left };
};

/** The first change of one anchor that leaves fewer conflicts and no label fewer. */
const stepAside = (
  conflicts: readonly Conflict[],
  wishes: ReadonlyMap<string, LabelWish>,
  chosen: ReadonlyMap<string, number>,
  count: number,
  tried: (chosen: ReadonlyMap<string, number>) => readonly PlacedLabel[],
): { chosen: Map<string, number>; placed: readonly PlacedLabel[]; conflicts: readonly Conflict[] } | null => {
  for (const [leader, dot] of conflicts) {
    for (const id of [dot, leader]) {
      for (const index of wishes.get(id)?.anchors.keys() ?? []) {
        if (index === chosen.get(id)) continue;
        const other = new Map(chosen).set(id, index);
        const placed = tried(other);
        if (placed.length < count) continue;
        const left = conflictsIn(placed);
        if (left.length < conflicts.length) return { chosen: other, placed, conflicts: left };
      }
    }
  }
  return null;
};
