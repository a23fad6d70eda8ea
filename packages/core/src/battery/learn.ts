import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { beliefNotices, type DrawBelief } from './remaining.ts';

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
 * Source: conjugate normal update, textbook (Gelman et al., Bayesian Data Analysis, 2.5). Both deviations above zero.
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
  const faults = [
    ...(Number.isInteger(bolts) && bolts > 0 ? [] : [notice('drop-count', { bolts: String(bolts) })]),
    ...beliefNotices(belief),
  ];
  if (faults.length > 0) return refused(...faults);
  const seen = drawBetweenDrops(full, bolts);
  const relative = Math.hypot(belief.boltDeviation / belief.mean / Math.sqrt(bolts), 1 / (bolts * Math.sqrt(6)), QUARTER_DEVIATION);
  const { mean, deviation } = learnt({ mean: belief.mean, deviation: belief.meanDeviation }, [seen], relative * seen);
  return done({ ...belief, mean, meanDeviation: deviation });
}
