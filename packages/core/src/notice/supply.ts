import { attention, fault, hold, stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What drives a tool, and valves a tool is to turn. */
export const supplyNoticeGroup = {
  'battery-rating': fault<{ serial: string }>(),
  'battery-health': fault<{ serial: string }>(),
  'battery-gauge': fault<{ serial: string; lit: string }>(),
  'battery-temperature': fault<{ serial: string }>(),
  'battery-no-working': stop<{ serial: string; celsius: number; low: number; high: number }>(),
  'battery-no-charging': stop<{ serial: string; celsius: number; low: number; high: number }>(),
  'battery-first-charge': hold<{ serial: string }>(),
  'battery-low': attention<{ serial: string }>(),
  'supply-weak': stop<{ serial: string; what: string; wanted: string }>(),
  'supply-unprotected': stop<{ serial: string }>(),
  'supply-dry-air': attention<{ serial: string }>(),
  'supply-hose': stop<{ serial: string; rating: number; wanted: number }>(),
  'valve-impossible': fault<{ tag: string }>(),
  'valve-limit-missing': hold<{ tag: string }>(),
  'valve-permission-missing': hold<{ tag: string }>(),
  'valve-direction-missing': hold<{ tag: string }>(),
  'valve-thermal-binding': stop<{ tag: string }>(),
  'valve-needs-more': stop<{ tag: string; needed: Measure; limit: Measure }>(),
  'valve-by-hand': attention<{ tag: string; limit: Measure }>(),
} as const;
