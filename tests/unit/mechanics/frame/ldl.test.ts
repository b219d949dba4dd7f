import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factorLdl, invert, solveLdl } from '../../../../src/mechanics/frame/ldl';

const numbers = fc.double({ min: -1, max: 1, noNaN: true });
/** Positive definite: A A^T + I. */
const definite = fc.integer({ min: 1, max: 12 }).chain((n) =>
  fc.array(numbers, { minLength: n * n, maxLength: n * n }).map((a) => {
    const matrix = new Float64Array(n * n);
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        let sum = i === j ? 1 : 0;
        for (let k = 0; k < n; k++) sum += (a[i * n + k] as number) * (a[j * n + k] as number);
        matrix[i * n + j] = sum;
      }
    return { n, matrix };
  }),
);

const times = (matrix: Float64Array, n: number, x: ArrayLike<number>): number[] =>
  Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) => (matrix[i * n + j] as number) * (x[j] as number)).reduce((a, b) => a + b, 0),
  );

describe('a positive definite matrix', () => {
  test('is solved', () => {
    fc.assert(
      fc.property(definite, ({ n, matrix }) => {
        const x = Array.from({ length: n }, (_, i) => Math.sin(i + 1));
        const got = solveLdl(factorLdl(matrix, n), Float64Array.from(times(matrix, n, x)));
        for (let i = 0; i < n; i++) expect(Math.abs((got[i] as number) - (x[i] as number))).toBeLessThan(1e-11);
      }),
    );
  });

  test('is read from its lower triangle and left alone', () => {
    const [full, lower] = [new Float64Array([4, 1, 1, 3]), new Float64Array([4, Number.NaN, 1, 3])];
    expect(factorLdl(lower, 2)).toEqual(factorLdl(full, 2));
    expect([...lower]).toEqual([4, Number.NaN, 1, 3]);
  });

  test('in stepped rows, without the zeros before them, is factored and solved to the same digits', () => {
    // Rows that begin at 0, 0, 1, 1, 3 and 0.
    const firsts = [0, 0, 1, 1, 3, 0];
    const n = firsts.length;
    const whole = new Float64Array(n * n);
    const stepped: number[] = [];
    const rows = Int32Array.from(firsts, (first, i) => {
      const start = stepped.length - first;
      for (let j = first; j <= i; j++) {
        const value = i === j ? 4 + i : Math.sin(3 * i + j);
        whole[i * n + j] = value;
        stepped.push(value);
      }
      return start;
    });
    const rhs = Float64Array.from(firsts, (_, i) => Math.cos(i));
    const got = factorLdl(Float64Array.from(stepped), n, undefined, rows);
    expect(solveLdl(got, rhs)).toEqual(solveLdl(factorLdl(whole, n), rhs));
    expect(() => factorLdl(whole, n, undefined, rows)).toThrow(RangeError);
  });

  test('times its inverse is one', () => {
    fc.assert(
      fc.property(definite, ({ n, matrix }) => {
        const inverse = invert(matrix, n);
        for (let i = 0; i < n; i++)
          times(matrix, n, inverse.subarray(i * n, i * n + n)).forEach((value, j) => {
            expect(Math.abs(value - (i === j ? 1 : 0))).toBeLessThan(1e-11);
          });
      }),
    );
  });
});

describe('a matrix that is none', () => {
  test.each([
    ['a zero row', [2, 0, 0, 0], 1],
    ['a rigid motion', [1, -1, -1, 1], 1],
    ['a rigid motion but for rounding', [1, -1, -1, 1 + 2e-16], 1],
    ['a negative diagonal', [-1, 0, 0, 1], 0],
    ['no number', [1, 0, Number.NaN, 1], 1],
  ])('%s names its row', (_, entries, at) => {
    expect(factorLdl(new Float64Array(entries), 2)).toMatchObject({ ok: false, at });
  });

  test('solving it throws, and so does a matrix of another size', () => {
    expect(() => solveLdl(factorLdl(new Float64Array([0]), 1), new Float64Array(1))).toThrow(RangeError);
    expect(() => factorLdl(new Float64Array(3), 2)).toThrow(RangeError);
  });

  test('a weak but sound one tells how weak', () => {
    const factor = factorLdl(new Float64Array([1, -1, -1, 1 + 1e-9]), 2);
    expect(factor).toMatchObject({ ok: true, smallestPivotAt: 1 });
    expect(factor.ok && factor.smallestPivotRatio).toBeCloseTo(1e-9, 14);
  });
});
