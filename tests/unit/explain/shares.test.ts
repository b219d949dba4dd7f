import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differenceOf, wilson } from '../../../src/explain/shares';

const counted = fc
  .integer({ min: 1, max: 500 })
  .chain((of) => fc.integer({ min: 0, max: of }).map((count) => ({ count, of })));

describe('shares', () => {
  it('an interval holds its share and stays within 0 and 1', () => {
    fc.assert(
      fc.property(counted, ({ count, of }) => {
        const s = wilson(count, of);
        expect(s.low).toBeGreaterThanOrEqual(0);
        expect(s.high).toBeLessThanOrEqual(1);
        expect(s.low).toBeLessThanOrEqual(s.value + 1e-12);
        expect(s.high).toBeGreaterThanOrEqual(s.value - 1e-12);
      }),
    );
  });

  it('swapping the arms turns the difference round', () => {
    fc.assert(
      fc.property(counted, counted, (a, b) => {
        const [one, two] = [wilson(a.count, a.of), wilson(b.count, b.of)];
        const [d, e] = [differenceOf(one, two), differenceOf(two, one)];
        expect(d.value).toBeCloseTo(-e.value, 12);
        expect(d.low).toBeCloseTo(-e.high, 12);
      }),
    );
  });

  it('equal arms are never apart', () => {
    fc.assert(
      fc.property(counted, ({ count, of }) => {
        const s = wilson(count, of);
        const d = differenceOf(s, s);
        expect(d.low).toBeLessThanOrEqual(0);
        expect(d.high).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('no people, no share', () => {
    expect(() => wilson(0, 0)).toThrow(RangeError);
    expect(() => wilson(3, 2)).toThrow(RangeError);
  });
});
