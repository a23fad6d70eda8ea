import studentQuantile from '@stdlib/stats-base-dists-t-quantile';
import { sampleDeviation, sampleMean } from '../scatter/sample.ts';

/** Mean and standard deviation of what is believed about a mean. */
export interface Belief {
  readonly mean: number;
  readonly deviation: number;
}

/** Draw of one bolt from the bolts between two drops of the gauge: a quarter of the usable energy over them, J. Log the bolt at each drop. */
export const drawBetweenDrops = (full: number, bolts: number): number => full / 4 / bolts;

/**
 * What a log teaches about the mean draw: normal prior, normal observations of known spread.
 *
 *     1/s² = 1/s₀² + n/σ²,  m = s²·(m₀/s₀² + Σx/σ²)
 *
 * Source: conjugate normal update, textbook (Gelman et al., Bayesian Data Analysis, 2.5).
 *
 * @example
 * const after = learnt({ mean: 1700, deviation: 300 }, [1918, 2083], 150);
 * expect(after.mean).toBeCloseTo(1967.1, 1);
 * expect(after.deviation).toBeCloseTo(100, 6);
 */
export function learnt(prior: Belief, seen: readonly number[], spread: number): Belief {
  const precision = 1 / prior.deviation ** 2 + seen.length / spread ** 2;
  const sum = seen.reduce((total, one) => total + one, 0);
  return { mean: (prior.mean / prior.deviation ** 2 + sum / spread ** 2) / precision, deviation: 1 / Math.sqrt(precision) };
}

/**
 * Bolts the next charge does at least, with a confidence, from counts of earlier ones: x̄ − t_{γ, n−1}·s·√(1 + 1/n). n ≥ 2.
 *
 * Source: one-sided prediction bound, Hahn & Meeker, Statistical Intervals (1991), 4.7.
 *
 * @example
 * expect(nextChargeBound([142, 138, 150, 145, 133], 0.95)).toBeCloseTo(126.41, 2);
 */
export function nextChargeBound(counts: readonly number[], confidence: number): number {
  const n = counts.length;
  return sampleMean(counts) - studentQuantile(confidence, n - 1) * sampleDeviation(counts) * Math.sqrt(1 + 1 / n);
}

/** Line of draw over work. */
export interface DrawLine {
  /** 1/slope estimates the overall efficiency */
  readonly slope: number;
  /** J a bolt takes besides its work */
  readonly intercept: number;
}

/**
 * Efficiency and overhead of a tool from its own log: least squares of draw over work, n ≥ 2 different works.
 *
 * @example
 * const line = drawLine([320, 420, 540, 630, 780], [1010, 1260, 1650, 1890, 2330]);
 * expect(line.slope).toBeCloseTo(2.897, 3);
 * expect(line.intercept).toBeCloseTo(69.5, 1);
 */
export function drawLine(work: readonly number[], draw: readonly number[]): DrawLine {
  const [x, y] = [sampleMean(work), sampleMean(draw)];
  const [top, bottom] = work.reduce(([a, b], one, i) => [a + (one - x) * (draw[i]! - y), b + (one - x) ** 2], [0, 0]);
  const slope = top! / bottom!;
  return { slope, intercept: y - slope * x };
}
