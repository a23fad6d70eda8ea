import { gatherBlocks, type SimulatedJob, type SimulationTask, type Tally } from '@clampwright/core';
import { openLine } from '../planning/wire.ts';

/** What goes on while blocks are played. */
interface Playing {
  readonly progress: (done: number, of: number) => void;
  readonly stopped: AbortSignal;
}

/** Plays a simulation on all cores of this device. Stopped, it keeps the blocks that are finished. */
export async function playHere(job: SimulatedJob, task: SimulationTask, { progress, stopped }: Playing): Promise<Tally> {
  const gathering = gatherBlocks(job, task);
  const play = async () => {
    const line = openLine(new Worker(new URL('./play-worker.ts', import.meta.url), { type: 'module' }));
    try {
      await line.ask('begin', job, task);
      for (let block = gathering.next(); block !== undefined && !stopped.aborted; block = gathering.next())
        progress(gathering.keep(block, await line.ask<Tally>('play', block)), gathering.blocks);
    } finally {
      line.close();
    }
  };
  await Promise.all(Array.from({ length: Math.max(1, Math.min(navigator.hardwareConcurrency, gathering.blocks)) }, play));
  return gathering.sum();
}
