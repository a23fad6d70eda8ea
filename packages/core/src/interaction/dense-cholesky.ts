/** Cholesky factor in place, lower triangle of a row-by-row square matrix: A = L·Lᵀ. `false`: not positive definite. */
export function denseCholesky(a: Float64Array, n: number): boolean {
  for (let j = 0; j < n; j += 1) {
    const rowJ = j * n;
    for (let i = j; i < n; i += 1) {
      const rowI = i * n;
      let sum = a[rowI + j]!;
      for (let k = 0; k < j; k += 1) sum -= a[rowI + k]! * a[rowJ + k]!;
      if (i === j) {
        if (!(sum > 0)) return false;
        a[rowJ + j] = Math.sqrt(sum);
      } else a[rowI + j] = sum / a[rowJ + j]!;
    }
  }
  return true;
}
