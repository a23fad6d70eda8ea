import { attention, stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What keeps a joint's elastic interaction from being computed. */
export const interactionNotices = {
  'compliance-size': stop<{ bolts: number; most: number }>(),
  'compliance-not-square': stop<{ bolts: number }>(),
  'compliance-not-symmetric': stop<{ first: number; second: number }>(),
  'compliance-not-definite': stop(),
  'members-impossible': attention<{ what: string }>(),
  'members-unknown': attention<{ what: string }>(),
  'gasket-modulus-needed': attention(),
  'gasket-modulus-assumed': attention(),
  'gasket-load-above': stop<{ force: Measure; greatest: Measure }>(),
  'gasket-load-below': stop<{ force: Measure; least: Measure }>(),
  'uneven-by-custom': attention<{ spread: Measure; rounds: number; more: number; wanted: Measure }>(),
  'uneven-still': attention<{ worst: Measure; wanted: Measure; rounds: number }>(),
  'peak-above-ceiling': attention<{ peak: Measure; ceiling: Measure }>(),
  'above-target-approval': attention<{ peak: Measure; target: Measure }>(),
  'above-target-refused': attention<{ rule: string }>(),
  'several-settings-none': attention<{ cap: Measure }>(),
} as const;
