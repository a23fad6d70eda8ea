import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { denseCholesky } from './dense-cholesky.ts';

/** Bolts beyond this are refused: a dense matrix of them is no longer a matter of moments. */
export const MOST_BOLTS = 2000;

/** A = C + D of one joint: nut advance at bolt i per unit force in bolt j, mm/N; symmetric, positive definite, row by row. */
export interface JointCompliance {
  readonly size: number;
  readonly matrix: Float64Array;
}

/**
 * Joint compliance from the members' matrix and the bolts' resilience: A = C + diag(δ_S).
 *
 * Refuses a matrix that is not square, not symmetric or not positive definite, and more than {@link MOST_BOLTS} bolts.
 *
 * @example
 * const joint = jointCompliance([[2e-6, 5e-7], [5e-7, 2e-6]], 1e-6);
 * expect(joint.value.matrix[0]).toBeCloseTo(3e-6, 12);
 */
export function jointCompliance(members: readonly ArrayLike<number>[], bolt: number | readonly number[]): Outcome<JointCompliance> {
  const size = members.length;
  const notices: Notice[] = [];
  if (size < 1 || size > MOST_BOLTS) return refused(notice('compliance-size', { bolts: size, most: MOST_BOLTS }));
  if (members.some((row) => row.length !== size)) return refused(notice('compliance-not-square', { bolts: size }));
  const matrix = new Float64Array(size * size);
  let largest = 0;
  for (const row of members) for (let j = 0; j < size; j += 1) largest = Math.max(largest, Math.abs(row[j]!));
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      const [a, b] = [members[i]![j]!, members[j]![i]!];
      if (!Number.isFinite(a) || !(Math.abs(a - b) <= 1e-6 * largest)) {
        notices.push(notice('compliance-not-symmetric', { first: i + 1, second: j + 1 }));
      }
      const own = i === j ? (typeof bolt === 'number' ? bolt : bolt[i]!) : 0;
      matrix[i * size + j] = (a + b) / 2 + own;
      matrix[j * size + i] = matrix[i * size + j]!;
    }
  }
  if (notices.length > 0) return refused(...notices.slice(0, 5));
  if (!denseCholesky(matrix.slice(), size)) return refused(notice('compliance-not-definite', {}));
  return done({ size, matrix });
}

/** The members' matrix of a ring from its first row: bolt j sees bolt i through the number of places between them. */
export const circulant = (row: ArrayLike<number>): Float64Array[] =>
  Array.from({ length: row.length }, (_, i) =>
    Float64Array.from({ length: row.length }, (__, j) => row[(j - i + row.length) % row.length]!),
  );
