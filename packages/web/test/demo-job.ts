import { readFileSync } from 'node:fs';
import type { Job } from '@clampwright/core';
import { readJob } from '@clampwright/papers';

/** The demo yard's job, as the command line reads it. */
export function demoJob(): Job {
  const { job } = readJob((path) => {
    try {
      return new Uint8Array(readFileSync(`demo/${path}`));
    } catch {
      return 'missing';
    }
  });
  if (!job) throw new Error('the demo cannot be read');
  return job;
}
