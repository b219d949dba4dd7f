/** A measure of films drawn over the bones: its two lines, and the value where they meet or nearest to it. Pure. */
import type { Angle } from '../../anatomy/angles';
import type { Point } from '../types';
import type { Project } from './marks';
import type { Fonts, Shape } from './shapes';

/** How far a line reads on beyond the bone, px. */
const BEYOND_PX = 14;

const lengthened = ([a, b]: readonly [Point, Point]): [Point, Point] => {
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const way: Point = [((b[0] - a[0]) / long) * BEYOND_PX, ((b[1] - a[1]) / long) * BEYOND_PX];
  return [
    [a[0] - way[0], a[1] - way[1]],
    [b[0] + way[0], b[1] + way[1]],
  ];
};

const valueText = ({ value, unit }: Angle): string =>
  unit === 'deg' ? `${Math.round(value)}°` : unit === 'mm' ? `${value.toFixed(1)} mm` : `${Math.round(100 * value)} %`;

export const measureShapes = (angle: Angle, toScreen: Project, fonts: Fonts): Shape[] => {
  const lines = angle.lines.map(([a, b]) => lengthened([toScreen(a), toScreen(b)]));
  const [first, second] = lines;
  if (first === undefined || second === undefined) return [];
  const font = fonts.tag;
  const at = angle.vertex === undefined ? second[1] : toScreen(angle.vertex);
  const text = valueText(angle);
  const width = text.length * font.px * 0.6 + 10;
  // The value stands beside the meeting of the lines and not on them.
  const place: Point = [at[0] + 14, at[1] - 14];
  return [
    ...lines.map((points): Shape => ({ kind: 'line', points, colour: 'ink', width: 2.2, casing: 6 })),
    {
      kind: 'area',
      points: [
        [place[0] - 5, place[1] - font.px],
        [place[0] - 5 + width, place[1] - font.px],
        [place[0] - 5 + width, place[1] + 6],
        [place[0] - 5, place[1] + 6],
      ],
      fill: 'plate',
      stroke: 'ink',
      width: 1,
      opacity: 0.95,
    },
    { kind: 'text', at: place, text, font, colour: 'ink', anchor: 'start' },
  ];
};
