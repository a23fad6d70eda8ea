import { type Notice, type Plan, planJob } from '@clampwright/core';
import { readJob } from '@clampwright/papers';

/** Plans the files of a job folder, as the command line does; a file may be named with or without the folder it lies in. */
export function planFolder(files: ReadonlyMap<string, Uint8Array>): { readonly plan?: Plan; readonly notices: readonly Notice[] } {
  const { job, notices } = readJob((path) => files.get(path) ?? files.get(path.split('/').at(-1)!) ?? 'missing');
  return job ? { plan: planJob(job), notices } : { notices };
}
