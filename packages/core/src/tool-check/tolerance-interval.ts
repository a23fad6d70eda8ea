import gammaln from '@stdlib/math-base-special-gammaln';
import chisquareCdf from '@stdlib/stats-base-dists-chisquare-cdf';
import chisquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile';
import { normalCdf } from '../chart/normal-loss.ts';
import { gaussLegendre } from '../scatter/gauss-legendre.ts';
import { sampleDeviation, sampleMean } from '../scatter/sample.ts';

/** Root of a rising function, by halving: 60 halvings leave nothing to see. */
function rootOf(rising: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  for (let step = 0; step < 60; step += 1) {
    const middle = (from + to) / 2;
    if (rising(middle) < 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}

const normalQuantile = (share: number): number => rootOf((z) => normalCdf(z) - share, -10, 10);

const POINTS = gaussLegendre(24);

/** ∫ f from 0 to `far`, in panels that a smooth density does not outrun. */
function integral(f: (x: number) => number, far: number, panels: number): number {
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    const middle = (far * (panel + 0.5)) / panels;
    const half = far / (2 * panels);
    for (const [x, weight] of POINTS) sum += weight * half * f(middle + half * x);
  }
  return sum;
}

/**
 * Factor k of the interval x̄ ± k·s that holds a share of all shots with a given confidence.
 *
 *     ∫ P(χ²_{n−1} ≥ (n−1)·r(x)²/k²)·2√n·φ(√n·x) dx = γ over x ≥ 0,   Φ(x + r) − Φ(x − r) = coverage
 *
 * Valid for: normal shots, n ≥ 2. Source: the exact form behind the tables of ISO 16269-6 (from memory); check values: Berthouex & Brown,
 * Statistics for Environmental Engineers, Table 21.1.
 *
 * @example
 * expect(twoSidedFactor(4, 0.95, 0.95)).toBeCloseTo(6.341, 3);
 */
export function twoSidedFactor(n: number, coverage: number, confidence: number): number {
  const reach = (x: number) => rootOf((half) => normalCdf(x + half) - normalCdf(x - half) - coverage, 0, 40);
  const far = 7 / Math.sqrt(n);
  const reaches = new Map<number, number>();
  const held = (k: number) =>
    integral(
      (x) => {
        const r = reaches.get(x) ?? reach(x);
        reaches.set(x, r);
        const offset = 2 * Math.sqrt(n / (2 * Math.PI)) * Math.exp((-n * x * x) / 2);
        return offset * (1 - chisquareCdf(((n - 1) * r * r) / (k * k), n - 1));
      },
      far,
      4,
    );
  return rootOf((k) => held(k) - confidence, 0.1, 500);
}

/**
 * The same by Howe's approximation: k = z_{(1+p)/2}·√((n−1)(1+1/n)/χ²_{1−γ, n−1}).
 *
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3.
 *
 * @example
 * expect(howeFactor(43, 0.9, 0.99)).toBeCloseTo(2.2173, 4);
 */
export const howeFactor = (n: number, coverage: number, confidence: number): number =>
  normalQuantile((1 + coverage) / 2) * Math.sqrt(((n - 1) * (1 + 1 / n)) / chisquareQuantile(1 - confidence, n - 1));

/**
 * Factor k of the bound x̄ + k·s (or x̄ − k·s) that a share of all shots stays under with a given confidence: the quantile of the
 * noncentral t distribution, found here from
 *
 *     ∫ Φ(√n·(k·s − z_p))·f(s) ds = γ,   f the density of √(χ²_ν/ν), ν = n − 1
 *
 * Valid for: normal shots, n ≥ 2. Source: NIST/SEMATECH e-Handbook 7.2.6.3 (k = t′_{γ}(n−1, z_p·√n)/√n).
 *
 * @example
 * expect(oneSidedFactor(10, 0.95, 0.95)).toBeCloseTo(2.911, 3);
 */
export function oneSidedFactor(n: number, coverage: number, confidence: number): number {
  const z = normalQuantile(coverage);
  const degrees = n - 1;
  const scale = Math.LN2 + (degrees / 2) * Math.log(degrees / 2) - gammaln(degrees / 2);
  const density = (s: number) => Math.exp(scale + (degrees - 1) * Math.log(s) - (degrees * s * s) / 2);
  const far = 1 + 9 / Math.sqrt(degrees);
  const held = (k: number) => integral((s) => normalCdf(Math.sqrt(n) * (k * s - z)) * density(s), far, 24);
  return rootOf((k) => held(k) - confidence, 0, 200);
}

/** Interval that holds a share of all shots of a tool with a given confidence, from few of them. */
export interface ToleranceInterval {
  readonly low: number;
  readonly high: number;
  readonly factor: number;
}

/**
 * x̄ ± k·s. Five shots give a very wide band: that is what five shots know.
 *
 * @example
 * const { low } = toleranceInterval([796, 803, 788, 810, 801]);
 * expect(low / 800 - 1).toBeCloseTo(-0.0526, 4);
 */
export function toleranceInterval(readings: readonly number[], coverage = 0.95, confidence = 0.95, given?: number): ToleranceInterval {
  const factor = given ?? twoSidedFactor(readings.length, coverage, confidence);
  const [mean, deviation] = [sampleMean(readings), sampleDeviation(readings)];
  return { low: mean - factor * deviation, high: mean + factor * deviation, factor };
}

/**
 * Shots until lowest and highest alone are proof, whatever their distribution.
 *
 *     one-sided 1 − pⁿ ≥ γ;  two-sided 1 − n·pⁿ⁻¹ + (n − 1)·pⁿ ≥ γ
 *
 * Source: Wilks, Ann. Math. Stat. 12 (1941) 91.
 *
 * @example
 * expect(shotsForProof(0.95, 0.95, 'one side')).toBe(59);
 * expect(shotsForProof(0.95, 0.95, 'both sides')).toBe(93);
 */
export function shotsForProof(coverage: number, confidence: number, sides: 'one side' | 'both sides'): number {
  if (!(coverage > 0 && coverage < 1 && confidence > 0 && confidence < 1))
    throw new RangeError('coverage and confidence lie between 0 and 1');
  const proven = (n: number) => (sides === 'one side' ? 1 - coverage ** n : 1 - n * coverage ** (n - 1) + (n - 1) * coverage ** n);
  let n = 2;
  while (proven(n) < confidence) n += 1;
  return n;
}
