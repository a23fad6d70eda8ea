import { denseCholesky } from './dense-cholesky.ts';
import type { JointCompliance } from './joint-compliance.ts';
import { copyState, type JointState } from './joint-state.ts';
import { carry, settle } from './settle.ts';

/**
 * Targets of a single pass that ends with given forces, one factorisation: with A permuted into tightening order and A = L·Lᵀ,
 *
 *     t_j = (Lᵀ·F*)_j / L_jj
 *
 * The bolts not yet tightened carry nothing. `order`: bolts, 0-based; the result is by bolt. Zero deviation in the linear joint as long as
 * no bolt goes slack on the way. Source: Gauss–Seidel on A⁻¹ read backwards; own derivation, checked by play-back.
 */
export function onePassTargets({ size, matrix }: JointCompliance, order: readonly number[], finalForce: ArrayLike<number>): Float64Array {
  const l = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) for (let j = 0; j <= i; j += 1) l[i * size + j] = matrix[order[i]! * size + order[j]!]!;
  denseCholesky(l, size);
  const targets = new Float64Array(size);
  for (let j = 0; j < size; j += 1) {
    let sum = 0;
    for (let i = j; i < size; i += 1) sum += l[i * size + j]! * finalForce[order[i]!]!;
    targets[order[j]!] = sum / l[j * size + j]!;
  }
  return targets;
}

/**
 * Targets of the last pass from where an earlier one left the joint, so that it ends with given forces: the nuts that are done stand at
 * u* = A·F*, the others where the earlier pass left them; at its turn bolt j carries what the joint then gives it, slack bolts carrying
 * nothing. The state is not changed. Exact for a joint whose gasket unloads as it loads.
 */
export function lastPassTargets(state: JointState, order: readonly number[], finalForce: ArrayLike<number>): Float64Array {
  const { compliance, gasketSet } = state;
  const { size, matrix } = compliance;
  const after = copyState(state);
  const targets = new Float64Array(size);
  for (const bolt of order) {
    let goal = gasketSet * Math.max(after.peak[bolt]!, finalForce[bolt]!);
    for (let j = 0; j < size; j += 1) goal += matrix[bolt * size + j]! * finalForce[j]!;
    if (!after.inverse.carries[bolt]) carry(after, bolt);
    after.holds[bolt] = 1;
    after.advance[bolt] = goal;
    settle(after);
    targets[bolt] = after.force[bolt]!;
  }
  return targets;
}
