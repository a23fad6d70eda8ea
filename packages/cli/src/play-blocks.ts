import { Worker } from 'node:worker_threads';
import { addTally, blocksOf, emptyTally, type SimulatedJob, type SimulationTask, type Tally } from '@clampwright/core';

/** What goes on while blocks are played. */
export interface Playing {
  readonly workers: number;
  readonly progress: (done: number, of: number) => void;
  /** no further block is begun once this says so */
  readonly stopped: AbortSignal;
}

/** As the bundle of the command line, or as the sources it is made from. */
const WORKER = import.meta.url.endsWith('.ts') ? './simulate-worker.ts' : './simulate-worker.mjs';

/**
 * Plays the blocks of a simulation on several cores and adds them up in their order, whoever finishes first: the same sums on any number
 * of cores. Stopped, it keeps the blocks that are finished.
 */
export async function playBlocks(job: SimulatedJob, task: SimulationTask, { workers, progress, stopped }: Playing): Promise<Tally> {
  const blocks = blocksOf(task);
  const sum = emptyTally(job);
  const waiting = new Map<number, Tally>();
  let [next, added, done] = [0, 0, 0];
  const keep = (block: number, tally: Tally) => {
    waiting.set(block, tally);
    done += 1;
    for (let ready = waiting.get(added); ready; ready = waiting.get(added)) {
      addTally(sum, ready);
      waiting.delete(added);
      added += 1;
    }
    progress(done, blocks);
  };
  const work = () =>
    new Promise<void>((resolve, reject) => {
      const worker = new Worker(new URL(WORKER, import.meta.url), { workerData: { job, task } });
      const ask = () => {
        if (next >= blocks || stopped.aborted) return void worker.terminate().then(() => resolve());
        worker.postMessage(next);
        next += 1;
      };
      worker.on('message', ({ block, tally }: { readonly block: number; readonly tally: Tally }) => {
        keep(block, tally);
        ask();
      });
      worker.on('error', reject);
      ask();
    });
  await Promise.all(Array.from({ length: Math.max(1, Math.min(workers, blocks)) }, work));
  for (const [, tally] of [...waiting].sort(([a], [b]) => a - b)) addTally(sum, tally);
  return sum;
}
