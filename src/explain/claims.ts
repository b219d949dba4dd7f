/** Findings that only repeat what a case says, or say that it does not. The one way every question tells a claim. */
import type { Claim, Fact, Facts, SingleSubject, Subject, SubjectValue } from '../cases/schema';
import type { QuestionId } from '../ids';
import { compute, type FindingSpec, find, message } from './build';
import type { Context } from './context';
import type { ClaimTag, ClaimValue, MessageOf } from './messages';
import type { Finding, Shown } from './types';

export const claimTold = compute('case.claim', (_, inputs: MessageOf<'claimStated'>['args']) =>
  message('claimStated', inputs),
);
export const notTold = compute('case.notStated', (_, inputs: MessageOf<'notStated'>['args']) =>
  message('notStated', inputs),
);
export const claimsDisagree = compute('case.contradiction', (_, inputs: MessageOf<'contradiction'>['args']) =>
  message('contradiction', inputs),
);

/** The pairing of a subject with a value of its own type holds by construction of `Facts`. */
const valued = <S extends Subject>(subject: S, value: SubjectValue<S>): ClaimValue =>
  ({ subject, value }) as ClaimValue;

const ruledOutFindings = (
  context: Context,
  question: QuestionId,
  id: string,
  ruledOut: readonly Claim[],
): readonly Finding[] =>
  ruledOut.map((claim, i) => {
    const tag: ClaimTag = { status: 'ruledOut', claims: [claim.id] };
    return find(context, question, {
      id: `${id}.ruledOut.${i + 1}`,
      depth: 'claim',
      compute: claimTold,
      inputs: { claim: tag, of: valued(claim.subject, claim.value) },
      claims: [tag],
    });
  });

/**
 * What the case says of one subject, as findings: the claim, the contradiction or "not stated", and what is ruled out.
 * `silent`: say nothing when it is not stated.
 */
export const factFindings = <S extends SingleSubject>(
  context: Context,
  question: QuestionId,
  subject: S,
  facts: Facts,
  options: {
    readonly depth?: Finding['depth'];
    readonly unstatedDepth?: Finding['depth'];
    readonly shows?: readonly Shown[];
    readonly silent?: boolean;
  } = {},
): readonly Finding[] => {
  const fact = facts[subject] as Fact<S>;
  const depth = options.depth ?? 'claim';
  const shows = options.shows ?? [];
  const rest = ruledOutFindings(context, question, subject, fact.ruledOut);
  if (fact.state === 'stated') {
    const tag: ClaimTag = { status: fact.status, claims: fact.claims };
    const inputs = { claim: tag, of: valued(subject, fact.value) };
    return [find(context, question, { id: subject, depth, shows, compute: claimTold, inputs, claims: [tag] }), ...rest];
  }
  if (fact.state === 'contradiction') {
    const stated = fact.values.map((v) => ({
      claim: { status: v.status, claims: v.claims } as ClaimTag,
      of: valued(subject, v.value),
    }));
    const denied = fact.ruledOut.map((claim) => ({
      claim: { status: claim.status, claims: [claim.id] } as ClaimTag,
      of: valued(claim.subject, claim.value),
    }));
    const values = [...stated, ...denied];
    const spec: FindingSpec<MessageOf<'contradiction'>['args']> = {
      id: subject,
      depth: 'claim',
      shows,
      compute: claimsDisagree,
      inputs: { subject, values },
      claims: values.map((v) => v.claim),
      unsure: 'contradiction',
    };
    return [find(context, question, spec)];
  }
  if (options.silent === true) return rest;
  return [
    find(context, question, {
      id: subject,
      depth: options.unstatedDepth ?? 'more',
      shows,
      compute: notTold,
      inputs: { subject },
      unsure: 'notStated',
    }),
    ...rest,
  ];
};

/** Claims of a subject of which several hold at once: one finding a claim. */
export const manyFindings = (
  context: Context,
  question: QuestionId,
  claims: readonly Claim[],
  depth: Finding['depth'] = 'claim',
): readonly Finding[] =>
  claims.map((claim, i) => {
    const tag: ClaimTag = { status: claim.status, claims: [claim.id] };
    return find(context, question, {
      id: `${claim.subject}.${i + 1}`,
      depth,
      compute: claimTold,
      inputs: { claim: tag, of: valued(claim.subject, claim.value) },
      claims: [tag],
    });
  });
