/**
 * A symmetric matrix whose rows are kept from their first non-zero to the diagonal, and its Cholesky factor in the same place.
 * Finite-element matrices of a well-numbered mesh are short in every row: factorising costs n·b² and nothing is looked up.
 */
export class ProfileMatrix {
  /** where row i starts in `values`; entry (i, j) lies at start[i] + j − first[i] */
  readonly start: Int32Array;
  readonly values: Float64Array;

  constructor(
    /** first column kept of each row */
    readonly first: Int32Array,
  ) {
    const n = first.length;
    this.start = new Int32Array(n + 1);
    for (let i = 0; i < n; i += 1) this.start[i + 1] = this.start[i]! + i - first[i]! + 1;
    this.values = new Float64Array(this.start[n]!);
  }

  get size(): number {
    return this.first.length;
  }

  /** Adds to entry (i, j); the lower triangle is kept. */
  add(i: number, j: number, value: number): void {
    const [row, column] = i >= j ? [i, j] : [j, i];
    this.values[this.start[row]! + column - this.first[row]!]! += value;
  }

  /** Replaces the matrix by its factor L, A = L·Lᵀ. `false`: not positive definite. */
  factorise(): boolean {
    const { values, start, first, size } = this;
    for (let i = 0; i < size; i += 1) {
      const firstOfI = first[i]!;
      const rowI = start[i]! - firstOfI;
      for (let j = firstOfI; j < i; j += 1) {
        const firstOfJ = first[j]!;
        const rowJ = start[j]! - firstOfJ;
        let sum = values[rowI + j]!;
        for (let k = Math.max(firstOfI, firstOfJ); k < j; k += 1) sum -= values[rowI + k]! * values[rowJ + k]!;
        values[rowI + j] = sum / values[rowJ + j]!;
      }
      let pivot = values[rowI + i]!;
      for (let k = firstOfI; k < i; k += 1) pivot -= values[rowI + k]! ** 2;
      if (!(pivot > 0)) return false;
      values[rowI + i] = Math.sqrt(pivot);
    }
    return true;
  }

  /** Solves L·y = b in place. */
  forward(b: Float64Array): void {
    const { values, start, first, size } = this;
    for (let i = 0; i < size; i += 1) {
      const row = start[i]! - first[i]!;
      let sum = b[i]!;
      for (let k = first[i]!; k < i; k += 1) sum -= values[row + k]! * b[k]!;
      b[i] = sum / values[row + i]!;
    }
  }

  /** Solves Lᵀ·x = y in place. */
  backward(y: Float64Array): void {
    const { values, start, first, size } = this;
    for (let i = size - 1; i >= 0; i -= 1) {
      const row = start[i]! - first[i]!;
      y[i]! /= values[row + i]!;
      const x = y[i]!;
      for (let k = first[i]!; k < i; k += 1) y[k]! -= values[row + k]! * x;
    }
  }
}
