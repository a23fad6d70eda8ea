import { normalCdf } from '../chart/normal-loss.ts';
import { gaussLegendre } from './gauss-legendre.ts';

/** Preloads of one joint about their mean: what all bolts share, and what each has for itself, as coefficients of variation. */
export interface JointScatter {
  readonly mean: number;
  /** chart bias, lot mean, temperature */
  readonly shared: number;
  /** repeatability, friction within the lot */
  readonly individual: number;
}

/** Where a preload has to lie. */
export interface PreloadWindow {
  readonly low: number;
  readonly high: number;
}

/** Beyond this a normal variable has less than 1e-15 of its weight. */
const FAR = 8;
const POINTS = gaussLegendre(12);
/** Where the inner probability falls, in units of individual over shared scatter: the panels follow it. */
const FALL = [-8, -5, -3.5, -2, -1, 0, 1, 2, 3.5, 5, 8];

const probability = (window: PreloadWindow, mean: number, deviation: number): number => {
  if (deviation <= 0) return mean >= window.low && mean <= window.high ? 1 : 0;
  const [low, high] = [(window.low - mean) / deviation, (window.high - mean) / deviation];
  // both tails from the nearer side, so that small ones keep their figures
  return low > 0 ? normalCdf(-low) - normalCdf(-high) : normalCdf(high) - normalCdf(low);
};

/**
 * Chance that one bolt lies in its window: P(low ≤ F ≤ high), F ~ N(m, m²·(V_s² + V_i²)).
 *
 * @example
 * expect(chanceInside({ mean: 100, shared: 0.03, individual: 0.04 }, { low: 90, high: 110 })).toBeCloseTo(0.9545, 4);
 */
export const chanceInside = ({ mean, shared, individual }: JointScatter, window: PreloadWindow): number =>
  probability(window, mean, mean * Math.hypot(shared, individual));

/**
 * Chance that all n bolts of a joint lie in their window.
 *
 *     P = ∫ φ(z)·p(z)ⁿ dz,   p(z) = P(low ≤ F ≤ high | F ~ N(m·(1 + V_s·z), (m·V_i)²))
 *
 * The integrand is nearly a box: the quadrature is split where p(z) falls at the window's edges. To 1e-6 of values by SciPy
 * (all-inside.scipy.json); valid for normal scatter, V up to some 0.3.
 *
 * @example
 * expect(chanceAllInside({ mean: 100, shared: 0.03, individual: 0.02 }, { low: 90, high: 110 }, 24)).toBeCloseTo(0.945, 3);
 */
export function chanceAllInside({ mean, shared, individual }: JointScatter, window: PreloadWindow, bolts: number): number {
  if (!(mean > 0) || bolts < 1) return 0;
  const own = mean * individual;
  if (shared <= 0) return probability(window, mean, own) ** bolts;
  const edges = [window.low, window.high].map((edge) => (edge / mean - 1) / shared);
  if (individual <= 0) return normalCdf(Math.min(FAR, edges[1]!)) - normalCdf(Math.max(-FAR, Math.min(edges[0]!, edges[1]!)));
  const width = individual / shared;
  const cuts = [-FAR, -4, -2, 0, 2, 4, FAR, ...edges.flatMap((edge) => FALL.map((step) => edge + step * width))]
    .filter((cut) => cut >= -FAR && cut <= FAR)
    .sort((a, b) => a - b);
  let sum = 0;
  for (let i = 0; i + 1 < cuts.length; i += 1) {
    const half = (cuts[i + 1]! - cuts[i]!) / 2;
    if (half < 1e-9) continue;
    const middle = cuts[i]! + half;
    for (const [x, weight] of POINTS) {
      const z = middle + half * x;
      sum += half * weight * Math.exp(-(z * z) / 2) * probability(window, mean * (1 + shared * z), own) ** bolts;
    }
  }
  return Math.min(1, sum / Math.sqrt(2 * Math.PI));
}
