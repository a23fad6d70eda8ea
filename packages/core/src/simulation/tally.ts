import { count, histogram } from './histogram.ts';
import type { PlayedJoint } from './play-joint.ts';
import type { SimulatedJob, SimulatedJoint } from './simulated-job.ts';

/** What the runs of one or more blocks left of a joint. Sums, so that blocks are merged by adding. */
export interface JointTally {
  /** runs with a bolt outside its window; those in which a mistake was made; runs in which one is outside after embedding */
  outside: number;
  outsideByMistake: number;
  outsideEmbedded: number;
  /** bolts below and above their window, all runs together */
  low: number;
  high: number;
  /** lowest and highest bolt of a run, and lowest after embedding, as shares of the target */
  readonly lowest: Uint32Array;
  readonly highest: Uint32Array;
  readonly lowestEmbedded: Uint32Array;
  minutes: number;
  energy: number;
  pulls: number;
}

export interface Tally {
  runs: number;
  /** runs with a bolt outside in any joint */
  outside: number;
  readonly joints: readonly JointTally[];
}

export const emptyTally = ({ joints }: Pick<SimulatedJob, 'joints'>): Tally => ({ runs: 0, outside: 0, joints: joints.map(emptyJoint) });

const emptyJoint = (): JointTally => ({
  outside: 0,
  outsideByMistake: 0,
  outsideEmbedded: 0,
  low: 0,
  high: 0,
  lowest: histogram(),
  highest: histogram(),
  lowestEmbedded: histogram(),
  minutes: 0,
  energy: 0,
  pulls: 0,
});

/** Takes one played run into the tally; says whether a bolt lies outside. */
export function take(tally: JointTally, { parts }: SimulatedJoint, played: PlayedJoint): boolean {
  let [low, high, below] = [0, 0, 0];
  let [lowest, highest, least] = [Number.POSITIVE_INFINITY, 0, Number.POSITIVE_INFINITY];
  for (const { bolts, target, window } of parts) {
    for (const bolt of bolts) {
      const force = played.force[bolt]!;
      if (force < window.low) low += 1;
      else if (force > window.high) high += 1;
      if (played.embedded[bolt]! < window.low) below += 1;
      lowest = Math.min(lowest, force / target);
      highest = Math.max(highest, force / target);
      least = Math.min(least, played.embedded[bolt]! / target);
    }
  }
  const outside = low + high > 0;
  if (outside) tally.outside += 1;
  if (outside && played.mistakes > 0) tally.outsideByMistake += 1;
  if (below + high > 0) tally.outsideEmbedded += 1;
  tally.low += low;
  tally.high += high;
  count(tally.lowest, lowest);
  count(tally.highest, highest);
  count(tally.lowestEmbedded, least);
  tally.minutes += played.minutes;
  tally.energy += played.energy;
  tally.pulls += played.pulls;
  return outside;
}

const SUMS = ['outside', 'outsideByMistake', 'outsideEmbedded', 'low', 'high', 'minutes', 'energy', 'pulls'] as const;
const HISTOGRAMS = ['lowest', 'highest', 'lowestEmbedded'] as const;

/** Adds a block to what came before it. Blocks are added in their order, so that sums come out the same on any number of cores. */
export function addTally(into: Tally, block: Tally): void {
  into.runs += block.runs;
  into.outside += block.outside;
  for (const [at, joint] of into.joints.entries()) {
    const more = block.joints[at]!;
    for (const key of SUMS) joint[key] += more[key];
    for (const key of HISTOGRAMS) for (let bin = 0; bin < joint[key].length; bin += 1) joint[key][bin]! += more[key][bin]!;
  }
}
