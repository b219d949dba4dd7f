/**
 * The figure of a printed page: the whole foot to find one's way, the close view to see the place; black on white, three device
 * pixels a CSS pixel. Side, status and "illustration" stand in the pixels.
 */
import type { Foot } from '../anatomy/types';
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { QuestionId } from '../ids';
import type { BreakSign } from '../session/types';
import { drawPicture, loadFonts, PRINT, scaleBar, tokensFrom } from '../stage';
import type { Still } from '../telling/still';
import { pngOf } from './png';
import { breakLines, fontOf, type TextStyle } from './text-block';

export interface Figure {
  readonly png: Blob;
  /** How the break is drawn in its pictures, each once: what the key under it has to show. */
  readonly breakSigns: readonly BreakSign[];
}

export interface FigureInput {
  readonly foot: Foot;
  readonly content: Content;
  readonly explanation: Explanation;
  readonly question: QuestionId;
  readonly text: Still;
}

/** CSS px at 96 per inch: about 180 mm of an A4 or Letter page. */
export const FIGURE_PX = { width: 680, height: 300 } as const;
const WHOLE_WIDTH = 262;
const FOOT_ROW = 34;
const RATIO = 3;
/** Kept free under each picture for its scale bar, so that no label lies on it. */
const BAR_STRIP = 22;

export const renderFigure = async (input: FigureInput): Promise<Figure> => {
  await loadFonts();
  const canvas = document.createElement('canvas');
  canvas.width = FIGURE_PX.width * RATIO;
  canvas.height = FIGURE_PX.height * RATIO;
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('renderFigure: no 2D canvas');
  context.fillStyle = PRINT.plate;
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.scale(RATIO, RATIO);
  const high = FIGURE_PX.height - FOOT_ROW;
  const draw = (left: number, width: number, view: 'outer' | 'close'): BreakSign | null => {
    const picture = drawPicture({
      ...input,
      reader: 'patient',
      view,
      size: { width, height: high - BAR_STRIP },
      ratio: RATIO,
      tokens: tokensFrom(PRINT),
      labelPx: 13,
      contourPx: view === 'close' ? 1.7 : 1.3,
      narrow: true,
      labels: 'all',
    });
    context.drawImage(picture.canvas, left, 0, width, high - BAR_STRIP);
    context.strokeStyle = PRINT.ink;
    context.lineWidth = 1;
    context.strokeRect(left + 0.5, 0.5, width - 1, high - 1);
    const bar = scaleBar(picture.mmPerPx, 70);
    const [right, base] = [left + width - 10, high - 14];
    context.fillStyle = PRINT.ink;
    context.fillRect(right - bar.px, base, bar.px / 2, 3);
    context.strokeRect(right - bar.px, base, bar.px, 3);
    context.font = fontOf({ px: 11, weight: 400, family: 'text', colour: PRINT.ink });
    context.textAlign = 'right';
    context.fillText(`${bar.mm} mm`, right - bar.px - 6, base + 5);
    return picture.breakSign;
  };
  const hasBone = input.explanation.bone !== null;
  const signs = hasBone
    ? [draw(0, WHOLE_WIDTH, 'outer'), draw(WHOLE_WIDTH + 6, FIGURE_PX.width - WHOLE_WIDTH - 6, 'close')]
    : [draw(0, FIGURE_PX.width, 'outer')];
  const style: TextStyle = { px: 12.5, weight: 400, family: 'text', colour: PRINT.ink };
  context.font = fontOf(style);
  context.textAlign = 'left';
  context.fillStyle = style.colour;
  const row = `${input.text.sideLine}. ${input.text.statusLine}. ${input.text.illustrationLine}.`.replaceAll('..', '.');
  breakLines(row, FIGURE_PX.width, (part) => context.measureText(part).width).forEach((line, i) => {
    context.fillText(line, 0, high + 14 + i * 15);
  });
  return { png: await pngOf(canvas), breakSigns: [...new Set(signs.filter((sign) => sign !== null))] };
};
