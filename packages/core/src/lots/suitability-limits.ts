import { degrees, N, type Newton, type Radian } from '../quantity.ts';
import type { Source } from '../source.ts';

/** The two high-strength systems of EN 14399. */
export type SuitabilitySystem = 'HR' | 'HV';

export const SUITABILITY_SOURCE: Source = {
  standard: 'EN 14399-3 and -4',
  edition: '2015',
  clause: 'suitability for preloading',
  provenance: 'memory',
};

/** Rotations by clamped length over diameter: below 2, below 6, up to 10. */
const ROTATION: Readonly<Record<'first' | 'second', Readonly<Record<SuitabilitySystem, readonly [number, number, number]>>>> = {
  first: { HR: [90, 120, 150], HV: [90, 120, 150] },
  second: { HR: [210, 240, 270], HV: [180, 210, 240] },
};

/**
 * Least rotation an assembly must stand: Δθ₁ from F_p,C to its greatest force, Δθ₂ until the force falls back to F_p,C.
 *
 * - ratio Σt/d, clamped length over diameter, up to 10
 *
 * Source: EN 14399-3, EN 14399-4:2015 (from memory, low confidence).
 *
 * @example
 * expect(inDegrees(leastRotation('HV', 'second', 4))).toBeCloseTo(210, 9);
 */
export function leastRotation(system: SuitabilitySystem, which: 'first' | 'second', ratio: number): Radian {
  const [short, middle, long] = ROTATION[which][system];
  return degrees(ratio < 2 ? short : ratio < 6 ? middle : long);
}

/**
 * Least greatest force of an assembly in the test: F_bi,max ≥ 0.9·f_ub·A_s, N; f_ub MPa, A_s mm².
 *
 * Source: EN 14399-3, EN 14399-4:2015 (from memory).
 *
 * @example
 * expect(leastGreatestForce(1000, 157)).toBeCloseTo(141_300, 6);
 */
export const leastGreatestForce = (ultimate: number, stressArea: number): Newton => N(0.9 * ultimate * stressArea);
