/** Choices of the way in become claims that say how they are known, never more than that. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkCaseFile, emptyCase, factsOf, readCase, writeCase } from '../../../src/cases';
import type { ClaimValue } from '../../../src/explain/messages';
import { type CaseId, type InjuryId, idOf, type MechanismId, type OptionId, type RegionId } from '../../../src/ids';
import { HEARD, heardFrom, withHeard, withValues } from '../../../src/pages/case/way-in';
import type { IsoDate } from '../../../src/units';

const empty = emptyCase(idOf<CaseId>('case-test'));
const values: readonly ClaimValue[] = [
  { subject: 'side', value: 'left' },
  { subject: 'bone', value: 'metatarsal5' },
  { subject: 'place', value: { by: 'region', region: idOf<RegionId>('mt5-zone-2') } },
  { subject: 'injury', value: idOf<InjuryId>('some-injury') },
  { subject: 'mechanism', value: idOf<MechanismId>('some-way') },
  { subject: 'injuryDate', value: '2026-03-01' as IsoDate },
  { subject: 'treatment', value: { option: idOf<OptionId>('some-option') } },
];
const subjects = values.map((of) => of.subject);

describe('the way in', () => {
  it.each(HEARD)('says every claim as heard: %s', (heard) => {
    const file = withValues(empty, subjects, values, heard);
    expect(file.claims).toHaveLength(values.length);
    const read = readCase(writeCase(file));
    expect(read.ok).toBe(true);
    for (const claim of file.claims) {
      const told =
        heard === 'told' ||
        heard === 'team' ||
        heard === 'media' ||
        ['mechanism', 'injuryDate'].includes(claim.subject);
      expect([claim.subject, claim.status]).toEqual([claim.subject, told ? 'reported' : 'confirmed']);
    }
    expect(heardFrom(file)).toBe(heard);
  });

  it('replaces an answer instead of keeping two', () => {
    const first = withValues(empty, ['side'], [{ subject: 'side', value: 'left' }], 'told');
    const second = withValues(first, ['side'], [{ subject: 'side', value: 'right' }], 'told');
    expect(factsOf(second).side).toMatchObject({ state: 'stated', value: 'right', status: 'reported' });
    expect(withValues(second, ['side'], [], 'told').claims).toEqual([]);
  });

  it('leaves claims on other subjects alone', () => {
    const file = withValues(empty, ['massKg'], [{ subject: 'massKg', value: 80 }], 'examined');
    const after = withHeard(withValues(file, ['side'], [{ subject: 'side', value: 'left' }], 'told'), 'told');
    expect(after.claims.find((claim) => claim.subject === 'massKg')).toEqual(file.claims[0]);
  });

  it('makes a valid case from any order of choices', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom(...values), fc.constantFrom(...HEARD))), (steps) => {
        const file = steps.reduce((before, [of, heard]) => withValues(before, [of.subject], [of], heard), empty);
        expect(checkCaseFile(file)).toEqual([]);
      }),
    );
  });
});
