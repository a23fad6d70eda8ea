import { parentPort, workerData } from 'node:worker_threads';
import { type SimulatedJob, type SimulationTask, simulateBlock } from '@clampwright/core';

/** Plays one block after another as they are asked for, on a core of its own. */
const { job, task } = workerData as { readonly job: SimulatedJob; readonly task: SimulationTask };
parentPort!.on('message', (block: number) => parentPort!.postMessage({ block, tally: simulateBlock(job, task, block) }));
