import erfc from '@stdlib/math-base-special-erfc';

/** Φ(z), the standard normal distribution function. */
export const normalCdf = (z: number): number => erfc(-z / Math.SQRT2) / 2;

const density = (z: number): number => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);

/**
 * Mean shortfall of a normal variable below a bound: E[(b − X)⁺] = (b − μ)·Φ(z) + σ·φ(z), z = (b − μ)/σ.
 *
 * Source: textbook partial expectation of the normal distribution.
 *
 * @example
 * expect(meanShortfall(0, 0, 1)).toBeCloseTo(0.39894, 5);
 */
export function meanShortfall(bound: number, mean: number, deviation: number): number {
  if (deviation <= 0) return Math.max(0, bound - mean);
  const z = (bound - mean) / deviation;
  return (bound - mean) * normalCdf(z) + deviation * density(z);
}

/** Mean excess above a bound: E[(X − b)⁺] = E[(b − X)⁺] + μ − b. */
export const meanExcess = (bound: number, mean: number, deviation: number): number => meanShortfall(bound, mean, deviation) + mean - bound;
