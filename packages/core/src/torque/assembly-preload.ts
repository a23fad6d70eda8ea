import { pitchDiameter, tensionDiameter } from '../fasteners/thread.ts';
import { type Megapascal, type Millimetre, mm, N, type Newton } from '../quantity.ts';
import { flankFrictionAngle, leadAngle, type ThreadSize } from './thread-arm.ts';

/** Edition of the guideline: 1986 took torsion elastically, the later ones plastically; values differ by 5 to 9 %. */
export type VdiEdition = '1986' | '2003' | '2015';

export interface AssemblyPreloadInput {
  readonly size: ThreadSize;
  /** minimum R_p0.2 of the class, not the nominal value */
  readonly yieldStrength: Megapascal;
  readonly threadFriction: number;
  /** share of the yield strength used, ν = 0.9 in the guideline's tables */
  readonly utilisation?: number;
  readonly edition?: VdiEdition;
  /** diameter of a necked shank, where thinner than the stress diameter */
  readonly neck?: Millimetre;
  readonly wedge?: 'exact' | 'linear';
}

/**
 * Preload at which tightening uses a given share of the bolt's yield strength.
 *
 *     F_M = ν·R_p0.2·A₀ / √(1 + 3·[k·(d₂/d₀)·T]²)
 *
 * - A₀ = π/4·d₀²; d₀ the thinnest section: d_S, or the neck
 * - k = 3/2 (editions 2001 and later, torsion plastic) or 2 (1986, elastic)
 * - T = tan(φ + ρ′) (exact: what the printed tables follow) or P/(π·d₂) + 1.155·μ_G (linear: the equation as printed)
 *
 * Valid for: single-start 60° metric threads, torque tightening up to ν·R_p0.2.
 * Source: VDI 2230-1:2003 and 2015 eq. R8/1 with Table A1; 1986 edition by its own k.
 *
 * @example
 * const m10 = { diameter: mm(10), pitch: mm(1.5) };
 * expect(inKilonewton(assemblyPreload({ size: m10, yieldStrength: MPa(640), threadFriction: 0.12 }))).toBeCloseTo(29.6, 1);
 * expect(inKilonewton(assemblyPreload({ size: m10, yieldStrength: MPa(640), threadFriction: 0.12, edition: '1986' }))).toBeCloseTo(27.3, 1);
 */
export function assemblyPreload(input: AssemblyPreloadInput): Newton {
  const { size, yieldStrength, threadFriction, utilisation = 0.9, edition = '2015', neck, wedge = 'exact' } = input;
  const d2 = pitchDiameter(size.diameter, size.pitch);
  const dS = tensionDiameter(size);
  const d0 = neck === undefined ? dS : mm(Math.min(dS, neck));
  const tangent =
    wedge === 'exact'
      ? Math.tan(leadAngle(size) + flankFrictionAngle(threadFriction))
      : Math.tan(leadAngle(size)) + threadFriction / Math.cos(Math.PI / 6);
  const torsionFactor = edition === '1986' ? 2 : 1.5;
  const shear = torsionFactor * (d2 / d0) * tangent;
  return N((utilisation * yieldStrength * (Math.PI / 4) * d0 ** 2) / Math.sqrt(1 + 3 * shear ** 2));
}
