import studentQuantile from '@stdlib/stats-base-dists-t-quantile';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { sampleDeviation, sampleMean } from '../scatter/sample.ts';
import type { DrawBelief } from './remaining.ts';

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

/** Energy between two drops is a quarter only about: its relative deviation. Own estimate. */
const QUARTER_DEVIATION = 0.05;

/**
 * What one drop of the gauge teaches. The draw seen is as uncertain as bolts differ, as the bolt at which either drop fell (half a bolt
 * either way), and as the gauge's quarters are.
 *
 * Refuses counts that are not whole bolts from 1 on. `full`: usable energy when full, J.
 *
 * @example
 * const after = learntFromDrop({ mean: 1700, meanDeviation: 182.4, boltDeviation: 170 }, 291_600, 38).value;
 * expect(after.mean).toBeCloseTo(1865.7, 1);
 * expect(learntFromDrop(after, 291_600, 0).notices[0].code).toBe('drop-count');
 */
export function learntFromDrop(belief: DrawBelief, full: number, bolts: number): Outcome<DrawBelief> {
  if (!(Number.isInteger(bolts) && bolts > 0)) return refused(notice('drop-count', { bolts: String(bolts) }));
  const seen = drawBetweenDrops(full, bolts);
  const relative = Math.hypot(belief.boltDeviation / belief.mean / Math.sqrt(bolts), 1 / (bolts * Math.sqrt(6)), QUARTER_DEVIATION);
  const { mean, deviation } = learnt({ mean: belief.mean, deviation: belief.meanDeviation }, [seen], relative * seen);
  return done({ ...belief, mean, meanDeviation: deviation });
}

/** Two readings lie on any line and say next to nothing of scatter. */
const LEAST_READINGS = 3;
const few = (found: number) => refused(notice('log-too-short', { found, least: LEAST_READINGS }));

/**
 * Bolts the next charge does at least, with a confidence, from counts of earlier ones: x̄ − t_{γ, n−1}·s·√(1 + 1/n).
 * Refuses fewer than three counts.
 *
 * Source: one-sided prediction bound, Hahn & Meeker, Statistical Intervals (1991), 4.7.
 *
 * @example
 * expect(nextChargeBound([142, 138, 150, 145, 133], 0.95).value).toBeCloseTo(126.41, 2);
 * expect(nextChargeBound([142, 138], 0.95).notices[0].code).toBe('log-too-short');
 */
export function nextChargeBound(counts: readonly number[], confidence: number): Outcome<number> {
  const n = counts.length;
  if (n < LEAST_READINGS) return few(n);
  return done(sampleMean(counts) - studentQuantile(confidence, n - 1) * sampleDeviation(counts) * Math.sqrt(1 + 1 / n));
}

/** Line of draw over work. */
export interface DrawLine {
  /** 1/slope estimates the overall efficiency */
  readonly slope: number;
  /** J a bolt takes besides its work */
  readonly intercept: number;
}

/**
 * Efficiency and overhead of a tool from its own log: least squares of draw over work. Refuses fewer than
 * three jobs, and jobs of one and the same work.
 *
 * @example
 * const line = drawLine([320, 420, 540, 630, 780], [1010, 1260, 1650, 1890, 2330]).value;
 * expect(line.slope).toBeCloseTo(2.897, 3);
 * expect(line.intercept).toBeCloseTo(69.5, 1);
 */
export function drawLine(work: readonly number[], draw: readonly number[]): Outcome<DrawLine> {
  const found = Math.min(work.length, draw.length);
  if (found < LEAST_READINGS || work.length !== draw.length) return few(found);
  const [x, y] = [sampleMean(work), sampleMean(draw)];
  const [top, bottom] = work.reduce(([a, b], one, i) => [a + (one - x) * (draw[i]! - y), b + (one - x) ** 2], [0, 0]);
  if (bottom === 0) return refused(notice('works-all-alike', {}));
  const slope = top! / bottom!;
  return done({ slope, intercept: y - slope * x });
}
