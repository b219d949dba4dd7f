/** Pictures made off screen. Load lazily: it brings the renderer. */
export { FIGURE_PX, type FigureInput, renderFigure } from './figure';
export { type ModelFileInput, modelFile } from './model-file';
export { renderStill, type StillInput } from './still';
