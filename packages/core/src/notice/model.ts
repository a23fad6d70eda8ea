import { attention, fault } from './level.ts';

/** What can be wrong with a building model, and what in it was not understood. */
export const modelNotices = {
  'model-broken': fault(),
  'model-text': fault<{ problem: string }>(),
  'model-not-step': fault(),
  'model-packed': fault(),
  'model-schema': fault<{ schema: string }>(),
  'model-unit-missing': attention(),
  'model-without-bolts': fault(),
  'fastener-unreadable': fault(),
  'fastener-no-bolt': attention<{ kind: string }>(),
  'fastener-without-place': fault(),
  'fastener-without-size': fault<{ tried: string }>(),
  'fastener-without-grade': attention<{ tag: string }>(),
  'fastener-contradicts': fault<{ what: string; first: string; second: string }>(),
  'fastener-count': attention<{ said: number; found: number }>(),
  'joint-not-flat': attention<{ tag: string; off: number }>(),
  'bolts-on-one-spot': attention<{ tag: string; bolts: number }>(),
  'joint-by-distance': attention<{ tag: string; bolts: number }>(),
  'grip-open': attention<{ tag: string; why: string }>(),
} as const;
