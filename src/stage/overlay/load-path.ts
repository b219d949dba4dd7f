/**
 * The way of the load laid over the foot: rows of blocks where it is pressed, cords where it is pulled, arrows down at the leg and up
 * from the ground, two or three numbers. Pure; parts and screen in, shapes out.
 */
import type { Vec3 } from '../../units';
import { mainLoadOf } from '../../wording/load-scale';
import type { Rect } from '../labels/conflicts';
import type { DrawnPart, LoadNumber, LoadPathScene } from '../scene/load-path';
import type { Point } from '../types';
import { blocks, cord, lengthPx } from './cord-and-blocks';
import { isInsideOutline, piecesOutside } from './cut';
import type { Project } from './marks';
import { box, type Font, type Measure, type Shape } from './shapes';

/** Width of what carries most, px, and how far arrows reach off the foot. At k = 1. */
const WIDEST_PX = 13;
const LEG_PX = 84;
const CALF_PX = 84;
const GROUND_PX = 30;
/** From below every bone. */
const FAR_PX = 1000;
/** Shorter pieces say nothing. */
const LEAST_PX = 7;
/** Looking along an arrow there is none: it is drawn only when so much of it is seen. */
const SEEN = 0.35;

export interface PathFrame {
  readonly toScreen: Project;
  /** Of the bone in question, on the screen. */
  readonly outline: readonly Point[];
  readonly mmPerPx: number;
  readonly k: number;
  /** Share of their usual length that arrows up the leg have: a low plate has its labels there. */
  readonly reach: number;
}

/** Where a part's arrow starts or ends off the foot, px; null when one looks along it. */
const off = ({ points: [at], up }: DrawnPart, px: number, frame: PathFrame): Point | null => {
  if (at === undefined) return null;
  const tip = frame.toScreen(at);
  const one: Vec3 = [at[0] + up[0], at[1] + up[1], at[2] + up[2]];
  const end = frame.toScreen(one);
  const seen = Math.hypot(end[0] - tip[0], end[1] - tip[1]) * frame.mmPerPx;
  if (seen < SEEN) return null;
  const long = px / (seen / frame.mmPerPx);
  return [tip[0] + (end[0] - tip[0]) * long, tip[1] + (end[1] - tip[1]) * long];
};

/** The line of a part on the screen, from where its force comes to where it goes. */
const lineOf = (part: DrawnPart, frame: PathFrame): Point[] => {
  const screen = part.points.map(frame.toScreen);
  const [at] = screen;
  if (at === undefined) return [];
  const { k, reach } = frame;
  if (part.kind === 'leg') return arrow(off(part, LEG_PX * k * reach, frame), at);
  if (part.kind === 'ground') return fromGround(part, at, frame);
  return screen.length === 1 ? arrow(at, off(part, CALF_PX * k * reach, frame)) : screen;
};

/** Up to the bone, or to the edge of the bone in question where that lies before it. */
const fromGround = (part: DrawnPart, at: Point, frame: PathFrame): Point[] => {
  const below = off(part, -FAR_PX, frame);
  const tip = below === null ? undefined : piecesOutside([below, at], frame.outline)[0]?.at(-1);
  if (below === null || tip === undefined) return [];
  const t = (GROUND_PX * frame.k) / FAR_PX;
  return [[tip[0] + (below[0] - at[0]) * t, tip[1] + (below[1] - at[1]) * t], tip];
};

const arrow = (from: Point | null, to: Point | null): Point[] => (from === null || to === null ? [] : [from, to]);

const partShapes = (part: DrawnPart, frame: PathFrame): Shape[] => {
  const widthPx = WIDEST_PX * frame.k * part.width;
  const line = lineOf(part, frame);
  const pieces = piecesOutside(line, frame.outline).filter((piece) => lengthPx(piece) >= LEAST_PX * frame.k);
  if (part.kind === 'leg' || part.kind === 'ground')
    return pieces.slice(0, 1).flatMap((piece) => blocks(piece, { widthPx, heads: 'last' }));
  const draw = part.sense === 'pulled' ? cord : blocks;
  return pieces.flatMap((piece) => draw(piece, { widthPx, heads: part.id === 'achilles' ? 'last' : 'none' }));
};

