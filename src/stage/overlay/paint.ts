/** Paints the overlay's shapes on a canvas, for stills. Same shapes as on the screen. */
import type { TokenTable } from '../draw/tokens';
import type { Point } from '../types';
import { cssFont, DASH, type Measure, ringPoints, type Shape } from './shapes';

export type Context2D = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

const trace = (context: Context2D, points: readonly Point[], closed: boolean): void => {
  context.beginPath();
  points.forEach(([x, y], i) => {
    if (i === 0) context.moveTo(x, y);
    else context.lineTo(x, y);
  });
  if (closed) context.closePath();
};

const stroke = (context: Context2D, points: readonly Point[], colour: string, width: number): void => {
  trace(context, points, false);
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke();
};

export const paintShapes = (context: Context2D, shapes: readonly Shape[], colours: TokenTable): void => {
  context.lineJoin = 'round';
  for (const shape of shapes) {
    switch (shape.kind) {
      case 'line':
      case 'ring': {
        const points = shape.kind === 'line' ? shape.points : ringPoints(shape.at, shape.radius, shape.gapRad);
        if (shape.casing > 0) stroke(context, points, colours.plate, shape.casing);
        context.setLineDash(shape.kind === 'line' && shape.dashed ? [...DASH] : []);
        stroke(context, points, colours[shape.colour], shape.width);
        context.setLineDash([]);
        break;
      }
      case 'area':
        trace(context, shape.points, true);
        context.globalAlpha = shape.opacity;
        context.fillStyle = colours[shape.fill];
        context.fill();
        context.globalAlpha = 1;
        if (shape.stroke !== null) {
          context.strokeStyle = colours[shape.stroke];
          context.lineWidth = shape.width;
          context.stroke();
        }
        break;
      case 'disc':
        context.beginPath();
        context.arc(shape.at[0], shape.at[1], shape.radius, 0, 2 * Math.PI);
        context.fillStyle = colours[shape.fill];
        context.fill();
        break;
      case 'text':
        context.font = cssFont(shape.font);
        context.textAlign = shape.anchor === 'middle' ? 'center' : shape.anchor;
        context.fillStyle = colours[shape.colour];
        context.fillText(shape.text, shape.at[0], shape.at[1]);
        break;
    }
  }
};

/** Widths from a canvas context; texts are measured once. */
export const measureWith = (context: Context2D): Measure => {
  const known = new Map<string, number>();
  return (text, font) => {
    const css = cssFont(font);
    const key = `${css}|${text}`;
    const old = known.get(key);
    if (old !== undefined) return old;
    context.font = css;
    const { width } = context.measureText(text);
    known.set(key, width);
    return width;
  };
};
