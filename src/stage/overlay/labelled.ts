/**
 * The labels of one frame. At rest they are placed anew. While the foot turns they keep their places: only the ends of their
 * leaders go with the bone, and a label whose bone goes out of sight fades. Pure.
 */
import type { BoneId } from '../../ids';
import type { Vec3 } from '../../units';
import type { Camera, Size } from '../camera/camera';
import type { PlateMesh } from '../draw/plate-mesh';
import { isSeen } from '../labels/anchors';
import { clearerSide } from '../labels/clearer-side';
import type { KeepClear } from '../labels/conflicts';
import { type LabelBox, openArea, type PlacedLabel } from '../labels/layout';
import { type LabelWish, type Placing, placeLabels } from '../labels/place';
import type { Point } from '../types';
import { type LabelLook, type LabelText, labelShapes, sizeOf } from './labels';
import type { Fonts, Measure, Shape } from './shapes';
import { insideOf, isInside, spotIsSeen, targetsOf, within } from './targets';

/** What a frame of the stage says to its labels. */
export interface LabelFrame {
  readonly mesh: PlateMesh;
  readonly camera: Camera;
  readonly size: Size;
  readonly mirrored: boolean;
  readonly labels: readonly LabelText[];
  readonly mode: LabelBox['mode'];
  readonly fonts: Fonts;
  readonly measure: Measure;
  readonly before: LabelMemory;
  /** Labels are placed anew at rest only: while the foot turns, they stay where they are. */
  readonly atRest: boolean;
}

export interface LabelledInput extends LabelFrame {
  readonly eye: Vec3;
  readonly toScreen: (p: Vec3) => Point;
  /** What "here" points at, px: the seen points of the break, its middle, and whether a ring stands round it. */
  readonly here: { readonly seen: readonly Point[]; readonly middle: Point; readonly ringPx: number | null } | null;
  /** The chosen bone's leader ends here rather than in its middle: off the zones and the break, which have marks of their own. */
  readonly about: { readonly bone: BoneId; readonly point: Vec3 } | null;
  /**
   * Bones that keep their label when another bone hides them, on a dashed leader: the chosen one and the one in question, which
   * all the words are about. Any other fades while the foot turns, and at rest goes.
   */
  readonly lasting: readonly BoneId[];
  /** What stands in the picture already. */
  readonly keepClear: KeepClear;
}

/** What the next frame starts from, so that labels and anchors stay where they can. */
export interface LabelMemory {
  readonly placed: readonly PlacedLabel[];
  /** The margins they stand in. On the way to a view that takes the other two, they stay where they are. */
  readonly mode: LabelBox['mode'] | null;
  /** Ends of the leaders on the foot, by label. */
  readonly anchors: ReadonlyMap<string, Vec3>;
  /** How often a label has jumped: a new number is a new element, which fades in. */
  readonly jumps: ReadonlyMap<string, number>;
  /** At rest the bone of these was out of sight. */
  readonly hidden: ReadonlySet<string>;
  /** Labels for which there was no room, the most important first: the list under the picture names them. */
  readonly left: readonly Pick<LabelText, 'id' | 'text'>[];
  /** As they were last on the screen. */
  readonly drawn: readonly DrawnLabel[];
}
export const NO_LABELS: LabelMemory = {
  placed: [],
  mode: null,
  anchors: new Map(),
  jumps: new Map(),
  hidden: new Set(),
  left: [],
  drawn: [],
};

export interface DrawnLabel {
  readonly key: string;
  readonly faded: boolean;
  readonly shapes: readonly Shape[];
}

export interface Labelled {
  readonly drawn: readonly DrawnLabel[];
  /** Where they stand in this frame, and where their leaders end. */
  readonly places: readonly PlacedLabel[];
  /** Of the frame before: they go out softly while those in their stead come in, so that nothing pops. */
  readonly gone: readonly DrawnLabel[];
  readonly memory: LabelMemory;
}

export const PAD = 12;
/** A shorter way is a shift, a longer one a jump. */
const JUMP_PX = 20;

/** The point that lies furthest in a direction of the picture. */
const furthest = (points: readonly Point[], [dx, dy]: Point): Point | undefined =>
  points.reduce<Point | undefined>(
    (best, p) => (best === undefined || p[0] * dx + p[1] * dy > best[0] * dx + best[1] * dy ? p : best),
    undefined,
  );

type Side = PlacedLabel['side'];

/** The leader of "here" meets the end of the break on its own side and does not run along it. */
const hereAt = ({ here }: LabelledInput, mode: LabelBox['mode'], side: Side): Point | null => {
  if (here === null) return null;
  const sign = side === 'low' ? -1 : 1;
  const end = furthest(here.seen, mode === 'sides' ? [sign, 0] : [0, sign]);
  return here.ringPx === null ? (end ?? here.middle) : here.middle;
};

const lookOf = (input: LabelledInput, mode: LabelBox['mode'], hidden: boolean): LabelLook => ({
  mode,
  fonts: input.fonts,
  ringPx: input.here?.ringPx ?? null,
  hidden,
  moving: !input.atRest,
});

const oldPlaces = ({ before, mode }: LabelledInput): readonly PlacedLabel[] =>
  before.mode === mode ? before.placed : [];

