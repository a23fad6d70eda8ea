import { attention, fault, hold, stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What is wrong with a tool's check or with a certificate somebody typed. */
export const toolCheckNotices = {
  'check-empty': fault(),
  'check-reading': fault<{ shot: number }>(),
  'check-limit': fault(),
  'check-failed': stop<{ worst: Measure; limit: Measure; expected: Measure }>(),
  'check-few-shots': attention<{ shots: number; wanted: number }>(),
  'certificate-word-missing': fault<{ word: string }>(),
  'certificate-uncertainty-absurd': fault(),
  'certificate-other-serial': stop<{ serial: string; tool: string }>(),
  'certificate-dates-crossed': fault<{ calibrated: string; due: string }>(),
  'certificate-from-future': stop<{ calibrated: string }>(),
  'certificate-unchecked': hold(),
  'certificate-same-person': hold<{ person: string }>(),
} as const;
