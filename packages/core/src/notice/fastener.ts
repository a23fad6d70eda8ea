import { stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What can be wrong with a fastener. */
export const fastenerNotices = {
  'thread-unknown': stop<{ designation: string }>(),
  'no-coarse-pitch': stop<{ designation: string; pitches: string; example: string }>(),
  'grade-unknown': stop<{ grade: string }>(),
  'grade-not-in-size': stop<{ grade: string; size: string; largest: Measure }>(),
  'no-proof-load': stop<{ grade: string }>(),
  'nut-unknown': stop<{ standard: string; nutClass: string; size: string }>(),
  'hexagon-unknown': stop<{ product: string; size: string }>(),
  'washer-unknown': stop<{ standard: string; size: string }>(),
  'hole-unknown': stop<{ standard: string; size: string }>(),
  'clamped-material-unknown': stop<{ material: string }>(),
  'length-not-listed': stop<{ product: string; size: string; boltLength: Measure }>(),
} as const;
