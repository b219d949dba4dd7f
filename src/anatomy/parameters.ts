/** The parameters of a foot: the default one, and those for what is known of a person. */
import type { Shape } from './shape';
import type { ArchShape, FootParameters } from './types';

/** A foot of nobody in particular: `scale.defaultHMm` of content/anatomy. */
export const DEFAULT_FOOT: FootParameters = { heelToSecondHeadMm: 165, arch: 'neutral' };

/** Bounds of H inside which the shape has been checked, mm. */
export const H_BOUNDS_MM = [130, 200] as const;

type Ratios = Pick<Shape['scale'], 'footLengthPerHeight' | 'hPerFootLength'>;
/** The same figures as content/anatomy/scale.yaml, where their source and mark stand; a test holds them equal. */
const RATIOS: Ratios = { footLengthPerHeight: 0.15, hPerFootLength: 0.66 };

interface KnownOfAPerson {
  readonly heightCm?: number | null | undefined;
  readonly footShape?: ArchShape | null | undefined;
}

/** A foot from body height (H is a fixed share of it) and foot shape; what is not known is the default foot's. */
export const footParametersFor = (facts: KnownOfAPerson, ratios: Ratios = RATIOS): FootParameters => {
  const arch = facts.footShape ?? DEFAULT_FOOT.arch;
  if (facts.heightCm === undefined || facts.heightCm === null) return { ...DEFAULT_FOOT, arch };
  const h = facts.heightCm * 10 * ratios.footLengthPerHeight * ratios.hPerFootLength;
  return { heelToSecondHeadMm: Math.min(H_BOUNDS_MM[1], Math.max(H_BOUNDS_MM[0], Math.round(h))), arch };
};
