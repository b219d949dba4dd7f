import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkCaseFile,
  claimFromWhatIf,
  currentClaims,
  emptyCase,
  factsOf,
  newClaim,
  readCase,
  SINGLE_SUBJECTS,
  withClaim,
  withoutClaim,
  writeCase,
} from '../../../src/cases';
import { idOf } from '../../../src/ids';
import { anyCase } from './any-case';

const PERSON = { status: 'reported', source: { kind: 'person' } } as const;
const empty = emptyCase(idOf('a-case'));

test('an empty case is a case in which nothing is stated', () => {
  expect(readCase(writeCase(empty))).toEqual({ ok: true, file: empty });
  for (const subject of SINGLE_SUBJECTS) expect(factsOf(empty)[subject].state).toBe('notStated');
});

describe('a new claim', () => {
  test('gets the next id, the same every time', () => {
    const one = withClaim(empty, newClaim(empty, 'side', 'right', PERSON));
    const two = withClaim(one, newClaim(one, 'massKg', 70, PERSON));
    expect(two.claims.map(({ id }) => id)).toEqual(['c1', 'c2']);
    expect(newClaim(withoutClaim(two, idOf('c1')), 'side', 'left', PERSON).id).toBe('c3');
  });

  test('never takes an id in use', () => {
    fc.assert(
      fc.property(anyCase(), (file) => {
        expect(checkCaseFile(withClaim(file, newClaim(file, 'side', 'left', PERSON)))).toEqual([]);
      }),
    );
  });
});

describe('removing a claim', () => {
  test('leaves a valid case, brings back nothing that was replaced, unless the newest word is taken away', () => {
    fc.assert(
      fc.property(anyCase(['side', 'treatment']), fc.nat(), (file, pick) => {
        const target = file.claims[pick % Math.max(1, file.claims.length)];
        if (target === undefined) return;
        const left = withoutClaim(file, target.id);
        expect(checkCaseFile(left)).toEqual([]);
        expect(left.claims.length).toBe(file.claims.length - 1);
        const before = currentClaims(file).map(({ id }) => id);
        const after = currentClaims(left).map(({ id }) => id);
        if (before.includes(target.id))
          expect(after).toEqual(expect.arrayContaining(before.filter((id) => id !== target.id)));
        else expect(after).toEqual(before);
      }),
    );
  });

  test('of an unknown id changes nothing', () => {
    expect(withoutClaim(empty, idOf('c1'))).toBe(empty);
  });
});

describe('from what-if to claim', () => {
  const whatIf = { massKg: 90, place: { by: 'distance', mm: 21.5 } } as const;

  test('only by saying how well it is known and from whom', () => {
    expect(claimFromWhatIf(empty, whatIf, 'place', PERSON)).toEqual({
      id: 'c1',
      subject: 'place',
      value: { by: 'distance', mm: 21.5 },
      ...PERSON,
    });
    expect(claimFromWhatIf(empty, whatIf, 'footShape', PERSON)).toBe(null);
  });

  test('a person cannot confirm by dragging', () => {
    const claim = claimFromWhatIf(empty, whatIf, 'massKg', { ...PERSON, status: 'confirmed' });
    if (claim === null) throw new Error('expected a claim');
    expect(checkCaseFile(withClaim(empty, claim)).map(({ code }) => code)).toEqual(['statusNotAllowed']);
  });
});
