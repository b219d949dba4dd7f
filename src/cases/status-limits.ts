/**
 * Which status each kind of source can carry. What a person, a team or a reporter says stays reported however often it is
 * said; what we conclude ourselves stays inferred.
 */
import type { ClaimStatus, SourceKind } from './schema';

const SEEN: readonly ClaimStatus[] = ['reported', 'confirmed', 'ruledOut'];
const SAID: readonly ClaimStatus[] = ['reported'];

export const STATUS_LIMITS: Readonly<Record<SourceKind, readonly ClaimStatus[]>> = {
  examination: SEEN,
  imaging: SEEN,
  operation: SEEN,
  person: SAID,
  team: SAID,
  media: SAID,
  generalKnowledge: ['inferred'],
};
