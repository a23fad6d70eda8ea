/**
 * Mean of a series: x̄ = Σx/n, n ≥ 1. An empty series has none: it throws.
 *
 * @example
 * expect(sampleMean([1, 2, 6])).toBe(3);
 */
export function sampleMean(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError('an empty series has no mean');
  let sum = 0;
  for (let at = 0; at < values.length; at += 1) sum += values[at]!;
  return sum / values.length;
}

/**
 * Standard deviation of a sample: s = √(Σ(x − x̄)²/(n − 1)), n ≥ 2.
 *
 * @example
 * expect(sampleDeviation([30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5])).toBeCloseTo(2.88, 2);
 */
export function sampleDeviation(values: readonly number[]): number {
  if (values.length < 2) throw new RangeError('a deviation needs two values');
  const mean = sampleMean(values);
  let squares = 0;
  for (let at = 0; at < values.length; at += 1) {
    const off = values[at]! - mean;
    squares += off * off;
  }
  return Math.sqrt(squares / (values.length - 1));
}
