/** Claims that cannot hold together though each is of another subject, or of one measure: told as other clashes are. What is said of a joint against the gap that was measured: the clash is told, as other clashes are. */

import type { Claim, Facts, SingleSubject } from '../cases/schema';
import type { FilmMeasure, InjuryId } from '../ids';
import { find } from './build';
import { claimsDisagree } from './claims';
import { gapAgainst, type Measured, type ThroughSign, throughAgainst } from './classes';
import type { ClaimTag, ClaimValue } from './messages';
import { type Known, knownOf, tagOf } from './resolve';
import type { Situation } from './situation';
import type { Finding } from './types';
import { otherInjuriesOf } from './unfit-measures';
import { gapAgainstWord } from './where-computes';

export const gapFindings = (s: Situation, injury: Known<InjuryId>, measured: Measured): readonly Finding[] => {
  const against = s.injuryRecord === null ? null : gapAgainst(s.injuryRecord, measured);
  if (against === null) return [];
  return [
    find(s.context, 'where', {
      id: 'gapAgainstWord',
      depth: 'claim',
      compute: gapAgainstWord,
      inputs: { injury: injury.value, measured },
      claims: against.claims,
      unsure: 'contradiction',
      whatIf: injury.whatIf,
    }),
  ];
};

/** What a claim says, as it is told: of displacement, of the way of the break, or of one measure. */
const valueSaid = (facts: Facts, by: ThroughSign['by']): ClaimValue | null => {
  if (by === 'displacement' || by === 'direction') {
    const value = knownOf<typeof by>(facts[by])?.value;
    return value === undefined ? null : ({ subject: by, value } as ClaimValue);
  }
  const value = facts.measures.find((claim) => claim.value.what === by)?.value;
  return value === undefined ? null : { subject: 'measure', value };
};

/** A break that is said to have gone all the way through and not to have. */
export const throughFindings = (s: Situation, injury: Known<InjuryId>, measured: Measured): readonly Finding[] => {
  const against = s.injuryRecord === null ? null : throughAgainst(s.injuryRecord, measured);
  if (against === null) return [];
  const signs = [...against.through, ...against.notThrough];
  const values = signs.flatMap(({ by, tag }) => {
    const of = valueSaid(s.facts, by);
    return of === null ? [] : [{ claim: tag, of }];
  });
  return [
    find(s.context, 'where', {
      id: 'throughAgainstWord',
      depth: 'claim',
      compute: claimsDisagree,
      inputs: { subject: values.some(({ of }) => of.subject === 'measure') ? 'measure' : 'direction', values },
      claims: values.map(({ claim }) => claim),
      unsure: 'contradiction',
      whatIf: injury.whatIf,
    }),
  ];
};

type MeasureClaim = Extract<Claim, { subject: 'measure' }>;

/** Measures of which claims differ, with those claims. */
export const disputedMeasures = ({ measures }: Facts): ReadonlyMap<FilmMeasure, readonly MeasureClaim[]> => {
  const of = new Map<FilmMeasure, MeasureClaim[]>();
  for (const claim of measures) of.set(claim.value.what, [...(of.get(claim.value.what) ?? []), claim]);
  return new Map([...of].filter(([, claims]) => new Set(claims.map(({ value }) => value.value)).size > 1));
};

export const measureClashes = (s: Situation): readonly Finding[] =>
  [...disputedMeasures(s.facts)]
    .filter(([what]) => otherInjuriesOf(s, what) === null)
    .map(([what, claims]) => {
      const values = claims.map((claim) => ({
        claim: { status: claim.status, claims: [claim.id] } as ClaimTag,
        of: { subject: 'measure', value: claim.value } as const,
      }));
      return find(s.context, 'where', {
        id: `measuresDisagree.${what.replaceAll(' ', '-')}`,
        depth: 'claim',
        compute: claimsDisagree,
        inputs: { subject: 'measure', values },
        claims: values.map(({ claim }) => claim),
        unsure: 'contradiction',
      });
    });

/** A stated class against an onset or a direction that it does not have. */
export const classClashes = (s: Situation, injury: Known<InjuryId>): readonly Finding[] => {
  const fits = s.injuryRecord?.fits;
  // A break that is moved on trial, or a class that we inferred, is no claim of anybody's.
  if (fits === undefined || injury.whatIf || s.facts.injury.state !== 'stated') return [];
  const against = <S extends SingleSubject & ('direction' | 'onset')>(
    subject: S,
    allowed: readonly string[] | undefined,
  ) => {
    const known = knownOf<'direction' | 'onset'>(s.facts[subject]);
    if (known === null || allowed === undefined || allowed.includes(known.value)) return [];
    const values = [
      { claim: tagOf(injury), of: { subject: 'injury', value: injury.value } as const },
      { claim: tagOf(known), of: { subject, value: known.value } as ClaimValue },
    ];
    return [
      find(s.context, 'where', {
        id: `${subject}AgainstClass`,
        depth: 'claim',
        compute: claimsDisagree,
        inputs: { subject, values },
        evidence: [fits.evidence],
        claims: values.map(({ claim }) => claim),
        unsure: 'contradiction',
      }),
    ];
  };
  return [...against('direction', fits.directions), ...against('onset', fits.onsets)];
};
