import { normalCdf } from '../chart/normal-loss.ts';
import { gaugeInterval } from './battery.ts';

/** Draw of one bolt, J: what is known of its mean, and how bolts differ. */
export interface DrawBelief {
  readonly mean: number;
  /** standard deviation of the mean: shared by all bolts, shrinks as the log grows */
  readonly meanDeviation: number;
  /** standard deviation from bolt to bolt */
  readonly boltDeviation: number;
}

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

/** Points over the gauge's interval: charge is taken as evenly likely inside it. */
const POINTS = 16;
const NOTHING = 1e-4;
const MOST = 10_000;

/**
 * Bolts this battery still does: charge evenly likely inside the gauge's quarter, draw by what the log taught.
 *
 * `full`: usable energy when full, J. One lit segment guarantees nothing.
 *
 * @example
 * const left = boltsRemaining(291_600, 2, { mean: 1900, meanDeviation: 100, boltDeviation: 150 });
 * expect(left.sure).toBe(42);
 * expect(left.median).toBe(57);
 */
export function boltsRemaining(full: number, lit: number, belief: DrawBelief): BoltsRemaining {
  const { low, high } = gaugeInterval(lit);
  const energies = Array.from({ length: POINTS }, (_, i) => full * (low + ((high - low) * (i + 0.5)) / POINTS));
  const chance: number[] = [];
  for (let bolts = 0; bolts < MOST; bolts += 1) {
    let sum = 0;
    for (const energy of energies) sum += chanceItLasts(energy, bolts, belief);
    if (sum / POINTS < NOTHING) break;
    chance.push(sum / POINTS);
  }
  const atLeast = (share: number) =>
    Math.max(
      0,
      chance.findLastIndex((one) => one >= share),
    );
  return { sure: atLeast(0.9), median: atLeast(0.5), hopeful: atLeast(0.1), chance };
}

/**
 * Bounds without a distribution: worst from the lower edge of the quarter with the highest draw, best from the upper edge with the lowest.
 *
 * @example
 * expect(boltBounds(291_600, 3, 1400, 2000)).toEqual({ guaranteed: 72, best: 156 });
 */
export function boltBounds(full: number, lit: number, least: number, most: number): { readonly guaranteed: number; readonly best: number } {
  const { low, high } = gaugeInterval(lit);
  return { guaranteed: Math.floor((full * low) / most), best: Math.floor((full * high) / least) };
}

/** Whole bolts of one charge: full energy over draw. */
export const boltsPerCharge = (full: number, draw: number): number => Math.floor(full / draw);
