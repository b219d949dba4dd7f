/** The 3D figure. Load it lazily: it brings the renderer. */
export { Stage, type StageProps } from './Stage';
