/** The word beside the sign of the break: how the place is known, as the label in the picture has it. */
import type { Explanation } from '../../explain/types';
import type { BreakSign } from '../../session/types';

type BreakAt = Pick<NonNullable<Explanation['breakAt']>, 'whatIf' | 'status' | 'precision'>;

/** `region`: confirmed, but no nearer than the part of the bone. */
export const PLACE_KNOWN = ['confirmed', 'region', 'reported', 'inferred', 'whatIf'] as const;

const knownOf = ({ whatIf, status, precision }: BreakAt): (typeof PLACE_KNOWN)[number] => {
  if (whatIf) return 'whatIf';
  if (status !== 'confirmed') return status;
  return precision === 'region' ? 'region' : 'confirmed';
};

/** A ring stands round the place of the break; a line is the break. Both together are said as the line is. */
export const breakWord = (at: BreakAt, signs: readonly BreakSign[]): string =>
  `legend.${signs.includes('line') ? 'break' : 'ring'}.${knownOf(at)}`;
