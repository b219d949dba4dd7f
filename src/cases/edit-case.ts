/** Making and changing cases. Each function gives a new case; none checks it (`checkCaseFile` does, in one place). */
import type { CaseId, ClaimId } from '../ids';
import type { IsoDate } from '../units';
import { nextClaimId } from './check-claims';
import {
  CASE_FORMAT,
  CASE_VERSION,
  type CaseFile,
  type Claim,
  type ClaimStatus,
  type Place,
  type SourceKind,
  type Subject,
  type SubjectValue,
} from './schema';

export const emptyCase = (id: CaseId): CaseFile => ({
  format: CASE_FORMAT,
  version: CASE_VERSION,
  id,
  claims: [],
  forecasts: [],
  fixtures: [],
});

/** How well something is known, and from whom: asked of the person for every claim. */
export interface Said {
  readonly status: ClaimStatus;
  readonly source: { readonly kind: SourceKind; readonly on?: IsoDate };
  readonly supersedes?: ClaimId;
  readonly note?: string;
}

/** A claim with the next free id of this case. The case is not changed. */
export const newClaim = <S extends Subject>(
  file: Pick<CaseFile, 'claims'>,
  subject: S,
  value: SubjectValue<S>,
  said: Said,
): Extract<Claim, { subject: S }> =>
  ({ id: nextClaimId(file.claims), subject, value, ...said }) as Extract<Claim, { subject: S }>;

export const withClaim = (file: CaseFile, claim: Claim): CaseFile => ({ ...file, claims: [...file.claims, claim] });

/** A claim that replaced the removed one now replaces what that one had replaced: nothing old comes back by itself. */
export const withoutClaim = (file: CaseFile, id: ClaimId): CaseFile => {
  const removed = file.claims.find((claim) => claim.id === id);
  if (removed === undefined) return file;
  const claims = file.claims
    .filter((claim) => claim.id !== id)
    .map((claim): Claim => {
      if (claim.supersedes !== id) return claim;
      const { supersedes: _, ...rest } = claim;
      return removed.supersedes === undefined ? rest : { ...rest, supersedes: removed.supersedes };
    });
  return { ...file, claims };
};

/** The overrides of a what-if that a case has a subject for. */
export interface ClaimableWhatIf {
  readonly place?: Place;
  readonly massKg?: number;
  readonly footShape?: 'neutral' | 'high' | 'low';
  readonly activity?: SubjectValue<'activity'>;
}
export type ClaimableKey = keyof ClaimableWhatIf;

/**
 * The only way from a what-if into a case: somebody says how well it is known and from whom. Null when that override is not set.
 */
export const claimFromWhatIf = (
  file: Pick<CaseFile, 'claims'>,
  whatIf: ClaimableWhatIf,
  key: ClaimableKey,
  said: Said,
): Claim | null => {
  const value = whatIf[key];
  return value === undefined ? null : newClaim(file, key, value, said);
};
