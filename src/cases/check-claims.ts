/** What the form of a case file cannot say: how its claims hold together. Needs no content and no foot. */
import type { ClaimId } from '../ids';
import { type CaseProblem, caseProblem } from './problems';
import type { CaseFile, Claim } from './schema';
import { STATUS_LIMITS } from './status-limits';

/** The next unused id: `c1`, `c2`, ... one past the highest in use, so that a gap left by a removed claim stays a gap. */
export const nextClaimId = (claims: readonly Pick<Claim, 'id'>[]): ClaimId => {
  const numbers = claims.map(({ id }) => Number(/^c(\d{1,9})$/.exec(id)?.[1] ?? 0));
  return `c${Math.max(0, ...numbers) + 1}` as ClaimId;
};

/** The claims of each circle of "supersedes", once per circle, starting at its claim that stands first in the file. */
const circles = (claims: readonly Claim[]): readonly (readonly Claim[])[] => {
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  const seen = new Set<ClaimId>();
  const found: Claim[][] = [];
  for (const start of claims) {
    const path: Claim[] = [];
    let at: Claim | undefined = start;
    while (at !== undefined && !seen.has(at.id)) {
      seen.add(at.id);
      path.push(at);
      at = at.supersedes === undefined ? undefined : byId.get(at.supersedes);
    }
    const closesAt = at === undefined ? -1 : path.indexOf(at);
    if (closesAt >= 0) found.push(path.slice(closesAt));
  }
  return found;
};

export const checkClaims = (file: Pick<CaseFile, 'claims'>): readonly CaseProblem[] => {
  const { claims } = file;
  const problems: CaseProblem[] = [];
  const byId = new Map<ClaimId, Claim>();
  claims.forEach((claim, i) => {
    if (byId.has(claim.id))
      problems.push(caseProblem('duplicateId', `claims[${i}].id`, { id: claim.id, free: nextClaimId(claims) }));
    else byId.set(claim.id, claim);
  });

  claims.forEach((claim, i) => {
    const allowed = STATUS_LIMITS[claim.source.kind];
    if (!allowed.includes(claim.status)) {
      const { id, status } = claim;
      const values = { id, status, kind: claim.source.kind, allowed: allowed.join(' or ') };
      problems.push(caseProblem('statusNotAllowed', `claims[${i}].status`, values));
    }
    if (claim.subject === 'displacement' && !claim.value.displaced && (claim.value.mm ?? 0) > 0)
      problems.push(caseProblem('inLineYetApart', `claims[${i}].value.mm`, { id: claim.id, mm: claim.value.mm ?? 0 }));
    if (claim.subject === 'displacement' && claim.value.displaced && claim.value.mm === 0)
      problems.push(caseProblem('apartByNothing', `claims[${i}].value.mm`, { id: claim.id }));
    if (claim.supersedes === undefined) return;
    const where = `claims[${i}].supersedes`;
    const other = byId.get(claim.supersedes);
    if (claim.supersedes === claim.id) problems.push(caseProblem('supersedesItself', where, { id: claim.id }));
    else if (other === undefined)
      problems.push(caseProblem('supersedesUnknown', where, { id: claim.id, other: claim.supersedes }));
    else if (other.subject !== claim.subject) {
      const values = { id: claim.id, subject: claim.subject, other: other.id, otherSubject: other.subject };
      problems.push(caseProblem('supersedesOtherSubject', where, values));
    }
  });

  for (const circle of circles(claims)) {
    const first = circle[0];
    if (first === undefined || circle.length < 2) continue;
    const ids = [...circle, first].map((claim) => claim.id).join(' → ');
    problems.push(caseProblem('supersedesCycle', `claims[${claims.indexOf(first)}].supersedes`, { ids }));
  }
  return problems;
};