/** Where "here" had to go to the other margin, its leader meets the other end of the break. */
const placedWithHere = (input: LabelledInput, wishes: readonly LabelWish[]): Placing => {
  const { mode, size } = input;
  const place = (all: readonly LabelWish[]): Placing =>
    placeLabels(all, { mode, ...size, pad: PAD }, oldPlaces(input), input.keepClear);
  const first = place(wishes);
  const tag = input.labels.find((label) => label.tag !== null);
  const wish = wishes.find(({ id }) => id === tag?.id);
  const side = first.placed.find(({ id }) => id === tag?.id)?.side;
  const end = side === undefined ? null : hereAt(input, mode, side);
  if (wish === undefined || side === undefined || end === null || side === wish.prefer) return first;
  return place(wishes.map((each) => (each === wish ? { ...wish, prefer: side, anchors: [end] } : each)));
};

const placedAnew = (input: LabelledInput): Labelled => {
  const { mesh, camera, size, mirrored, mode, fonts, measure, before, toScreen } = input;
  const worlds = new Map<string, readonly Vec3[]>();
  const hidden = new Set<string>();
  const extents = input.labels.map((label) => sizeOf(label, fonts, measure));
  const open = within(insideOf(size), openArea(extents, { mode, ...size, pad: PAD }));
  const wishes = input.labels.flatMap((label): LabelWish[] => {
    const targets = label.tag === null ? targetsOf(input, label, open) : null;
    const inside = (targets?.points ?? []).filter((p) => isInside(toScreen(p), size));
    const start =
      targets === null ? (input.here?.middle ?? null) : inside[0] === undefined ? null : toScreen(inside[0]);
    if (start === null) return [];
    const side = oldPlaces(input).find(({ id }) => id === label.id)?.side;
    const prefer = clearerSide(mesh, camera, size, mirrored, mode, start, side);
    const here = hereAt(input, mode, prefer) ?? start;
    const anchors = targets === null ? [here] : inside.map(toScreen);
    if (!anchors.every((p) => isInside(p, size))) return [];
    worlds.set(label.id, inside);
    if (targets?.hidden === true) hidden.add(label.id);
    return [{ id: label.id, prefer, priority: label.priority, anchors, ...sizeOf(label, fonts, measure) }];
  });
  const { placed, chosen, left } = placedWithHere(input, wishes);
  const anchors = new Map<string, Vec3>();
  const jumps = new Map(before.jumps);
  for (const { id, x, y } of placed) {
    const world = worlds.get(id)?.[chosen.get(id) ?? 0];
    if (world !== undefined) anchors.set(id, world);
    const old = before.placed.find((each) => each.id === id);
    if (old !== undefined && Math.hypot(old.x - x, old.y - y) > JUMP_PX) jumps.set(id, (jumps.get(id) ?? 0) + 1);
  }
  const dropped = left.flatMap((id) => input.labels.filter((label) => label.id === id));
  const memory = { placed, mode, anchors, jumps, hidden, left: dropped };
  const drawn = drawnOf(input, placed, memory, () => false);
  const gone = before.drawn.filter(({ key }) => !drawn.some((each) => each.key === key));
  return { drawn, places: placed, gone, memory: { ...memory, drawn } };
};

const keptInPlace = (input: LabelledInput): Labelled => {
  const { before, mesh, eye, size, mode, toScreen } = input;
  const gone = new Set<string>();
  const placed = before.placed.flatMap((old): PlacedLabel[] => {
    const label = input.labels.find(({ id }) => id === old.id);
    if (label === undefined) return [];
    const world = before.anchors.get(old.id);
    const end =
      label.tag !== null ? hereAt(input, before.mode ?? mode, old.side) : world === undefined ? null : toScreen(world);
    if (end === null) return [];
    const seen =
      label.tag !== null
        ? (input.here?.seen.length ?? 0) > 0
        : label.spot !== null
          ? spotIsSeen(label.spot, mesh, eye)
          : before.hidden.has(old.id) || (world !== undefined && isSeen(mesh, label.id as BoneId, world, eye));
    if (!seen || !isInside(end, size)) gone.add(old.id);
    return [{ ...old, leader: [old.leader[0], old.leader[1], end] }];
  });
  const drawn = drawnOf(input, placed, before, (id) => gone.has(id));
  return { drawn, places: placed, gone: [], memory: { ...before, drawn } };
};

const drawnOf = (
  input: LabelledInput,
  placed: readonly PlacedLabel[],
  { mode, hidden, jumps }: Pick<LabelMemory, 'mode' | 'hidden' | 'jumps'>,
  isFaded: (id: string) => boolean,
): DrawnLabel[] =>
  input.labels.flatMap((label): DrawnLabel[] => {
    const place = placed.find(({ id }) => id === label.id);
    if (place === undefined) return [];
    const faded = isFaded(label.id);
    const look = lookOf(input, mode ?? input.mode, hidden.has(label.id));
    const shapes = labelShapes(label, sizeOf(label, input.fonts, input.measure), place, look);
    return [{ key: `${label.id} ${jumps.get(label.id) ?? 0}`, faded, shapes }];
  });

export const labelled = (input: LabelledInput): Labelled => (input.atRest ? placedAnew(input) : keptInPlace(input));