export const pathShapes = ({ parts }: LoadPathScene, frame: PathFrame): Shape[] =>
  parts.flatMap((part) => partShapes(part, frame));

export interface PathNumber {
  readonly text: string;
  readonly mark: Rect;
}

interface NumbersInput extends PathFrame {
  readonly size: { readonly width: number; readonly height: number };
  readonly font: Font;
  readonly measure: Measure;
  /** A number of body weights in words. */
  readonly say: (number: LoadNumber) => string;
  /** As many as the plate has room for, the first first. */
  readonly most: number;
  /** Nothing else stands there. */
  readonly isFree: (mark: Rect) => boolean;
}

const PAD_PX = 4;
const EDGE_PX = 6;

const meets = (a: Rect, b: Rect): boolean =>
  a.from[0] < b.to[0] && b.from[0] < a.to[0] && a.from[1] < b.to[1] && b.from[1] < a.to[1];

const around = (line: readonly Point[]): Rect => {
  const [xs, ys] = [line.map(([x]) => x), line.map(([, y]) => y)];
  return {
    from: [Math.min(...xs) - PAD_PX, Math.min(...ys) - PAD_PX],
    to: [Math.max(...xs) + PAD_PX, Math.max(...ys) + PAD_PX],
  };
};

/** Beside the start of an arrow off the foot: right, left, then beyond it. */
const placesAt = ([x, y]: Point, width: number, height: number, below: boolean): Rect[] => {
  const rect = (left: number, top: number): Rect => ({ from: [left, top], to: [left + width, top + height] });
  const gap = 12;
  const beyond = below ? [0, 1, 2].map((row) => rect(x - width / 2, y + gap / 2 + row * height)) : [];
  const sides = [0, 1, 2].flatMap((row) => {
    // Up along an arrow from the ground, down along one at the leg.
    const top = y - height / 2 + (below ? -row : row) * height;
    return [rect(x + gap, top), rect(x - gap - width, top)];
  });
  return [...beyond, ...sides];
};

/** Each where there is room beside its arrow, off the bone in question, the edge and each other; else not at all. */
export const pathNumbers = ({ parts, numbers }: LoadPathScene, input: NumbersInput): readonly PathNumber[] => {
  const taken: PathNumber[] = [];
  const arrows = parts.filter(({ kind }) => kind === 'ground').map((part) => around(lineOf(part, input)));
  for (const number of numbers.slice(0, input.most)) {
    const { of } = number;
    const [part] = parts.filter((each) => mainLoadOf(each) === of).toSorted((a, b) => b.forceN - a.forceN);
    const line = part === undefined ? [] : lineOf(part, input);
    const end = of === 'achillesN' || of === 'fasciaN' ? line.at(-1) : line[0];
    if (part === undefined || end === undefined) continue;
    const text = input.say(number);
    const width = Math.ceil(input.measure(text, input.font)) + 2 * PAD_PX;
    const height = Math.round(input.font.px * 1.35);
    const mark = placesAt(end, width, height, of === 'forefootN').find(
      ({ from, to }) =>
        from[0] > EDGE_PX &&
        from[1] > EDGE_PX &&
        to[0] < input.size.width - EDGE_PX &&
        to[1] < input.size.height - EDGE_PX &&
        [...arrows, ...taken.map(({ mark: other }) => other)].every((other) => !meets(other, { from, to })) &&
        input.isFree({ from, to }) &&
        ![from, to, [from[0], to[1]], [to[0], from[1]], [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]].some((p) =>
          isInsideOutline(p as Point, input.outline),
        ),
    );
    if (mark !== undefined) taken.push({ text, mark });
  }
  return taken;
};

export const numberShapes = ({ text, mark: { from, to } }: PathNumber, font: Font): Shape[] => [
  {
    kind: 'area',
    points: box(from[0], from[1], to[0] - from[0], to[1] - from[1]),
    fill: 'plate',
    stroke: null,
    width: 0,
    opacity: 0.9,
  },
  {
    kind: 'text',
    at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2 + font.px * 0.36],
    text,
    font,
    colour: 'ink',
    anchor: 'middle',
  },
];
