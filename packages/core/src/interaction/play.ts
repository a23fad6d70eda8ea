import type { JointState } from './joint-state.ts';
import { carry, drive, settle } from './settle.ts';

/** How a bolt is brought to its target: exactly, loosened if need be, or as a torque tool does: one already above is left alone. */
export type StepRule = 'exact' | 'tighten only';

/** Brings one bolt to a force while the nuts of all others stay where they are. Returns whether the nut moved forward. */
export function pull(state: JointState, bolt: number, target: number, rule: StepRule = 'exact'): boolean {
  if (rule === 'tighten only' && state.holds[bolt] && state.force[bolt]! >= target) return false;
  const before = state.holds[bolt] ? state.advance[bolt]! : 0;
  drive(state, bolt, target);
  return state.advance[bolt]! > before;
}

/** Turns one nut on from where it stands, as an angle-controlled step does: by `advance` = pitch·angle/2π, mm. Returns the force it reaches. */
export function turn(state: JointState, bolt: number, advance: number): number {
  state.holds[bolt] = 1;
  if (!state.inverse.carries[bolt]) carry(state, bolt);
  state.advance[bolt]! += advance;
  settle(state);
  return state.force[bolt]!;
}

/** Takes a nut off its seat. */
export function release(state: JointState, bolt: number): void {
  state.holds[bolt] = 0;
  state.force[bolt] = 0;
  if (state.inverse.carries[bolt]) state.inverse.leave(bolt);
  state.advance[bolt] = 0;
  settle(state);
}

/** The bolt whose turn it is, 0-based, or the bolts that synchronous tools tighten at one moment. */
export type Turn = number | readonly number[];

/** One round over the joint. */
export interface Round {
  readonly order: readonly Turn[];
  /** force to bring each bolt to; one for all, or one by bolt */
  readonly target: number | ArrayLike<number>;
}

/** Plays rounds one after another; gives the forces after each, and calls back after every pull. */
export function play(
  state: JointState,
  rounds: readonly Round[],
  rule: StepRule = 'exact',
  after?: (bolt: number) => void,
): Float64Array[] {
  return rounds.map(({ order, target }) => {
    for (const turn of order) {
      const bolts = typeof turn === 'number' ? [turn] : turn;
      pullTogether(state, bolts, (bolt) => (typeof target === 'number' ? target : target[bolt]!), rule);
      for (const bolt of bolts) after?.(bolt);
    }
    return state.force.slice();
  });
}

/** Synchronous tools work against each other until every one of their bolts has its force. */
function pullTogether(state: JointState, bolts: readonly number[], target: (bolt: number) => number, rule: StepRule): boolean {
  let moved = false;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    let again = false;
    for (const bolt of bolts) again = pull(state, bolt, target(bolt), rule) || again;
    moved ||= again;
    if (bolts.length === 1 || !again || bolts.every((bolt) => state.force[bolt]! >= target(bolt) * (1 - SETTLED))) break;
  }
  return moved;
}
const MOST_ROUNDS = 200;
const SETTLED = 1e-9;

/** Circular rounds until no nut moves by more than a hair, at most `most`; gives the forces after each. A nut moves when its bolt is below target. */
export function untilNoNutMoves(state: JointState, order: readonly Turn[], target: number, hair = 0.001, most = 50): Float64Array[] {
  const rounds: Float64Array[] = [];
  while (rounds.length < most) {
    let moved = false;
    for (const turn of order) {
      const bolts = typeof turn === 'number' ? [turn] : turn;
      if (bolts.every((bolt) => state.force[bolt]! >= (1 - hair) * target)) continue;
      pullTogether(state, bolts, () => target, 'tighten only');
      moved = true;
    }
    if (!moved) break;
    rounds.push(state.force.slice());
  }
  return rounds;
}
