import studentQuantile from '@stdlib/stats-base-dists-t-quantile';
import { sampleMean } from '../scatter/sample.ts';

/** One check of a tool: days since some day, and by how much it was off, as a share. */
export interface DriftPoint {
  readonly day: number;
  readonly deviation: number;
}

/** Where a tool is going. */
export interface Drift {
  /** change of the deviation in a day, with its bounds at 95 % confidence */
  readonly slope: number;
  readonly low: number;
  readonly high: number;
  /** deviation on a day, by the line */
  readonly at: (day: number) => number;
}

/**
 * Line through the deviations of a tool over time: least squares, with b ± t_{0.975, n−2}·s/√Σ(x − x̄)². Undefined for fewer than three checks,
 * or checks of one day: they lie on any line. The tool drifts where the bounds leave zero out.
 *
 * Source: simple linear regression, textbook (NIST/SEMATECH e-Handbook 4.1.4.1).
 *
 * @example
 * const drift = driftOf([{ day: 0, deviation: 0 }, { day: 10, deviation: 0.01 }, { day: 20, deviation: 0.02 }, { day: 30, deviation: 0.03 }]);
 * expect(drift.slope).toBeCloseTo(0.001, 9);
 * expect(drift.at(40)).toBeCloseTo(0.04, 9);
 */
export function driftOf(points: readonly DriftPoint[]): Drift | undefined {
  const n = points.length;
  const [x, y] = [sampleMean(points.map(({ day }) => day)), sampleMean(points.map(({ deviation }) => deviation))];
  const squares = points.reduce((sum, { day }) => sum + (day - x) ** 2, 0);
  if (n < 3 || squares === 0) return undefined;
  const slope = points.reduce((sum, { day, deviation }) => sum + (day - x) * (deviation - y), 0) / squares;
  const at = (day: number) => y + slope * (day - x);
  const rest = points.reduce((sum, { day, deviation }) => sum + (deviation - at(day)) ** 2, 0);
  const margin = studentQuantile(0.975, n - 2) * Math.sqrt(rest / (n - 2) / squares);
  return { slope, low: slope - margin, high: slope + margin, at };
}
