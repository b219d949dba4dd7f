/**
 * How far a finding can be trusted: the lowest of what its claims, its sources and its model allow, with the reason. Nobody
 * writes a confidence by hand.
 */
import type { ClaimStatus } from '../cases/schema';
import type { Mark } from '../content/schema';
import { CONFIDENCES, type Confidence, type ConfidenceReason } from './types';

const BY_CLAIM: Readonly<Record<ClaimStatus | 'contradiction' | 'notStated', Confidence>> = {
  confirmed: 'established',
  ruledOut: 'established',
  reported: 'reported',
  inferred: 'uncertain',
  contradiction: 'uncertain',
  notStated: 'unknown',
};

const BY_MARK: Readonly<Record<Mark, Confidence>> = {
  seen: 'established',
  'common practice': 'supported',
  weak: 'uncertain',
  'from memory': 'uncertain',
};

/** Limits of our own models: key (worded in `src/wording`) -> the most that a finding made by it can be. */
export const MODEL_LIMITS = {
  drawnFoot: 'supported',
  placeRule: 'supported',
  takenAsNone: 'uncertain',
  feedingRule: 'supported',
  operationTakes: 'uncertain',
  spreadOfStudies: 'supported',
  forecast: 'uncertain',
  comparisonOfShares: 'supported',
  frame: 'uncertain',
  tibialConstants: 'uncertain',
  borrowedScore: 'uncertain',
} as const satisfies Record<string, Confidence>;
export type ModelLimit = keyof typeof MODEL_LIMITS;

export interface Caps {
  readonly claims?: readonly (ClaimStatus | 'contradiction' | 'notStated')[];
  readonly marks?: readonly Mark[];
  readonly models?: readonly ModelLimit[];
}

const rank = (level: Confidence): number => CONFIDENCES.indexOf(level);

/** The lowest cap wins; of equal caps the claim is named before the source, the source before the model. */
export const confidenceOf = (caps: Caps): { readonly level: Confidence; readonly reason: ConfidenceReason } => {
  let best: { level: Confidence; reason: ConfidenceReason } = { level: 'established', reason: { by: 'nothing' } };
  const lower = (level: Confidence, reason: ConfidenceReason): void => {
    if (rank(level) > rank(best.level)) best = { level, reason };
  };
  for (const status of caps.claims ?? []) lower(BY_CLAIM[status], { by: 'claim', status });
  for (const mark of caps.marks ?? []) lower(BY_MARK[mark], { by: 'source', mark });
  for (const limit of caps.models ?? []) lower(MODEL_LIMITS[limit], { by: 'model', limit });
  return best;
};
