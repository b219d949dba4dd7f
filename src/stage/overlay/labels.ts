/** The margin labels and the one "here" of a picture as shapes. Pure. */

import type { Vec3 } from '../../units';
import type { LabelItem, PlacedLabel } from '../labels/layout';
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

export const itemOf = (
  label: LabelText,
  anchor: Point,
  prefer: LabelItem['prefer'],
  fonts: Fonts,
  measure: Measure,
): LabelItem => ({
  id: label.id,
  anchor,
  prefer,
  ...sizeOf(label, fonts, measure),
  priority: label.priority,
});

export const labelShapes = (
  label: LabelText,
  item: LabelItem,
  placed: PlacedLabel,
  mode: 'sides' | 'ends',
  fonts: Fonts,
  /** Where the leader stops short of the anchor: the ring's radius. */
  stopPx: number,
): Shape[] => {
  const [edge, elbow, anchor] = placed.leader;
  const { x, y } = placed;
  const here = label.tag !== null;
  const way = Math.hypot(anchor[0] - elbow[0], anchor[1] - elbow[1]);
  const t = way === 0 ? 1 : Math.max(0, 1 - stopPx / way);
  const end: Point = [elbow[0] + (anchor[0] - elbow[0]) * t, elbow[1] + (anchor[1] - elbow[1]) * t];
  const leader: Shape = {
    kind: 'line',
    points: [edge, elbow, end],
    colour: here ? 'here' : 'ink',
    width: here ? 2 : 1,
    casing: here ? 5 : 4,
  };
  if (here) {
    const filled = label.tag === 'filled';
    return [
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
