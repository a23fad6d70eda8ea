import { type Megapascal, type Millimetre, MPa, mm, N, type Newton } from '../quantity.ts';
import { stressArea } from './thread.ts';
import { boltShearArea, type Engagement, nutShearArea } from './thread-shear-area.ts';

/** Shear strengths of bolt and nut thread, MPa. For steel about 0.6 of the tensile strength. */
export interface ShearStrengths {
  readonly bolt: Megapascal;
  readonly nut: Megapascal;
}

/** Shear strength as a share of tensile strength: τ_B = ratio·R_m, MPa; 0.6 for steel (VDI 2230-1:2015 section 5.5.5). */
export const shearStrength = (tensile: Megapascal, ratio = 0.6): Megapascal => MPa(tensile * ratio);

/**
 * Strength ratio of nut thread to bolt thread: R_S = (A_SGM·τ_BM)/(A_SGS·τ_BS). Above 1 the bolt thread strips first.
 * Source: as {@link nutShearArea}.
 *
 * @example
 * const m6 = { pitch: mm(1), length: mm(4.9), majorMin: mm(5.794), pitchDiameterMin: mm(5.212), nutMinorMax: mm(5.153), nutPitchDiameterMax: mm(5.5) };
 * expect(threadStrengthRatio(m6, { bolt: MPa(624), nut: MPa(540) })).toBeCloseTo(1.2202, 4);
 */
export const threadStrengthRatio = (engagement: Engagement, { bolt, nut }: ShearStrengths): number =>
  (nutShearArea(engagement) * nut) / (boltShearArea(engagement) * bolt);

/**
 * Factor C₁ for the nut spreading under load: 3.8·(s/d) − (s/d)² − 2.61 for 1.4 ≤ s/d < 1.9, else 1. Source: as {@link nutShearArea}.
 *
 * @example
 * expect(nutDilation(mm(24), mm(16))).toBeCloseTo(0.84, 10);
 */
export function nutDilation(acrossFlats: Millimetre, diameter: Millimetre): number {
  const ratio = acrossFlats / diameter;
  return ratio >= 1.4 && ratio < 1.9 ? 3.8 * ratio - ratio ** 2 - 2.61 : 1;
}

/**
 * Factor C₂ for bending of the bolt thread: 5.594 − 13.682·R + 14.107·R² − 6.057·R³ + 0.9353·R⁴ for 1 < R < 2.2, else 0.897.
 * Source: as {@link nutShearArea}.
 *
 * @example
 * expect(boltThreadBending(1.1795)).toBeCloseTo(0.9531, 4);
 */
export const boltThreadBending = (ratio: number): number =>
  ratio > 1 && ratio < 2.2 ? 5.594 - 13.682 * ratio + 14.107 * ratio ** 2 - 6.057 * ratio ** 3 + 0.9353 * ratio ** 4 : 0.897;

/**
 * Factor C₃ for bending of the nut thread: 0.728 + 1.769·R − 2.896·R² + 1.296·R³ for 0.4 < R < 1, else 0.897.
 * Source: as {@link nutShearArea}.
 *
 * @example
 * expect(nutThreadBending(1.19)).toBe(0.897);
 */
export const nutThreadBending = (ratio: number): number =>
  ratio > 0.4 && ratio < 1 ? 0.728 + 1.769 * ratio - 2.896 * ratio ** 2 + 1.296 * ratio ** 3 : 0.897;

/** Loads that strip either thread, N. Wanted: the bolt breaks first, see {@link breakingLoad}. */
export interface EngagementStrength {
  readonly stripNut: Newton;
  readonly stripBolt: Newton;
}

/**
 * Loads that strip the nut thread and the bolt thread.
 *
 *     nut   F = A_SGM·τ_BM·C₁·C₃        bolt   F = A_SGS·τ_BS·C₁·C₂
 *
 * - s width across flats and d nominal diameter for C₁; a tapped block does not spread: give a width of 1.9 d or more
 *
 * Source: as {@link nutShearArea}.
 *
 * @example
 * const m6 = { pitch: mm(1), length: mm(4.9), majorMin: mm(5.794), pitchDiameterMin: mm(5.212), nutMinorMax: mm(5.153), nutPitchDiameterMax: mm(5.5) };
 * const loads = strippingLoads(m6, { bolt: MPa(624), nut: MPa(540) }, mm(10), mm(6));
 * expect(inKilonewton(loads.stripBolt)).toBeCloseTo(24.3, 1);
 */
export function strippingLoads(
  engagement: Engagement,
  strengths: ShearStrengths,
  acrossFlats: Millimetre,
  diameter: Millimetre,
): EngagementStrength {
  const ratio = threadStrengthRatio(engagement, strengths);
  const dilation = nutDilation(acrossFlats, diameter);
  return {
    stripNut: N(nutShearArea(engagement) * strengths.nut * dilation * nutThreadBending(ratio)),
    stripBolt: N(boltShearArea(engagement) * strengths.bolt * dilation * boltThreadBending(ratio)),
  };
}

/**
 * Load that breaks the bolt in its thread: F = R_m·A_s, N.
 *
 * @example
 * expect(inKilonewton(breakingLoad(MPa(1040), { diameter: mm(16), pitch: mm(2) }))).toBeCloseTo(162.9, 1);
 */
export const breakingLoad = (tensile: Megapascal, size: { readonly diameter: Millimetre; readonly pitch: Millimetre }): Newton =>
  N(tensile * stressArea(size.diameter, size.pitch));

/** What {@link requiredEngagement} needs: the strongest bolt of the class against the weakest nut. */
export interface RequiredEngagementInput {
  readonly diameter: Millimetre;
  readonly pitch: Millimetre;
  readonly majorMin: Millimetre;
  readonly nutPitchDiameterMax: Millimetre;
  /** R_m,max of the bolt */
  readonly tensileMax: Megapascal;
  /** τ_BM of the nut or tapped part */
  readonly nutShear: Megapascal;
  /** C₁, C₃ */
  readonly dilation: number;
  readonly bending: number;
}

/**
 * Length of engagement at which the bolt breaks before the nut thread strips.
 *
 *     m = R_m,max·A_s·P / (C₁·C₃·τ_BM·[P/2 + (d − D₂)·tan 30°]·π·d)
 *
 * Effective length only: chamfers and run-out come on top. Source: VDI 2230-1:2015 section 5.5.5.
 *
 * @example
 * expect(requiredEngagement({ diameter: mm(6), pitch: mm(1), majorMin: mm(5.794), nutPitchDiameterMax: mm(5.5),
 *   tensileMax: MPa(960), nutShear: MPa(217), dilation: 1, bending: 0.897 })).toBeCloseTo(8.14, 2);
 */
export function requiredEngagement(input: RequiredEngagementInput): Millimetre {
  const perLength = nutShearArea({ ...input, length: mm(1) }) * input.nutShear * input.dilation * input.bending;
  return mm(breakingLoad(input.tensileMax, input) / perLength);
}
