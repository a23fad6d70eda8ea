import { attention, stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What can be wrong with a pipe flange, its gasket and its assembly bolt stress. */
export const flangeNotices = {
  'flange-unknown': stop<{ standard: string; size: string; rating: string }>(),
  'gasket-unknown': stop<{ gasket: string }>(),
  'assembly-stress-limited': attention<{ wanted: Measure; selected: Measure; by: string }>(),
  'gasket-not-seated': stop<{ stress: Measure; limit: Measure }>(),
  'gasket-unloads-in-service': stop<{ stress: Measure; limit: Measure }>(),
  'gasket-crushed': stop<{ stress: Measure; limit: Measure }>(),
  'flange-rotates-too-far': stop<{ stress: Measure; limit: Measure }>(),
} as const;
