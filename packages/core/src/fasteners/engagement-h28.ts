import { type Megapascal, type Millimetre, mm } from '../quantity.ts';
import { stressArea } from './thread.ts';
import { boltShearArea, type Engagement, nutShearArea } from './thread-shear-area.ts';

/**
 * Length of engagement for threads of equal strength, of FED-STD-H28.
 *
 *     L_e = 2·A_t / (π·K_n·[1/2 + 0.577 35·n·(E_s − K_n)])        n = 1/P
 *
 * - A_t stress area; K_n D₁,max of the nut; E_s d₂,min of the bolt, mm
 *
 * Asks for twice the tensile area in shear: a small reserve is in it. Source: FED-STD-H28/2B.
 *
 * @example
 * expect(engagementH28({ diameter: mm(16), pitch: mm(2), nutMinorMax: mm(14.21), pitchDiameterMin: mm(14.503) })).toBeCloseTo(12.01, 2);
 */
export const engagementH28 = (
  input: Pick<Engagement, 'pitch' | 'nutMinorMax' | 'pitchDiameterMin'> & { readonly diameter: Millimetre },
): Millimetre => mm((2 * stressArea(input.diameter, input.pitch)) / boltShearArea({ ...input, length: mm(1) }));

/**
 * Strength ratio of bolt to nut of FED-STD-H28: J = (A_s·R_m,ext)/(A_n·R_m,int). Where J > 1 the engagement grows to Q = J·L_e.
 *
 * @example
 * const m8 = { pitch: mm(1.25), majorMin: mm(7.76), pitchDiameterMin: mm(7.042), nutMinorMax: mm(6.912), nutPitchDiameterMax: mm(7.348) };
 * expect(strengthRatioH28(m8, MPa(1040), MPa(310))).toBeCloseTo(2.424, 3);
 */
export function strengthRatioH28(engagement: Omit<Engagement, 'length'>, bolt: Megapascal, nut: Megapascal): number {
  const unit = { ...engagement, length: mm(1) };
  return (boltShearArea(unit) * bolt) / (nutShearArea(unit) * nut);
}

/** Engagement of FED-STD-H28 with the weaker nut made longer: Q = J·L_e where J > 1, else L_e. mm. */
export const requiredEngagementH28 = (equalStrength: Millimetre, ratio: number): Millimetre => mm(equalStrength * Math.max(1, ratio));
