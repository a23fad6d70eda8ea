import { type SimulatedJob, type SimulationTask, simulateBlock } from '@clampwright/core';
import { answer } from '../planning/wire.ts';

let of: { readonly job: SimulatedJob; readonly task: SimulationTask } | undefined;

/** Plays one block after another as they are asked for, on a core of its own. */
answer({
  begin: (job: SimulatedJob, task: SimulationTask) => {
    of = { job, task };
  },
  play: (block: number) => simulateBlock(of!.job, of!.task, block),
});
