import { type Notice, notice } from '../notice/index.ts';
import { force, percent } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { Millimetre, Newton, NewtonMillimetre, Radian } from '../quantity.ts';
import { byNutFactor, type Friction } from '../torque/friction.ts';
import { kStatistics } from './k-class.ts';
import { leastGreatestForce, leastRotation, type SuitabilitySystem } from './suitability-limits.ts';

/** One assembly in the device: torque at the specified preload, and, where it was turned on, how far it goes. */
export interface TestedAssembly {
  readonly torque: NewtonMillimetre;
  readonly greatestForce?: Newton;
  /** from the specified preload to the greatest force, and on until the force has fallen back */
  readonly firstRotation?: Radian;
  readonly secondRotation?: Radian;
}

export interface SuitabilityTest {
  readonly lot: string;
  readonly diameter: Millimetre;
  /** specified preload F_p,C */
  readonly preload: Newton;
  readonly system: SuitabilitySystem;
  /** ultimate strength f_ub, MPa, and stress area, mm² */
  readonly ultimate: number;
  readonly stressArea: number;
  /** clamped length over diameter in the device */
  readonly ratio: number;
  readonly assemblies: readonly TestedAssembly[];
}

/** What a suitability test says of a lot, and what it opens in a plan. */
export interface SuitabilityVerdict {
  readonly lot: string;
  readonly kClass: 'K0' | 'K1' | 'K2';
  readonly mean: number;
  readonly variation: number;
  readonly factors: readonly number[];
  /** the torque method needs K2; the combined method K1 or K2 */
  readonly allows: { readonly torqueMethod: boolean; readonly combinedMethod: boolean };
  /** a failed lot blocks its joints */
  readonly failed: boolean;
  /** friction for the plan; the means of a failed lot are not used */
  readonly friction?: Friction;
  readonly notices: readonly Notice[];
}

/** Assemblies of a test. EN 14399-2 (from memory). */
export const TEST_ASSEMBLIES = 5;

/**
 * Suitability test of one lot of EN 14399 assemblies.
 *
 *     k_i = T_i/(d·F_p,C);  k_m, V_k as {@link kStatistics};  F_bi,max ≥ 0.9·f_ub·A_s;  Δθ₁, Δθ₂ ≥ their least values
 *
 * Refuses fewer than five assemblies, and readings that are not above zero, all at once. Source: EN 14399-1, -2, -3, -4 (from memory).
 */
export function judgeSuitability(test: SuitabilityTest): Outcome<SuitabilityVerdict> {
  const { lot, diameter, preload, assemblies } = test;
  const faults: Notice[] = [];
  if (assemblies.length < TEST_ASSEMBLIES) faults.push(notice('lot-test-few', { lot, found: assemblies.length, wanted: TEST_ASSEMBLIES }));
  for (const [at, { torque, greatestForce }] of assemblies.entries()) {
    if (!(torque > 0) || (greatestForce !== undefined && !(greatestForce > 0)))
      faults.push(notice('lot-test-reading', { lot, assembly: at + 1 }));
  }
  if (!(diameter > 0) || !(preload > 0)) faults.push(notice('lot-test-size', { lot }));
  if (faults.length > 0) return refused(...faults);
  const factors = assemblies.map(({ torque }) => torque / (diameter * preload));
  const { mean, variation, meetsK1, meetsK2 } = kStatistics(factors);
  const kClass = meetsK2 ? 'K2' : meetsK1 ? 'K1' : 'K0';
  const notices = [
    ...reserveNotices(test),
    ...(kClass === 'K0' ? [notice('lot-k-class-none', { lot, mean: String(round(mean)), variation: percent(variation) })] : []),
  ];
  const failed = notices.some(({ code }) => code === 'lot-force-low' || code === 'lot-rotation-low');
  return done({
    lot,
    kClass,
    mean,
    variation,
    factors,
    allows: { torqueMethod: !failed && kClass === 'K2', combinedMethod: !failed && kClass !== 'K0' },
    failed,
    ...(failed
      ? {}
      : { friction: byNutFactor(mean, { standard: 'suitability test', clause: `lot ${lot}`, provenance: 'certificate' }, variation) }),
    notices,
  });
}

const round = (value: number) => Math.round(value * 1000) / 1000;

function reserveNotices({ lot, system, ultimate, stressArea, ratio, assemblies }: SuitabilityTest): Notice[] {
  const wanted = leastGreatestForce(ultimate, stressArea);
  const forces = assemblies.flatMap(({ greatestForce }) => greatestForce ?? []);
  const weakest = Math.min(...forces) as Newton;
  const short = (which: 'first' | 'second', of: readonly Radian[]) =>
    of.some((rotation) => rotation < leastRotation(system, which, ratio) - 1e-9);
  const [first, second] = [
    assemblies.flatMap(({ firstRotation }) => firstRotation ?? []),
    assemblies.flatMap(({ secondRotation }) => secondRotation ?? []),
  ];
  return [
    ...(forces.length > 0 && weakest < wanted ? [notice('lot-force-low', { lot, found: force(weakest), wanted: force(wanted) })] : []),
    ...(short('first', first) || short('second', second) ? [notice('lot-rotation-low', { lot })] : []),
    ...(first.length < assemblies.length ? [notice('lot-rotation-untested', { lot })] : []),
  ];
}
