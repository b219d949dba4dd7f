/** The parameters of a foot: the default one, and those for what is known of a person. */
import type { Shape } from './shape';
import type { ArchShape, FootForm, FootParameters } from './types';

/** A foot of nobody in particular: `scale.defaultHMm` of content/anatomy. */
export const DEFAULT_FOOT: FootParameters = {
  heelToSecondHeadMm: 165,
  arch: 0,
  hindfootDeg: 0,
  adductusDeg: 0,
  halluxDeg: 0,
  firstRayMm: 0,
};

/** Bounds of the measures of shape: the tests look at random feet inside them, closed and clear of each other, and at none outside. */
export const FORM_BOUNDS: Readonly<Record<keyof FootForm, readonly [low: number, high: number]>> = {
  arch: [-1, 1],
  hindfootDeg: [-10, 10],
  adductusDeg: [0, 25],
  halluxDeg: [-5, 30],
  firstRayMm: [-5, 5],
};

const ARCHES: Readonly<Record<ArchShape, number>> = { low: -1, neutral: 0, high: 1 };

/** How an arch is spoken of: the nearest of the three. */
export const archShapeOf = ({ arch }: Pick<FootForm, 'arch'>): ArchShape =>
  arch > 0.5 ? 'high' : arch < -0.5 ? 'low' : 'neutral';

/** Bounds of H inside which the shape has been checked, mm. */
export const H_BOUNDS_MM = [130, 226] as const;

type Ratios = Pick<Shape['scale'], 'hPerHeight' | 'hPerFootLength'>;
/** The same figures as content/anatomy/scale.yaml, where their source and mark stand; a test holds them equal. */
const RATIOS: Ratios = { hPerHeight: 0.099, hPerFootLength: 0.703 };

interface KnownOfAPerson {
  readonly heightCm?: number | null | undefined;
  readonly footShape?: ArchShape | null | undefined;
}

/** Length of the foot with its skin, as it is drawn for an H, and the H of a length, mm. */
export const footLengthOf = (heelToSecondHeadMm: number): number => heelToSecondHeadMm / RATIOS.hPerFootLength;
export const hOfFootLength = (lengthMm: number): number => lengthMm * RATIOS.hPerFootLength;

/** A foot from body height (H is a fixed share of it) and foot shape; what is not known is the default foot's. */
export const footParametersFor = (facts: KnownOfAPerson, ratios: Ratios = RATIOS): FootParameters => {
  const arch = ARCHES[facts.footShape ?? 'neutral'];
  if (facts.heightCm === undefined || facts.heightCm === null) return { ...DEFAULT_FOOT, arch };
  const h = facts.heightCm * 10 * ratios.hPerHeight;
  return {
    ...DEFAULT_FOOT,
    heelToSecondHeadMm: Math.min(H_BOUNDS_MM[1], Math.max(H_BOUNDS_MM[0], Math.round(h))),
    arch,
  };
};
