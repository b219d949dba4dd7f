/** How the frame gives way along its ties and pads: products with the inverse of its stiffness, from one factor. */
import { forwardLdlInto, type LdlFactor } from '../frame/ldl';

export type Factor = Extract<LdlFactor, { readonly ok: true }>;

/** Rows B halfway through the factor K = L D L^T, D^-1/2 L^-1 B^T: products of two such halves are products with K^-1. */
export interface Halves {
  /** m x n row-major. */
  readonly rows: Float64Array;
  /** Where each begins: zeros before. */
  readonly first: Int32Array;
  /** D^-1/2. */
  readonly root: Float64Array;
}

/** `vector` (n) becomes its half, in place; leading zeros stay zeros. */
const halveInto = (factor: Factor, root: Float64Array, vector: Float64Array): void => {
  forwardLdlInto(factor, vector);
  for (let i = 0; i < vector.length; i++) vector[i] = (vector[i] as number) * (root[i] as number);
};

export const halvesOf = (factor: Factor, rows: readonly Float64Array[]): Halves => {
  const { n, l } = factor;
  const root = Float64Array.from({ length: n }, (_, i) => 1 / Math.sqrt(l[i * n + i] as number));
  const halves = new Float64Array(rows.length * n);
  const first = new Int32Array(rows.length);
  rows.forEach((row, r) => {
    const half = halves.subarray(r * n, (r + 1) * n);
    half.set(row);
    halveInto(factor, root, half);
    let from = 0;
    while (from < n && half[from] === 0) from++;
    first[r] = from;
  });
  return { rows: halves, first, root };
};

/** B K^-1 B^T, m x m. */
export const complianceOf = ({ rows, first }: Halves, n: number): Float64Array => {
  const m = first.length;
  const matrix = new Float64Array(m * m);
  for (let i = 0; i < m; i++)
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let k = Math.max(first[i] as number, first[j] as number); k < n; k++)
        sum += (rows[i * n + k] as number) * (rows[j * n + k] as number);
      matrix[i * m + j] = sum;
      matrix[j * m + i] = sum;
    }
  return matrix;
};

/** What a unit force along one row of its own (`gauge`) does to each of the others: B K^-1 g^T, m. */
export const complianceWith = ({ rows, first }: Halves, gauge: Halves, n: number): Float64Array =>
  Float64Array.from(first, (from, i) => {
    let sum = 0;
    for (let k = Math.max(from, gauge.first[0] as number); k < n; k++)
      sum += (rows[i * n + k] as number) * (gauge.rows[k] as number);
    return sum;
  });

/** How far a load alone would stretch each row: B K^-1 load, m. */
export const reachOf = (factor: Factor, { rows, first, root }: Halves, load: Float64Array): Float64Array => {
  const { n } = factor;
  const half = load.slice();
  halveInto(factor, root, half);
  const reach = new Float64Array(first.length);
  for (let i = 0; i < reach.length; i++) {
    let sum = 0;
    for (let k = first[i] as number; k < n; k++) sum += (rows[i * n + k] as number) * (half[k] as number);
    reach[i] = sum;
  }
  return reach;
};
