/**
 * Symmetric positive definite equations with their non-zeros near the diagonal, kept row by row from the first of each (envelope)
 * and solved by Cholesky's method. Plain arrays: a section has a few hundred unknowns.
 */
export class Envelope {
  private readonly first: Int32Array;
  /** Where row i would begin if it were full. */
  private readonly base: Int32Array;
  private readonly values: Float64Array;
  private factored = false;

  /** `first[i]`: the first column of row i that is not zero. */
  constructor(first: Int32Array) {
    this.first = first;
    this.base = new Int32Array(first.length);
    let size = 0;
    for (let i = 0; i < first.length; i++) {
      this.base[i] = size - (first[i] ?? 0);
      size += i - (first[i] ?? 0) + 1;
    }
    this.values = new Float64Array(size);
  }

  add(i: number, j: number, value: number): void {
    const [row, column] = i >= j ? [i, j] : [j, i];
    const at = (this.base[row] ?? 0) + column;
    this.values[at] = (this.values[at] ?? 0) + value;
  }

  /** Throws RangeError where a pivot is not positive: the equations hold something loosely. */
  private factor(): void {
    const { first, base, values } = this;
    for (let i = 0; i < first.length; i++) {
      const [fi, bi] = [first[i] ?? 0, base[i] ?? 0];
      for (let j = fi; j <= i; j++) {
        const bj = base[j] ?? 0;
        let sum = values[bi + j] ?? 0;
        for (let k = Math.max(fi, first[j] ?? 0); k < j; k++) sum -= (values[bi + k] ?? 0) * (values[bj + k] ?? 0);
        if (j < i) values[bi + j] = sum / (values[bj + j] ?? 1);
        else if (sum > 0) values[bi + i] = Math.sqrt(sum);
        else throw new RangeError(`equation ${i} of ${first.length} has no positive pivot`);
      }
    }
    this.factored = true;
  }

  /** Solves in place. */
  solve(right: Float64Array): void {
    if (!this.factored) this.factor();
    const { first, base, values } = this;
    for (let i = 0; i < first.length; i++) {
      const bi = base[i] ?? 0;
      let sum = right[i] ?? 0;
      for (let k = first[i] ?? 0; k < i; k++) sum -= (values[bi + k] ?? 0) * (right[k] ?? 0);
      right[i] = sum / (values[bi + i] ?? 1);
    }
    for (let i = first.length - 1; i >= 0; i--) {
      const bi = base[i] ?? 0;
      const x = (right[i] ?? 0) / (values[bi + i] ?? 1);
      right[i] = x;
      for (let k = first[i] ?? 0; k < i; k++) right[k] = (right[k] ?? 0) - (values[bi + k] ?? 0) * x;
    }
  }
}
