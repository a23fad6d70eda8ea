/** Rows taken at once: each column entry is then read once for four sums that do not wait for one another. */
const ROWS = 4;

/** Cholesky factor in place, lower triangle of a row-by-row square matrix: A = L·Lᵀ. `false`: not positive definite. */
export function denseCholesky(a: Float64Array, n: number): boolean {
  for (let j = 0; j < n; j += 1) {
    const rowJ = j * n;
    let square = a[rowJ + j]!;
    for (let k = 0; k < j; k += 1) square -= a[rowJ + k]! ** 2;
    if (!(square > 0)) return false;
    const pivot = Math.sqrt(square);
    a[rowJ + j] = pivot;
    let i = j + 1;
    for (; i + ROWS <= n; i += ROWS) {
      const [row0, row1, row2, row3] = [i * n, (i + 1) * n, (i + 2) * n, (i + 3) * n];
      let [sum0, sum1, sum2, sum3] = [a[row0 + j]!, a[row1 + j]!, a[row2 + j]!, a[row3 + j]!];
      for (let k = 0; k < j; k += 1) {
        const across = a[rowJ + k]!;
        sum0 -= a[row0 + k]! * across;
        sum1 -= a[row1 + k]! * across;
        sum2 -= a[row2 + k]! * across;
        sum3 -= a[row3 + k]! * across;
      }
      a[row0 + j] = sum0 / pivot;
      a[row1 + j] = sum1 / pivot;
      a[row2 + j] = sum2 / pivot;
      a[row3 + j] = sum3 / pivot;
    }
    for (; i < n; i += 1) {
      let sum = a[i * n + j]!;
      for (let k = 0; k < j; k += 1) sum -= a[i * n + k]! * a[rowJ + k]!;
      a[i * n + j] = sum / pivot;
    }
  }
  return true;
}
