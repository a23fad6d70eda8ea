import { attention, hold, stop } from './level.ts';
import type { Measure } from './measure.ts';

/** Where a rule set gives no value, or says more. */
export const ruleNotices = {
  'rule-unknown': stop<{ rule: string }>(),
  'edition-unknown': stop<{ edition: string; known: string }>(),
  'structural-size-too-small': stop<{ size: string }>(),
  'grade-not-preloadable': stop<{ grade: string; rule: string }>(),
  'k-class-needed': stop<{ method: string; needed: string }>(),
  'k-class-insufficient': stop<{ method: string; kClass: string; needed: string }>(),
  'lot-untested': hold<{ method: string }>(),
  'clamp-thickness-needed': stop(),
  'bolt-length-needed': stop(),
  'angle-not-tabulated': stop<{ thickness: Measure; limit: Measure }>(),
  'assembly-needed': stop<{ method: string; needed: string }>(),
  'system-needed': stop<{ method: string; needed: string }>(),
  'size-not-in-table': stop<{ size: string; table: string }>(),
  'bolt-stress-needed': stop(),
  'bolt-stress-above-yield': stop<{ stress: Measure; yield: Measure }>(),
  'bolt-stress-high': attention<{ share: Measure; usual: Measure }>(),
  'friction-unknown': stop(),
  'coefficients-needed': stop(),
  'figure-needed': stop(),
  'preload-basis-needed': stop(),
  'tested-torque-needed': hold(),
} as const;
