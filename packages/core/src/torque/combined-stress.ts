import { shankArea, tensionDiameter } from '../fasteners/thread.ts';
import { type Megapascal, MPa, type Newton, type NewtonMillimetre } from '../quantity.ts';
import type { ThreadSize } from './thread-arm.ts';

/** How torsion is carried over the section: plastic (fully yielded ring, π/12·d³) or elastic at the surface (π/16·d³). */
export type TorsionSection = 'plastic' | 'elastic';

const SECTION: Readonly<Record<TorsionSection, number>> = { plastic: Math.PI / 12, elastic: Math.PI / 16 };

/** Axial stress on the stress area: σ = F/A_S, MPa. */
export const axialStress = (preload: Newton, size: ThreadSize): Megapascal => MPa(preload / shankArea(tensionDiameter(size)));

/** Torsional stress in the thread: τ = M_G/W, W = π/12·d_S³ (plastic) or π/16·d_S³ (elastic), MPa. */
export const torsionalStress = (torsion: NewtonMillimetre, size: ThreadSize, section: TorsionSection = 'plastic'): Megapascal =>
  MPa(torsion / (SECTION[section] * tensionDiameter(size) ** 3));

/**
 * Combined (von Mises) stress: σ_red = √(σ² + 3·(k_τ·τ)²), MPa.
 *
 * - k_τ `torsionLeft`: share of the torsion still there; 1 while the wrench turns, 0.5 in service
 *
 * While tightening τ is taken on the plastic section, in service on the elastic one: two different W in one calculation is
 * what the guideline means, not an error. Source: VDI 2230-1:2015 section 5.5.
 *
 * @example
 * expect(combinedStress(MPa(500), MPa(150))).toBeCloseTo(563.5, 1);
 */
export const combinedStress = (axial: Megapascal, torsional: Megapascal, torsionLeft = 1): Megapascal =>
  MPa(Math.sqrt(axial ** 2 + 3 * (torsionLeft * torsional) ** 2));

/**
 * Share of the yield strength used while tightening: σ_red/R_p0.2, torsion on the plastic section.
 *
 * @example
 * const m8 = { diameter: mm(8), pitch: mm(1.25) };
 * const friction = byCoefficients(0.12, 0.12, mm(10.315), { standard: 'VDI 2230-1', provenance: 'published' });
 * const torsion = shankTorsion(friction, m8, kN(18.6)).value;
 * expect(yieldUtilisation(kN(18.6), torsion, m8, MPa(640))).toBeCloseTo(0.9, 2);
 */
export const yieldUtilisation = (preload: Newton, torsion: NewtonMillimetre, size: ThreadSize, yieldStrength: Megapascal): number =>
  combinedStress(axialStress(preload, size), torsionalStress(torsion, size)) / yieldStrength;
