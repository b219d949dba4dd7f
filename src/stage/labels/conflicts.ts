/**
 * What placed labels do to each other and to what stands in the picture: texts over dots and leaders, leaders beside foreign dots,
 * over marks, over the bone in question. Pure; CSS px.
 */
import type { Point } from '../types';
import type { LabelItem, PlacedLabel } from './layout';
import { runsOver } from './outline';
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

export interface Rect {
  readonly from: Point;
  readonly to: Point;
}

/** What labels keep clear of besides each other, where they can. */
export interface KeepClear {
  /** Marks on the bone with words of their own, such as a zone's number. */
  readonly marks: readonly Rect[];
  /** The bone in question: a leader of another one over it would seem to mean it. `own`: labels that may. */
  readonly bone: { readonly outline: readonly Point[]; readonly own: readonly string[] } | null;
}
export const NOTHING_THERE: KeepClear = { marks: [], bone: null };

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

/** A text, a leader or a dot of that label lies on the mark. */
export const meetsMark = (mark: Rect, label: PlacedLabel, extent: Extent): boolean =>
  overlap(mark, rectOf(label, extent)) || covers(mark, label.leader[2]) || runsThrough(mark, label.leader);

/**
 * `hidden`: a text lies over text, dot or leader of another label, or over its own dot. `mark`: a label lies on a mark.
 * `touching`, `near`: a leader passes by a foreign dot. `over`: it runs over the bone in question and means another.
 */
export interface Conflict {
  readonly ids: readonly [string, string];
  readonly kind: 'hidden' | 'mark' | 'touching' | 'over' | 'near';
}

/** A leader this near to a dot, px, is taken for its own; one that is further off, but not yet clear, is only ugly. */
const TOUCHING_PX = 4;
/** One of a kind is worse than all of the next kinds together, in all but the fullest pictures. */
const WEIGHTS = { hidden: 1e6, mark: 3e3, touching: 1e3, over: 20, near: 1 } as const;

export const costOf = (conflicts: readonly Conflict[]): number =>
  conflicts.reduce((sum, { kind }) => sum + WEIGHTS[kind], 0);

const withThePicture = (label: PlacedLabel, extent: Extent, { marks, bone }: KeepClear): Conflict[] => {
  const ids = [label.id, label.id] as const;
  const [, elbow, end] = label.leader;
  return [
    ...marks.filter((mark) => meetsMark(mark, label, extent)).map((): Conflict => ({ ids, kind: 'mark' })),
    ...(bone !== null && !bone.own.includes(label.id) && runsOver(bone.outline, [elbow, end])
      ? [{ ids, kind: 'over' } as const]
      : []),
  ];
};

export const conflictsIn = (
  placed: readonly PlacedLabel[],
  extents: ReadonlyMap<string, Extent>,
  keepClear: KeepClear = NOTHING_THERE,
): readonly Conflict[] =>
  placed.flatMap((a) => {
    const extent = extents.get(a.id);
    if (extent === undefined) return [];
    const text = rectOf(a, extent);
    const others = placed.flatMap((b): Conflict[] => {
      const other = extents.get(b.id);
      const onText = a !== b && other !== undefined && overlap(text, rectOf(b, other));
      if (onText || covers(text, b.leader[2]) || (a !== b && runsThrough(text, b.leader)))
        return [{ ids: [a.id, b.id], kind: 'hidden' }];
      const px = a === b ? CLEAR_PX : leaderToDot(a, b);
      return px < CLEAR_PX ? [{ ids: [a.id, b.id], kind: px < TOUCHING_PX ? 'touching' : 'near' }] : [];
    });
    return [...others, ...withThePicture(a, extent, keepClear)];
  });
