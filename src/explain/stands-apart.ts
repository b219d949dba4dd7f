/**
 * Pieces that are said to stand millimetres apart, of a class whose break is a line: a stress fracture. Both seldom hold, unless it gave
 * way at once after hurting for a while. Told as a clash, and no such class is inferred beside it.
 */
import type { Facts } from '../cases/schema';
import type { Injury } from '../content/schema';
import type { FilmMeasure, InjuryId } from '../ids';
import { compute, find, message } from './build';
import type { ClaimTag, MessageOf } from './messages';
import { type Known, tagOf, valuesOf } from './resolve';
import type { Situation } from './situation';
import type { Finding } from './types';

const APART: ReadonlySet<FilmMeasure> = new Set<FilmMeasure>(['gap', 'joint step']);

interface Apart {
  readonly what: 'displacement' | FilmMeasure;
  readonly mm: number;
  readonly tag: ClaimTag;
}

const displacements = ({ displacement }: Facts) =>
  displacement.state === 'stated' ? [displacement] : displacement.state === 'contradiction' ? displacement.values : [];

/** Each measure that stands apart as far as the class does not; none where nothing is said of that for the class. */
export const standsApart = ({ fits }: Pick<Injury, 'fits'>, facts: Facts): readonly Apart[] => {
  const { apartBelowMm } = fits;
  if (apartBelowMm === undefined || valuesOf<'onset'>(facts.onset).includes('acute on gradual')) return [];
  const all: readonly Apart[] = [
    ...displacements(facts).flatMap(({ value, status, claims }) =>
      value.mm === undefined ? [] : [{ what: 'displacement' as const, mm: value.mm, tag: { status, claims } }],
    ),
    ...facts.measures.flatMap(({ id, status, value }) =>
      APART.has(value.what) ? [{ what: value.what, mm: value.value, tag: { status, claims: [id] } }] : [],
    ),
  ];
  return all.filter(({ mm }) => mm >= apartBelowMm);
};

export const apartAgainstClass = compute(
  'where.apartAgainstClass',
  (_, inputs: MessageOf<'apartAgainstClass'>['args']) => message('apartAgainstClass', inputs),
);

export const apartFindings = (s: Situation, injury: Known<InjuryId>): readonly Finding[] => {
  const record = s.injuryRecord;
  const { apartBelowMm, evidence } = record?.fits ?? {};
  if (record === null || apartBelowMm === undefined || evidence === undefined || injury.whatIf) return [];
  return standsApart(record, s.facts).map(({ what, mm, tag }, i) =>
    find(s.context, 'where', {
      id: `apartAgainstClass.${i + 1}`,
      depth: 'claim',
      compute: apartAgainstClass,
      inputs: {
        injury: injury.value,
        what,
        apart: { value: mm, unit: 'mm' },
        from: { value: apartBelowMm, unit: 'mm' },
      },
      evidence: [evidence],
      claims: [tagOf(injury), tag],
      unsure: 'contradiction',
    }),
  );
};
