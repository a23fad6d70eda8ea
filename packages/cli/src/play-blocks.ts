import { Worker } from 'node:worker_threads';
import { gatherBlocks, type SimulatedJob, type SimulationTask, type Tally } from '@clampwright/core';

/** What goes on while blocks are played. */
export interface Playing {
  readonly workers: number;
  readonly progress: (done: number, of: number) => void;
  /** no further block is begun once this says so */
  readonly stopped: AbortSignal;
}

/** As the bundle of the command line, or as the sources it is made from. */
const WORKER = import.meta.url.endsWith('.ts') ? './simulate-worker.ts' : './simulate-worker.mjs';

/** Plays the blocks of a simulation on several cores. Stopped, it keeps the blocks that are finished. */
export async function playBlocks(job: SimulatedJob, task: SimulationTask, { workers, progress, stopped }: Playing): Promise<Tally> {
  const gathering = gatherBlocks(job, task);
  const { blocks } = gathering;
  const work = () =>
    new Promise<void>((resolve, reject) => {
      const worker = new Worker(new URL(WORKER, import.meta.url), { workerData: { job, task } });
      const ask = () => {
        const next = stopped.aborted ? undefined : gathering.next();
        if (next === undefined) return void worker.terminate().then(() => resolve());
        worker.postMessage(next);
      };
      worker.on('message', ({ block, tally }: { readonly block: number; readonly tally: Tally }) => {
        progress(gathering.keep(block, tally), blocks);
        ask();
      });
      worker.on('error', reject);
      ask();
    });
  await Promise.all(Array.from({ length: Math.max(1, Math.min(workers, blocks)) }, work));
  return gathering.sum();
}
