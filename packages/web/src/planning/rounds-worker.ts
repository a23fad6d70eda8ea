import { type Job, roundsOf, type WantedRounds } from '@clampwright/core';
import { answer } from './wire.ts';

answer({ rounds: (job: Job, { joint, planned }: WantedRounds) => roundsOf(job, joint, planned) });
