import { attention, fault, stop } from './level.ts';
import type { Measure } from './measure.ts';

/** What can be wrong with a setting chart or its certificate. */
export const chartNotices = {
  'chart-empty': fault<{ serial: string }>(),
  'chart-other-serial': fault<{ serial: string; chartSerial: string }>(),
  'chart-torque-absurd': fault<{ setting: string }>(),
  'chart-setting-twice': fault<{ setting: string; first: Measure; second: Measure }>(),
  'chart-not-monotone': fault<{ lower: string; lowerTorque: Measure; upper: string; upperTorque: Measure }>(),
  'chart-gap': fault<{ lower: string; upper: string }>(),
  'tool-too-small': stop<{ tool: string; low: Measure; high: Measure; largest: Measure }>(),
  'tool-too-large': stop<{ tool: string; low: Measure; high: Measure; smallest: Measure }>(),
  'chart-too-coarse': stop<{ tool: string; low: Measure; high: Measure; below: Measure; above: Measure }>(),
  'calibration-expired': stop<{ serial: string; due: string; workDate: string }>(),
  'calibration-later': stop<{ serial: string; calibrated: string; workDate: string }>(),
  'calibration-due-soon': attention<{ serial: string; due: string; days: number }>(),
  'setting-interpolated': attention<{ setting: string }>(),
  'accuracy-used-up': attention<{ repeatability: Measure }>(),
} as const;
