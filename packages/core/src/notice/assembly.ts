import { hold, stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What was measured or found before the first bolt and keeps it from being tightened. */
export const assemblyNotices = {
  'protrusion-short': stop<{ bolt: number; found: Measure; wanted: Measure }>(),
  'clear-threads-few': stop<{ bolt: number; found: number; wanted: number }>(),
  'plates-step': stop<{ found: Measure; allowed: Measure }>(),
  'packs-wrong': stop<{ count: number }>(),
  'slip-surface-other': stop<{ specified: string; found: string }>(),
  'gasket-other': stop<{ found: string; wanted: string }>(),
  'gasket-used': stop(),
  'gasket-faces': hold(),
} as const;
