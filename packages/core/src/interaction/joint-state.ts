import { HeldInverse } from './held-inverse.ts';
import type { JointCompliance } from './joint-compliance.ts';

/** A joint being tightened: where the nuts stand, what the bolts carry, and which of them have been touched. */
export interface JointState {
  readonly compliance: JointCompliance;
  /** extra closing at a bolt per unit of the highest force it has had, mm/N: what a gasket does not give back */
  readonly gasketSet: number;
  /** nut advance past snug of every bolt that holds, mm */
  readonly advance: Float64Array;
  readonly force: Float64Array;
  /** highest force each bolt has had */
  readonly peak: Float64Array;
  /** has a nut that can take load: tightened, or snug from the start */
  readonly holds: Uint8Array;
  /** bolts that ever went slack */
  readonly slackEver: Set<number>;
  /** is the gasket under a bolt at its highest load, still giving? */
  readonly loading: Uint8Array;
  readonly inverse: HeldInverse;
}

/**
 * Before the first pull. `snug`: every nut already touches and picks up load if the joint opens under it; `absent`: no nut yet.
 *
 * `gasketSet`: h of a gasket that unloads stiffer than it loads, u = A·F + h·max F with A by the unloading modulus; uniform loading then
 * follows the loading modulus exactly where h is the difference of the two matrices' row sums. 0: the joint unloads as it loads.
 */
export function looseJoint(compliance: JointCompliance, untightened: 'absent' | 'snug' = 'absent', gasketSet = 0): JointState {
  const { size } = compliance;
  const state = emptyState(compliance, gasketSet);
  if (untightened === 'absent') return state;
  state.holds.fill(1);
  for (let bolt = 0; bolt < size; bolt += 1) state.inverse.join(bolt, gasketSet);
  return state;
}

const emptyState = (compliance: JointCompliance, gasketSet: number): JointState => ({
  compliance,
  gasketSet,
  advance: new Float64Array(compliance.size),
  force: new Float64Array(compliance.size),
  peak: new Float64Array(compliance.size),
  holds: new Uint8Array(compliance.size),
  slackEver: new Set(),
  loading: new Uint8Array(compliance.size).fill(1),
  inverse: new HeldInverse(compliance),
});

/** Back to before the first pull, no nut on any bolt. */
export function loosen(state: JointState): void {
  for (const values of [state.advance, state.force, state.peak, state.holds]) values.fill(0);
  state.loading.fill(1);
  state.inverse.values.fill(0);
  state.inverse.carries.fill(0);
  state.slackEver.clear();
}

/** The same joint once more, to be played on without changing the first. */
export function copyState(state: JointState): JointState {
  const copy = emptyState(state.compliance, state.gasketSet);
  for (const key of ['advance', 'force', 'peak'] as const) copy[key].set(state[key]);
  for (const key of ['holds', 'loading'] as const) copy[key].set(state[key]);
  copy.inverse.values.set(state.inverse.values);
  copy.inverse.carries.set(state.inverse.carries);
  for (const bolt of state.slackEver) copy.slackEver.add(bolt);
  return copy;
}

/** How far the nut of a bolt would have to stand for the forces there are: (A·F)_i + h·max F_i. */
export function closing({ compliance: { size, matrix }, force, gasketSet, peak }: JointState, bolt: number): number {
  let sum = gasketSet * Math.max(peak[bolt]!, force[bolt]!);
  for (let j = 0; j < size; j += 1) sum += matrix[bolt * size + j]! * force[j]!;
  return sum;
}
