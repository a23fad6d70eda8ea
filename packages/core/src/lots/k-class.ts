import { sampleDeviation, sampleMean } from '../scatter/sample.ts';

/** k factors of a suitability test, summed up. */
export interface KStatistics {
  /** mean k_m */
  readonly mean: number;
  /** coefficient of variation V_k = s/k_m, s with n − 1 */
  readonly variation: number;
  readonly meetsK1: boolean;
  readonly meetsK2: boolean;
}

/** Limits of EN 14399-1: K1 every k_i within 0.10 to 0.16; K2 mean within 0.10 to 0.23 and V_k ≤ 0.06 (from memory). */
const K1 = { low: 0.1, high: 0.16 } as const;
const K2 = { low: 0.1, high: 0.23, variation: 0.06 } as const;

/**
 * Mean, variation and class of the k factors of one lot.
 *
 *     k_i = T_i/(d·F_p,C)      k_m = mean      V_k = s/k_m
 *
 * Source: EN 14399-1:2015, EN 14399-2.
 *
 * @example
 * const lot = kStatistics([0.121, 0.127, 0.124, 0.13, 0.126]);
 * expect(lot.mean).toBeCloseTo(0.1256, 4);
 * expect(lot.meetsK2).toBe(true);
 */
export function kStatistics(factors: readonly number[]): KStatistics {
  const mean = sampleMean(factors);
  const variation = sampleDeviation(factors) / mean;
  return {
    mean,
    variation,
    meetsK1: factors.every((k) => k >= K1.low && k <= K1.high),
    meetsK2: mean >= K2.low && mean <= K2.high && variation <= K2.variation,
  };
}
