import { attention, fault, hold, stop } from './level.ts';

/** When an inspection may be made, and what its record refuses. */
export const inspectionNotices = {
  'moment-unreadable': fault(),
  'inspection-too-early': hold<{ hours: number; from: number }>(),
  'inspection-too-late': attention<{ hours: number; until: number }>(),
  'recheck-open': stop<{ joint: string; hours: number }>(),
  'recheck-too-early': stop<{ joint: string; hours: number }>(),
  'inspected-not-drawn': fault<{ joint: string; bolt: number }>(),
  'inspected-twice': fault<{ joint: string; bolt: number }>(),
  'torque-proves-nothing': fault(),
  'inspected-with-own-tool': fault<{ tool: string }>(),
} as const;
