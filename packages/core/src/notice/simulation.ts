import { fault } from './level.ts';

/** What a simulation cannot be asked. */
export const simulationNotices = {
  'simulation-runs': fault<{ runs: string; most: number }>(),
  'simulation-seed': fault<{ seed: string }>(),
  'mistake-unknown': fault<{ name: string; known: string }>(),
  'mistake-rate': fault<{ name: string; rate: string; most: string }>(),
} as const;
