/**
 * Where a bone is a slender member, so that plane sections stay plane: its depth is under a third of the member's length, and no
 * held end lies within one depth (Saint-Venant's principle). Both are common practice, no sharp bounds. mm.
 */
const LENGTH_OVER_DEPTH = 3;

/** True where beam theory holds at a station of a member that is held at others. */
export const isSlenderAt = (
  { sMm, depthMm }: { readonly sMm: number; readonly depthMm: number },
  lengthMm: number,
  heldAtMm: readonly number[],
): boolean => depthMm * LENGTH_OVER_DEPTH < lengthMm && heldAtMm.every((held) => Math.abs(sMm - held) >= depthMm);
