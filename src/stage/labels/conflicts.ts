/** What placed labels do to each other: texts over dots and leaders, leaders beside foreign dots. Pure; CSS px. */
import type { Point } from '../types';
import type { LabelItem, PlacedLabel } from './layout';
import { cross, toSegment } from './segments';

type Extent = Pick<LabelItem, 'width' | 'height'>;

/** From the middle of a dot to a foreign leader: its radius, its casing, and air. */
export const CLEAR_PX = 7;
/** How near the leader of one label passes to the dot of another. */
export const leaderToDot = (leader: PlacedLabel, dot: PlacedLabel): number => {
  const [edge, elbow, end] = leader.leader;
  return Math.min(toSegment(dot.leader[2], edge, elbow), toSegment(dot.leader[2], elbow, end));
};

/** Half the mark at a leader's end, with its casing. */
const DOT_PX = 4.5;

interface Rect {
  readonly from: Point;
  readonly to: Point;
}

const rectOf = ({ x, y }: PlacedLabel, { width, height }: Extent): Rect => ({
  from: [x, y],
  to: [x + width, y + height],
});

const covers = ({ from, to }: Rect, [x, y]: Point): boolean =>
  x > from[0] - DOT_PX && x < to[0] + DOT_PX && y > from[1] - DOT_PX && y < to[1] + DOT_PX;

const overlap = (a: Rect, b: Rect): boolean =>
  a.from[0] < b.to[0] && b.from[0] < a.to[0] && a.from[1] < b.to[1] && b.from[1] < a.to[1];

/** A segment that runs through a rectangle crosses a diagonal, or bends inside. */
const runsThrough = ({ from, to }: Rect, [edge, elbow, end]: PlacedLabel['leader']): boolean => {
  if (elbow[0] > from[0] && elbow[0] < to[0] && elbow[1] > from[1] && elbow[1] < to[1]) return true;
  const diagonals: readonly (readonly [Point, Point])[] = [
    [from, to],
    [
      [from[0], to[1]],
      [to[0], from[1]],
    ],
  ];
  return diagonals.some(([a, b]) => cross(edge, elbow, a, b) || cross(elbow, end, a, b));
};

/**
 * `hidden`: a text lies over text, dot or leader of another label, or over its own dot. `touching`, `near`: a leader passes by
 * a foreign dot.
 */
export interface Conflict {
  readonly ids: readonly [string, string];
  readonly kind: 'hidden' | 'touching' | 'near';
}

/** A leader this near to a dot, px, is taken for its own; one that is further off, but not yet clear, is only ugly. */
const TOUCHING_PX = 4;
/** One of a kind is worse than all of the next kinds together: some dozen labels have fewer pairs than the ratio. */
const WEIGHTS = { hidden: 1e6, touching: 1e3, near: 1 } as const;

export const costOf = (conflicts: readonly Conflict[]): number =>
  conflicts.reduce((sum, { kind }) => sum + WEIGHTS[kind], 0);

export const conflictsIn = (
  placed: readonly PlacedLabel[],
  extents: ReadonlyMap<string, Extent>,
): readonly Conflict[] =>
  placed.flatMap((a) => {
    const extent = extents.get(a.id);
    if (extent === undefined) return [];
    const text = rectOf(a, extent);
    return placed.flatMap((b): Conflict[] => {
      const other = extents.get(b.id);
      const onText = a !== b && other !== undefined && overlap(text, rectOf(b, other));
      if (onText || covers(text, b.leader[2]) || (a !== b && runsThrough(text, b.leader)))
        return [{ ids: [a.id, b.id], kind: 'hidden' }];
      const px = a === b ? CLEAR_PX : leaderToDot(a, b);
      return px < CLEAR_PX ? [{ ids: [a.id, b.id], kind: px < TOUCHING_PX ? 'touching' : 'near' }] : [];
    });
  });
