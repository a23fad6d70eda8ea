import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { Draws, MOST_SEED } from '../random/draws.ts';
import type { MistakeRates } from './mistakes.ts';
import { jointPlayer } from './play-joint.ts';
import type { SimulatedJob } from './simulated-job.ts';
import { emptyTally, type Tally, take } from './tally.ts';

/** How often, from which seed, with which mistakes. */
export interface SimulationTask {
  readonly runs: number;
  readonly seed: number;
  readonly rates: MistakeRates;
}

/** Runs of one block: enough to keep a core busy, few enough to show progress. */
export const RUNS_PER_BLOCK = 50;
const MOST_RUNS = 10_000_000;
/** The stream of draws that all joints of a run share; joints have their own index. */
const SHARED_STREAM = 0xffff_ffff;

/** Refuses numbers of runs and seeds that cannot be counted with. */
export function simulationTask(runs: number, seed: number, rates: MistakeRates): Outcome<SimulationTask> {
  const notices = [
    ...(Number.isInteger(runs) && runs >= 1 && runs <= MOST_RUNS
      ? []
      : [notice('simulation-runs', { runs: String(runs), most: MOST_RUNS })]),
    ...(Number.isInteger(seed) && seed >= 0 && seed <= MOST_SEED ? [] : [notice('simulation-seed', { seed: String(seed) })]),
  ];
  return notices.length > 0 ? refused(...notices) : done({ runs, seed, rates });
}

export const blocksOf = ({ runs }: Pick<SimulationTask, 'runs'>): number => Math.ceil(runs / RUNS_PER_BLOCK);

/**
 * Plays the runs of one block. The same block gives the same tally wherever it is played: every draw follows from seed, run and joint
 * alone ({@link philox}).
 */
export function simulateBlock(job: SimulatedJob, { runs, seed, rates }: SimulationTask, block: number): Tally {
  const from = block * RUNS_PER_BLOCK;
  const size = Math.min(RUNS_PER_BLOCK, runs - from);
  const tally = emptyTally(job);
  const draws = new Draws(seed);
  const shared = Array.from({ length: size }, (_, run) => {
    draws.start(from + run, SHARED_STREAM);
    return Float64Array.from({ length: job.tools.length + job.lots.length }, () => draws.normal());
  });
  const outside = new Uint8Array(size);
  for (const [at, joint] of job.joints.entries()) {
    const play = jointPlayer(job, joint, rates);
    for (let run = 0; run < size; run += 1) {
      draws.start(from + run, at);
      if (take(tally.joints[at]!, joint, play(draws, shared[run]!))) outside[run] = 1;
    }
  }
  tally.runs = size;
  tally.outside = outside.reduce((sum, one) => sum + one, 0);
  return tally;
}
