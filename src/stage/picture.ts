/**
 * One picture of the foot off screen: drawn, labelled and left on a canvas of its own, in the task that rendered it. For stills
 * and the handout. Sizes in CSS px; `ratio` device pixels each.
 */
import type { Foot } from '../anatomy/types';
import type { QuestionId, Reader } from '../ids';
import type { BreakSign, ViewId } from '../session/types';
import type { Size } from './camera/camera';
import { frameView, labelSpace, shownOf } from './camera/framing';
import { openingOf } from './camera/views';
import { Plate } from './draw/plate';
import type { Tokens } from './draw/tokens';
import type { Showing } from './engine';
import { NO_LABELS } from './overlay/labelled';
import { allShapes, overlayOf } from './overlay/overlay';
import { measureWith, paintShapes } from './overlay/paint';
import { cssFont, fontsFor } from './overlay/shapes';
import { breakSignOf, breakStrokes } from './scene/scene';
import { showingOf } from './showing';
import type { Content, Explanation } from './types';

export interface PictureInput {
  readonly foot: Foot;
  readonly content: Content;
  readonly explanation: Explanation;
  readonly question: QuestionId;
  readonly reader: Reader;
  /** Null: the view the question opens with. */
  readonly view: ViewId | null;
  readonly size: Size;
  readonly ratio: number;
  readonly tokens: Tokens;
  readonly labelPx: number;
  readonly contourPx: number;
  /** Few labels, no Latin. */
  readonly narrow: boolean;
  /** `here`: only the place; bones are named in another picture beside it. */
  readonly labels: 'all' | 'here';
}

export interface Picture {
  readonly canvas: HTMLCanvasElement;
  readonly mmPerPx: number;
  readonly view: ViewId;
  /** How the break is drawn at this size; null without one. */
  readonly breakSign: BreakSign | null;
}

/** Throws when the browser gives no WebGL 2 or no 2D context. Labels need `loadFonts` first. */
export const drawPicture = (input: PictureInput): Picture => {
  const { foot, explanation, question, size, ratio, tokens } = input;
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(size.width * ratio);
  canvas.height = Math.round(size.height * ratio);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('drawPicture: no 2D canvas');
  const whole = showingOf({
    ...input,
    selectedBone: null,
    quiz: null,
    lit: null,
    dragMm: null,
    measured: null,
    lookAlike: null,
    strand: null,
    card: null,
    measure: measureWith(context),
  });
  const showing: Showing =
    input.labels === 'all' ? whole : { ...whole, labels: whole.labels.filter(({ tag }) => tag !== null) };
  const { scene, mirrored } = showing;
  const opening = openingOf(question, explanation, false);
  const view = input.view ?? opening.view;
  const plate = new Plate(document.createElement('canvas'), foot);
  try {
    const { camera, mode } = frameView(
      shownOf(plate.mesh, foot.outline),
      view,
      scene.chosen,
      mirrored,
      size,
      labelSpace(showing),
      input.view === undefined ? opening.near : undefined,
    );
    const breakSign = breakSignOf(scene.breakAt, camera.mmPerPx);
    const broken = scene.breakAt === null || breakSign === 'ring' ? [] : breakStrokes(scene.breakAt);
    plate.setDrawing(
      { ...scene, mirrored, contourPx: input.contourPx, strokes: [...scene.borders, ...broken], beside: null },
      tokens,
    );
    plate.draw(camera, size, ratio, false);
    const overlay = overlayOf({
      scene,
      mesh: plate.mesh,
      camera,
      size,
      mirrored,
      labels: showing.labels,
      mode,
      fonts: showing.fonts,
      measure: showing.measure,
      loadText: showing.loadText,
      before: NO_LABELS,
      atRest: true,
    });
    context.fillStyle = tokens.colours.plate;
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(plate.canvas, 0, 0, canvas.width, canvas.height);
    context.scale(ratio, ratio);
    paintShapes(context, allShapes(overlay), tokens.colours);
    context.setTransform(1, 0, 0, 1, 0, 0);
    return { canvas, mmPerPx: camera.mmPerPx, view, breakSign };
  } finally {
    plate.dispose();
    plate.release();
  }
};

/** Letters drawn on a canvas fall back silently to another font when theirs has not come yet. */
export const loadFonts = async (): Promise<void> => {
  await Promise.all(Object.values(fontsFor(15)).map((font) => document.fonts.load(cssFont(font))));
};
