import { meanShortfall, normalCdf } from '../chart/normal-loss.ts';
import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { gaugeInterval, isGauge } from './battery.ts';

/** Draw of one bolt, J: what is known of its mean, and how bolts differ. */
export interface DrawBelief {
  readonly mean: number;
  /** standard deviation of the mean: shared by all bolts, shrinks as the log grows */
  readonly meanDeviation: number;
  /** standard deviation from bolt to bolt */
  readonly boltDeviation: number;
}

/** What makes a belief useless: a draw that is not above zero would let a battery last for ever. */
export const beliefNotices = ({ mean, meanDeviation, boltDeviation }: DrawBelief): Notice[] =>
  mean > 0 && mean < Number.POSITIVE_INFINITY && meanDeviation >= 0 && boltDeviation >= 0 ? [] : [notice('draw-impossible', {})];

/**
 * Chance that the energy left is enough for n bolts.
 *
 *     P = Φ((E − n·m)/√(n²·s_m² + n·s_b²))
 *
 * What is not known of the mean is shared by all bolts: leaving out n²·s_m² would be badly over-confident. n = 0: 1.
 *
 * @example
 * expect(chanceItLasts(145_800, 70, { mean: 1960, meanDeviation: 100, boltDeviation: 150 })).toBeCloseTo(0.8867, 4);
 */
export function chanceItLasts(energy: number, bolts: number, { mean, meanDeviation, boltDeviation }: DrawBelief): number {
  if (bolts <= 0) return 1;
  const deviation = Math.sqrt((bolts * meanDeviation) ** 2 + bolts * boltDeviation ** 2);
  const spare = energy - bolts * mean;
  return deviation > 0 ? normalCdf(spare / deviation) : spare >= 0 ? 1 : 0;
}

/** Bolts a battery still does, as a distribution. */
export interface BoltsRemaining {
  /** bolts it does with 90 % confidence: what the stop rule goes by */
  readonly sure: number;
  readonly median: number;
  /** bolts it does in one of ten cases */
  readonly hopeful: number;
  /** chance that it does at least n bolts, n = 0, 1, … until nothing is left */
  readonly chance: readonly number[];
}

const NOTHING = 1e-4;
const MOST = 10_000;

/** Energy left, J, evenly likely between two bounds; the same bound twice: known. */
export interface EnergyLeft {
  readonly low: number;
  readonly high: number;
}

/**
 * Chance that what is left is enough for draws that add up to Σw and Σw² believed ones, mixed over the energy in closed form:
 *
 *     P = [G(E₁) − G(E₀)]/(E₁ − E₀),  G(E) = E[(E − X)⁺],  X ~ N(m·Σw, (s_m·Σw)² + s_b²·Σw²)
 *
 * Source: sum of normal variables; partial expectation of the normal distribution.
 */
function enoughFor({ low, high }: EnergyLeft, belief: DrawBelief, sum: number, squares: number): number {
  const drawn = belief.mean * sum;
  const deviation = Math.hypot(belief.meanDeviation * sum, belief.boltDeviation * Math.sqrt(squares));
  if (high - low > 1e-9 * high) {
    return (meanShortfall(high, drawn, deviation) - meanShortfall(low, drawn, deviation)) / (high - low);
  }
  return deviation > 0 ? normalCdf((high - drawn) / deviation) : high >= drawn ? 1 : 0;
}

/**
 * Chances that what is left is enough for the first 1, 2, … of some pulls in their order; `weights`: the draw of each as a multiple of the
 * believed one. Ends where nothing is left to hope for.
 *
 * @example
 * const chances = pullsLasting({ low: 145_800, high: 145_800 }, { mean: 1960, meanDeviation: 100, boltDeviation: 150 }, Array(70).fill(1));
 * expect(chances.at(-1)).toBeCloseTo(0.8867, 4);
 */
export function pullsLasting(left: EnergyLeft, belief: DrawBelief, weights: Iterable<number>): number[] {
  const chances: number[] = [];
  let [sum, squares, before] = [0, 0, 1];
  for (const weight of weights) {
    sum += weight;
    squares += weight ** 2;
    // draws only add up, so the chance only falls; far out the normal sum may say otherwise
    before = Math.min(before, enoughFor(left, belief, sum, squares));
    if (before < NOTHING) break;
    chances.push(before);
  }
  return chances;
}

function* bolts(most: number): Generator<number> {
  for (let bolt = 0; bolt < most; bolt += 1) yield 1;
}

/** Energy behind a gauge: `full` usable when full, J. */
export function energyBehind(full: number, lit: number): EnergyLeft {
  const { low, high } = gaugeInterval(lit);
  return { low: low * full, high: high * full };
}

/** Bolts done with at least that chance. */
export const doneWith = (chances: readonly number[], share: number): number => chances.findLastIndex((one) => one >= share) + 1;

/** The stop rule trusts a battery with what it does in nine cases of ten. */
export const STOP_CONFIDENCE = 0.9;

const readingNotices = (full: number, lit: number): Notice[] => [
  ...(full > 0 && full < Number.POSITIVE_INFINITY ? [] : [notice('energy-impossible', {})]),
  ...(isGauge(lit) ? [] : [notice('gauge-reading', { lit: String(lit) })]),
];

/**
 * Bolts this battery still does: charge evenly likely inside the gauge's quarter, draw by what the log taught.
 *
 * `full`: usable energy when full, J. One lit segment guarantees nothing. Refuses a gauge below none or above full, and a draw or an energy
 * that is not above zero, all at once.
 *
 * @example
 * const left = boltsRemaining(291_600, 2, { mean: 1900, meanDeviation: 100, boltDeviation: 150 }).value;
 * expect(left.sure).toBe(42);
 * expect(left.median).toBe(57);
 */
export function boltsRemaining(full: number, lit: number, belief: DrawBelief): Outcome<BoltsRemaining> {
  const faults = [...readingNotices(full, lit), ...beliefNotices(belief)];
  if (faults.length > 0) return refused(...faults);
  const chances = pullsLasting(energyBehind(full, lit), belief, bolts(MOST));
  const atLeast = (share: number) => doneWith(chances, share);
  return done({ sure: atLeast(STOP_CONFIDENCE), median: atLeast(0.5), hopeful: atLeast(0.1), chance: [1, ...chances] });
}

/**
 * Bounds without a distribution: worst from the lower edge of the quarter with the highest draw, best from the upper edge with the lowest.
 * Refuses what {@link boltsRemaining} refuses, and a least draw above the most.
 *
 * @example
 * expect(boltBounds(291_600, 3, 1400, 2000).value).toEqual({ guaranteed: 72, best: 156 });
 * expect(boltBounds(291_600, 5, 1400, 2000).notices[0].code).toBe('gauge-reading');
 */
export function boltBounds(
  full: number,
  lit: number,
  least: number,
  most: number,
): Outcome<{ readonly guaranteed: number; readonly best: number }> {
  const faults = [...readingNotices(full, lit), ...(least > 0 && most >= least ? [] : [notice('draw-impossible', {})])];
  if (faults.length > 0) return refused(...faults);
  const { low, high } = gaugeInterval(lit);
  return done({ guaranteed: Math.floor((full * low) / most), best: Math.floor((full * high) / least) });
}

/** Whole bolts of one charge: full energy over draw. */
export const boltsPerCharge = (full: number, draw: number): number => Math.floor(full / draw);
