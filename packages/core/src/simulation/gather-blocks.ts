import { blocksOf, type SimulationTask } from './simulate.ts';
import type { SimulatedJob } from './simulated-job.ts';
import { addTally, emptyTally, type Tally } from './tally.ts';

/** Blocks of a simulation as several cores finish them. */
export interface Gathering {
  readonly blocks: number;
  /** the next block to play; `undefined`: all are given out */
  readonly next: () => number | undefined;
  /** keeps what a block gave; says how many there are now */
  readonly keep: (block: number, tally: Tally) => number;
  /** all that was kept */
  readonly sum: () => Tally;
}

/** Adds blocks up in their order, whoever finishes first: the same sums on any number of cores. Stopped, it has the blocks that are finished. */
export function gatherBlocks(job: SimulatedJob, task: SimulationTask): Gathering {
  const blocks = blocksOf(task);
  const sum = emptyTally(job);
  const waiting = new Map<number, Tally>();
  let [next, added, kept] = [0, 0, 0];
  return {
    blocks,
    next: () => {
      if (next >= blocks) return undefined;
      next += 1;
      return next - 1;
    },
    keep: (block, tally) => {
      waiting.set(block, tally);
      kept += 1;
      for (let ready = waiting.get(added); ready; ready = waiting.get(added)) {
        addTally(sum, ready);
        waiting.delete(added);
        added += 1;
      }
      return kept;
    },
    sum: () => {
      for (const [block, tally] of [...waiting].sort(([a], [b]) => a - b)) {
        addTally(sum, tally);
        waiting.delete(block);
      }
      return sum;
    },
  };
}
