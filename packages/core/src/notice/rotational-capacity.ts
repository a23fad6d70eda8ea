import { stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What a rotational-capacity test finds against a combination of lots. */
export const rotationalCapacityNotices = {
  'lot-torque-high': stop<{ lot: string; assembly: number; found: Measure; limit: Measure }>(),
  'lot-damaged': stop<{ lot: string; assembly: number }>(),
} as const;
