import studentQuantile from '@stdlib/stats-base-dists-t-quantile';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { sampleDeviation, sampleMean } from '../scatter/sample.ts';

/** Two readings lie on any line and say next to nothing of scatter. */
const LEAST_READINGS = 3;
const few = (found: number) => refused(notice('log-too-short', { found, least: LEAST_READINGS }));

/** How sure one wants to be of the next charge: own choice, as for the rest of the battery plan. */
export const CHARGE_CONFIDENCE = 0.95;

/**
 * Bolts the next charge does at least, with a confidence, from counts of earlier ones: x̄ − t_{γ, n−1}·s·√(1 + 1/n), not below 0.
 * Refuses fewer than three counts, counts below zero and a confidence that is not between 0.5 and 1.
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
  if (!(counts.every(isReading) && confidence > 0.5 && confidence < 1)) return refused(notice('log-impossible', {}));
  const bound = sampleMean(counts) - studentQuantile(confidence, n - 1) * sampleDeviation(counts) * Math.sqrt(1 + 1 / n);
  return done(Math.max(0, bound));
}

/** Relative spread of works, squared, that is rounding and nothing else. */
const ALIKE = 1e-18;

const isReading = (value: number): boolean => value >= 0 && value < Number.POSITIVE_INFINITY;

/** Line of draw over work. */
export interface DrawLine {
  /** 1/slope estimates the overall efficiency */
  readonly slope: number;
  /** slope with 90 % confidence. Where the low end is not above zero, the log says nothing of the efficiency yet */
  readonly slopeBounds: { readonly low: number; readonly high: number };
  /** J a bolt takes besides its work */
  readonly intercept: number;
}

/**
 * Efficiency and overhead of a tool from its own log: least squares of draw over work, with the bounds that so few jobs leave:
 *
 *     b ± t_{0.95, n−2}·s/√Σ(x − x̄)²,  s² = Σ(y − a − b·x)²/(n − 2)
 *
 * Refuses fewer than three jobs, jobs of one and the same work, and readings below zero.
 *
 * Source: simple linear regression, textbook (NIST/SEMATECH e-Handbook 4.1.4.1).
 *
 * @example
 * const line = drawLine([320, 420, 540, 630, 780], [1010, 1260, 1650, 1890, 2330]).value;
 * expect(line.slope).toBeCloseTo(2.897, 3);
 * expect(line.intercept).toBeCloseTo(69.5, 1);
 */
export function drawLine(work: readonly number[], draw: readonly number[]): Outcome<DrawLine> {
  const n = Math.min(work.length, draw.length);
  if (n < LEAST_READINGS || work.length !== draw.length) return few(n);
  if (![...work, ...draw].every(isReading)) return refused(notice('log-impossible', {}));
  const [x, y] = [sampleMean(work), sampleMean(draw)];
  const squares = work.reduce((sum, one) => sum + (one - x) ** 2, 0);
  if (squares <= ALIKE * n * x ** 2) return refused(notice('works-all-alike', {}));
  const slope = work.reduce((sum, one, i) => sum + (one - x) * (draw[i]! - y), 0) / squares;
  const intercept = y - slope * x;
  const residuals = work.reduce((sum, one, i) => sum + (draw[i]! - intercept - slope * one) ** 2, 0);
  const margin = studentQuantile(0.95, n - 2) * Math.sqrt(residuals / (n - 2) / squares);
  return done({ slope, slopeBounds: { low: slope - margin, high: slope + margin }, intercept });
}
