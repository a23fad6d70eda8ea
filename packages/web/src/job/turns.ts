import type { JointDraft } from '@clampwright/record';

/** Turns of a valve in one direction as recorded so far, those of the other direction taken off. */
export const turnsTold = ({ valves }: JointDraft, direction: 'open' | 'close'): number =>
  valves.reduce((sum, one) => sum + (one.direction === direction ? 1 : -1) * one.turnsThousandth, 0) / 1000;
