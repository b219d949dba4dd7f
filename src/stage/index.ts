/** The 3D figure. Load it lazily: it brings the renderer. */
export { PAPER, PRINT, type Tokens, type TokenTable, tokensFrom } from './draw/tokens';
export { FAMILIES } from './overlay/shapes';
export { drawPicture, loadFonts, type Picture, type PictureInput } from './picture';
export { Stage, type StageProps } from './Stage';
export { scaleBar } from './scale-bar';
export { STAGE_WORDS } from './words';
