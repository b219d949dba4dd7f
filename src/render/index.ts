/** Pictures made off screen. Load lazily: it brings the renderer. */
export { FIGURE_PX, type FigureInput, renderFigure } from './figure';
export { renderStill, type StillInput } from './still';
