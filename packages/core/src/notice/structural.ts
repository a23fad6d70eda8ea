import { stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What structural bolting rules give no value for. */
export const structuralNotices = {
  'rotation-not-tabulated': stop<{ boltLength: Measure; limit: Measure }>(),
  'readings-wrong': stop<{ wanted: number; found: number }>(),
} as const;
