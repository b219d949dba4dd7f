/**
 * A still of 1920 x 1080 px, rendered off screen: the picture, and in its pixels the side, how sure it is, the sources and that it
 * is no image of any person. Safe areas and letter heights from src/telling/still-layout.ts. Text flows up from the bottom; the
 * foot takes what is left.
 */
import type { Foot } from '../anatomy/types';
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { QuestionId, Reader } from '../ids';
import type { ViewId } from '../session/types';
import { drawPicture, loadFonts, PAPER, scaleBar, type TokenTable, tokensFrom } from '../stage';
import type { Still } from '../telling/still';
import { GRAPHICS_AREA, STILL_BOXES, STILL_HEIGHT_PX, STILL_TEXT, STILL_WIDTH_PX } from '../telling/still-layout';
import { pngOf } from './png';
import { breakLines, fontOf, type TextStyle } from './text-block';

export interface StillInput {
  readonly foot: Foot;
  readonly content: Content;
  readonly explanation: Explanation;
  readonly question: QuestionId;
  readonly reader: Reader;
  readonly text: Still;
  readonly look?: TokenTable;
}

/** Device pixels per drawn pixel: a one pixel leader becomes the least stroke that survives broadcast. */
const RATIO = STILL_TEXT.strokePx;
const LEADING = 1.2;
const WHOLE_SHARE = 0.34;
const GAP_PX = 14;
/** Kept free under each picture for its scale bar, so that no label lies on it. */
const BAR_STRIP = 62;

export const renderStill = async (input: StillInput): Promise<Blob> => {
  await loadFonts();
  const colours = input.look ?? PAPER;
  const canvas = document.createElement('canvas');
  canvas.width = STILL_WIDTH_PX;
  canvas.height = STILL_HEIGHT_PX;
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('renderStill: no 2D canvas');
  context.fillStyle = colours.plate;
  context.fillRect(0, 0, canvas.width, canvas.height);
  const { x, y, width, height } = GRAPHICS_AREA;
  const style = (px: number, weight: number, family: TextStyle['family'], colour: string): TextStyle => ({
    px,
    weight,
    family,
    colour,
  });
  const linesOf = (text: string, s: TextStyle, across: number): string[] => {
    context.font = fontOf(s);
    return breakLines(text, across, (part) => context.measureText(part).width);
  };
  /** Draws from `top` down; gives the y below. */
  const write = (
    text: string,
    s: TextStyle,
    left: number,
    top: number,
    across: number,
    align: CanvasTextAlign,
  ): number => {
    const lines = linesOf(text, s, across);
    context.fillStyle = s.colour;
    context.textAlign = align;
    context.textBaseline = 'alphabetic';
    lines.forEach((line, i) => {
      context.fillText(line, align === 'right' ? left + across : left, top + s.px * (0.92 + i * LEADING));
    });
    return top + lines.length * s.px * LEADING;
  };

  const titleStyle = style(STILL_TEXT.titlePx, 700, 'title', colours.ink);
  const sideStyle = style(STILL_TEXT.sidePx, 650, 'text', colours.ink);
  const side = STILL_BOXES.side;
  const top = Math.max(
    write(input.text.title, titleStyle, x, y, STILL_BOXES.title.width, 'left'),
    write(input.text.sideLine, sideStyle, side.x, y, side.width, 'right'),
  );

  const below = [
    { text: input.text.statusLine, style: style(STILL_TEXT.statusPx, 650, 'text', colours.ink), gap: 8 },
    { text: input.text.sourceLine, style: style(STILL_TEXT.sourcePx, 400, 'text', colours['ink-2']), gap: 4 },
    {
      text: `${input.text.illustrationLine}.`,
      style: style(STILL_TEXT.illustrationPx, 400, 'text', colours['ink-2']),
      gap: 0,
    },
  ];
  const tall = below.reduce(
    (sum, row) => sum + linesOf(row.text, row.style, width).length * row.style.px * LEADING + row.gap,
    0,
  );
  const bottom = y + height - tall;
  const box = { x, y: top + 10, width, height: bottom - top - 26 };
  const draw = (left: number, across: number, view: ViewId, labels: 'all' | 'here'): void => {
    const picture = drawPicture({
      ...input,
      view,
      size: { width: across / RATIO, height: (box.height - BAR_STRIP) / RATIO },
      ratio: RATIO,
      tokens: tokensFrom(colours),
      labelPx: STILL_TEXT.labelPx / RATIO,
      contourPx: 1.4,
      narrow: false,
      labels,
    });
    context.drawImage(picture.canvas, left, box.y);
    context.strokeStyle = colours.ink;
    context.lineWidth = STILL_TEXT.strokePx;
    context.strokeRect(left, box.y, across, box.height);
    const bar = scaleBar(picture.mmPerPx / RATIO, across / 6);
    const [right, base] = [left + across - 24, box.y + box.height - 34];
    context.fillStyle = colours.ink;
    context.fillRect(right - bar.px, base, bar.px / 2, 9);
    context.strokeRect(right - bar.px, base, bar.px, 9);
    const style34 = style(STILL_TEXT.labelPx, 400, 'text', colours.ink);
    write(`${bar.mm} mm`, style34, right - bar.px - 314, base - 18, 300, 'right');
  };
  // The whole foot to find one's way by, and the place itself beside it.
  const bone = input.explanation.bone !== null && input.question !== 'back';
  const beside = bone ? Math.round(box.width * WHOLE_SHARE) : box.width;
  draw(box.x, beside, 'outer', bone ? 'here' : 'all');
  if (bone) draw(box.x + beside + GAP_PX, box.width - beside - GAP_PX, 'close', 'all');

  let down = bottom;
  for (const row of below) down = write(row.text, row.style, x, down, width, 'left') + row.gap;
  return pngOf(canvas);
};
