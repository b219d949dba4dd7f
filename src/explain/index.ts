export { asTold, type ToldExplanation } from './as-told';
export { awaitsBands } from './awaits';
export { COMPUTE_IDS, rerun } from './bases';
export { type Caps, confidenceOf, MODEL_LIMITS, type ModelLimit } from './confidence';
export { type ExplainOptions, explain } from './explain';
export type * from './messages';
export { footOfCase } from './situation';
export { textAt } from './texts';
export {
  type BandsAsked,
  type Basis,
  type BreakAt,
  CONFIDENCES,
  type Confidence,
  type ConfidenceReason,
  EXPLANATION_VERSION,
  type Explanation,
  type Finding,
  NO_WHAT_IF,
  type Question,
  type Shown,
  type WhatIf,
} from './types';
