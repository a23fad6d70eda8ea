import { closing, type JointState } from './joint-state.ts';

/** Share of the driven force below which nothing has changed. */
const HAIR = 1e-12;

/**
 * Forces of a joint whose nuts stand still but for one, which is moved until its bolt carries `target`:
 *
 *     F_d = target;   for the others that hold: F_i ≥ 0, (A·F)_i + h·max F_i ≥ u_i, and one of the two with equality
 *
 * A bolt that goes slack keeps its nut position and picks up load again when the joint closes on it: an active set that drops and
 * re-admits. Source: linear complementarity of the bonded, linear joint (reference/interaction/README.md).
 */
export function drive(state: JointState, bolt: number, target: number): void {
  const { inverse, force, advance, compliance, holds } = state;
  const { size } = compliance;
  state.holds[bolt] = 1;
  if (!inverse.carries[bolt]) carry(state, bolt);
  let fresh = true;
  for (let round = 0; round < 6 * size + 8; round += 1) {
    if (!fresh) solve(state);
    const column = bolt * size;
    const move = (target - force[bolt]!) / inverse.values[column + bolt]!;
    advance[bolt]! += move;
    const { values } = inverse;
    for (let i = 0; i < size; i += 1) force[i]! += values[column + i]! * move;
    force[bolt] = target;
    if (!change(state, bolt, HAIR * Math.abs(target))) break;
    fresh = false;
  }
  for (let i = 0; i < size; i += 1) if (holds[i] && force[i]! > state.peak[i]!) state.peak[i] = force[i]!;
}

/** Forces for the nut positions as they stand. */
export function settle(state: JointState): void {
  const { compliance, force, peak, advance } = state;
  let scale = 0;
  for (let i = 0; i < compliance.size; i += 1) scale = Math.max(scale, Math.abs(advance[i]!) / compliance.matrix[i * compliance.size + i]!);
  for (let round = 0; round < 6 * compliance.size + 8; round += 1) {
    solve(state);
    if (!change(state, -1, HAIR * scale)) break;
  }
  for (let i = 0; i < compliance.size; i += 1) if (force[i]! > peak[i]!) peak[i] = force[i]!;
}

/** A nut that touches begins to carry where it stands: at force 0. */
export function carry(state: JointState, bolt: number): void {
  state.loading[bolt] = state.peak[bolt]! > 0 ? 0 : 1;
  state.advance[bolt] = closing(state, bolt);
  state.inverse.join(bolt, state.loading[bolt] ? state.gasketSet : 0);
}

/** F = G·b, b_i = u_i − h·max F_i where the gasket is below its highest load. */
function solve({ compliance: { size }, inverse, advance, loading, gasketSet, peak, force }: JointState): void {
  const right = new Float64Array(size);
  for (let i = 0; i < size; i += 1) right[i] = advance[i]! - (loading[i] ? 0 : gasketSet * peak[i]!);
  inverse.solve(right, force);
}

/** Drops bolts that pull negative; else takes back those the joint closes on, and turns gaskets from giving to springing back. */
function change(state: JointState, driven: number, hair: number): boolean {
  const { compliance, force, inverse, holds, advance, slackEver, loading, gasketSet, peak } = state;
  const { size, matrix } = compliance;
  let changed = false;
  for (let i = 0; i < size; i += 1) {
    if (i === driven || !inverse.carries[i] || !(force[i]! < 0)) continue;
    inverse.leave(i);
    slackEver.add(i);
    force[i] = 0;
    changed = true;
  }
  if (changed) return true;
  for (let i = 0; i < size; i += 1) {
    if (i === driven || inverse.carries[i] || !holds[i]) continue;
    if (closing(state, i) >= advance[i]! - hair * matrix[i * size + i]!) continue;
    loading[i] = peak[i]! > 0 ? 0 : 1;
    inverse.join(i, loading[i] ? gasketSet : 0);
    changed = true;
  }
  if (gasketSet === 0) return changed;
  for (let i = 0; i < size; i += 1) {
    if (!inverse.carries[i]) continue;
    const gives = force[i]! > peak[i]! + hair;
    if (gives === (loading[i] === 1) || (loading[i] && force[i]! >= peak[i]! - hair)) continue;
    inverse.soften(i, gives ? gasketSet : -gasketSet);
    loading[i] = gives ? 1 : 0;
    changed = true;
  }
  return changed;
}
