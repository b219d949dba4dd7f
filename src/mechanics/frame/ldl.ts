/**
 * Symmetric L D L^T without pivoting, of whole or of stepped rows. For stiffness and flexibility matrices, which are positive definite unless something is
 * a mechanism: then a pivot vanishes, and its row names what moves freely.
 */

export type LdlFactor =
  | {
      readonly ok: true;
      readonly n: number;
      /** Stored as the matrix was: below the diagonal L (its own diagonal is 1), on the diagonal D, above it zeros. */
      readonly l: Float64Array;
      /** Entry (i, j) stands at rows[i] + j. */
      readonly rows: Int32Array;
      /** Where each row of L begins: zeros before. */
      readonly first: Int32Array;
      /** The smallest pivot as a share of the diagonal entry it came from, and its row (-1 when n = 0). Near 1e-12: nearly a mechanism. */
      readonly smallestPivotRatio: number;
      readonly smallestPivotAt: number;
    }
  | { readonly ok: false; readonly at: number; readonly ratio: number };

/**
 * A pivot at or below this share of its original diagonal entry is a mechanism. Rounding leaves a true zero at about n x 2e-16 of
 * the diagonal: 1e-13 for the 500 rows of a large foot. A sound cantilever of m equal elements has its last pivot near 1/(8 m^3):
 * 1e-10 at a thousand elements. 1e-12 lies between.
 */
export const MECHANISM_RATIO = 1e-12;

const wholeRows = (n: number): Int32Array => {
  const rows = new Int32Array(n);
  for (let i = 0; i < n; i++) rows[i] = i * n;
  return rows;
};

/**
 * Factors a symmetric matrix, n x n row-major; only its lower triangle is read, and it is left as it was. Leading zeros of a row
 * stay zero in L, so a banded matrix costs n x band^2 instead of n^3 / 6, and need not be stored: with `rows`, entry (i, j) stands at
 * rows[i] + j, and a row begins where the one before it ended with its diagonal. Not ok: the first row whose pivot vanishes, is negative
 * or is no number, with the pivot's share of the diagonal. `leastRatio` is for a caller who looks for mechanisms in another way.
 */
export const factorLdl = (
  matrix: Float64Array,
  n: number,
  leastRatio = MECHANISM_RATIO,
  rows: Int32Array = wholeRows(n),
): LdlFactor => {
  const wanted = n === 0 ? 0 : (rows[n - 1] as number) + n;
  if (matrix.length !== wanted) throw new RangeError(`factorLdl: ${matrix.length} entries are no ${n} x ${n} matrix`);
  const l = new Float64Array(matrix.length);
  const first = new Int32Array(n);
  /** D once more, side by side: the innermost sum reads it. */
  const pivots = new Float64Array(n);
  let smallestPivotRatio = 1;
  let smallestPivotAt = n > 0 ? 0 : -1;
  for (let i = 0; i < n; i++) {
    const row = rows[i] as number;
    let from = i === 0 ? 0 : Math.max(0, (rows[i - 1] as number) + i - row);
    while (from < i && matrix[row + from] === 0) from++;
    first[i] = from;
    // The row of L times D; divided by D at the end, so that both factors of the inner sum lie in rows.
    for (let j = from; j < i; j++) {
      const other = rows[j] as number;
      let sum = matrix[row + j] as number;
      for (let k = Math.max(from, first[j] as number); k < j; k++)
        sum -= (l[row + k] as number) * (l[other + k] as number);
      l[row + j] = sum;
    }
    const diagonal = matrix[row + i] as number;
    let pivot = diagonal;
    for (let k = from; k < i; k++) {
      const scaled = l[row + k] as number;
      const value = scaled / (pivots[k] as number);
      pivot -= scaled * value;
      l[row + k] = value;
    }
    const ratio = diagonal > 0 ? pivot / diagonal : 0;
    if (!(ratio > leastRatio)) return { ok: false, at: i, ratio };
    if (ratio < smallestPivotRatio) {
      smallestPivotRatio = ratio;
      smallestPivotAt = i;
    }
    l[row + i] = pivot;
    pivots[i] = pivot;
  }
  return { ok: true, n, l, rows, first, smallestPivotRatio, smallestPivotAt };
};

type Factored = Extract<LdlFactor, { readonly ok: true }>;

/** The first half of a solution, in place: `rhs` (n) becomes L^-1 rhs. Leading zeros of rows and of `rhs` cost nothing. */
export const forwardLdlInto = ({ n, l, rows, first }: Factored, rhs: Float64Array): void => {
  let from = 0;
  while (from < n && rhs[from] === 0) from++;
  for (let i = from + 1; i < n; i++) {
    const row = rows[i] as number;
    let sum = rhs[i] as number;
    for (let k = Math.max(from, first[i] as number); k < i; k++) sum -= (l[row + k] as number) * (rhs[k] as number);
    rhs[i] = sum;
  }
};

/** Solves in place: `rhs` (n) becomes the solution. */
export const solveLdlInto = (factor: Factored, rhs: Float64Array): void => {
  const { n, l, rows, first } = factor;
  forwardLdlInto(factor, rhs);
  for (let i = 0; i < n; i++) rhs[i] = (rhs[i] as number) / (l[(rows[i] as number) + i] as number);
  for (let i = n - 1; i > 0; i--) {
    const row = rows[i] as number;
    const value = rhs[i] as number;
    for (let k = first[i] as number; k < i; k++) rhs[k] = (rhs[k] as number) - (l[row + k] as number) * value;
  }
};

/** The solution for one right-hand side (n), which is left as it was. Throws RangeError for a matrix that was not factored. */
export const solveLdl = (factor: LdlFactor, rhs: Float64Array): Float64Array => {
  if (!factor.ok) throw new RangeError(`solveLdl: row ${factor.at} of the matrix is a mechanism`);
  const solution = Float64Array.from(rhs);
  solveLdlInto(factor, solution);
  return solution;
};

/** The inverse of a small positive definite matrix, n x n row-major. Throws RangeError when a row of it is a mechanism. */
export const invert = (matrix: Float64Array, n: number): Float64Array => {
  const factor = factorLdl(matrix, n);
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    const unit = new Float64Array(n);
    unit[i] = 1;
    inverse.set(solveLdl(factor, unit), i * n);
  }
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++) {
      const mean = ((inverse[i * n + j] as number) + (inverse[j * n + i] as number)) / 2;
      inverse[i * n + j] = mean;
      inverse[j * n + i] = mean;
    }
  return inverse;
};
