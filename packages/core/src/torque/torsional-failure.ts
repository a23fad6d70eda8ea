import { rootDiameter, shankArea, tensionDiameter } from '../fasteners/thread.ts';
import { type Megapascal, type Millimetre, type Newton, type NewtonMillimetre, Nmm } from '../quantity.ts';
import type { ThreadSize } from './thread-arm.ts';

/**
 * Strength ratio X of ISO 898-7:1992 between torsional and tensile strength, by property class (from memory).
 * The standard covers M1 to M10; beyond that it is an extrapolation and is shown as one.
 */
export const TORSION_STRENGTH_RATIO: Readonly<Record<string, number>> = { '8.8': 0.84, '9.8': 0.815, '10.9': 0.79, '12.9': 0.75 };

/**
 * Torque at which a free bolt is wrung off.
 *
 *     M_B = X·R_m·π/16·d₃³
 *
 * - X from {@link TORSION_STRENGTH_RATIO}; R_m minimum tensile strength, MPa; d₃ root diameter (the standard: its minimum), mm
 *
 * Valid for: M1–M10 in the standard; above, an extrapolation. Source: ISO 898-7:1992.
 *
 * @example
 * expect(inNewtonMetre(wringOffTorque(MPa(1040), mm(2.272), 0.79))).toBeCloseTo(1.9, 1);
 */
export const wringOffTorque = (tensileStrength: Megapascal, root: Millimetre, ratio: number): NewtonMillimetre =>
  Nmm(ratio * tensileStrength * (Math.PI / 16) * root ** 3);

/** Torsion that first yields the thread root of an unloaded bolt (`elastic`), or all of its section (`plastic`): R_p/√3·π/16·d₃³ or π/12·d₃³. */
export const rootYieldTorque = (yieldStrength: Megapascal, size: ThreadSize, section: 'elastic' | 'plastic'): NewtonMillimetre =>
  Nmm((yieldStrength / Math.sqrt(3)) * (Math.PI / (section === 'elastic' ? 16 : 12)) * rootDiameter(size.diameter, size.pitch) ** 3);

/**
 * Shank torque left until the bolt yields under the axial force still in it.
 *
 *     τ = √((R_p² − (F/A_s)²)/3)      T = τ·π·d_S³/16 (first yield) or /12 (all of the section)
 *
 * Zero where the axial stress alone reaches yield. A seized thread passes all of the wrench torque to the shank: stop raising
 * torque at the elastic figure. Source: VDI 2230-1 (from memory).
 *
 * @example
 * expect(inNewtonMetre(shankTorqueAtYield(MPa(940), { diameter: mm(24), pitch: mm(3) }, kN(247), 'elastic'))).toBeCloseTo(675, 0);
 */
export function shankTorqueAtYield(
  yieldStrength: Megapascal,
  size: ThreadSize,
  axial: Newton,
  section: 'elastic' | 'plastic',
): NewtonMillimetre {
  const stress = axial / shankArea(tensionDiameter(size));
  const shear = Math.sqrt(Math.max(0, yieldStrength ** 2 - stress ** 2) / 3);
  return Nmm((shear * Math.PI * tensionDiameter(size) ** 3) / (section === 'elastic' ? 16 : 12));
}
