/** What is laid over the drawn foot, as plain shapes: painted as SVG on the screen and on a canvas in stills. CSS px. */
import type { TokenName } from '../draw/tokens';
import type { Point } from '../types';

export type FontName = 'label' | 'latin' | 'tag' | 'numeral';

export interface Font {
  readonly px: number;
  readonly weight: number;
  readonly italic: boolean;
  readonly family: 'text' | 'title';
}
export type Fonts = Readonly<Record<FontName, Font>>;

/** `labelPx`: 15 on a desk, 14 on a phone, larger for a patient and in stills. */
export const fontsFor = (labelPx: number): Fonts => ({
  label: { px: labelPx, weight: 400, italic: false, family: 'text' },
  latin: { px: Math.round(labelPx * 0.87), weight: 400, italic: true, family: 'title' },
  tag: { px: labelPx, weight: 650, italic: false, family: 'text' },
  numeral: { px: Math.round(labelPx * 0.87), weight: 700, italic: false, family: 'title' },
});

export const FAMILIES = {
  text: '"Atkinson Hyperlegible Next", "Atkinson Hyperlegible", system-ui, sans-serif',
  title: '"Besley", "Rockwell", "Georgia", serif',
} as const;

export const cssFont = ({ px, weight, italic, family }: Font): string =>
  `${italic ? 'italic ' : ''}${weight} ${px}px ${FAMILIES[family]}`;

export type Shape =
  | {
      readonly kind: 'line';
      readonly points: readonly Point[];
      readonly colour: TokenName;
      readonly width: number;
      readonly casing: number;
      readonly dashed?: boolean;
    }
  | {
      readonly kind: 'area';
      readonly points: readonly Point[];
      readonly fill: TokenName;
      readonly stroke: TokenName | null;
      readonly width: number;
      readonly opacity: number;
    }
  | {
      readonly kind: 'disc';
      readonly at: Point;
      readonly radius: number;
      readonly fill: TokenName;
      readonly opacity: number;
    }
  /** An open ring; the gap lies at `gapRad` (0 = right, clockwise). */
  | {
      readonly kind: 'ring';
      readonly at: Point;
      readonly radius: number;
      readonly gapRad: number;
      readonly colour: TokenName;
      readonly width: number;
      readonly casing: number;
    }
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly text: string;
      readonly font: Font;
      readonly colour: TokenName;
      readonly anchor: 'start' | 'middle' | 'end';
    };

/** Strokes and gaps of a dashed line, px. */
export const DASH = [4, 4] as const;

/** Width of a text in CSS px. */
export type Measure = (text: string, font: Font) => number;

export const box = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** The arc of an open ring as points. */
export const ringPoints = (at: Point, radius: number, gapRad: number): Point[] => {
  const half = 0.42;
  const steps = 40;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const a = gapRad + half + ((2 * Math.PI - 2 * half) * i) / steps;
    return [at[0] + radius * Math.cos(a), at[1] + radius * Math.sin(a)] as const;
  });
};
