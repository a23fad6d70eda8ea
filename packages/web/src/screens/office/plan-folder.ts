import { type Job, type Notice, type Plan, planJob } from '@clampwright/core';
import { issuedValves, readJob } from '@clampwright/papers';
import type { IssuedValve } from '@clampwright/record';

/** What the files of a job folder come to. */
export interface PlannedFolder {
  readonly job: Job;
  readonly plan: Plan;
  readonly valves: readonly IssuedValve[];
}

/** Plans the files of a job folder, as the command line does; a file may be named with or without the folder it lies in. */
export function planFolder(files: ReadonlyMap<string, Uint8Array>): {
  readonly planned?: PlannedFolder;
  readonly notices: readonly Notice[];
} {
  const open = (path: string) => files.get(path) ?? files.get(path.split('/').at(-1)!) ?? 'missing';
  const { job, notices } = readJob(open);
  if (!job) return { notices };
  const { valves, notices: said } = issuedValves(open, job.tools);
  return { planned: { job, plan: planJob(job), valves }, notices: [...notices, ...said] };
}
