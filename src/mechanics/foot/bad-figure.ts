/** Figures that no frame can be made of, named before anything is put together. */
import { FRAME_FIGURES, type FrameFigures } from './parameter-names';
import type { FootProblem } from './solve';

/** Slack, ends of the cortex's band and gaps may lie on either side of zero. */
const EITHER_SIDE: ReadonlySet<string> = new Set([
  'fasciaSlack',
  'ligamentSlack',
  'wall',
  'basePadGap',
  'headPadHardFrom',
  'heelPadHardFrom',
]);
/** Without these bones bend like nothing, or the leg holds nothing: the frame would be a mechanism, found far from where it lies. */
const ABOVE_ZERO: ReadonlySet<string> = new Set(['cortexYoung', 'cortexShear', 'legFrontal']);

export const badFigure = (f: FrameFigures): Extract<FootProblem, { kind: 'badFigure' }> | null => {
  const figure = FRAME_FIGURES.find((name) => {
    const value = f[name];
    if (!Number.isFinite(value)) return true;
    return ABOVE_ZERO.has(name) ? value <= 0 : value < 0 && !EITHER_SIDE.has(name);
  });
  return figure === undefined ? null : { kind: 'badFigure', figure, value: f[figure] };
};
