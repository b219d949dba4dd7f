/** Force in each part of the way of the load over the draws. */
import type { PathForce } from './path-forces';
import { agreementOf, spreadOf } from './spread';
import type { PartBand } from './types';

const GROUND = 'ground';

/** Pads as one: how the heads share is told of none of them. */
const padsAsOne = (parts: readonly PathForce[]): readonly PathForce[] => {
  const pads = parts.filter(({ kind }) => kind === GROUND);
  const forceN = pads.reduce((sum, pad) => sum + pad.forceN, 0);
  return [...parts.filter(({ kind }) => kind !== GROUND), { id: GROUND, kind: GROUND, sense: 'pressed', forceN }];
};

/** A part that a draw does not have (a tie of no stiffness) carries nothing there. `draws` counts those without an answer too. */
export const bandsOfParts = (
  told: readonly PathForce[],
  drawn: readonly (readonly PathForce[])[],
  draws: number,
): readonly PartBand[] => {
  const byName = drawn.map((parts) => new Map(padsAsOne(parts).map((part) => [part.id, part])));
  return padsAsOne(told).map(({ id, forceN, sense }) => ({
    id,
    forceN: spreadOf(
      forceN,
      byName.map((parts) => parts.get(id)?.forceN ?? 0),
    ),
    sense: agreementOf(
      true,
      byName.map((parts) => parts.get(id)?.sense === sense),
      draws,
    ),
  }));
};
