/** The margin labels and the one "here" of a picture as shapes. Pure. */

import type { Vec3 } from '../../units';
import type { PlacedLabel } from '../labels/layout';
import type { Point } from '../types';
import type { Font, Fonts, Measure, Shape } from './shapes';
import { box } from './shapes';

/** A label before it has a place: its lines, or a tag. */
export interface LabelText {
  readonly id: string;
  readonly text: string;
  readonly second: string | null;
  /** `filled`: the one "here". `open`: here, but not confirmed, or a what-if. */
  readonly tag: 'filled' | 'open' | null;
  /** Of something that is no bone of the foot: where it lies, mm, and how far it stands out of what is behind it. */
  readonly spot: { readonly at: Vec3; readonly outMm: number } | null;
  readonly priority: number;
}

const TAG_PAD = 10;

const lineHeight = (font: Font): number => Math.round(font.px * 1.22);

export const sizeOf = (label: LabelText, fonts: Fonts, measure: Measure): { width: number; height: number } => {
  if (label.tag !== null) {
    return {
      width: Math.ceil(measure(label.text, fonts.tag)) + 2 * TAG_PAD,
      height: lineHeight(fonts.tag) + 8,
    };
  }
  const second = label.second === null ? 0 : measure(label.second, fonts.latin);
  return {
    width: Math.ceil(Math.max(measure(label.text, fonts.label), second)) + 4,
    height: lineHeight(fonts.label) + (label.second === null ? 0 : lineHeight(fonts.latin)),
  };
};

/** How a label is drawn in this frame. */
export interface LabelLook {
  readonly mode: 'sides' | 'ends';
  readonly fonts: Fonts;
  /** Radius of the ring that stands round "here", where one does. */
  readonly ringPx: number | null;
  /** Another bone is in front: a dashed leader to an open dot. */
  readonly hidden: boolean;
  /** Thin leaders while the foot turns. */
  readonly moving: boolean;
}

/** Where the leader of "here" stops short of the break. */
const STOP_PX = 4;

export const labelShapes = (
  label: LabelText,
  item: { readonly width: number; readonly height: number },
  placed: PlacedLabel,
  { mode, fonts, ringPx, hidden, moving }: LabelLook,
): Shape[] => {
  const [edge, elbow, anchor] = placed.leader;
  const { x, y } = placed;
  const here = label.tag !== null;
  const way = Math.hypot(anchor[0] - elbow[0], anchor[1] - elbow[1]);
  const stopPx = here ? (ringPx ?? STOP_PX) : 0;
  const t = way === 0 ? 1 : Math.max(0, 1 - stopPx / way);
  const end: Point = [elbow[0] + (anchor[0] - elbow[0]) * t, elbow[1] + (anchor[1] - elbow[1]) * t];
  const leader: Shape = {
    kind: 'line',
    points: [edge, elbow, end],
    colour: here ? 'here' : 'ink',
    width: here && !moving ? 2 : 1,
    casing: moving ? 2 : here ? 5 : 4,
    ...(hidden ? { dashed: true } : {}),
  };
  if (here) {
    const filled = label.tag === 'filled';
    const k = fonts.label.px / 15;
    const ring: Shape[] =
      ringPx === null
        ? []
        : [
            {
              kind: 'ring',
              at: anchor,
              radius: ringPx,
              gapRad: Math.atan2(elbow[1] - anchor[1], elbow[0] - anchor[0]),
              colour: 'here',
              width: 2.8 * k,
              casing: 6 * k,
            },
          ];
    return [
      ...ring,
      leader,
      {
        kind: 'area',
        points: box(x, y, item.width, item.height),
        fill: filled ? 'here' : 'plate',
        stroke: 'here',
        width: 2,
        opacity: 1,
      },
      {
        kind: 'text',
        at: [x + item.width / 2, y + item.height / 2 + fonts.tag.px * 0.36],
        text: label.text,
        font: fonts.tag,
        colour: filled ? 'here-text' : 'here',
        anchor: 'middle',
      },
    ];
  }
  const align = mode === 'ends' ? 'middle' : placed.side === 'low' ? 'end' : 'start';
  const textX = align === 'middle' ? x + item.width / 2 : align === 'end' ? x + item.width - 2 : x + 2;
  const text = (value: string, font: Font, top: number, colour: 'ink' | 'ink-2'): Shape => ({
    kind: 'text',
    at: [textX, y + top],
    text: value,
    font,
    colour,
    anchor: align,
  });
  const first = fonts.label;
  return [
    leader,
    { kind: 'disc', at: anchor, radius: 4.5, fill: 'plate', opacity: 1 },
    { kind: 'disc', at: anchor, radius: 3, fill: 'ink', opacity: 1 },
    ...(hidden ? [{ kind: 'disc', at: anchor, radius: 1.8, fill: 'plate', opacity: 1 } as const] : []),
    {
      kind: 'area',
      points: box(x - 1, y, item.width + 2, item.height),
      fill: 'plate',
      stroke: null,
      width: 0,
      opacity: 0.86,
    },
    text(label.text, first, first.px * 1.0, 'ink'),
    ...(label.second === null
      ? []
      : [text(label.second, fonts.latin, lineHeight(first) + fonts.latin.px * 0.92, 'ink-2')]),
  ];
};
